package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.geometry.ArcSegment;
import org.gusset.core.geometry.Box;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.geometry.Vector;
import org.gusset.core.grade.CornerRule;
import org.gusset.core.grade.Course;
import org.gusset.core.grade.Grade;
import org.gusset.core.grade.GradeWords;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;

/** One piece over the sizes of a chart, in a frame whose origin is its nesting point. */
final class GradeFigure {
    private static final Vector NOWHERE = new Vector(0, 0);

    /** How long an arrow is, in mm. */
    static final double ARROW = 20;

    private static final double HEAD = 7;
    /** From the corner to where its arrow begins, in mm. */
    private static final double OFF = 2;

    private static final double RING = 2;
    private static final double DOT = 0.8;

    private final Grade grade;
    private final String name;
    private final List<CornerRule> rules;
    private final List<CornerRule> marked;
    private final SheetOptions options;
    private final Words words;
    private final Ids ids;
    private final Piece first;
    private final Piece last;
    private final Path inner;
    private final Path outer;
    private final Room room;
    private final List<Ink> ink = new ArrayList<>();
    private Box bounds;

    /** {@code marked} are the rules of all pieces that stand in the sheet's list. */
    GradeFigure(
            Grade grade, String name, List<CornerRule> rules, List<CornerRule> marked, SheetOptions options, Ids ids) {
        this.grade = grade;
        this.name = name;
        this.rules = rules;
        this.marked = marked;
        this.options = options;
        this.words = new Words(options.wording());
        this.ids = ids;
        this.first = GradeSheet.piece(grade, name, false);
        this.last = GradeSheet.piece(grade, name, true);
        this.inner = nested(first);
        this.outer = nested(last);
        this.room = new Room(inner);
        this.bounds = inner.bounds().with(outer.bounds());
    }

    PieceFigure draw() {
        Box over = bounds;
        ink.add(Ink.Stroke.of(ids.of("grade-last", name), Role.GRADE_LAST, outer));
        ink.add(Ink.Stroke.of(ids.of("grade-first", name), Role.GRADE_FIRST, inner));
        room.add(outer);
        cross();
        List<List<Ink>> corners = new ArrayList<>();
        rules.forEach(rule -> corners.add(corner(rule)));
        CornerWords placer = new CornerWords(room, options.styles());
        for (int i = 0; i < rules.size(); i++) {
            CornerRule rule = rules.get(i);
            List<Ink> items = new ArrayList<>(corners.get(i));
            items.addAll(placer.place(anchor(rule), outward(rule), lines(rule)));
            ink.add(new Ink.Group(
                    ids.of("corner", name, rule.corner()),
                    "corner",
                    words.say(
                            "grade-corner",
                            "{piece}, {corner}: {rule}",
                            "piece",
                            Words.spoken(name),
                            "corner",
                            Words.spoken(rule.corner()),
                            "rule",
                            words.say(GradeWords.rule(rule, grade.rules().sizes()))),
                    "",
                    NOWHERE,
                    items));
        }
        placer.bounds().ifPresent(box -> bounds = bounds.with(box));
        label();
        String description = words.say(
                "grade-piece",
                "{corners} corners over {sizes} sizes",
                "corners",
                rules.size(),
                "sizes",
                grade.sizes().size());
        return new PieceFigure(
                last,
                new Ink.Group(ids.of("piece", name), "piece", Words.spoken(name), description, NOWHERE, ink),
                bounds,
                over);
    }

    private static Path nested(Piece piece) {
        return piece.stitching().transformed(Transform.shift(Point.ORIGIN.minus(piece.nest())));
    }

    private void cross() {
        List<Ink> strokes = NestFigure.cross(Point.ORIGIN);
        ink.add(new Ink.Group(ids.of("nest-point", name), "nest-point", "", "", NOWHERE, strokes));
        strokes.forEach(stroke -> room.add(((Ink.Stroke) stroke).path()));
        bounds = bounds.with(new Box(0, 0, 0, 0).grown(4));
    }

    /** The kind of arrow of a rule; a corner that stays has none. */
    static Role role(CornerRule rule) {
        if (rule.stays()) {
            return Role.GRADE_STAYS;
        }
        return rule.course() == Course.BENDS
                ? Role.GRADE_BENDS
                : rule.course() == Course.WITH_CHART ? Role.GRADE_BREAKS : Role.GRADE_EVEN;
    }

