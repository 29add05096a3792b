package org.gusset.core.build;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which names rest on which. */
final class Reach {
    private final Lowering lowering;
    private final Map<Symbol, Set<Symbol>> needs = new IdentityHashMap<>();

    Reach(Lowering lowering) {
        this.lowering = lowering;
    }

    /** The names between unknowns and their equations: those that change while the unknowns are sought. */
    Set<Symbol> between(Equations equations) {
        Set<Symbol> reached = reached(equations);
        Map<Symbol, List<Symbol>> users = new LinkedHashMap<>();
        for (Symbol symbol : reached) {
            for (Symbol need : needs(symbol)) {
                users.computeIfAbsent(need, k -> new ArrayList<>()).add(symbol);
            }
        }
        Set<Symbol> inner = new LinkedHashSet<>();
        Deque<Symbol> open = new ArrayDeque<>(equations.unknowns());
        while (!open.isEmpty()) {
            for (Symbol user : users.getOrDefault(open.removeFirst(), List.of())) {
                if (!equations.unknowns().contains(user) && inner.add(user)) {
                    open.addLast(user);
                }
            }
        }
        return inner;
    }

    /** All that the equations need, directly or not; not what lies behind their own unknowns. */
    private Set<Symbol> reached(Equations equations) {
        Set<Symbol> seen = new LinkedHashSet<>(symbols(equations.misses()));
        Deque<Symbol> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            Symbol next = open.removeFirst();
            if (equations.unknowns().contains(next)) {
                continue;
            }
            for (Symbol need : needs(next)) {
                if (seen.add(need)) {
                    open.addLast(need);
                }
            }
        }
        return seen;
    }

    private Set<Symbol> needs(Symbol symbol) {
        Set<Symbol> known = needs.get(symbol);
        if (known == null) {
            Term definition = lowering.definition(symbol);
            known = symbols(List.of(definition));
            needs.put(symbol, known);
        }
        return known;
    }

    /** The names in some terms. */
    private Set<Symbol> symbols(Collection<Term> terms) {
        Set<Symbol> symbols = new LinkedHashSet<>();
        Deque<Term> open = new ArrayDeque<>(terms);
        while (!open.isEmpty()) {
            Term term = open.removeFirst();
            if (term instanceof Term.Ref ref) {
                symbols.add(ref.symbol());
            }
            open.addAll(lowering.parts(term));
        }
        return symbols;
    }
}
