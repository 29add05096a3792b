package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Grain;
import org.gusset.core.pattern.Mark;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;

/** One piece in all its sizes, laid on one another in the frame of the largest. */
final class NestFigure {
    private static final Vector NOWHERE = new Vector(0, 0);

    /** Half an arm of the cross at the nesting point, in mm. */
    private static final double CROSS = 4;

    /** Grain lines that turn by less than this are drawn once, in degrees. */
    private static final double SAME_WAY = 0.1;

    /** Folds this near to one line are one fold, in mm. */
    private static final double SAME_FOLD = 0.1;

    private final Nest nest;
    private final SheetContent content;
    private final SheetOptions options;
    private final Words words;
    private final LabelText text;
    private final Ids ids;
    private final String name;
    private final List<Nest.SizedPiece> sizes;
    private final Nest.SizedPiece smallest;
    private final Piece largest;
    private final Room room;
    private final List<Ink> ink = new ArrayList<>();
    private Box bounds;

    /** The figure of a piece that some size has; {@code content} is that of the whole nest. */
    NestFigure(Nest nest, String name, SheetContent content, SheetOptions options, Ids ids) {
        this.nest = nest;
        this.content = content;
        this.options = options;
        this.words = new Words(options.wording());
        this.text = new LabelText(content, options);
        this.ids = ids;
        this.name = name;
        this.sizes = nest.sized(name);
        this.smallest = sizes.stream()
                .min(Comparator.comparingDouble(one -> one.piece().area()))
                .orElseThrow();
        this.largest = content.pieces().stream()
                .filter(piece -> piece.name().equals(name))
                .findFirst()
                .orElseThrow();
        this.room = new Room(moved(smallest.piece().stitching(), smallest));
        this.bounds = sizes.stream()
                .map(one -> moved(one.piece().cutting(), one).bounds())
                .reduce(Box::with)
                .orElseThrow();
    }

    PieceFigure draw() {
        Box over = bounds;
        outlines();
        List<SizeNames.Anchor> anchors = corners();
        NestMarks marks = new NestMarks(nest, name, sizes, room, options, ids);
        ink.addAll(marks.notches());
        ink.addAll(marks.marks(smallest, anchors));
        List<LabelLine> lines = label();
        grain(lines);
        foldBrackets();
        nestPoint();
        sizeNames(anchors);
        LabelPlacer.Placed label = new LabelPlacer(lines, room, options.styles()).place(largest, bounds);
        label.outside().ifPresent(box -> bounds = bounds.with(box));
        ink.add(new Ink.Group(ids.of("label", name), "label", "", "", NOWHERE, label.ink()));
        String description = words.say(
                "nest-piece",
                "{count} sizes laid on one another; {description}",
                "count",
                sizes.size(),
                "description",
                text.description(largest));
        return new PieceFigure(
                largest,
                new Ink.Group(ids.of("piece", name), "piece", Words.spoken(name), description, NOWHERE, ink),
                bounds,
                over);
    }

    /** Two strokes that cross at a point. */
    static List<Ink> cross(Point at) {
        return List.of(
                Ink.Stroke.of(
                        Role.NEST_POINT, Path.line(at.plus(new Vector(-CROSS, 0)), at.plus(new Vector(CROSS, 0)))),
                Ink.Stroke.of(
                        Role.NEST_POINT, Path.line(at.plus(new Vector(0, -CROSS)), at.plus(new Vector(0, CROSS)))));
    }

    private String mark(Nest.SizedPiece one) {
        return nest.sizes().get(one.number()).mark();
    }

    static Path moved(Path path, Nest.SizedPiece one) {
        return path.transformed(Transform.shift(one.shift()));
    }

    private boolean cutting() {
        return nest.line() == Nest.Line.CUTTING;
    }

    private Path closed(Nest.SizedPiece one) {
        return moved(cutting() ? one.piece().cutting() : one.piece().stitching(), one);
    }

