package org.gusset.dsl.internal.resolve;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.Budget;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Statement;
import org.jspecify.annotations.Nullable;

/** Checks rules and puts their bodies where they are called, each argument named once. */
final class Rules {
    private static final List<String> KINDS =
            List.of("number", "length", "area", "angle", "truth", "text", "point", "path");

    private final Resolver resolver;
    private final Expressions expressions;
    private final Curves curves;
    private final Messages messages;
    private final Deque<Symbol> active = new ArrayDeque<>();
    private final Map<Symbol, Type> gives = new IdentityHashMap<>();
    private final int mostCalls;
    private final int deepest;
    private int calls;

    /** @param budget how many calls a draft may unfold into, and how deep */
    Rules(Resolver resolver, Expressions expressions, Curves curves, Messages messages, Budget budget) {
        this.mostCalls = budget.calls();
        this.deepest = budget.rules();
        this.resolver = resolver;
        this.expressions = expressions;
        this.curves = curves;
        this.messages = messages;
    }

    /** Checks a rule by itself, with arguments of the declared kinds. */
    void check(Symbol symbol) {
        if (!(symbol.statement() instanceof Statement.Rule rule)) {
            return;
        }
        Scope scope = new Scope(symbol.scope(), "");
        for (Statement.Parameter parameter : rule.parameters()) {
            resolver.declarations().checkNewName(parameter.name(), "an argument", scope);
            argument(scope, parameter, kind(parameter), null);
        }
        Term body = body(
                symbol,
                rule,
                new Context(scope, new LinkedHashSet<>(), -1),
                rule.name().span());
        gives.put(symbol, body.type());
    }

    /** What a call of a rule gives; broken if its body is. */
    Type gives(Symbol rule) {
        return gives.getOrDefault(rule, Type.BROKEN);
    }

    /** What a call of a rule gives. */
    Term call(Symbol symbol, Expr.Call call, Context at) {
        Statement.Rule rule = (Statement.Rule) symbol.statement();
        if (rule == null) {
            return new Term.Broken(call.span());
        }
        int wanted = rule.parameters().size();
        if (call.arguments().size() != wanted || call.to().isPresent()) {
            String names = rule.parameters().stream()
                    .map(p -> p.name().text() + " (" + p.kind().text() + ")")
                    .collect(Collectors.joining(", "));
            messages.tell(
                    ResolveCode.ARGUMENTS,
                    call.span(),
                    "function",
                    symbol.name(),
                    "wanted",
                    wanted == 0 ? "nothing" : names,
                    "given",
                    call.arguments().isEmpty()
                            ? "none"
                            : Integer.toString(call.arguments().size()));
            return new Term.Broken(call.span());
        }
        Scope scope = new Scope(symbol.scope(), at.piece());
        boolean broken = false;
        for (int i = 0; i < wanted; i++) {
            Statement.Parameter parameter = rule.parameters().get(i);
            Term term = expressions.wanted(
                    call.arguments().get(i),
                    kind(parameter),
                    at,
                    "`" + parameter.name().text() + "` of `" + symbol.name() + "`");
            broken |= term.broken();
            argument(scope, parameter, term.type(), term);
        }
        calls++;
        if (calls == mostCalls + 1) {
            messages.tell(ResolveCode.TOO_LARGE, call.span(), "most", Fact.number(mostCalls));
        }
        return broken || calls > mostCalls
                ? new Term.Broken(call.span())
                : body(symbol, rule, new Context(scope, at.uses(), -1), call.span());
    }

    private Type kind(Statement.Parameter parameter) {
        Type kind = kindOf(parameter);
        if (kind.broken()) {
            messages.tell(
                    ResolveCode.WRONG_KIND,
                    parameter.kind().span(),
                    "what",
                    "The kind of an argument",
                    "wanted",
                    "one of " + String.join(", ", KINDS),
                    "given",
                    "`" + parameter.kind().text() + "`");
        }
        return kind;
    }

    /** The kind of an argument; broken if the word is none. */
    static Type kindOf(Statement.Parameter parameter) {
        return switch (parameter.kind().text()) {
            case "number" -> Type.NUMBER;
            case "length" -> Type.LENGTH;
            case "area" -> Type.AREA;
            case "angle" -> Type.ANGLE;
            case "truth" -> Type.TRUTH;
            case "text" -> Type.TEXT;
            case "point" -> Type.POINT;
            case "path" -> Type.PATH;
            default -> Type.BROKEN;
        };
    }

    private static void argument(Scope scope, Statement.Parameter parameter, Type type, @Nullable Term term) {
        Symbol argument = new Symbol(
                parameter.name().text(),
                Symbol.Role.ARGUMENT,
                scope,
                parameter.name().span(),
                null,
                -1,
                type);
        argument.define(type, term);
        scope.put(argument);
    }

    private Term body(Symbol symbol, Statement.Rule rule, Context at, Span span) {
        if (active.contains(symbol)) {
            String chain = Stream.concat(active.stream(), Stream.of(symbol))
                    .map(Symbol::name)
                    .collect(Collectors.joining(" needs "));
            messages.tell(ResolveCode.CIRCLE, symbol.span(), "name", symbol.name(), "chain", chain);
            return new Term.Broken(span);
        }
        if (active.size() >= deepest || expressions.deep()) {
            messages.tell(Diagnostic.of(ResolveCode.RULES_TOO_DEEP, span, "most", Fact.number(active.size()))
                    .with(Hint.of("rules.flat", "Work out a part of it above, with `let`.")));
            return new Term.Broken(span);
        }
        active.addLast(symbol);
        Term term;
        if (rule.body() instanceof Statement.ValueBody value) {
            term = expressions.term(value.value(), at);
        } else if (rule.body() instanceof Statement.LineBody line) {
            term = curves.line(line.points(), rule.span(), at);
        } else if (rule.body() instanceof Statement.CurveBody curve) {
            term = curves.curve(curve, rule.span(), at);
        } else {
            term = curves.arc((Statement.ArcBody) rule.body(), rule.span(), at);
        }
        active.removeLast();
        return term;
    }
}
