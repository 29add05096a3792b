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
import org.gusset.dsl.syntax.Statement;
import org.jspecify.annotations.Nullable;

/** The blocks that are open at a place of a file, and the statements in them. */
final class Blocks {
    private static final List<String> OF_A_PIECE = List.of("outline", "allow", "cut", "grain");

    private final Spans spans;
    private final Faults faults;
    private final Deque<Block> open = new ArrayDeque<>();
    private final List<Statement> file = new ArrayList<>();
    private final Set<Integer> closes = new HashSet<>();
    private int unpaired;
    private @Nullable Block closed;
    private @Nullable Statement closedAs;
    private @Nullable Astray astray;

    /** A step that was closed by a brace which, by its place on the line, was meant for the piece around it. */
    private record Astray(Span step, Span brace, Span piece) {}

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
     * @param copied whether it belongs to a piece that starts from another
     * @param braced whether its opening brace was there
     */
    private record Block(
            Kind kind,
            List<Statement> body,
            Token opening,
            Function<Span, Optional<Statement>> finish,
            Span head,
            boolean assumed,
            boolean copied,
            boolean braced) {}

    Blocks(Spans spans, Faults faults) {
        this.spans = spans;
        this.faults = faults;
        Token first = new CommonToken(Token.EOF);
        open.addLast(new Block(Kind.FILE, file, first, s -> Optional.empty(), spans.of(0, 0), false, false, true));
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

    /** Opens a block; {@code copied} if its head says that it starts from another, {@code braced} if its opening brace is there. */
    void open(
            Kind kind,
            List<Statement> body,
            Token opening,
            Function<Span, Optional<Statement>> finish,
            Span head,
            boolean copied,
            boolean braced) {
        unpaired += braced ? 0 : 1;
        open.addLast(new Block(kind, body, opening, finish, head, false, copied || copied(), braced));
    }

    /** Opens a block that has no head. */
    void openLoose(Token brace) {
        Span span = spans.of(brace);
        if (!faults.before(span)) {
            unpaired++;
            faults.tell(
                    SyntaxCode.LOOSE_BLOCK, span, Hint.of("block.head", "Write the head before it: `piece Name {`."));
        }
        open.addLast(
                new Block(Kind.LOOSE, new ArrayList<>(), brace, s -> Optional.empty(), span, false, copied(), true));
    }

    /** True inside a piece that starts from another. */
    boolean copied() {
        return open.getLast().copied();
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
            open.addLast(new Block(
                    before.kind(),
                    before.body(),
                    before.opening(),
                    before.finish(),
                    before.head(),
                    true,
                    before.copied(),
                    true));
            return OptionalInt.of(line);
        }
        Span head = spans.of(word);
        List<Statement> body = new ArrayList<>();
        OF_A_PIECE.forEach(w -> body.add(new Statement.Broken(w, head)));
        open.addLast(new Block(
                Kind.ORPHANS,
                body,
                word,
                whole -> Optional.of(BrokenHeads.unnamed(head, body, whole)),
                head,
                true,
                false,
                true));
        return OptionalInt.empty();
    }

    /** Closes the innermost block, which ends where {@code closing} does. */
    void close(Span closing) {
        Block block = open.removeLast();
        Block outer = open.getLast();
        unpaired = atFile() ? 0 : unpaired;
        if (block.kind() == Kind.STEP
                && outer.kind() == Kind.PIECE
                && closing.end() > closing.start()
                && closing.line() > block.head().line()
                && closing.column() <= outer.head().column()
                && block.head().column() > outer.head().column()) {
            astray = new Astray(block.head(), closing, outer.head());
        }
        Span whole = spans.of(block.opening()).to(closing);
        Optional<Statement> statement = block.finish().apply(whole);
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

    /** Closes all blocks before a place where none can be open, and tells that a brace is missing. */
    void closeAll(Span place) {
        if (!atFile() && !open.getLast().assumed()) {
            missingClose(place);
        }
        while (!atFile()) {
            close(Spans.before(place));
        }
    }

    /**
     * Tells of the innermost block that a brace opened, unless its missing end only follows from a brace that was told of, or was
     * lost with the end of its line.
     */
    void missingClose(Span place) {
        Block block = open.getLast();
        Iterator<Block> outwards = open.descendingIterator();
        while (!block.braced() && outwards.hasNext()) {
            block = outwards.next();
        }
        boolean headLost =
                faults.in(block.head()) && !closes.contains(block.head().line());
        if (block.kind() == Kind.FILE || unpaired > 0 || headLost) {
            unpaired = Math.max(0, unpaired - 1);
            return;
        }
        closes.add(place.line());
        Diagnostic missing = Diagnostic.of(
                        SyntaxCode.MISSING_CLOSE,
                        place,
                        "block",
                        block.kind().words + " begun in line " + block.head().line())
                .with(Hint.of("brace.close", "Close it with a `}` where it ends.")
                        .replacing(Spans.before(place), "}\n"))
                .with(new Related(Phrase.of("brace.begun", "It begins here."), block.head()));
        Astray taken = astray;
        if (taken != null && taken.piece().equals(block.head())) {
            missing = missing.with(new Related(
                    Phrase.of(
                            "brace.taken",
                            "This `}` was taken for the end of the step begun in line {line}.",
                            "line",
                            String.valueOf(taken.step().line())),
                    taken.brace()));
        }
        faults.tell(missing);
    }
}
