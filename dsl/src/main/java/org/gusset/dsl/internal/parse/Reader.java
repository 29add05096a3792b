package org.gusset.dsl.internal.parse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.Budget;
import org.gusset.dsl.Source;
import org.gusset.dsl.syntax.DraftTree;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;

/**
 * Reads a file statement by statement. A statement ends where a brace stands, or a statement word stands first on its line; so a
 * fault in one never hurts the next. Blocks are kept here, not by the grammar.
 */
final class Reader {
    private final Source source;
    private final Nesting nesting;
    private final NameLengths names;
    private final Faults faults;
    private final Spans spans;
    private final Explaining explaining;
    private final ExprBuilder exprs;
    private final StatementBuilder builder;
    private final Rules rules = new Rules();
    private final Rules holeRules = new Rules();
    private final List<CommonToken> tokens;
    private final Misnomers misnomers;
    private final Lost lost;
    private final Blocks blocks;
    private final List<Name> broken = new ArrayList<>();
    private int at;

    Reader(Source source, Budget budget, Faults faults) {
        this.source = source;
        this.faults = faults;
        this.spans = new Spans(source.name(), source.text());
        this.blocks = new Blocks(spans, faults);
        this.explaining = new Explaining(spans, faults);
        Texts texts = new Texts(spans, faults, budget.words(), this::hole);
        ExprBuilder exprs = new ExprBuilder(spans, faults, budget, texts);
        this.exprs = exprs;
        this.builder = new StatementBuilder(spans, faults, exprs, texts);
        this.nesting = new Nesting(budget.nesting(), spans, faults);
        this.names = new NameLengths(budget.name(), spans, faults);
        this.tokens = names.bounded(nesting.bounded(new Tokens(spans, faults, source.text(), 0).read()));
        this.lost = new Lost(spans);
        this.misnomers = new Misnomers(tokens, spans, faults);
    }

    DraftTree read() {
        Optional<Integer> version = version();
        while (at < tokens.size()) {
            next();
        }
        if (!tokens.isEmpty()) {
            blocks.closeAll(spans.end());
        }
        return new DraftTree(source.name(), version, blocks.file(), broken);
    }

    private Optional<Integer> version() {
        if (tokens.size() < 2
                || tokens.get(0).getType() != GussetLexer.GUSSET
                || tokens.get(1).getType() != GussetLexer.NUMBER) {
            return Optional.empty();
        }
        at = 2;
        String number = tokens.get(1).getText();
        if (!number.equals("1")) {
            faults.tell(
                    SyntaxCode.VERSION,
                    spans.of(tokens.get(1)),
                    Hint.of("version.newer", "Read it with a library that knows version {version}.", "version", number),
                    "version",
                    number);
            return Optional.empty();
        }
        return Optional.of(1);
    }

    private void next() {
        CommonToken token = tokens.get(at);
        int type = token.getType();
        if (type == GussetLexer.RBRACE) {
            at++;
            if (!blocks.atFile()) {
                blocks.close(spans.of(token));
            } else if (!faults.before(spans.of(token))) {
                Span span = spans.of(token);
                faults.tell(
                        SyntaxCode.STRAY_CLOSE,
                        span,
                        Hint.of("brace.drop", "Take it out.").replacing(span, ""));
            }
        } else if (type == GussetLexer.LBRACE) {
            at++;
            blocks.openLoose(token);
        } else if (Words.isStatement(type)) {
            statements(token);
        } else {
            noStatement(token);
        }
    }

    /** Tells that a line begins with no statement word, and goes on with the word that was meant, or with the next statement. */
    private void noStatement(CommonToken token) {
        Span span = spans.of(token);
        boolean alone = at == 0
                || tokens.get(at - 1).getLine() < token.getLine()
                || tokens.get(at - 1).getType() == GussetLexer.LBRACE
                || tokens.get(at - 1).getType() == GussetLexer.RBRACE;
        OptionalInt meant = alone ? Words.meantStatement(tokens, at) : OptionalInt.empty();
        if (meant.isPresent()) {
            String word = Words.statement(meant.getAsInt());
            faults.tell(
                    SyntaxCode.NO_STATEMENT,
                    span,
                    Hint.of("statement.meant", "Did you mean `{word}`?", "word", word)
                            .replacing(span, word),
                    "found",
                    token.getText());
            CommonToken mended = new CommonToken(token);
            mended.setText(token.getText());
            mended.setType(meant.getAsInt());
            tokens.set(at, mended);
            return;
        }
        List<CommonToken> chunk = chunk(at);
        int brace = at + chunk.size();
        if (blocks.atFile() && brace < tokens.size() && tokens.get(brace).getType() == GussetLexer.LBRACE) {
            pieceWithoutWord(List.copyOf(chunk));
            return;
        }
        faults.tell(
                SyntaxCode.NO_STATEMENT,
                span,
                Hint.of(
                        "statement.word",
                        alone
                                ? "A statement begins with its word: `point`, `line`, `let`, `measure`, ..."
                                : "Begin the next statement on a line of its own, with its word: `point`, `line`, `let`."),
                "found",
                token.getText());
        int line = misspelt(chunk);
        List<CommonToken> own = chunk.subList(0, line > 0 ? line : chunk.size());
        broken.addAll(lost.names(own));
        lost.word(own).ifPresent(w -> blocks.add(new Statement.Broken(w, span), false));
        at += own.size();
    }

