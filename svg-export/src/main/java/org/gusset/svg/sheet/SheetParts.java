package org.gusset.svg.sheet;

import java.util.List;
import java.util.Optional;

/** What sheets are put together of, for those who arrange it in another way. Each part is made once and can be put anywhere. */
public final class SheetParts {
    private final SheetContent content;
    private final SheetOptions options;
    private final Words words;
    private final Ids ids = new Ids();
    private final List<PieceFigure> figures;

    private SheetParts(SheetContent content, SheetOptions options) {
        this.content = content;
        this.options = options;
        this.words = new Words(options.wording());
        this.figures = content.pieces().stream()
                .map(piece -> PieceFigure.of(content, piece, options, ids))
                .toList();
    }

    public static SheetParts of(SheetContent content, SheetOptions options) {
        return new SheetParts(content, options);
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
                : Optional.of(LineKey.of(figures, words, options.styles(), new Ids()));
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