    private void outlines() {
        List<List<Path>> cut = new ArrayList<>();
        List<List<Path>> folds = new ArrayList<>();
        for (Nest.SizedPiece one : sizes) {
            List<Path> lines = new ArrayList<>();
            List<Path> onFold = new ArrayList<>();
            if (cutting()) {
                for (Outlines.Run run : Outlines.runs(one.piece())) {
                    (run.onFold() ? onFold : lines).add(moved(Path.of(run.segments()), one));
                }
            } else {
                for (Edge edge : one.piece().edges()) {
                    (edge.onFold() ? onFold : lines).add(moved(edge.path(), one));
                }
            }
            cut.add(lines);
            folds.add(onFold);
            room.add(closed(one));
        }
        Together.Parted parted = new Together(cut).parted();
        for (int i = 0; i < sizes.size(); i++) {
            Nest.SizedPiece one = sizes.get(i);
            List<Ink> strokes = new ArrayList<>();
            for (Path path : parted.own().get(i)) {
                strokes.add(Ink.Stroke.of(Role.size(one.number()), path));
            }
            String title =
                    words.say("nest-size", "{piece}, size {size}", "piece", Words.spoken(name), "size", mark(one));
            ink.add(new Ink.Group(ids.of("size", name, mark(one)), "size", title, "", NOWHERE, strokes));
        }
        NestMarks.strokes(ids.of("together", name), "together", Role.SIZES_TOGETHER, parted.shared(), ink);
        Together.Parted onFolds = new Together(folds).parted();
        List<Path> all = new ArrayList<>(onFolds.shared());
        onFolds.own().forEach(all::addAll);
        NestMarks.strokes(ids.of("fold", name), "fold", Role.FOLD, all, ink);
    }

    private List<SizeNames.Anchor> corners() {
        List<SizeNames.Anchor> anchors = new ArrayList<>();
        for (Nest.SizedPiece one : sizes) {
            for (Point corner : SizeNames.corners(closed(one))) {
                anchors.add(new SizeNames.Anchor(one.number(), corner));
            }
        }
        return anchors;
    }

    private List<LabelLine> label() {
        List<LabelLine> lines = new ArrayList<>();
        lines.add(new LabelLine(Role.PIECE_NAME, Words.spoken(name)));
        text.warnings(2).forEach(warning -> lines.add(new LabelLine(Role.WARNING, warning)));
        say(
                lines,
                Role.CUT_COUNT,
                piece -> String.join("; ", piece.cuts().stream().map(words::cut).toList()));
        line(lines, words.number(content.pieces().indexOf(largest) + 1, content.pieceCount()));
        line(lines, text.titleAndBody());
        if (sizes.size() < nest.sizes().size()) {
            line(
                    lines,
                    words.say(
                            "nest-only",
                            "in size {sizes} only",
                            "sizes",
                            String.join(", ", sizes.stream().map(this::mark).toList())));
        }
        if (cutting()) {
            say(lines, Role.LABEL, words::allowance);
        } else {
            line(lines, words.say("nest-no-allowance", "drawn without allowance"));
        }
        say(lines, Role.LABEL, this::gathered);
        line(lines, words.rightSide(largest));
        if (sizes.stream().allMatch(one -> one.piece().grain().isEmpty())) {
            line(lines, words.say("no-grain", "no grain is told"));
        }
        say(
                lines,
                Role.LABEL,
                piece -> String.join(
                        "; ", piece.labels().stream().map(words::say).toList()));
        if (!content.estimated().isEmpty()) {
            line(lines, words.estimated(content.estimated()));
        }
        lines.add(new LabelLine(Role.SMALL_PRINT, words.fingerprint(content.fingerprint())));
        return lines;
    }

    private String gathered(Piece piece) {
        return String.join(
                "; ",
                piece.marks().stream()
                        .filter(mark -> mark instanceof Mark.Gathers)
                        .map(mark -> words.gatheredTo(((Mark.Gathers) mark).to()))
                        .toList());
    }

    private void say(List<LabelLine> lines, Role role, java.util.function.Function<Piece, String> saying) {
        NestParts.perSize(sizes, nest, saying).forEach(said -> lines.add(new LabelLine(role, said)));
    }

    private static void line(List<LabelLine> lines, String text) {
        lines.add(new LabelLine(Role.LABEL, text));
    }

    /** Once for each direction, in the smallest size that has it. */
    private void grain(List<LabelLine> lines) {
        List<Nest.SizedPiece> bySize = new ArrayList<>(sizes);
        bySize.sort(Comparator.comparingDouble(one -> one.piece().area()));
        Map<Grain, List<String>> ways = new LinkedHashMap<>();
        for (Nest.SizedPiece one : bySize) {
            if (one.piece().grain().isEmpty()) {
                continue;
            }
            Grain own = one.piece().grain().get();
            Grain grain = new Grain(own.from().plus(one.shift()), own.to().plus(one.shift()), own.bias());
            Grain known = ways.keySet().stream()
                    .filter(other -> turn(other, grain) < SAME_WAY)
                    .findFirst()
                    .orElse(grain);
            ways.computeIfAbsent(known, g -> new ArrayList<>()).add(mark(one));
        }
        ways.forEach((grain, marks) -> grain(grain, ways.size() == 1 ? "" : String.join(", ", marks), lines));
    }