    /** Takes what stands before a brace at file level for the head of a piece. */
    private void pieceWithoutWord(List<CommonToken> head) {
        CommonToken first = head.get(0);
        faults.tell(
                SyntaxCode.NO_STATEMENT,
                spans.of(first),
                Hint.of("head.piece", "A block begins with its word: `piece Name {`."),
                "found",
                first.getText());
        List<Statement> body = new ArrayList<>();
        BrokenHeads heads = new BrokenHeads(spans);
        at += head.size() + 1;
        blocks.open(
                Blocks.Kind.PIECE,
                body,
                first,
                whole -> Optional.of(heads.piece(head, body, whole)),
                spans.of(first, head.get(head.size() - 1)),
                startsFromAnother(head),
                true);
    }

    /** Where, behind its first token, a line of a chunk begins like a statement whose word is misspelt or missing; 0 if none does. */
    private static int misspelt(List<CommonToken> chunk) {
        int head = chunk.get(0).getType();
        boolean lists = head == GussetLexer.SOLVE || head == GussetLexer.USE;
        for (int i = 1; i < chunk.size(); i++) {
            boolean first = chunk.get(i).getLine() > chunk.get(i - 1).getLine();
            boolean named = !lists
                    && Words.isName(chunk.get(i).getType())
                    && i + 1 < chunk.size()
                    && chunk.get(i + 1).getType() == GussetLexer.EQUALS;
            if (first && (named || Words.meantStatement(chunk, i).isPresent())) {
                return i;
            }
        }
        return 0;
    }

    /** The tokens from one to where the next statement or brace stands. */
    private List<CommonToken> chunk(int from) {
        int to = from + 1;
        while (to < tokens.size()) {
            CommonToken token = tokens.get(to);
            int type = token.getType();
            boolean first = token.getLine() > tokens.get(to - 1).getLine();
            if (type == GussetLexer.LBRACE || type == GussetLexer.RBRACE || (first && Words.isStatement(type))) {
                break;
            }
            to++;
        }
        return tokens.subList(from, to);
    }

    private void statements(CommonToken token) {
        int type = token.getType();
        boolean steps = type == GussetLexer.STEP;
        if (Words.isFileOnly(type)) {
            blocks.closeAll(spans.of(token));
        } else if (steps && blocks.innermost() == Blocks.Kind.STEP) {
            blocks.missingClose(spans.of(token));
            blocks.close(Spans.before(spans.of(token)));
        }
        List<CommonToken> chunk = chunk(at);
        if (type == GussetLexer.PIECE || type == GussetLexer.STRIP || steps) {
            head(token, chunk);
            return;
        }
        at += readStatements(chunk);
    }

    /** Reads the statements of a chunk and gives how many tokens that were. */
    private int readStatements(List<CommonToken> chunk) {
        int from = 0;
        while (from < chunk.size()) {
            List<CommonToken> rest = chunk.subList(from, chunk.size());
            try {
                GussetParser.StatementContext context = rules.over(rest).statement();
                int read = rules.read();
                boolean onLine = read < rest.size()
                        && rest.get(read).getLine() == rest.get(read - 1).getLine();
                if (onLine && !Words.isStatement(rest.get(read).getType())) {
                    rules.nothingMore(rest, Token.EOF);
                }
                place(builder.statement(context, blocks.copied()), rest.get(0));
                from += read;
                if (!onLine) {
                    return from;
                }
            } catch (Strict.Stop stop) {
                if (!misnomers.rename(stop, rest)) {
                    int line = misspelt(rest);
                    if (line == 0) {
                        broken(stop, rest);
                        return chunk.size();
                    }
                    return from + readStatements(rest.subList(0, line));
                }
            }
        }
        return chunk.size();
    }

    /** Tells why a statement cannot be read, and keeps its word and its name. */
    private void broken(Strict.Stop stop, List<CommonToken> tokens) {
        explaining.tell(stop, tokens);
        broken.addAll(lost.names(tokens));
        boolean changed = tokens.get(0).getType() == GussetLexer.CHANGE && tokens.size() > 1;
        CommonToken word = tokens.get(changed ? 1 : 0);
        blocks.add(new Statement.Broken(word.getText(), spans.of(tokens.get(0))), false);
    }