    /** The way of a corner with a dot for each size, and its arrow. */
    private List<Ink> corner(CornerRule rule) {
        List<Point> places = rule.places().stream()
                .flatMap(Optional::stream)
                .map(Point.ORIGIN::plus)
                .toList();
        List<Ink> items = new ArrayList<>();
        Point end = places.get(places.size() - 1);
        if (rule.stays()) {
            items.addAll(ring(end));
            room.add(Path.line(end.plus(Vector.LEFT.times(RING)), end.plus(Vector.RIGHT.times(RING))));
            room.add(Path.line(end.plus(Vector.UP.times(RING)), end.plus(Vector.DOWN.times(RING))));
            return items;
        }
        List<Ink> travel = travel(places);
        items.addAll(travel);
        travel.forEach(mark -> {
            if (mark instanceof Ink.Stroke stroke) {
                room.add(stroke.path());
            }
        });
        Vector way = rule.travel().length() > 1e-9
                ? rule.travel()
                : rule.moves().stream()
                        .filter(m -> m.length() > 1e-9)
                        .findFirst()
                        .orElse(Vector.RIGHT);
        Point from = end.plus(way.unit().times(OFF));
        items.addAll(arrow(role(rule), from, way));
        Path line = Path.line(end, from.plus(way.unit().times(ARROW)));
        room.add(line);
        bounds = bounds.with(line.bounds().grown(1));
        return items;
    }

    /** A thin line with dots. */
    static List<Ink> travel(List<Point> places) {
        List<Ink> items = new ArrayList<>();
        List<Point> way = new ArrayList<>();
        for (Point place : places) {
            if (way.isEmpty() || way.get(way.size() - 1).distance(place) > 1e-6) {
                way.add(place);
            }
            items.add(new Ink.Dot(Role.GRADE_TRAVEL, place, DOT));
        }
        if (way.size() > 1) {
            items.add(Ink.Stroke.of(Role.GRADE_TRAVEL, Path.line(way.toArray(new Point[0]))));
        }
        return items;
    }

    /** An arrow of the usual length from a point. */
    static List<Ink> arrow(Role role, Point from, Vector way) {
        Vector unit = way.unit();
        Point tip = from.plus(unit.times(ARROW));
        return List.of(
                Ink.Stroke.of(role, Path.line(from, tip.plus(unit.times(-HEAD * 0.8)))),
                Arrow.head(role, tip, way, HEAD));
    }

    /** A small ring about a point. */
    static List<Ink> ring(Point at) {
        return List.of(Ink.Stroke.of(
                Role.GRADE_STAYS,
                Path.of(List.of(new ArcSegment(at, RING, 0, 180), new ArcSegment(at, RING, 180, 180)))));
    }

    private Point anchor(CornerRule rule) {
        return Point.ORIGIN.plus(rule.places().stream()
                .flatMap(Optional::stream)
                .reduce((a, b) -> b)
                .orElseThrow());
    }

    /** From the middle of the piece to the corner: words stand outside if there is room. */
    private Vector outward(CornerRule rule) {
        return anchor(rule).minus(room.centroid());
    }

    private List<LabelLine> lines(CornerRule rule) {
        int number = marked.indexOf(rule) + 1;
        List<LabelLine> lines = new ArrayList<>();
        lines.add(
                new LabelLine(Role.CORNER_NAME, Words.spoken(rule.corner()) + (number > 0 ? " (" + number + ")" : "")));
        moves(rule).forEach(move -> lines.add(new LabelLine(Role.CORNER_MOVE, move)));
        if (!rule.breaks().isEmpty()) {
            String at = words.say(GradeWords.breaks(rule, grade.rules().sizes()));
            lines.add(new LabelLine(
                    Role.CORNER_NAME,
                    rule.course() == Course.BENDS
                            ? words.say("corner-bends", "bends at {sizes}", "sizes", at)
                            : words.say("corner-breaks", "breaks at {sizes}", "sizes", at)));
        }
        if (!rule.lacks().isEmpty()) {
            lines.add(new LabelLine(Role.CORNER_NAME, words.say("corner-lacks", "not in every size")));
        }
        return lines;
    }

    private List<String> moves(CornerRule rule) {
        if (rule.moves().isEmpty()) {
            return List.of(words.say("corner-none", "no move is known"));
        }
        if (rule.stays()) {
            return List.of(words.say("corner-stays", "stays"));
        }
        return rule.course() == Course.CONSTANT
                ? List.of(words.say(GradeWords.move(rule.moves().get(0))))
                : GradeWords.ranges(rule.moves()).stream().map(words::say).toList();
    }

    private void label() {
        List<LabelLine> lines = new ArrayList<>();
        lines.add(new LabelLine(Role.PIECE_NAME, Words.spoken(name)));
        List<String> names = grade.rules().sizes();
        lines.add(new LabelLine(
                Role.LABEL,
                names.size() == 1
                        ? words.say("grade-one-size", "size {size}", "size", names.get(0))
                        : words.say(
                                "grade-from-to",
                                "sizes {first} to {last}",
                                "first",
                                names.get(0),
                                "last",
                                names.get(names.size() - 1))));
        LabelPlacer.Placed label = new LabelPlacer(lines, room, options.styles()).place(first, bounds);
        label.outside().ifPresent(box -> bounds = bounds.with(box));
        ink.add(new Ink.Group(ids.of("label", name), "label", "", "", NOWHERE, label.ink()));
    }
}
