package org.gusset.core.draft;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.change.Changed;
import org.gusset.core.construct.RowConstruction;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.evaluate.Evaluation;
import org.gusset.core.evaluate.SolveOne;
import org.gusset.core.evaluate.SolveSeveral;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.graph.Handle;
import org.gusset.core.graph.Operation;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.pattern.Dart;
import org.gusset.core.pattern.Fullness;
import org.gusset.core.pattern.Piece;

/** Makes the lesson of a drawing out of its graph and values. */
final class Teaching {
    /** So many names outside steps are their own title. */
    private static final int FEW = 3;

    private final Drawing drawing;
    private final Evaluation evaluation;
    private final LengthStyle style;
    private final WaysTaken ways;
    private final List<Lesson.Stage> stages = new ArrayList<>();

    /** What stands in the picture of the piece that is being drawn, by name. */
    private Map<String, Lesson.Shape> standing = new LinkedHashMap<>();

    Teaching(Drawing drawing, Evaluation evaluation, LengthStyle style) {
        this.drawing = drawing;
        this.evaluation = evaluation;
        this.style = style;
        this.ways = new WaysTaken(evaluation);
    }

    Lesson lesson() {
        Map<String, Map<String, String>> sentences = new HashMap<>();
        for (TraceLine line : drawing.trace(style)) {
            sentences.computeIfAbsent(line.piece(), p -> new LinkedHashMap<>()).put(line.name(), line.sentence());
        }
        measures(sentences.getOrDefault("", Map.of()));
        for (Draft.PieceNodes nodes : drawing.draft().pieces()) {
            Optional<Piece> piece = drawing.pieces().stream()
                    .filter(p -> p.name().equals(nodes.name()))
                    .findFirst();
            piece.ifPresent(p -> piece(nodes, p, sentences.getOrDefault(nodes.name(), Map.of())));
        }
        return new Lesson(
                stages, drawing.refused().stream().map(RefusedPiece::name).toList());
    }

    private void measures(Map<String, String> sentences) {
        if (sentences.isEmpty()) {
            return;
        }
        List<Lesson.Introduced> introduced = new ArrayList<>();
        sentences.forEach((name, sentence) ->
                introduced.add(new Lesson.Introduced(name, sentence, Optional.empty(), List.of(), List.of())));
        stages.add(new Lesson.Stage(
                Lesson.Kind.MEASURES,
                "",
                say("measures", "Measures"),
                List.of(),
                introduced,
                List.of(),
                Optional.empty()));
    }

    private void piece(Draft.PieceNodes nodes, Piece piece, Map<String, String> sentences) {
        standing = new LinkedHashMap<>();
        Map<String, Handle<?>> drawn = new LinkedHashMap<>();
        Map<Integer, String> known = new HashMap<>();
        for (Draft.Named named : nodes.named()) {
            if (sentences.containsKey(named.name())) {
                drawn.put(named.name(), named.drawn());
                known.put(named.drawn().index(), named.name());
            }
        }
        Map<String, Set<String>> needs = new HashMap<>();
        drawn.forEach((name, handle) -> {
            Set<String> found = new LinkedHashSet<>();
            needs(handle, known, new LinkedHashSet<>(), found);
            needs.put(name, found);
        });
        TeachingOrder order = new TeachingOrder(
                List.copyOf(drawn.keySet()),
                nodes.steps().stream().map(Draft.StepNodes::names).toList(),
                needs,
                name -> isDrawn(at(drawn, name)),
                name -> !isPoint(at(drawn, name)),
                number -> !nodes.steps().get(number).words().isEmpty());
        for (TeachingOrder.Group group : order.groups()) {
            group(nodes, group, drawn, needs, sentences);
        }
        stages.add(new Lesson.Stage(
                Lesson.Kind.FINISH,
                nodes.name(),
                say("finish", "Finish the piece"),
                before(),
                List.of(),
                List.of(),
                Optional.of(piece)));
    }

    private static Handle<?> at(Map<String, Handle<?>> drawn, String name) {
        return Objects.requireNonNull(drawn.get(name), name);
    }

    private void group(
            Draft.PieceNodes nodes,
            TeachingOrder.Group group,
            Map<String, Handle<?>> drawn,
            Map<String, Set<String>> needs,
            Map<String, String> sentences) {
        List<Lesson.Standing> before = before();
        List<Lesson.Introduced> introduced = new ArrayList<>();
        for (String name : group.names()) {
            Handle<?> handle = at(drawn, name);
            Optional<Lesson.Shape> shape = shape(handle);
            introduced.add(new Lesson.Introduced(
                    name,
                    sentences.getOrDefault(name, ""),
                    shape,
                    ways.to(handle),
                    List.copyOf(needs.getOrDefault(name, Set.of()))));
            Object value = evaluation.value(handle).orElse(null);
            if (value instanceof Changed changed) {
                move(changed);
            } else {
                shape.ifPresent(s -> standing.put(name, s));
            }
        }
        stages.add(new Lesson.Stage(
                group.step() < 0 ? Lesson.Kind.GATHERED : group.continued() ? Lesson.Kind.CONTINUED : Lesson.Kind.STEP,
                nodes.name(),
                title(nodes, group, drawn),
                before,
                introduced,
                group.step() < 0 || group.continued()
                        ? List.of()
                        : words(nodes.steps().get(group.step()).words()),
                Optional.empty()));
    }

