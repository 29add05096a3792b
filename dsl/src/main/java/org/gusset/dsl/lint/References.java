package org.gusset.dsl.lint;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;
import org.gusset.dsl.syntax.TreeWalk;

/**
 * Which names a draft defines and which of them rest on which, read off the text. Pieces that are traced or taken from one another
 * count as one, so that nothing is called unused that a copy may use.
 */
final class References {
    /** Stands for all of a piece. */
    private static final String WHOLE = "";

    private final Drafted drafted;
    private final Map<Key, Definition> definitions = new LinkedHashMap<>();
    private final Map<Key, Set<Key>> resting = new LinkedHashMap<>();
    private final Set<Key> used = new LinkedHashSet<>();
    private final Set<String> words = new LinkedHashSet<>();

    /** A name in a family of pieces, or in the file, whose family is empty. */
    private record Key(String family, String name) {}

    /** Where a name is first defined; piece is empty in the file. */
    record Definition(String piece, Name name, Statement statement) {}

    References(Drafted drafted) {
        this.drafted = drafted;
        drafted.file().forEach(s -> define("", "", s));
        for (Drafted.Part part : drafted.parts()) {
            part.body().stream()
                    .filter(s -> !part.changed().contains(s))
                    .forEach(s -> define(drafted.family(part), part.name().text(), s));
        }
        for (Statement statement : drafted.file()) {
            if (statement instanceof Statement.Choose choose) {
                choose.options().forEach(o -> words.add(o.text()));
            }
        }
        drafted.file().stream().filter(s -> !isPiece(s)).forEach(s -> read("", s));
        for (Drafted.Part part : drafted.parts()) {
            String family = drafted.family(part);
            part.body().forEach(s -> read(family, s));
            for (Object head : TreeWalk.parts(part.whole())) {
                if (!(head instanceof Statement)) {
                    use(new Key(family, WHOLE), keys(family, TreeWalk.all(head, Expr.Reference.class), Set.of()));
                }
            }
        }
    }

    private static boolean isPiece(Statement statement) {
        return statement instanceof Statement.Piece || statement instanceof Statement.Strip;
    }

    private void define(String family, String piece, Statement statement) {
        if (!isPiece(statement)) {
            Drafted.defined(statement)
                    .ifPresent(n ->
                            definitions.putIfAbsent(new Key(family, n.text()), new Definition(piece, n, statement)));
        }
    }

    private void read(String family, Statement statement) {
        Set<Key> keys = keysOf(family, statement);
        if (statement instanceof Statement.Solve solve) {
            solve.unknowns().forEach(u -> use(new Key(family, u.text()), keys));
        }
        Optional<Name> defined = Drafted.defined(statement);
        if (defined.isPresent()) {
            Key own = new Key(family, defined.get().text());
            keys.remove(own);
            use(own, keys);
        } else {
            used.addAll(keys);
        }
        if (!family.isEmpty()) {
            use(new Key(family, WHOLE), keys);
        }
    }

    private void use(Key from, Set<Key> keys) {
        used.addAll(keys);
        resting.computeIfAbsent(from, k -> new LinkedHashSet<>()).addAll(keys);
    }

    private Set<Key> keysOf(String family, Statement statement) {
        Set<String> parameters = new LinkedHashSet<>();
        if (statement instanceof Statement.Rule rule) {
            rule.parameters().forEach(p -> parameters.add(p.name().text()));
        }
        List<Expr.Reference> references = TreeWalk.all(statement, Expr.Reference.class);
        for (Expr.Call call : TreeWalk.all(statement, Expr.Call.class)) {
            boolean rule = definition("", call.function())
                    .filter(d -> d.statement() instanceof Statement.Rule)
                    .isPresent();
            if (!rule && call.function().parts().size() == 1) {
                references.removeIf(r -> r.equals(call.function()));
            }
        }
        Set<Key> keys = keys(family, references, parameters);
        if (statement instanceof Statement.Cut cut) {
            cut.cloth().ifPresent(c -> keys.add(new Key("", c.text())));
        } else if (statement instanceof Statement.Seam) {
            keys.addAll(onOwnSides(references));
        }
        return keys;
    }

    private Optional<Definition> definition(String family, Expr.Reference reference) {
        return Optional.ofNullable(
                definitions.get(new Key(family, reference.parts().get(0).text())));
    }

    /** Bare names of a seam belong to the pieces that it sews. */
    private Set<Key> onOwnSides(List<Expr.Reference> references) {
        Set<Key> keys = new LinkedHashSet<>();
        for (Expr.Reference sewn : references) {
            Optional<Drafted.Part> part = drafted.part(sewn.parts().get(0).text());
            if (part.isPresent()) {
                for (Expr.Reference bare : references) {
                    if (bare.parts().size() == 1) {
                        keys.add(new Key(drafted.family(part.get()), bare.text()));
                    }
                }
            }
        }
        keys.retainAll(definitions.keySet());
        return keys;
    }

    private Set<Key> keys(String family, List<Expr.Reference> references, Set<String> parameters) {
        Set<Key> keys = new LinkedHashSet<>();
        for (Expr.Reference reference : references) {
            String first = reference.parts().get(0).text();
            Optional<Drafted.Part> part = drafted.part(first);
            if (parameters.contains(first)) {
                continue;
            } else if (definitions.containsKey(new Key(family, first))) {
                keys.add(new Key(family, first));
            } else if (part.isPresent()) {
                String other = drafted.family(part.get());
                Key key = new Key(
                        other,
                        reference.parts().size() > 1 ? reference.parts().get(1).text() : WHOLE);
                keys.add(definitions.containsKey(key) ? key : new Key(other, WHOLE));
            } else {
                keys.add(new Key("", first));
            }
        }
        return keys;
    }

    /** The definitions that nothing uses, in order. */
    List<Definition> unused() {
        List<Definition> unused = new ArrayList<>();
        definitions.forEach((key, definition) -> {
            if (!used.contains(key)) {
                unused.add(definition);
            }
        });
        return unused;
    }

    /** True if a statement of the file can come out otherwise for another body or another choice, or if that cannot be told. */
    boolean canVary(Statement statement) {
        Set<Key> seen = new LinkedHashSet<>();
        Deque<Key> open = new ArrayDeque<>(keysOf("", statement));
        while (!open.isEmpty()) {
            Key key = open.pop();
            if (seen.add(key)) {
                Definition definition = definitions.get(key);
                boolean word = key.family().isEmpty() && words.contains(key.name());
                if (definition == null && !key.name().equals(WHOLE) && !word) {
                    return true;
                }
                if (definition != null && isGiven(definition.statement())) {
                    return true;
                }
                open.addAll(resting.getOrDefault(key, Set.of()));
            }
        }
        return false;
    }

    private static boolean isGiven(Statement statement) {
        return statement instanceof Statement.Measure
                || statement instanceof Statement.Choose
                || statement instanceof Statement.Fit
                || statement instanceof Statement.Use;
    }
}
