package org.gusset.core.draft;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.diagnostic.Suggestions;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.graph.Handle;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.pattern.Assembly;
import org.gusset.core.pattern.Piece;
import org.gusset.core.pattern.TakenUp;
import org.gusset.core.seam.Sewing;
import org.gusset.core.seam.Walk;
import org.gusset.core.seam.WalkedSeams;
import org.jspecify.annotations.Nullable;

/** Puts a body's measures and a host's choices into a draft and gathers what comes of it. */
final class Drafting {
    private final Draft draft;

    Drafting(Draft draft) {
        this.draft = draft;
    }

    Drawing draw(Measurements measurements, Choices choices, @Nullable Drawing before) {
        Map<Handle<?>, Object> given = new HashMap<>();
        List<Diagnostic> diagnostics = new ArrayList<>();
        takeMeasures(measurements, given);
        takeChoices(measurements, choices, given, diagnostics);
        if (before == null) {
            return gather(measurements, choices, Evaluation.of(draft.graph(), given), given, diagnostics, null);
        }
        Evaluation evaluation = before.evaluation().with(given);
        return gather(measurements, choices, evaluation, given, diagnostics, before.seams());
    }

    /** The drawing of an evaluation in which values were set, for the same body and choices. */
    Drawing forced(Drawing drawing, Evaluation evaluation) {
        Map<Handle<?>, Object> given = new HashMap<>();
        takeMeasures(drawing.measurements(), given);
        return gather(drawing.measurements(), drawing.choices(), evaluation, given, List.of(), drawing.seams());
    }

    private void takeMeasures(Measurements measurements, Map<Handle<?>, Object> given) {
        List<Draft.Measure> missing = new ArrayList<>();
        for (Draft.Measure measure : draft.measures()) {
            Optional<Measurements.Entry> found = measurements
                    .entry(measure.name())
                    .or(() -> measure.also().stream()
                            .flatMap(name -> measurements.entry(name).stream())
                            .findFirst());
            if (found.isPresent()) {
                take(measure, found.get(), given);
            } else if (!measure.estimated()) {
                missing.add(measure);
            }
        }
        if (!missing.isEmpty()) {
            NearlyNamed.tell(draft, measurements, missing, given);
        }
    }

    private static void take(Draft.Measure measure, Measurements.Entry entry, Map<Handle<?>, Object> given) {
        Optional<Diagnostic> objection = Finite.objection(measure, entry);
        if (entry.quantity().dimension().equals(measure.dimension()) && objection.isPresent()) {
            given.put(measure.value(), objection.get());
        } else if (entry.quantity().dimension().equals(measure.dimension())) {
            given.put(measure.value(), entry);
            measure.range().ifPresent(range -> given.put(range, entry));
        } else {
            given.put(measure.value(), wrongKind(measure, entry));
        }
    }

    private static Diagnostic wrongKind(Draft.Measure measure, Measurements.Entry entry) {
        Quantity quantity = entry.quantity();
        if (!quantity.dimension().equals(Dimension.NUMBER)) {
            return Diagnostic.of(
                    DraftCode.MEASURE_KIND,
                    entry.place(),
                    "name",
                    measure.name(),
                    "wanted",
                    measure.dimension().words(),
                    "given",
                    quantity.dimension().words());
        }
        Fact value = Fact.number(quantity.value());
        Diagnostic diagnostic = Diagnostic.of(
                DraftCode.MEASURE_WITHOUT_UNIT,
                entry.place(),
                "name",
                measure.name(),
                "value",
                value,
                "wanted",
                measure.dimension().words());
        return measure.dimension().equals(Dimension.ANGLE)
                ? diagnostic.with(Hint.of("measure.unit.angle", "Write `{value} deg`.", "value", value))
                : diagnostic.with(Hint.of(
                        "measure.unit",
                        "Write `{value} cm` or `{value} in`, whichever the tape said.",
                        "value",
                        value));
    }

