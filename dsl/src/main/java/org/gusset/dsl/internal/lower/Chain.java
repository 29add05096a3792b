package org.gusset.dsl.internal.lower;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.gusset.dsl.internal.resolve.Symbol;

/** Symbols after those that their definitions name, found with a stack of its own. */
final class Chain {
    private final Predicate<Symbol> wanted;
    private final List<Symbol> order = new ArrayList<>();
    private final Set<Symbol> entered = new HashSet<>();
    private final Deque<Symbol> path = new ArrayDeque<>();
    private final Deque<Iterator<Symbol>> rest = new ArrayDeque<>();

    /** @param wanted which symbols count */
    Chain(Predicate<Symbol> wanted) {
        this.wanted = wanted;
    }

    List<Symbol> order(Collection<Symbol> symbols) {
        for (Symbol symbol : symbols) {
            enter(symbol);
            while (!path.isEmpty()) {
                if (rest.getLast().hasNext()) {
                    enter(rest.getLast().next());
                } else {
                    rest.removeLast();
                    order.add(path.removeLast());
                }
            }
        }
        return order;
    }

    private void enter(Symbol symbol) {
        if (wanted.test(symbol) && entered.add(symbol)) {
            path.addLast(symbol);
            rest.addLast(List.copyOf(symbol.uses()).iterator());
        }
    }
}
