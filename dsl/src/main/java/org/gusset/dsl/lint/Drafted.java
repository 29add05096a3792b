package org.gusset.dsl.lint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.dsl.syntax.DraftTree;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;
import org.gusset.dsl.syntax.TreeWalk;

/** A draft as its pieces with their statements, those in steps among them, and what they are traced or taken from. */
final class Drafted {
    private final DraftTree tree;
    private final Map<String, Part> parts = new LinkedHashMap<>();

    /**
     * A piece or a strip.
     *
     * @param whole the piece or strip
     * @param from the name of the piece that it is traced or taken from
     * @param body its statements in order; steps are opened, changed statements stand without their {@code change}
     * @param changed those of the body that {@code change} stands before
     */
    record Part(Statement whole, Name name, Optional<String> from, List<Statement> body, Set<Statement> changed) {
        boolean traced() {
            return whole instanceof Statement.Piece piece && piece.origin().orElse(null) instanceof Statement.Traced;
        }

        <T extends Statement> List<T> all(Class<T> kind) {
            return body.stream().filter(kind::isInstance).map(kind::cast).toList();
        }
    }

    Drafted(DraftTree tree) {
        this.tree = tree;
        for (Statement statement : tree.statements()) {
            if (statement instanceof Statement.Piece piece) {
                put(piece, piece.name(), from(piece), piece.body());
            } else if (statement instanceof Statement.Strip strip) {
                put(strip, strip.name(), Optional.empty(), strip.body());
            }
        }
    }

    private void put(Statement whole, Name name, Optional<String> from, List<Statement> body) {
        List<Statement> flat = new ArrayList<>();
        Set<Statement> changed = new LinkedHashSet<>();
        flatten(body, flat, changed);
        parts.put(name.text(), new Part(whole, name, from, flat, changed));
    }

    private static void flatten(List<Statement> body, List<Statement> flat, Set<Statement> changed) {
        for (Statement statement : body) {
            if (statement instanceof Statement.Step step) {
                flat.add(new Statement.Say(step.title(), step.head()));
                flatten(step.body(), flat, changed);
            } else if (statement instanceof Statement.Change change) {
                flat.add(change.statement());
                changed.add(change.statement());
            } else {
                flat.add(statement);
            }
        }
    }

    private static Optional<String> from(Statement.Piece piece) {
        Statement.Origin origin = piece.origin().orElse(null);
        if (origin instanceof Statement.Traced traced) {
            return Optional.of(traced.other().text());
        } else if (origin instanceof Statement.TakenBeside taken) {
            return Optional.of(taken.other().text());
        }
        return origin instanceof Statement.TakenWithin taken
                ? Optional.of(taken.other().text())
                : Optional.empty();
    }

    /** The notches that a traced piece starts with, those left out that it changes or drops. */
    List<Statement.Notch> inheritedNotches(Part part) {
        List<Statement.Notch> notches = new ArrayList<>();
        Set<String> gone = new LinkedHashSet<>();
        boolean traced = false;
        for (Part elder : line(part)) {
            if (traced) {
                elder.all(Statement.Notch.class).stream()
                        .filter(n -> !gone.contains(n.edge().text()))
                        .forEach(notches::add);
            }
            traced = elder.traced();
            for (Statement.Drop drop : elder.all(Statement.Drop.class)) {
                gone.add(drop.name().text());
            }
            for (Statement.Notch notch : elder.all(Statement.Notch.class)) {
                if (elder.changed().contains(notch)) {
                    gone.add(notch.edge().text());
                }
            }
            if (!traced) {
                break;
            }
        }
        return notches;
    }

    List<Statement> file() {
        return tree.statements();
    }

    List<Part> parts() {
        return List.copyOf(parts.values());
    }

    Optional<Part> part(String name) {
        return Optional.ofNullable(parts.get(name));
    }

    /** A piece, the one that it is traced or taken from, that one's, and so on. */
    List<Part> line(Part part) {
        Map<String, Part> line = new LinkedHashMap<>();
        Optional<Part> next = Optional.of(part);
        while (next.isPresent() && line.putIfAbsent(next.get().name().text(), next.get()) == null) {
            next = next.get().from().flatMap(this::part);
        }
        return List.copyOf(line.values());
    }

    /** The name that stands for all pieces that are traced or taken from one another. */
    String family(Part part) {
        List<Part> line = line(part);
        return line.get(line.size() - 1).name().text();
    }

    /** The name that a statement defines. */
    static Optional<Name> defined(Statement statement) {
        if (statement instanceof Statement.Solve) {
            return Optional.empty();
        } else if (statement instanceof Statement.Use use) {
            return Optional.of(use.alias());
        }
        return TreeWalk.parts(statement).stream()
                .findFirst()
                .filter(Name.class::isInstance)
                .map(Name.class::cast);
    }

    /** What a statement defines, in a word or two. */
    static String kind(Statement statement) {
        if (statement instanceof Statement.Choose) {
            return "choice";
        } else if (statement instanceof Statement.Fit) {
            return "fitting correction";
        } else if (statement instanceof Statement.Let) {
            return "value";
        } else if (statement instanceof Statement.Points) {
            return "row of points";
        } else if (statement instanceof Statement.EdgeDart || statement instanceof Statement.InnerDart) {
            return "dart";
        } else if (statement instanceof Statement.Finished) {
            return "finished measure";
        } else if (statement instanceof Statement.Use) {
            return "draft";
        }
        return statement.getClass().getSimpleName().toLowerCase(Locale.ROOT);
    }
}