    void takeChoices(
            Measurements measurements, Choices choices, Map<Handle<?>, Object> given, List<Diagnostic> diagnostics) {
        Set<String> known = new LinkedHashSet<>();
        for (Draft.Option option : draft.options()) {
            known.add(option.name());
            Choice choice = choices.settings().get(option.name());
            if (choice == null && option.fit()) {
                choice = measurements
                        .entry(option.name())
                        .map(e -> (Choice) new Choice.Amount(e.quantity()))
                        .orElse(null);
            }
            if (choice != null) {
                given.put(option.value(), chosen(option, choice));
            }
        }
        for (String name : choices.settings().keySet()) {
            if (!known.contains(name)) {
                Diagnostic unknown = Diagnostic.of(DraftCode.NO_SUCH_CHOICE, Place.named(name), "name", name);
                Optional<String> meant = Suggestions.nearest(name, known);
                if (meant.isPresent()) {
                    unknown = unknown.with(Hint.of("choice.meant", "Did you mean `{name}`?", "name", meant.get()));
                } else if (!known.isEmpty()) {
                    unknown = unknown.with(
                            Hint.of("choice.known", "It has these: {names}.", "names", String.join(", ", known)));
                }
                diagnostics.add(unknown);
            }
        }
    }

    private static Object chosen(Draft.Option option, Choice choice) {
        if (option.kind() == Draft.Option.Kind.AMOUNT
                && choice instanceof Choice.Amount amount
                && amount.quantity().dimension().equals(option.dimension())) {
            Optional<Diagnostic> objection =
                    Finite.objection(option.name(), amount.quantity(), Place.named(option.name()));
            return objection.isPresent() ? objection.get() : amount.quantity().value();
        } else if (option.kind() == Draft.Option.Kind.WORD
                && choice instanceof Choice.Word word
                && option.words().contains(word.word())) {
            return word.word();
        } else if (option.kind() == Draft.Option.Kind.ANSWER && choice instanceof Choice.Answer answer) {
            return answer.yes();
        }
        String wanted = switch (option.kind()) {
            case AMOUNT -> option.dimension().words();
            case WORD -> "one of " + String.join(", ", option.words());
            case ANSWER -> "yes or no";
        };
        Diagnostic wrong = Diagnostic.of(
                DraftCode.CHOICE_KIND,
                Place.named(option.name()),
                "name",
                option.name(),
                "wanted",
                wanted,
                "given",
                shown(choice));
        if (choice instanceof Choice.Word word && option.kind() == Draft.Option.Kind.WORD) {
            Optional<String> meant = Suggestions.nearest(word.word(), option.words());
            if (meant.isPresent()) {
                return wrong.with(Hint.of("choice.meant", "Did you mean `{name}`?", "name", meant.get()));
            }
        }
        if (choice instanceof Choice.Amount amount
                && amount.quantity().dimension().equals(Dimension.NUMBER)
                && option.dimension().equals(Dimension.LENGTH)) {
            Fact value = Fact.number(amount.quantity().value());
            return wrong.with(Hint.of("choice.unit", "Write `{value} cm` or `{value} in`.", "value", value));
        }
        return wrong;
    }

    private static String shown(Choice choice) {
        if (choice instanceof Choice.Word word) {
            return "`" + word.word() + "`";
        } else if (choice instanceof Choice.Answer answer) {
            return answer.yes() ? "yes" : "no";
        }
        return ((Choice.Amount) choice).quantity().dimension().words();
    }

