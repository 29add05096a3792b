package org.gusset.dsl.internal.parse;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.syntax.Statement;
import org.jspecify.annotations.Nullable;

/** The blocks that are open at a place of a file, and the statements in them. */
final class Blocks {
    private static final List<String> OF_A_PIECE = List.of("outline", "allow", "cut", "grain");

    private final Spans spans;
    private final Faults faults;
    private final Deque<Block> open = new ArrayDeque<>();
    private final List<Statement> file = new ArrayList<>();
    private @Nullable Block closed;
    private @Nullable Statement closedAs;

    /** What a block is. */
    enum Kind {
        FILE("the file"),
        PIECE("a piece"),
        STRIP("a strip"),
        STEP("a step"),
        LOOSE("a block"),
        ORPHANS("a piece");

        private final String words;

        Kind(String words) {
            this.words = words;
        }
    }

    /**
     * A block that is being read.
     *
     * @param finish makes its statement of its place, or nothing if its head cannot be read
     * @param assumed true if no brace opened it, so that none need close it
     */
    private record Block(
            Kind kind,
            List<Statement> body,
            Token opening,
            Function<Span, Optional<Statement>> finish,
            Span head,
            boolean assumed) {}

    Blocks(Spans spans, Faults faults) {
        this.spans = spans;
        this.faults = faults;
        Token first = new CommonToken(Token.EOF);
        open.addLast(new Block(Kind.FILE, file, first, s -> Optional.empty(), spans.of(0, 0), false));
    }

    List<Statement> file() {
        return file;
    }

    Kind innermost() {
        return open.getLast().kind();
    }

    boolean atFile() {
        return open.size() == 1;
    }

    /**
     * Opens a block.
     *
     * @param brace whether a brace opened it
     */
    void open(
            Kind kind,
            List<Statement> body,
            Token opening,
            Function<Span, Optional<Statement>> finish,
            Span head,
            boolean brace) {
        open.addLast(new Block(kind, body, opening, finish, head, !brace));
    }

    /** Adds a statement to the innermost block; what may stand anywhere goes to the file if the piece around it is a mere guess. */
    void add(Statement statement, boolean anywhere) {
        (anywhere && innermost() == Kind.ORPHANS ? file : open.getLast().body()).add(statement);
    }

    /**
     * Opens a piece for statements of a piece that stand at file level: the one that was closed just before, or else one without a
     * name.
     *
     * @return the line in which the piece was closed too early, if it was
     */
    OptionalInt assumePiece(Token word) {
        Block before = closed;
        if (before != null && !file.isEmpty() && file.get(file.size() - 1) == closedAs) {
            int line = file.remove(file.size() - 1).span().endLine();
            open.addLast(
                    new Block(before.kind(), before.body(), before.opening(), before.finish(), before.head(), true));
            return OptionalInt.of(line);
        }
        Span head = spans.of(word);
        List<Statement> body = new ArrayList<>();
        OF_A_PIECE.forEach(w -> body.add(new Statement.Broken(w, head)));
        open.addLast(new Block(
                Kind.ORPHANS, body, word, whole -> Optional.of(BrokenHeads.unnamed(head, body, whole)), head, true));
        return OptionalInt.empty();
    }

    /** Closes the innermost block. */
    void close(Token closing) {
        Block block = open.removeLast();
        Block outer = open.getLast();
        Optional<Statement> statement = block.finish().apply(spans.of(block.opening(), closing));
        if (statement.isPresent()) {
            outer.body().add(statement.get());
            if (atFile()) {
                closed = block;
                closedAs = statement.get();
            }
        } else if (outer.kind() != Kind.FILE) {
            outer.body().addAll(block.body());
        }
    }

    /** Closes all blocks before a token that cannot stand in any, and tells that a brace is missing. */
    void closeAll(Token token) {
        Block piece = open.size() > 1 ? List.copyOf(open).get(1) : open.getLast();
        List<Statement> outside = open.getLast().assumed() ? List.of() : outside(piece);
        missingClose(token);
        piece.body().removeAll(outside);
        while (!atFile()) {
            close(token);
        }
        file.addAll(outside);
    }

    /** The last statements of a piece without an end that may stand outside and are indented as if they did. */
    private static List<Statement> outside(Block block) {
        List<Statement> body = block.body();
        boolean indented =
                !body.isEmpty() && body.get(0).span().column() > block.head().column();
        int from = body.size();
        while (indented
                && from > 0
                && isAnywhere(body.get(from - 1))
                && body.get(from - 1).span().column() <= block.head().column()) {
            from--;
        }
        return List.copyOf(body.subList(from, body.size()));
    }

    private static boolean isAnywhere(Statement statement) {
        return statement instanceof Statement.Let
                || statement instanceof Statement.Check
                || statement instanceof Statement.Unknown
                || statement instanceof Statement.Solve;
    }

    /** Tells that the brace of the innermost block is missing, if there is a block that needs one. */
    void missingClose(Token token) {
        Block block = open.getLast();
        if (atFile() || block.assumed()) {
            return;
        }
        faults.tell(
                SyntaxCode.MISSING_CLOSE,
                spans.of(token),
                Hint.of("brace.close", "Close it with a `}` where it ends."),
                "block",
                block.kind().words + " begun in line " + block.head().line());
    }
}