    private static double turn(Grain a, Grain b) {
        Vector first = a.to().minus(a.from()).unit();
        Vector second = b.to().minus(b.from()).unit();
        return Math.abs(StrictMath.toDegrees(StrictMath.asin(Math.max(-1, Math.min(1, first.cross(second))))));
    }

    private void grain(Grain grain, String marks, List<LabelLine> lines) {
        if (grain.from().distance(grain.to()) <= 1) {
            return;
        }
        GrainArrow arrow = new GrainArrow(grain);
        room.add(arrow.path());
        ink.add(new Ink.Group(ids.of("grain", name), "grain-arrow", "", "", NOWHERE, arrow.ink()));
        String plain = grain.bias() ? words.say("grain-bias", "grain, bias") : words.say("grain", "grain");
        String word = marks.isEmpty() ? plain : plain + " " + marks;
        arrow.word(word, room, options.styles())
                .ifPresentOrElse(
                        placed -> {
                            ink.add(placed.ink());
                            room.add(placed.box());
                        },
                        () -> lines.add(
                                lines.size() - 1,
                                new LabelLine(Role.LABEL, words.say("grain-arrow", "arrow: {word}", "word", word))));
    }

    /** A bracket at each fold, once where the folds of the sizes lie on one line: at that of the smallest. */
    private void foldBrackets() {
        List<Nest.SizedPiece> bySize = new ArrayList<>(sizes);
        bySize.sort(Comparator.comparingDouble(one -> one.piece().area()));
        List<Path> known = new ArrayList<>();
        for (Nest.SizedPiece one : bySize) {
            for (Edge edge : one.piece().edges()) {
                Path fold = moved(edge.path(), one);
                if (!edge.onFold() || known.stream().anyMatch(k -> onOneLine(k, fold))) {
                    continue;
                }
                known.add(fold);
                FoldBracket.Drawn bracket =
                        new FoldBracket(fold, room, options.styles()).draw(words.say("place-on-fold", "place on fold"));
                ink.add(new Ink.Group(
                        ids.of("fold-bracket", name, edge.name()), "bracket", "", "", NOWHERE, bracket.ink()));
                room.add(bracket.box());
                for (Point corner : bracket.box().corners()) {
                    bounds = bounds.with(new Box(corner.x(), corner.y(), corner.x(), corner.y()));
                }
            }
        }
    }

    private static boolean onOneLine(Path a, Path b) {
        Vector way = a.end().minus(a.start()).unit();
        return Math.abs(way.cross(b.start().minus(a.start()))) < SAME_FOLD
                && Math.abs(way.cross(b.end().minus(a.start()))) < SAME_FOLD;
    }

    private void nestPoint() {
        if (sizes.size() > 1) {
            List<Ink> cross = cross(largest.nest());
            ink.add(new Ink.Group(ids.of("nest-point", name), "nest-point", "", "", NOWHERE, cross));
            for (Ink stroke : cross) {
                room.add(((Ink.Stroke) stroke).path());
            }
            Box box = new Box(
                    largest.nest().x(),
                    largest.nest().y(),
                    largest.nest().x(),
                    largest.nest().y());
            bounds = bounds.with(box.grown(CROSS));
        }
    }

    private void sizeNames(List<SizeNames.Anchor> anchors) {
        if (sizes.size() < 2) {
            return;
        }
        Map<Integer, String> marks = new LinkedHashMap<>();
        sizes.forEach(one -> marks.put(one.number(), mark(one)));
        SizeNames names = new SizeNames(room, options.styles());
        names.name(anchors, marks);
        for (Nest.SizedPiece one : sizes) {
            if (!names.named(one.number())) {
                elsewhere(one, names);
            }
        }
        ink.add(new Ink.Group(ids.of("size-names", name), "size-names", "", "", NOWHERE, names.ink()));
        names.bounds().ifPresent(box -> bounds = bounds.with(box));
    }

    /** A size without a corner of its own is named somewhere along its line. */
    private void elsewhere(Nest.SizedPiece one, SizeNames names) {
        Path line = closed(one);
        for (double share : new double[] {0.5, 0.25, 0.75, 0.1, 0.4, 0.6, 0.9}) {
            Point at = line.at(share * line.length());
            boolean own = sizes.stream()
                    .filter(other -> other.number() != one.number())
                    .allMatch(other -> closed(other).nearest(at).distance() > SizeNames.TOGETHER);
            if (own && names.nameAnywhere(one.number(), at, mark(one))) {
                return;
            }
        }
    }
}
