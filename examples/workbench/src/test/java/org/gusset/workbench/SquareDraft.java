package org.gusset.workbench;

import java.util.List;
import java.util.Optional;
import org.gusset.core.check.InRange;
import org.gusset.core.check.Requirement;
import org.gusset.core.construct.Compute;
import org.gusset.core.construct.Condition;
import org.gusset.core.construct.Formula;
import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Severity;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Given;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.graph.Graph;
import org.gusset.core.graph.Handle;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;
import org.gusset.core.pattern.Allowance;
import org.gusset.core.pattern.Assembly;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;
import org.gusset.dsl.Source;

/**
 * A draft put together in Java, so that the command line is tested by itself: the square {@code Front} with sides of
 * (chest + ease) / 4, and {@code Pocket} of 150 mm. The text decides what compiling says: {@code hopeless} gives errors and
 * no draft, {@code faulty} an error beside the draft, {@code strict} a check that large bodies fail.
 */
final class SquareDraft {
    private static final Place NOWHERE = Place.named("square");

    /** What the stand-in compiler finds wrong. */
    enum TestCode implements Code {
        WRONG;

        @Override
        public String id() {
            return "SYN999";
        }

        @Override
        public Severity severity() {
            return Severity.ERROR;
        }

        @Override
        public String english() {
            return "`{word}` does not belong <here>.";
        }
    }

    private SquareDraft() {}

    static Bench bench() {
        return new Bench(SquareDraft::compile);
    }

    static Outcome<Draft> compile(Source source, org.gusset.dsl.Sources sources) {
        String word = source.text().strip();
        Diagnostic wrong = Diagnostic.of(
                        TestCode.WRONG,
                        new Span(source.name(), 0, word.length(), 1, 1, 1, word.length() + 1),
                        "word",
                        word)
                .with(Hint.of("test.hint", "Take it out."));
        return switch (word) {
            case "hopeless" -> Outcome.none(List.of(wrong));
            case "faulty" -> Outcome.of(draft(1e9), List.of(wrong));
            case "strict" -> Outcome.of(draft(300));
            case "crash" -> throw new IllegalStateException("on purpose");
            default -> Outcome.of(draft(1e9));
        };
    }

    private static Draft draft(double longestSide) {
        Draft.Builder draft = Draft.builder("Square <smock>").text("square");
        Graph.Builder graph = draft.graph();
        Handle<Double> chest = graph.define(
                "chest", Double.class, new Given.Measure("chest", "round the chest", false), NOWHERE, List.of());
        var chestRange = graph.define(
                "",
                org.gusset.core.check.Finding.class,
                new InRange(
                        "chest",
                        true,
                        "round the chest",
                        Dimension.LENGTH,
                        Optional.of(new Formula.Constant(Quantity.length(600))),
                        Optional.of(new Formula.Constant(Quantity.length(1700))),
                        NOWHERE),
                NOWHERE,
                List.of(chest));
        draft.add(new Draft.Measure(
                "chest", List.of(), Dimension.LENGTH, "round the chest", false, chest, Optional.of(chestRange)));
        Handle<Double> rule = graph.define("", Double.class, in -> in.number(0) / 8 + 105, NOWHERE, List.of(chest));
        Handle<Double> scye = graph.define(
                "scye_depth", Double.class, new Given.Measure("scye_depth", "", true), NOWHERE, List.of(rule));
        draft.add(new Draft.Measure("scye_depth", List.of(), Dimension.LENGTH, "", true, scye, Optional.empty()));
        Handle<Double> usual = graph.define("", Double.class, in -> 120.0, NOWHERE, List.of());
        Handle<Double> ease =
                graph.define("ease", Double.class, new Given.Choice<>(Double.class), NOWHERE, List.of(usual));
        draft.add(new Draft.Option(
                "ease", Draft.Option.Kind.AMOUNT, Dimension.LENGTH, List.of(), "", false, ease, Optional.empty()));
        Handle<String> vee = graph.define("", String.class, new Compute.Word("vee"), NOWHERE, List.of());
        Handle<String> neckline =
                graph.define("neckline", String.class, new Given.Choice<>(String.class), NOWHERE, List.of(vee));
        draft.add(new Draft.Option(
                "neckline",
                Draft.Option.Kind.WORD,
                Dimension.NUMBER,
                List.of("vee", "round"),
                "",
                false,
                neckline,
                Optional.empty()));
        Handle<Double> quarter = graph.define(
                "quarter", Double.class, in -> (in.number(0) + in.number(1)) / 4, NOWHERE, List.of(chest, ease));
        draft.add(new Draft.Named("quarter", quarter, Dimension.LENGTH));
        Handle<Double> slope = graph.define("slope", Double.class, in -> 12.5, NOWHERE, List.of());
        draft.add(new Draft.Named("slope", slope, Dimension.ANGLE));
        piece(draft, "Front", quarter);
        piece(draft, "Pocket", graph.define("", Double.class, in -> 150.0, NOWHERE, List.of()));
        var check = graph.define(
                "",
                org.gusset.core.check.Finding.class,
                new Requirement(
                        new Condition.Compared(
                                Condition.Relation.LESS,
                                new Formula.Input(0, "quarter", Dimension.LENGTH),
                                new Formula.Constant(Quantity.length(longestSide)),
                                Dimension.LENGTH),
                        "quarter < limit",
                        -1,
                        NOWHERE),
                NOWHERE,
                List.of(quarter));
        draft.add(new Draft.CheckNode("quarter < limit", check, NOWHERE));
        return draft.build();
    }

    private static void piece(Draft.Builder draft, String name, Handle<Double> side) {
        Graph.Builder graph = draft.graph();
        Handle<Point> corner = graph.define(
                name + ".corner", Point.class, in -> new Point(in.number(0), in.number(0)), NOWHERE, List.of(side));
        Handle<Path> top = graph.define(
                name + ".top",
                Path.class,
                in -> Path.line(new Point(0, 0), new Point(in.point(0).x(), 0)),
                NOWHERE,
                List.of(corner));
        Handle<Path> rest = graph.define(
                name + ".rest",
                Path.class,
                in -> Path.line(
                        new Point(in.point(0).x(), 0),
                        in.point(0),
                        new Point(0, in.point(0).y()),
                        new Point(0, 0)),
                NOWHERE,
                List.of(corner));
        Handle<Assembly.Made> made = graph.define(
                name,
                Assembly.Made.class,
                in -> new Assembly.Made(Outcome.of(new Piece(
                        name,
                        List.of(
                                new Edge("top", in.path(0), Allowance.NONE, false),
                                new Edge("rest", in.path(1), Allowance.NONE, false)),
                        Path.joined(List.of(in.path(0), in.path(1))),
                        List.of(new Cut(2, Cut.Arrangement.SINGLE, Optional.empty(), Optional.empty())),
                        Optional.empty(),
                        List.of(),
                        List.of(),
                        List.of()))),
                NOWHERE,
                List.of(top, rest));
        Handle<Piece> sound = graph.define("", Piece.class, new Assembly.Sound(), NOWHERE, List.of(made));
        draft.add(new Draft.PieceNodes(
                name,
                made,
                sound,
                List.of(
                        new Draft.Named("corner", corner, Dimension.LENGTH),
                        new Draft.Named("top", top, Dimension.LENGTH),
                        new Draft.Named("rest", rest, Dimension.LENGTH)),
                List.of(),
                List.of("top", "rest"),
                java.util.Map.of(),
                false,
                false));
    }
}
