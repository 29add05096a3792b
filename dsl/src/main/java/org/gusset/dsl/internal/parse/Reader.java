package org.gusset.dsl.internal.parse;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Related;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.Source;
import org.gusset.dsl.syntax.DraftTree;
import org.gusset.dsl.syntax.Expr;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;
import org.jspecify.annotations.Nullable;

/**
 * Reads a file statement by statement. A statement ends where a brace stands, or a statement word stands first on its line; so a
 * fault in one never hurts the next. Blocks are kept here, not by the grammar.
 */
final class Reader {
    private final Source source;
    private final Nesting nesting;
    private final Faults faults;
    private final Spans spans;
    private final Explaining explaining;
    private final ExprBuilder exprs;
    private final StatementBuilder builder;
    private final Rules rules = new Rules();
    private final Rules holeRules = new Rules();
    private final List<CommonToken> tokens;
    private final Misnomers misnomers;
    private final Deque<Block> blocks = new ArrayDeque<>();
    private final List<Name> broken = new ArrayList<>();
    private int at;
    private int unpaired;
    private final Set<Integer> closed = new HashSet<>();

    Reader(Source source, ParseLimits limits, Faults faults) {
        this.source = source;
        this.faults = faults;
        this.spans = new Spans(source.name(), source.text());
        this.explaining = new Explaining(spans, faults);
        Texts texts = new Texts(spans, faults, this::hole);
        ExprBuilder exprs = new ExprBuilder(spans, faults, limits, texts);
        this.exprs = exprs;
        this.builder = new StatementBuilder(spans, faults, exprs, texts);
        this.nesting = new Nesting(limits.nesting(), spans, faults);
        this.tokens = nesting.bounded(new Tokens(spans, faults, source.text(), 0).read());
        this.misnomers = new Misnomers(tokens, spans, faults);
    }

    /** What a block is. */
    private enum Kind {
        FILE("the file"),
        PIECE("a piece"),
        STRIP("a strip"),
        STEP("a step"),
        LOOSE("a block");

        private final String words;

        Kind(String words) {
            this.words = words;
        }
    }

    /**
     * A block that is being read; {@code finish} makes its statement of its body, or nothing if its head is broken.
     *
     * @param copied whether it belongs to a piece that starts from another
     * @param opened whether its opening brace was there
     */
    private record Block(
            Kind kind,
            List<Statement> body,
            Token opening,
            Function<Span, Optional<Statement>> finish,
            Span head,
            boolean copied,
            boolean opened) {}

    DraftTree read() {
        Optional<Integer> version = version();
        List<Statement> file = new ArrayList<>();
        Span start = spans.of(0, 0);
        Token first = tokens.isEmpty() ? new CommonToken(Token.EOF) : tokens.get(0);
        blocks.addLast(new Block(Kind.FILE, file, first, s -> Optional.empty(), start, false, true));
        while (at < tokens.size()) {
            next();
        }
        if (blocks.size() > 1) {
            closeAll(spans.end());
        }
        return new DraftTree(source.name(), version, file, broken);
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
            if (blocks.size() > 1) {
                close(spans.of(token));
            } else if (!faults.before(spans.of(token))) {
                Span span = spans.of(token);
                faults.tell(
                        SyntaxCode.STRAY_CLOSE,
                        span,
                        Hint.of("brace.drop", "Take it out.").replacing(span, ""));
            }
        } else if (type == GussetLexer.LBRACE) {
            if (!faults.before(spans.of(token))) {
                unpaired++;
                faults.tell(
                        SyntaxCode.LOOSE_BLOCK,
                        spans.of(token),
                        Hint.of("block.head", "Write the head before it: `piece Name {`."));
            }
            at++;
            boolean copied = blocks.getLast().copied();
            blocks.addLast(new Block(
                    Kind.LOOSE, new ArrayList<>(), token, s -> Optional.empty(), spans.of(token), copied, true));
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
        List<CommonToken> chunk = chunk(at);
        if (chunk.size() > 1 && chunk.get(1).getType() == GussetLexer.EQUALS && Words.isName(token.getType())) {
            broken.add(new Name(token.getText(), span));
        }
        int line = misspelt(chunk);
        at += line > 0 ? line : chunk.size();
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
        if (blocks.size() > 1 && Words.isFileOnly(type)) {
            closeAll(spans.of(token));
        } else if (steps && blocks.getLast().kind() == Kind.STEP) {
            missingClose(spans.of(token));
            close(Spans.before(spans.of(token)));
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
                place(builder.statement(context, blocks.getLast().copied()), rest.get(0));
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
        name(tokens).ifPresent(broken::add);
        boolean changed = tokens.get(0).getType() == GussetLexer.CHANGE && tokens.size() > 1;
        CommonToken word = tokens.get(changed ? 1 : 0);
        blocks.getLast().body().add(new Statement.Broken(word.getText(), spans.of(tokens.get(0))));
    }

    /** Puts a statement where it stands, or tells that it stands wrong. */
    private void place(Statement statement, CommonToken word) {
        Block block = blocks.getLast();
        if (block.kind() == Kind.FILE && Words.isPieceOnly(word.getType())) {
            if (!faults.before(statement.span())) {
                faults.tell(
                        SyntaxCode.WRONG_LEVEL,
                        statement.span(),
                        Hint.of(
                                "level.piece",
                                "Put it between the braces of a `piece Name { ... }`; if it stands there, a `}` above it closes too early."),
                        "word",
                        word.getText());
            }
            return;
        }
        block.body().add(statement);
    }

    private void head(CommonToken word, List<CommonToken> chunk) {
        Kind kind = word.getType() == GussetLexer.PIECE
                ? Kind.PIECE
                : word.getType() == GussetLexer.STRIP ? Kind.STRIP : Kind.STEP;
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
            finish = brokenHead(kind, List.copyOf(chunk), body);
        }
        Span head = spans.of(chunk.get(0), chunk.get(read - 1));
        boolean inside = blocks.getLast().kind() != Kind.FILE;
        if (sound && kind == Kind.STEP && !inside) {
            faults.tell(
                    SyntaxCode.STEP_OUTSIDE,
                    head,
                    Hint.of("step.piece", "Put it between the braces of a `piece Name { ... }`."));
            finish = s -> Optional.empty();
        }
        at += read;
        boolean opened = at < tokens.size() && tokens.get(at).getType() == GussetLexer.LBRACE;
        if (opened) {
            at++;
        } else {
            unpaired++;
            if (sound) {
                faults.tell(
                        SyntaxCode.MISSING_OPEN,
                        head,
                        Hint.of("brace.open", "Write `{` at the end of this line.")
                                .replacing(Spans.behind(head), " {"));
            }
        }
        boolean copied = blocks.getLast().copied()
                || chunk.stream().anyMatch(t -> t.getType() == GussetLexer.TRACED || t.getType() == GussetLexer.TAKEN);
        blocks.addLast(new Block(kind, body, word, finish, head, copied, opened));
    }