    private Drawing gather(
            Measurements measurements,
            Choices choices,
            Evaluation evaluation,
            Map<Handle<?>, Object> given,
            List<Diagnostic> diagnostics,
            @Nullable WalkedSeams before) {
        List<Diagnostic> ofCloths = new ArrayList<>();
        List<Cloth> cloths = cloths(evaluation, ofCloths);
        StripPlanning strips = new StripPlanning(cloths);
        OutputBound bound = new OutputBound(draft.graph().bounds());
        List<Piece> pieces = new ArrayList<>();
        List<RefusedPiece> refused = new ArrayList<>();
        List<String> leftOut = new ArrayList<>();
        List<PieceValues> pieceValues = new ArrayList<>();
        List<Step> steps = new ArrayList<>();
        Set<Diagnostic> all = new LinkedHashSet<>(diagnostics);
        all.addAll(faults(evaluation, given));
        all.addAll(ofCloths);
        for (Draft.PieceNodes piece : draft.pieces()) {
            if (evaluation.state(piece.sound()) == Evaluation.State.LEFT_OUT) {
                leftOut.add(piece.name());
                continue;
            }
            Optional<Assembly.Made> made = evaluation.value(piece.made());
            made.ifPresent(m -> all.addAll(m.piece().diagnostics()));
            Optional<Piece> sound = evaluation.value(piece.sound());
            Place place = evaluation.graph().definition(piece.made()).place();
            Optional<Diagnostic> tooMuch = sound.flatMap(p -> bound.refused(p, place));
            if (tooMuch.isPresent()) {
                all.add(tooMuch.get());
                refused.add(new RefusedPiece(piece.name(), List.of(tooMuch.get())));
            } else if (sound.isPresent()) {
                pieces.add(piece.strip() ? strips.planned(sound.get(), place) : sound.get());
                bound.lesson(piece, evaluation, place);
            } else {
                refused.add(new RefusedPiece(
                        piece.name(),
                        made.map(m -> m.piece().diagnostics()).orElseGet(() -> evaluation.causes(piece.sound()))));
            }
            pieceValues.add(values(piece, evaluation));
            for (Draft.StepNodes step : piece.steps()) {
                List<Phrase> words = step.words().stream()
                        .flatMap(w -> evaluation.value(w).stream())
                        .toList();
                steps.add(new Step(piece.name(), step.title(), step.names(), words));
            }
        }
        all.addAll(strips.diagnostics());
        all.addAll(bound.diagnostics());
        SewingOf sewingOf = new SewingOf(draft, evaluation);
        WalkedSeams seams = sewingOf.of(pieces, before);
        Sewing sewing = seams.sewing();
        List<Finding> findings = findings(evaluation, sewing, sewingOf);
        all.addAll(sewingOf.diagnostics());
        all.addAll(sewing.diagnostics());
        findings.forEach(f -> f.diagnostic().ifPresent(all::add));
        faultyChecks(evaluation).forEach(all::add);
        List<Diagnostic> sorted = new ArrayList<>(all);
        sorted.sort((a, b) -> Integer.compare(order(a), order(b)));
        return new Drawing(
                draft,
                evaluation,
                new Drawing.Content(
                        draft.title(),
                        draft.note(),
                        measurements,
                        choices,
                        cloths,
                        List.copyOf(pieces),
                        strips.plans(),
                        List.copyOf(refused),
                        List.copyOf(leftOut),
                        fileValues(evaluation, given),
                        List.copyOf(pieceValues),
                        List.copyOf(steps),
                        findings,
                        seams,
                        List.copyOf(sorted),
                        bound.lessonTooLarge(),
                        sewingOf.steps()));
    }

    private static int order(Diagnostic diagnostic) {
        return diagnostic.place() instanceof Span span ? span.start() : -1;
    }

    /** Every fault that counts; a measure that is missing counts only if something else asks for it. */
    private List<Diagnostic> faults(Evaluation evaluation, Map<Handle<?>, Object> given) {
        Set<Diagnostic> idle = new HashSet<>();
        for (Draft.Measure measure :
                new IdleMeasures(draft.measures(), evaluation, m -> given.containsKey(m.value())).of()) {
            evaluation.fault(measure.value()).ifPresent(idle::add);
        }
        return evaluation.faults().stream().filter(f -> !idle.contains(f)).toList();
    }

    /** Why checks that were asked for could not be worked out: nothing else asks for their nodes. */
    private List<Diagnostic> faultyChecks(Evaluation evaluation) {
        List<Handle<?>> checks = new ArrayList<>();
        draft.measures()
                .forEach(m -> m.range()
                        .filter(r -> evaluation.value(m.value()).isPresent())
                        .ifPresent(checks::add));
        draft.options().forEach(o -> o.range().ifPresent(checks::add));
        draft.checks().forEach(c -> checks.add(c.node()));
        return checks.stream().flatMap(c -> evaluation.fault(c).stream()).toList();
    }

    private List<Finding> findings(Evaluation evaluation, Sewing sewing, SewingOf sewingOf) {
        List<Finding> findings = new ArrayList<>();
        for (Draft.Measure measure : draft.measures()) {
            measure.range().flatMap(evaluation::value).ifPresent(findings::add);
        }
        for (Draft.Option option : draft.options()) {
            option.range().flatMap(evaluation::value).ifPresent(findings::add);
        }
        Iterator<Finding> seams = sewing.findings().iterator();
        for (Draft.CheckNode check : draft.checks()) {
            Object value = evaluation.value(check.node()).orElse(null);
            if (value instanceof Finding finding) {
                findings.add(finding);
            } else if (value instanceof Walk walk && sewingOf.unwalked(walk)) {
                findings.add(without(check, Evaluation.State.FAULTY));
            } else if (value instanceof Walk) {
                findings.add(seams.next());
            } else {
                findings.add(without(check, evaluation.state(check.node())));
            }
        }
        return List.copyOf(findings);
    }