    /** Puts a statement where it stands, or tells that it stands wrong. */
    private void place(Statement statement, CommonToken word) {
        if (blocks.atFile() && Words.isPieceOnly(word.getType())) {
            boolean first = !faults.before(statement.span());
            OptionalInt closed = blocks.assumePiece(word);
            if (first) {
                Hint hint = Hint.of("level.piece", "Put it between the braces of a `piece Name { ... }`.");
                Hint brace = Hint.of(
                        "level.brace",
                        "Put it before the `}` in line {line}, which closes the piece.",
                        "line",
                        closed.orElse(0));
                faults.tell(
                        SyntaxCode.WRONG_LEVEL,
                        statement.span(),
                        closed.isPresent() ? brace : hint,
                        "word",
                        word.getText());
            }
        }
        blocks.add(statement, Words.isShared(word.getType()));
    }

    private void head(CommonToken word, List<CommonToken> chunk) {
        Blocks.Kind kind = word.getType() == GussetLexer.PIECE
                ? Blocks.Kind.PIECE
                : word.getType() == GussetLexer.STRIP ? Blocks.Kind.STRIP : Blocks.Kind.STEP;
        List<Statement> body = new ArrayList<>();
        int read = chunk.size();
        Function<Span, Optional<Statement>> finish = s -> Optional.empty();
        boolean sound = true;
        try {
            finish = heading(kind, body, rules.over(chunk));
            if (rules.read() < chunk.size()
                    && Words.isStatement(chunk.get(rules.read()).getType())) {
                // The body begins on the same line; only its brace is missing.
                read = rules.read();
            } else {
                rules.nothingMore(chunk, GussetLexer.LBRACE);
            }
        } catch (Strict.Stop stop) {
            sound = false;
            explaining.tell(stop, chunk);
            lost.nameOfHead(chunk).ifPresent(broken::add);
            finish = brokenHead(kind, List.copyOf(chunk), body);
        }
        Span head = spans.of(chunk.get(0), chunk.get(read - 1));
        if (kind == Blocks.Kind.STEP && blocks.atFile()) {
            if (sound) {
                faults.tell(
                        SyntaxCode.STEP_OUTSIDE,
                        head,
                        Hint.of("step.piece", "Put it between the braces of a `piece Name { ... }`."));
            }
            blocks.assumePiece(word);
        }
        at += read;
        boolean braced = at < tokens.size() && tokens.get(at).getType() == GussetLexer.LBRACE;
        if (braced) {
            at++;
        } else if (sound) {
            faults.tell(
                    SyntaxCode.MISSING_OPEN,
                    head,
                    Hint.of("brace.open", "Write `{` at the end of this line.").replacing(Spans.behind(head), " {"));
        }
        blocks.open(kind, body, word, finish, head, startsFromAnother(chunk), braced);
    }

    private static boolean startsFromAnother(List<CommonToken> head) {
        return head.stream().anyMatch(t -> t.getType() == GussetLexer.TRACED || t.getType() == GussetLexer.TAKEN);
    }

    private Function<Span, Optional<Statement>> brokenHead(
            Blocks.Kind kind, List<CommonToken> head, List<Statement> body) {
        BrokenHeads heads = new BrokenHeads(spans);
        if (kind == Blocks.Kind.PIECE) {
            return whole -> Optional.of(heads.piece(head, body, whole));
        }
        return kind == Blocks.Kind.STRIP
                ? whole -> Optional.of(heads.strip(head, body, whole))
                : whole -> Optional.empty();
    }

    private Function<Span, Optional<Statement>> heading(Blocks.Kind kind, List<Statement> body, GussetParser parser) {
        if (kind == Blocks.Kind.PIECE) {
            GussetParser.PieceHeadContext head = parser.pieceHead();
            return whole -> Optional.of(builder.piece(head, body, whole));
        } else if (kind == Blocks.Kind.STRIP) {
            GussetParser.StripHeadContext head = parser.stripHead();
            return whole -> Optional.of(builder.strip(head, body, whole));
        }
        GussetParser.StepHeadContext head = parser.stepHead();
        return whole -> Optional.of(builder.step(head, body, whole));
    }

    /** The expression of a hole in a text. */
    private Expr hole(String text, int base) {
        List<CommonToken> inside = names.bounded(nesting.bounded(new Tokens(spans, faults, text, base).read()));
        Span span = spans.of(base, base + text.codePointCount(0, text.length()));
        if (inside.isEmpty()) {
            return new Expr.Broken(span);
        }
        while (true) {
            try {
                return exprs.expr(holeRules.over(inside).hole().expr());
            } catch (Strict.Stop stop) {
                if (!misnomers.rename(stop, inside)) {
                    explaining.tell(stop, inside);
                    return new Expr.Broken(span);
                }
            }
        }
    }
}
