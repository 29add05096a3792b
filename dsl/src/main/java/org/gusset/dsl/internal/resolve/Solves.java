package org.gusset.dsl.internal.resolve;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.gusset.core.construct.Formula;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;

/** Checks unknowns and the lines that solve them, and finds what must be evaluated while they are sought. */
final class Solves {
    private final Expressions expressions;
    private final Messages messages;
    private final List<Equations> all = new ArrayList<>();
    private final Map<Symbol, Equations> solved = new LinkedHashMap<>();

    Solves(Expressions expressions, Messages messages) {
        this.expressions = expressions;
        this.messages = messages;
    }

    void read(Statement.Solve solve, Context at) {
        List<Symbol> unknowns = new ArrayList<>();
        for (Name name : solve.unknowns()) {
            Symbol symbol = at.scope().own(name.text());
            if (symbol == null || symbol.role() != Symbol.Role.UNKNOWN) {
                List<String> known = at.scope().symbols().stream()
                        .filter(s -> s.role() == Symbol.Role.UNKNOWN)
                        .map(Symbol::name)
                        .toList();
                Diagnostic diagnostic = Diagnostic.of(ResolveCode.NOT_UNKNOWN, name.span(), "name", name.text());
                messages.tell(Names.suggesting(diagnostic, name.text(), known, name.span()));
                return;
            }
            if (solved.containsKey(symbol) || unknowns.contains(symbol)) {
                messages.tell(
                        ResolveCode.SAID_TWICE,
                        name.span(),
                        "piece",
                        "The draft",
                        "what",
                        "how to solve `" + name.text() + "`");
                return;
            }
            unknowns.add(symbol);
        }
        if (unknowns.size() != solve.equations().size()) {
            messages.tell(
                    ResolveCode.EQUATIONS,
                    solve.span(),
                    "unknowns",
                    counted(unknowns.size(), "unknown"),
                    "equations",
                    counted(solve.equations().size(), "equation"));
            return;
        }
        List<Term> misses = new ArrayList<>();
        for (Statement.Equation equation : solve.equations()) {
            Term left = expressions.amount(equation.left(), at, "What stands before `=`");
            Term right = expressions.amount(equation.right(), at, "What stands after `=`");
            if (left.broken()
                    || right.broken()
                    || !expressions.alike(left, right, "=", left.span().to(right.span()))) {
                return;
            }
            misses.add(new Term.Arithmetic(
                    Formula.Sign.MINUS, left, right, left.type(), left.span().to(right.span())));
        }
        List<Term> lows = new ArrayList<>();
        List<Term> highs = new ArrayList<>();
        for (Symbol unknown : unknowns) {
            Statement.Unknown statement = (Statement.Unknown) unknown.statement();
            if (statement == null || unknown.type().broken()) {
                return;
            }
            Context range = new Context(unknown.scope(), unknown.uses(), -1);
            lows.add(expressions.wanted(statement.range().low(), unknown.type(), range, "The least of an unknown"));
            highs.add(expressions.wanted(statement.range().high(), unknown.type(), range, "The most of an unknown"));
        }
        Optional<Term> nearest = solve.nearest()
                .map(n -> expressions.wanted(n, unknowns.get(0).type(), at, "What stands after `nearest`"));
        if (nearest.isPresent() && unknowns.size() > 1) {
            messages.tell(ResolveCode.NEAREST_OF_SEVERAL, nearest.get().span());
            return;
        }
        Equations equations = new Equations(
                unknowns,
                lows,
                highs,
                misses,
                nearest,
                messages.text(solve.equations().get(0).left().span()),
                solve.span(),
                at.uses());
        all.add(equations);
        boolean broken = lows.stream().anyMatch(Term::broken)
                || highs.stream().anyMatch(Term::broken)
                || nearest.filter(Term::broken).isPresent();
        for (int i = 0; i < unknowns.size(); i++) {
            Symbol unknown = unknowns.get(i);
            solved.put(unknown, equations);
            unknown.define(
                    unknown.type(),
                    broken
                            ? new Term.Broken(solve.span())
                            : new Term.Solved(equations, i, unknown.type(), unknown.span()));
        }
    }

    private static String counted(int count, String what) {
        return count == 1 ? "one " + what : count + " " + what + "s";
    }

    /** Tells of unknowns that nothing solves, and orders what the equations need. */
    void finish(Collection<Symbol> symbols) {
        for (Symbol symbol : symbols) {
            if (symbol.role() == Symbol.Role.UNKNOWN && !solved.containsKey(symbol)) {
                messages.tell(
                        ResolveCode.NEVER_SOLVED,
                        symbol.span(),
                        Hint.of("solve.add", "Say `solve {name} so that ... = ...`.", "name", symbol.name()),
                        "name",
                        symbol.name());
            }
        }
        Map<Equations, Set<Symbol>> reached = new LinkedHashMap<>();
        for (Equations equations : all) {
            reached.put(equations, reachable(equations));
        }
        for (Equations equations : all) {
            equations.inner().addAll(between(equations, reached.getOrDefault(equations, Set.of())));
        }
        for (Equations equations : all) {
            refuseRounds(equations);
        }
        for (Equations equations : all) {
            Set<Symbol> outer = new LinkedHashSet<>(reached.getOrDefault(equations, Set.of()));
            outer.removeAll(equations.inner());
            equations.unknowns().forEach(outer::remove);
            boolean useless =
                    equations.inner().isEmpty() && equations.uses().stream().noneMatch(equations.unknowns()::contains);
            for (Symbol unknown : equations.unknowns()) {
                unknown.uses().addAll(outer);
                if (useless) {
                    messages.tell(
                            ResolveCode.UNTOUCHED_BY,
                            equations.span(),
                            "names",
                            equations.unknowns().stream().map(Symbol::name).collect(Collectors.joining(", ")));
                    unknown.define(unknown.type(), new Term.Broken(unknown.span()));
                }
            }
        }
    }

    /** Tells of unknowns of different solves that rest on one another: neither could be sought with the other at rest. */
    private void refuseRounds(Equations equations) {
        for (Equations other : all.subList(all.indexOf(equations) + 1, all.size())) {
            Symbol one = equations.unknowns().get(0);
            Symbol two = other.unknowns().get(0);
            if (equations.inner().contains(two) && other.inner().contains(one)) {
                messages.tell(
                        ResolveCode.CIRCLE,
                        two.span(),
                        Hint.of(
                                "solve.together",
                                "Solve them together: `solve {one}, {two} so that ..., ...`.",
                                "one",
                                one.name(),
                                "two",
                                two.name()),
                        "name",
                        two.name(),
                        "chain",
                        two.fullName() + " needs " + one.fullName() + " needs " + two.fullName());
                other.unknowns().forEach(u -> u.define(u.type(), new Term.Broken(u.span())));
            }
        }
    }

    private Collection<Symbol> needs(Symbol symbol) {
        Equations own = solved.get(symbol);
        if (own == null) {
            return symbol.uses();
        }
        Set<Symbol> needs = new LinkedHashSet<>(symbol.uses());
        needs.addAll(own.uses());
        return needs;
    }

    /** Everything that the equations need, directly or not; not what lies behind their own unknowns. */
    private Set<Symbol> reachable(Equations equations) {
        Set<Symbol> seen = new LinkedHashSet<>(equations.uses());
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

    /** Those of the symbols that need an unknown, directly or not. */
    private Set<Symbol> between(Equations equations, Set<Symbol> symbols) {
        Map<Symbol, List<Symbol>> users = new LinkedHashMap<>();
        for (Symbol symbol : symbols) {
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
}
