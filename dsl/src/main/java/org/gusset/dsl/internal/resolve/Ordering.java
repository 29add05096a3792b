package org.gusset.dsl.internal.resolve;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Puts symbols after what they need: a depth-first search with a stack of its own, since drafts may be long chains. */
final class Ordering {
    private final Messages messages;
    private final List<Symbol> order = new ArrayList<>();
    private final Set<Symbol> done = new HashSet<>();
    private final Set<Symbol> open = new HashSet<>();
    private final Deque<Symbol> path = new ArrayDeque<>();
    private final Deque<Iterator<Symbol>> rest = new ArrayDeque<>();

    Ordering(Messages messages) {
        this.messages = messages;
    }

    /** The symbols and all that they need, in order; a symbol that goes round in a circle is told of and broken. */
    List<Symbol> order(List<Symbol> symbols) {
        for (Symbol symbol : symbols) {
            if (!done.contains(symbol)) {
                walk(symbol);
            }
        }
        return order;
    }

    private void walk(Symbol from) {
        enter(from);
        while (!path.isEmpty()) {
            if (!rest.getLast().hasNext()) {
                Symbol finished = path.removeLast();
                rest.removeLast();
                open.remove(finished);
                done.add(finished);
                order.add(finished);
                continue;
            }
            Symbol next = rest.getLast().next();
            if (open.contains(next)) {
                circle(next);
            } else if (!done.contains(next)) {
                enter(next);
            }
        }
    }

    private void enter(Symbol symbol) {
        open.add(symbol);
        path.addLast(symbol);
        rest.addLast(symbol.uses().iterator());
    }

    private void circle(Symbol closing) {
        List<Symbol> round = new ArrayList<>(path);
        round = round.subList(round.indexOf(closing), round.size());
        String chain = round.stream().map(Symbol::fullName).collect(Collectors.joining(" needs "));
        messages.tell(
                ResolveCode.CIRCLE,
                closing.span(),
                "name",
                closing.name(),
                "chain",
                chain + " needs " + closing.fullName());
        Symbol last = round.get(round.size() - 1);
        last.define(last.type(), new Term.Broken(last.span()));
    }
}