    private Function<Span, Optional<Statement>> brokenHead(Kind kind, List<CommonToken> head, List<Statement> body) {
        BrokenHeads heads = new BrokenHeads(spans);
        if (kind == Kind.PIECE) {
            return whole -> Optional.of(heads.piece(head, body, whole));
        }
        return kind == Kind.STRIP ? whole -> Optional.of(heads.strip(head, body, whole)) : whole -> Optional.empty();
    }

    private Function<Span, Optional<Statement>> heading(Kind kind, List<Statement> body, GussetParser parser) {
        if (kind == Kind.PIECE) {
            GussetParser.PieceHeadContext head = parser.pieceHead();
            return whole -> Optional.of(builder.piece(head, body, whole));
        } else if (kind == Kind.STRIP) {
            GussetParser.StripHeadContext head = parser.stripHead();
            return whole -> Optional.of(builder.strip(head, body, whole));
        }
        GussetParser.StepHeadContext head = parser.stepHead();
        return whole -> Optional.of(builder.step(head, body, whole));
    }

    private void close(Span closing) {
        Block block = blocks.removeLast();
        Block outer = blocks.getLast();
        unpaired = outer.kind() == Kind.FILE ? 0 : unpaired;
        Span whole = spans.of(block.opening()).to(closing);
        Optional<Statement> statement = block.finish().apply(whole);
        if (statement.isPresent()) {
            outer.body().add(statement.get());
        } else if ((block.kind() == Kind.STEP || block.kind() == Kind.LOOSE) && outer.kind() != Kind.FILE) {
            outer.body().addAll(block.body());
        }
    }

    private void closeAll(Span place) {
        missingClose(place);
        while (blocks.size() > 1) {
            close(Spans.before(place));
        }
    }

    /** Tells of the innermost open block, unless it only follows from a brace that was told of, or lost with the end of its line. */
    private void missingClose(Span place) {
        Block block = blocks.getLast();
        Iterator<Block> outwards = blocks.descendingIterator();
        while (!block.opened() && outwards.hasNext()) {
            block = outwards.next();
        }
        boolean headLost =
                faults.in(block.head()) && !closed.contains(block.head().line());
        if (block.kind() == Kind.FILE || unpaired > 0 || headLost) {
            unpaired = Math.max(0, unpaired - 1);
            return;
        }
        closed.add(place.line());
        faults.tell(Diagnostic.of(
                        SyntaxCode.MISSING_CLOSE,
                        place,
                        "block",
                        block.kind().words + " begun in line " + block.head().line())
                .with(Hint.of("brace.close", "Close it with a `}` where it ends.")
                        .replacing(Spans.before(place), "}\n"))
                .with(new Related(Phrase.of("brace.begun", "It begins here."), block.head())));
    }

    /** The name that a broken statement was to define. */
    private Optional<Name> name(List<CommonToken> chunk) {
        int i = 0;
        while (i < chunk.size()
                && i < 2
                && (chunk.get(i).getType() == GussetLexer.CHANGE || chunk.get(i).getType() == GussetLexer.RULE)) {
            i++;
        }
        boolean rule = i > 0 && chunk.get(i - 1).getType() == GussetLexer.RULE;
        if (!rule || (i < chunk.size() && Words.isStatement(chunk.get(i).getType()))) {
            i++;
        }
        @Nullable CommonToken token = i < chunk.size() ? chunk.get(i) : null;
        return token != null && (Words.isName(token.getType()) || Words.isReserved(token.getType()))
                ? Optional.of(new Name(token.getText(), spans.of(token)))
                : Optional.empty();
    }

    /** The expression of a hole in a text. */
    private Expr hole(String text, int base) {
        List<CommonToken> inside = nesting.bounded(new Tokens(spans, faults, text, base).read());
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
