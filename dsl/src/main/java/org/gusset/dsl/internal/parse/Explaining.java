package org.gusset.dsl.internal.parse;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.IntervalSet;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.diagnostic.Suggestions;

/** Says in a drafter's words why a token cannot stand where it does. */
final class Explaining {
    private final Spans spans;
    private final Faults faults;

    Explaining(Spans spans, Faults faults) {
        this.spans = spans;
        this.faults = faults;
    }

    /**
     * Tells of the token at which reading stopped.
     *
     * @param tokens the tokens of the statement or line
     */
    void tell(Strict.Stop stop, List<CommonToken> tokens) {
        Token found = stop.found();
        IntervalSet expected = stop.expected();
        Optional<Token> open = unclosed(tokens);
        if (open.isPresent() && (found.getType() == Token.EOF || open.get().getStartIndex() < found.getStartIndex())) {
            faults.tell(
                    SyntaxCode.UNCLOSED_BRACKET,
                    spans.of(open.get()),
                    Hint.of("bracket.close", "Put a `)` where it ends."));
            return;
        } else if (found.getType() == Token.EOF) {
            broken(tokens, expected);
            return;
        }
        Span span = spans.of(found);
        String text = found.getText();
        int type = found.getType();
        Token before = before(found, tokens);
        boolean name = expected.contains(GussetLexer.NAME);
        boolean value = expected.contains(GussetLexer.NUMBER);
        Optional<String> unit = Words.unit(text);
        if (before != null && before.getType() == GussetLexer.NUMBER && unit.isPresent()) {
            faults.tell(
                    SyntaxCode.UNIT_NAME,
                    span,
                    Hint.of("unit.name", "Write `{unit}`.", "unit", unit.get()).replacing(span, unit.get()),
                    "found",
                    text);
        } else if (name && Words.isReserved(type) && meantAsName(type, value, tokens)) {
            int head = headAt(tokens);
            boolean first = head + 1 < tokens.size() && tokens.get(head + 1) == found;
            Misnomers.tell(found, first ? tokens.get(head).getType() : Token.EOF, spans, faults);
        } else if (expected.contains(GussetLexer.BY) && beginsAmount(type)) {
            faults.tell(
                    SyntaxCode.MISSING_BY,
                    span,
                    Hint.of("by.add", "Write `by` before it, as in `by 3 cm`.").replacing(Spans.before(span), "by "));
        } else {
            faults.tell(
                    SyntaxCode.UNEXPECTED,
                    span,
                    hint(found, expected, tokens),
                    "found",
                    text,
                    "expected",
                    Words.expected(expected));
        }
    }

    /** The last bracket that nothing closes. */
    private static Optional<Token> unclosed(List<CommonToken> tokens) {
        Deque<Token> open = new ArrayDeque<>();
        for (Token token : tokens) {
            if (token.getType() == GussetLexer.LPAREN) {
                open.push(token);
            } else if (token.getType() == GussetLexer.RPAREN) {
                open.poll();
            }
        }
        return Optional.ofNullable(open.peek());
    }

    /** A connecting word where a name is wanted mostly means that the name is missing, but not in a list of new names. */
    private static boolean meantAsName(int type, boolean value, List<CommonToken> tokens) {
        if (Words.isStatement(type) || Words.isUnit(type)) {
            return true;
        }
        return !value
                && switch (tokens.get(0).getType()) {
                    case GussetLexer.RULE, GussetLexer.USE, GussetLexer.SOLVE, GussetLexer.CHOOSE -> true;
                    default -> false;
                };
    }

    private static boolean beginsAmount(int type) {
        return type == GussetLexer.NUMBER || type == GussetLexer.LPAREN || Words.isName(type);
    }

    private void broken(List<CommonToken> tokens, IntervalSet expected) {
        CommonToken last = tokens.get(tokens.size() - 1);
        if (tokens.size() == 1 && last.getType() == GussetLexer.CHANGE) {
            faults.tell(
                    SyntaxCode.BARE_CHANGE,
                    spans.of(last),
                    Hint.of("change.line", "Put `change` and what it changes on one line."));
            return;
        }
        String wanted = Words.expected(expected);
        faults.tell(
                SyntaxCode.ENDS_EARLY,
                spans.of(last),
                form(tokens)
                        .orElseGet(() -> Hint.of(
                                "statement.finish", "Finish the statement with {expected}.", "expected", wanted)),
                "after",
                last.getText(),
                "expected",
                wanted);
    }

    /** Where the word stands that says what these tokens are a statement of. */
    private static int headAt(List<CommonToken> tokens) {
        int at = 0;
        while (at + 1 < tokens.size()
                && (tokens.get(at).getType() == GussetLexer.CHANGE
                        || tokens.get(at).getType() == GussetLexer.RULE)
                && Words.isStatement(tokens.get(at + 1).getType())) {
            at++;
        }
        return at;
    }

    private Optional<Hint> form(List<CommonToken> tokens) {
        return tokens.isEmpty()
                ? Optional.empty()
                : form(tokens.get(headAt(tokens)).getType());
    }

    private static Optional<Hint> form(int head) {
        return Forms.of(head).map(f -> Hint.of("hint.form", "It is written as in {form}.", "form", f));
    }