    private static Finding without(Draft.CheckNode check, Evaluation.State state) {
        boolean leftOut = state == Evaluation.State.LEFT_OUT;
        return new Finding(
                check.name(),
                leftOut ? Finding.Verdict.SKIPPED : Finding.Verdict.UNKNOWN,
                leftOut
                        ? Phrase.of("check.skipped", "skipped: a piece that it speaks of is left out by choice")
                        : Phrase.of("check.unknown", "not known: something that it speaks of could not be made"),
                check.place(),
                Optional.empty());
    }

    private List<Cloth> cloths(Evaluation evaluation, List<Diagnostic> told) {
        List<Cloth> cloths = new ArrayList<>();
        for (Draft.ClothNodes cloth : draft.cloths()) {
            Optional<Double> length = cloth.length().flatMap(evaluation::value);
            Optional<Double> width = evaluation.value(cloth.width());
            if (width.isPresent() && !(width.get() > 0)) {
                told.add(Diagnostic.of(
                        DraftCode.CLOTH_WITHOUT_WIDTH,
                        evaluation.graph().definition(cloth.width()).place(),
                        "name",
                        cloth.name(),
                        "width",
                        Fact.length(width.get())));
            } else {
                width.ifPresent(w -> cloths.add(new Cloth(
                        cloth.name(), w, length, new ClothReading(cloth, evaluation, told).ways(), cloth.note())));
            }
        }
        return List.copyOf(cloths);
    }

    private List<NamedValue> fileValues(Evaluation evaluation, Map<Handle<?>, Object> given) {
        List<NamedValue> values = new ArrayList<>();
        for (Draft.Measure measure : draft.measures()) {
            evaluation
                    .value(measure.value())
                    .ifPresent(v -> values.add(new NamedValue.Amount(
                            measure.name(),
                            new Quantity(v, measure.dimension()),
                            !given.containsKey(measure.value()))));
        }
        for (Draft.Option option : draft.options()) {
            named(new Draft.Named(option.name(), option.value(), option.dimension()), evaluation)
                    .ifPresent(values::add);
        }
        for (Draft.Named value : draft.values()) {
            named(value, evaluation).ifPresent(values::add);
        }
        return List.copyOf(values);
    }

    private static Optional<NamedValue> named(Draft.Named named, Evaluation evaluation) {
        Object value = evaluation.value(named.node()).orElse(null);
        if (value instanceof Double number) {
            return Optional.of(new NamedValue.Amount(named.name(), new Quantity(number, named.dimension()), false));
        } else if (value instanceof Boolean yes) {
            return Optional.of(new NamedValue.Answer(named.name(), yes));
        } else if (value instanceof String word) {
            return Optional.of(new NamedValue.Word(named.name(), word));
        }
        return Optional.empty();
    }

    private static PieceValues values(Draft.PieceNodes piece, Evaluation evaluation) {
        List<NamedValue> values = new ArrayList<>();
        List<PieceValues.NamedPoint> points = new ArrayList<>();
        List<PieceValues.NamedLine> lines = new ArrayList<>();
        for (Draft.Named named : piece.named()) {
            Object value = evaluation.value(named.node()).orElse(null);
            if (value instanceof Point point) {
                points.add(new PieceValues.NamedPoint(named.name(), point));
            } else if (value instanceof Path path && !path.endless()) {
                lines.add(new PieceValues.NamedLine(
                        named.name(),
                        path.length(),
                        path.length() - taken(piece, named.name(), evaluation),
                        piece.outline().contains(named.name())));
            } else {
                named(named, evaluation).ifPresent(values::add);
            }
        }
        return new PieceValues(piece.name(), values, points, lines);
    }

    /** What darts, gathers and pleats of an edge take up, in mm. */
    private static double taken(Draft.PieceNodes piece, String edge, Evaluation evaluation) {
        double sum = 0;
        for (Handle<? extends TakenUp> taken :
                piece.takenUp().getOrDefault(edge, List.<Handle<? extends TakenUp>>of())) {
            sum += evaluation.value(taken).map(TakenUp::intake).orElse(0.0);
        }
        return sum;
    }

    /** See {@link Drawing#fingerprint()}. */
    static String fingerprint(Draft draft, Choices choices) {
        StringBuilder text =
                new StringBuilder(Draft.LIBRARY_VERSION).append('\n').append(draft.identity());
        choices.settings()
                .forEach((name, choice) ->
                        text.append('\n').append(name).append('=').append(choice));
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256").digest(text.toString().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest, 0, 6);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
