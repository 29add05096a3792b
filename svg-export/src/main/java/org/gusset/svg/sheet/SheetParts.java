package org.gusset.svg.sheet;

import java.util.List;
import java.util.Optional;

/** What sheets are put together of, for those who arrange it in another way. Each part is made once and can be put anywhere. */
public final class SheetParts {
    private final SheetContent content;
    private final SheetOptions options;
    private final Words words;
    private final List<PieceFigure> figures;
    private final List<LineKey.Row> rows;
    private final List<LabelLine> notes;

    /** Parts made in advance; {@code rows} come before the usual kinds of line in the key, {@code notes} below them. */
    SheetParts(
            SheetContent content,
            SheetOptions options,
            List<PieceFigure> figures,
            List<LineKey.Row> rows,
            List<LabelLine> notes) {
        this.content = content;
        this.options = options;
        this.words = new Words(options.wording());
        this.figures = List.copyOf(figures);
        this.rows = List.copyOf(rows);
        this.notes = List.copyOf(notes);
    }

    public static SheetParts of(SheetContent content, SheetOptions options) {
        Ids ids = new Ids();
        List<PieceFigure> figures = content.pieces().stream()
                .map(piece -> PieceFigure.of(content, piece, options, ids))
                .toList();
        return new SheetParts(content, options, figures, List.of(), List.of());
    }

    /** The sizes of a nest, each piece once with the lines of all. */
    public static SheetParts of(Nest nest, SheetOptions options) {
        return new NestParts(nest, options).parts();
    }

    SheetContent content() {
        return content;
    }

    /** What the drawing is traced by. */
    public String fingerprint() {
        return content.fingerprint();
    }

    /** The pieces in file order, all ids in them different. */
    public List<PieceFigure> figures() {
        return figures;
    }

    /** The title, the body, the choices and what must not be overlooked. */
    public Block titleBlock() {
        return new TitleBlock(content, options).ofAll(new Ids());
    }

    /** What is to be cut, and how often. */
    public Block cuttingList() {
        return new TitleBlock(content, options).cuttingList(new Ids());
    }

    /** What each kind of line means; nothing if there are no pieces. */
    public Optional<Block> lineKey() {
        return figures.isEmpty()
                ? Optional.empty()
                : Optional.of(new LineKey(words, options.styles()).of(rows, figures, notes, new Ids()));
    }

    /** A square of 50 mm with the words that say so. */
    public Block testSquare() {
        return TestSquares.metric(words, options.styles(), new Ids());
    }

    /** The draft's title, and for whom it is drawn if that may be shown. */
    public String titleAndBody() {
        return new LabelText(content, options).titleAndBody();
    }

    /** Why the drawing is not proved, {@code most} reasons at most; nothing if it is proved. */
    public List<String> warnings(int most) {
        return new LabelText(content, options).warnings(most);
    }

    /** A name of the draft as it is read. */
    public static String spoken(String name) {
        return Words.spoken(name);
    }
}