    private Hint hint(Token found, IntervalSet expected, List<CommonToken> tokens) {
        int type = found.getType();
        Span span = spans.of(found);
        Optional<String> near =
                Words.isName(type) ? Suggestions.nearest(found.getText(), Words.words(expected)) : Optional.empty();
        Optional<String> link =
                beginsAmount(type) || type == GussetLexer.ORIGIN ? Words.link(expected) : Optional.empty();
        int at = tokens.indexOf(found);
        int next = at + 1 < tokens.size() ? tokens.get(at + 1).getType() : Token.EOF;
        Optional<Hint> whole = wholeName(at, tokens);
        if (type == GussetLexer.EQUALS) {
            return Hint.of("hint.equals", "`=` gives a name its value, as in `let x = 3 cm`; to compare, say `is`.");
        } else if (type == GussetLexer.DOT && next == GussetLexer.NUMBER) {
            String digits = tokens.get(at + 1).getText();
            return Hint.of("hint.zero", "Write `0.{digits}`.", "digits", digits).replacing(span, "0.");
        } else if (at > 0 && tokens.get(0).getType() == GussetLexer.CHANGE && at == headAt(tokens)) {
            return form(GussetLexer.CHANGE).orElseThrow();
        } else if (type == GussetLexer.TURNED_UP && tokens.get(0).getType() != GussetLexer.ALLOW) {
            return Hint.of("hint.turned", "`turned up` belongs to `allow`; a turn is `turned 30 deg about P`.");
        } else if (type == GussetLexer.RPAREN && !tokens.isEmpty()) {
            return Hint.of("bracket.drop", "Take it out, or open its bracket before.")
                    .replacing(span, "");
        } else if (whole.isPresent()) {
            return whole.get();
        } else if (near.isPresent()) {
            return Hint.of("statement.meant", "Did you mean `{word}`?", "word", near.get())
                    .replacing(span, near.get());
        } else if (link.isPresent()
                && found.getText().replaceAll("(.)\\1", "$1").equals(link.get())) {
            // "too" for "to": a letter that was struck twice.
            return Hint.of("statement.meant", "Did you mean `{word}`?", "word", link.get())
                    .replacing(span, link.get());
        } else if (link.isPresent()) {
            return Hint.of("link.add", "Write `{word}` before it.", "word", link.get())
                    .replacing(Spans.before(span), link.get() + " ");
        } else if (at > 0
                && tokens.get(at - 1).getType() == GussetLexer.NUMBER
                && type == GussetLexer.NAME
                && expected.contains(GussetLexer.TIMES)) {
            return found.getText().equalsIgnoreCase("x")
                    ? Hint.of("hint.times.sign", "`*` is the sign for times.").replacing(span, "*")
                    : Hint.of(
                                    "hint.times",
                                    "Write `{number} * {name}` if that many times is meant.",
                                    "number",
                                    tokens.get(at - 1).getText(),
                                    "name",
                                    found.getText())
                            .replacing(Spans.before(span), "* ");
        }
        return form(tokens)
                .orElseGet(
                        () -> Hint.of("hint.value", "A value is written as in `chest / 4 + 3 cm` or `length(hem)`."));
    }

    /** For a new name in several words, or with hyphens: the name that it could be. Reading stopped at its second part. */
    private Optional<Hint> wholeName(int at, List<CommonToken> tokens) {
        int first = headAt(tokens) + 1;
        if (at != first + 1 || !Words.isName(tokens.get(first).getType())) {
            return Optional.empty();
        }
        StringBuilder name = new StringBuilder(tokens.get(first).getText());
        int next = at;
        while (next < tokens.size() && goesOnWithName(tokens.get(next).getType())) {
            if (tokens.get(next).getType() != GussetLexer.MINUS) {
                name.append('_').append(tokens.get(next).getText());
            }
            next++;
        }
        Token last = tokens.get(next - 1);
        // The head of a piece is read without its brace.
        boolean goesOn = next == tokens.size()
                ? tokens.get(first - 1).getType() == GussetLexer.PIECE
                : switch (tokens.get(next).getType()) {
                    case GussetLexer.EQUALS,
                            GussetLexer.FROM,
                            GussetLexer.WIDE,
                            GussetLexer.LONG,
                            GussetLexer.TRACED,
                            GussetLexer.TAKEN -> true;
                    default -> false;
                };
        if (next == at || last.getType() == GussetLexer.MINUS || !goesOn) {
            return Optional.empty();
        }
        Span written = spans.of(tokens.get(first), last);
        return Optional.of(Hint.of("name.whole", "A name is one word, as `{name}`.", "name", name.toString())
                .replacing(written, name.toString()));
    }

    private static boolean goesOnWithName(int type) {
        return switch (type) {
            case GussetLexer.WIDE, GussetLexer.LONG, GussetLexer.TRACED, GussetLexer.TAKEN -> false;
            case GussetLexer.MINUS -> true;
            default -> Words.isName(type);
        };
    }

    private static @org.jspecify.annotations.Nullable Token before(Token found, List<CommonToken> tokens) {
        Token before = null;
        for (Token token : tokens) {
            if (token.getStartIndex() >= found.getStartIndex()) {
                return before;
            }
            before = token;
        }
        return before;
    }
}