    private String title(Draft.PieceNodes nodes, TeachingOrder.Group group, Map<String, Handle<?>> drawn) {
        if (group.step() >= 0) {
            String title = nodes.steps().get(group.step()).title();
            return group.continued() ? say("continued", "{title}, continued", "title", title) : title;
        }
        if (group.names().size() <= FEW) {
            return String.join(", ", group.names());
        }
        boolean points = false;
        boolean lines = false;
        for (String name : group.names()) {
            if (isDrawn(at(drawn, name))) {
                points |= isPoint(at(drawn, name));
                lines |= !isPoint(at(drawn, name));
            }
        }
        if (points && !lines) {
            return say("points", "Points");
        }
        return lines && !points ? say("lines", "Lines") : say("points-lines", "Points and lines");
    }

    private List<String> words(List<Handle<Phrase>> words) {
        return words.stream()
                .flatMap(w -> evaluation.value(w).stream())
                .map(style.wording()::say)
                .toList();
    }

    private String say(String key, String english, Object... facts) {
        return style.wording().say(Phrase.of("lesson." + key, english, facts));
    }

    private List<Lesson.Standing> before() {
        List<Lesson.Standing> before = new ArrayList<>();
        standing.forEach((name, shape) -> before.add(new Lesson.Standing(name, shape)));
        return before;
    }

    /** The named things of a piece that a node rests on, itself not counted; what is solved is told as if it were given. */
    private void needs(Handle<?> handle, Map<Integer, String> known, Set<Integer> seen, Set<String> found) {
        Operation<?> operation = evaluation.graph().definition(handle).operation();
        if (operation instanceof SolveOne || operation instanceof SolveSeveral.Picked) {
            return;
        }
        for (Handle<?> input : evaluation.graph().definition(handle).inputs()) {
            if (seen.add(input.index())) {
                String name = known.get(input.index());
                if (name != null) {
                    found.add(name);
                } else {
                    needs(input, known, seen, found);
                }
            }
        }
    }

    private boolean isDrawn(Handle<?> handle) {
        Object value = evaluation.value(handle).orElse(null);
        return value instanceof Point
                || value instanceof Path
                || value instanceof RowConstruction.Row
                || value instanceof Dart
                || value instanceof Fullness
                || value instanceof Changed;
    }

    private boolean isPoint(Handle<?> handle) {
        Object value = evaluation.value(handle).orElse(null);
        return value instanceof Point || value instanceof RowConstruction.Row;
    }

    private Optional<Lesson.Shape> shape(Handle<?> handle) {
        Object value = evaluation.value(handle).orElse(null);
        if (value instanceof Point point) {
            return points(List.of(point));
        } else if (value instanceof RowConstruction.Row row) {
            return points(row.points());
        } else if (value instanceof Path path) {
            return Optional.of(new Lesson.Shape(List.of(), List.of(path), path.endless()));
        } else if (value instanceof Dart dart) {
            return dart.isNone() ? Optional.empty() : lines(List.of(dart.legA(), dart.legB()));
        } else if (value instanceof Fullness fullness) {
            Lesson.Shape edge = standing.get(fullness.edge());
            return edge == null || edge.lines().isEmpty()
                    ? Optional.empty()
                    : lines(List.of(edge.lines().get(0).part(fullness.from(), fullness.to())));
        } else if (value instanceof Changed changed) {
            return lines(changed.outline().edges().stream().map(e -> e.path()).toList());
        }
        return Optional.empty();
    }

    private static Optional<Lesson.Shape> points(List<Point> points) {
        return Optional.of(new Lesson.Shape(points, List.of(), false));
    }

    private static Optional<Lesson.Shape> lines(List<Path> lines) {
        return Optional.of(new Lesson.Shape(List.of(), lines, false));
    }

    /** Lays everything that stands where a change has moved it; what the change closes or takes away falls away. */
    private void move(Changed changed) {
        Map<String, Lesson.Shape> moved = new LinkedHashMap<>();
        standing.forEach((name, shape) -> {
            Optional<Path> edge = changed.outline().edges().stream()
                    .filter(e -> e.name().equals(name))
                    .map(e -> e.path())
                    .findFirst();
            Optional<Dart> dart = changed.dart(name);
            if (edge.isPresent()) {
                moved.put(name, new Lesson.Shape(List.of(), List.of(edge.get()), false));
            } else if (dart.isPresent()) {
                shapeOf(dart.get()).ifPresent(s -> moved.put(name, s));
            } else {
                moved.put(
                        name,
                        new Lesson.Shape(
                                shape.points().stream()
                                        .map(changed.motion()::point)
                                        .toList(),
                                shape.lines().stream()
                                        .map(l -> shape.guide()
                                                ? l
                                                : changed.motion().path(l))
                                        .toList(),
                                shape.guide()));
            }
        });
        standing = moved;
    }

    private static Optional<Lesson.Shape> shapeOf(Dart dart) {
        return dart.isNone() ? Optional.empty() : lines(List.of(dart.legA(), dart.legB()));
    }
}
