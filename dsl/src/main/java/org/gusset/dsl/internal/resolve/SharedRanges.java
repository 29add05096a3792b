package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.check.InRange;
import org.gusset.core.construct.NumberFunction;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Related;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.Quantity;
import org.gusset.dsl.syntax.Statement;

/** Checks of ranges; a measure that several files declare must lie in the range of each. */
final class SharedRanges {
    private final Expressions expressions;
    private final Messages messages;
    private final Set<Symbol> uses;

    /** A range as a file tells it. */
    record Told(Statement.Range range, Home home, Span span) {}

    /** @param uses gathers the symbols that the checks need */
    SharedRanges(Expressions expressions, Messages messages, Set<Symbol> uses) {
        this.expressions = expressions;
        this.messages = messages;
        this.uses = uses;
    }

    /** The check that a value lies in all ranges; none if there are none or a mistake was told. */
    Optional<Term> check(Symbol symbol, List<Told> told, boolean body, String howTo) {
        Type type = symbol.type();
        if (type.broken() || told.isEmpty()) {
            return Optional.empty();
        }
        List<Term> lows = new ArrayList<>();
        List<Term> highs = new ArrayList<>();
        for (Told one : told) {
            if (unlike(symbol, one)) {
                return Optional.empty();
            }
            Context at = new Context(one.home().scope(), uses, -1);
            Statement.Range range = one.range();
            lows.add(expressions.wanted(range.low(), type, at, "The least of `" + symbol.name() + "`"));
            highs.add(expressions.wanted(range.high(), type, at, "The most of `" + symbol.name() + "`"));
            if (apart(symbol, told, lows, highs)) {
                return Optional.empty();
            }
        }
        Context here = new Context(symbol.scope(), new LinkedHashSet<>(), -1);
        Inputs in = new Inputs(expressions.use(symbol, symbol.span(), here));
        InRange check = new InRange(
                symbol.name(),
                body,
                howTo,
                type.dimension(),
                Optional.of(in.formula(all(NumberFunction.MAX, lows, symbol.span()))),
                Optional.of(in.formula(all(NumberFunction.MIN, highs, symbol.span()))),
                symbol.span());
        Term made = expressions.made(check, in, Type.TRUTH, symbol.span());
        return made.broken() ? Optional.empty() : Optional.of(made);
    }

    private static Term all(NumberFunction which, List<Term> terms, Span span) {
        boolean broken = terms.stream().anyMatch(Term::broken);
        if (terms.size() == 1 || broken) {
            return broken ? new Term.Broken(span) : terms.get(0);
        }
        return new Term.Applied(which, terms, terms.get(0).type(), span);
    }

    /** Tells of a measure that is a length in one file and an angle in another. */
    private boolean unlike(Symbol symbol, Told other) {
        messages.quiet();
        Type type = expressions
                .term(other.range().low(), new Context(other.home().scope(), new LinkedHashSet<>(), -1))
                .type();
        messages.loud();
        boolean unlike = other.home() != symbol.home()
                && type.amount()
                && !type.equals(symbol.type())
                && !type.equals(Type.NUMBER);
        if (unlike) {
            messages.tell(Diagnostic.of(
                            ResolveCode.MEASURE_UNLIKE,
                            other.span(),
                            "name",
                            symbol.name(),
                            "kind",
                            type.words(),
                            "otherKind",
                            symbol.type().words(),
                            "file",
                            symbol.home().tree().source())
                    .with(elsewhere(symbol)));
        }
        return unlike;
    }

    private static Related elsewhere(Symbol symbol) {
        return new Related(Phrase.of("measure.elsewhere", "It is declared here too."), symbol.span());
    }

    /** Tells of a range that shares nothing with one before it, where both are plain amounts. */
    private boolean apart(Symbol symbol, List<Told> told, List<Term> lows, List<Term> highs) {
        int last = lows.size() - 1;
        for (int i = 0; i < last; i++) {
            if (amount(lows, last) > amount(highs, i) || amount(lows, i) > amount(highs, last)) {
                messages.tell(Diagnostic.of(
                                ResolveCode.MEASURES_APART,
                                told.get(last).span(),
                                "name",
                                symbol.name(),
                                "low",
                                fact(symbol, amount(lows, last)),
                                "high",
                                fact(symbol, amount(highs, last)),
                                "file",
                                told.get(i).home().tree().source(),
                                "otherLow",
                                fact(symbol, amount(lows, i)),
                                "otherHigh",
                                fact(symbol, amount(highs, i)))
                        .with(elsewhere(symbol)));
                return true;
            }
        }
        return false;
    }

    private static double amount(List<Term> terms, int index) {
        return terms.get(index) instanceof Term.Constant constant
                ? constant.quantity().value()
                : Double.NaN;
    }

    private static Fact fact(Symbol symbol, double value) {
        Quantity quantity = new Quantity(value, symbol.type().dimension());
        return quantity.dimension().equals(Dimension.ANGLE) ? Fact.angle(value) : Fact.length(value);
    }
}
