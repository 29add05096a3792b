package org.gusset.svg.scene;

import java.util.Locale;

/** What a mark means. How it looks is said by a style table. */
public enum Role {
    /** Where the cloth is cut. */
    CUTTING(false),
    /** Where the seam is sewn. */
    STITCHING(false),
    /** The edge that lies on a fold of the cloth. */
    FOLD(false),
    /** The bracket whose arrows are turned to the fold. */
    FOLD_BRACKET(false),
    /** The direction of the warp. */
    GRAIN(false),
    /** A sewing mark cut into the allowance. */
    NOTCH(false),
    /** A hole drilled through the layers. */
    DRILL(false),
    /** Where a button is sewn. */
    BUTTON(false),
    /** A buttonhole. */
    BUTTONHOLE(false),
    /** A line to be marked on the cloth. */
    MARKED_LINE(false),
    /** The line along which an edge is gathered. */
    GATHERS(false),
    /** A fold of a pleat and where it comes to lie. */
    PLEAT(false),
    /** The outline of another piece where it is placed. */
    PLACED_PIECE(false),
    /** The first of the sizes that are laid on one another, each with a line of its own kind. */
    SIZE_1(false),
    /** The second of the sizes. */
    SIZE_2(false),
    /** The third. */
    SIZE_3(false),
    /** The fourth. */
    SIZE_4(false),
    /** The fifth. */
    SIZE_5(false),
    /** The sixth. */
    SIZE_6(false),
    /** The seventh. */
    SIZE_7(false),
    /** The eighth. */
    SIZE_8(false),
    /** The ninth. */
    SIZE_9(false),
    /** The tenth. */
    SIZE_10(false),
    /** The eleventh. */
    SIZE_11(false),
    /** The twelfth. */
    SIZE_12(false),
    /** Where lines of several sizes are one. */
    SIZES_TOGETHER(false),
    /** The point at which sizes are laid on one another. */
    NEST_POINT(false),
    /** A line of the body, level or plumb, by which a trial garment is judged. */
    BALANCE(false),
    /** The outline before a fitting correction. */
    OLD_LINE(false),
    /** A line of the construction. */
    CONSTRUCTION(false),
    /** Leads from words to what they speak of. */
    LEADER(false),
    /** One side of a seam, laid out as a straight rod. */
    SEAM_ROD(false),
    /** Joins what comes together on both sides of a seam. */
    SEAM_MATCH(false),
    /** Marks the stretch of the side that is eased. */
    SEAM_EASED(false),
    /** A square that shows whether the print is true to scale. */
    TEST_SQUARE(false),
    /** A line that parts blocks of words. */
    DIVIDER(false),
    /** A box to write into. */
    BLANK_BOX(false),
    /** Where two pages are joined. */
    JOIN_LINE(false),
    /** The cross by which two pages are laid on each other. */
    JOIN_MARK(false),
    /** The edge of a page in the map of the pages. */
    PAGE_EDGE(false),
    /** A piece in the map of the pages. */
    MAP_PIECE(false),
    /** In a lesson, a line that stood before. */
    DRAWN_BEFORE(false),
    /** In a lesson, a line that is new. */
    DRAWN_NOW(false),
    /** In a lesson, a construction line that stood before. */
    GUIDE_BEFORE(false),
    /** In a lesson, a construction line that is new. */
    GUIDE_NOW(false),
    /** In a lesson, a fold of the cloth that is new. */
    FOLD_NOW(false),
    /** In a lesson, the arrow along the warp. */
    GRAIN_NOW(false),
    /** In a lesson, a line to be marked that is new. */
    MARKED_NOW(false),
    /** The arrow of a measured distance. */
    DIMENSION(false),
    /** Leads from a measured distance to where it is measured. */
    DIMENSION_REACH(false),
    /** The way that is squared or drawn on until something is met. */
    WAY(false),
    /** Of a piece over a chart of sizes, its outline in the first size. */
    GRADE_FIRST(false),
    /** Its outline in the last size. */
    GRADE_LAST(false),
    /** The way of a corner from the first size to the last, with a dot for each size. */
    GRADE_TRAVEL(false),
    /** The way a corner moves that moves alike from size to size. */
    GRADE_EVEN(false),
    /** The way a corner moves whose moves break with the chart. */
    GRADE_BREAKS(false),
    /** The way a corner moves whose moves differ although the chart's steps are alike. */
    GRADE_BENDS(false),
    /** A corner that stays where it is. */
    GRADE_STAYS(false),
    /** On a lay, the edge of the cloth at its selvage. */
    SELVAGE(false),
    /** On a lay, a fold of the cloth. */
    CLOTH_FOLD(false),
    /** On a lay, where the cloth is cut off or begins. */
    CLOTH_END(false),
    /** On a lay, where the cloth is folded anew. */
    SECTION_LIMIT(false),
    /** On a lay, where what is at hand ends. */
    AT_HAND(false),
    /** On a lay, the middle of a stripe of the cloth's pattern. */
    STRIPE(false),
    /** On a lay, where a piece is cut. */
    LAID_PIECE(false),
    /** On a lay, a piece whose paper lies wrong side up or end for end. */
    LAID_TURNED(false),
    /** On a lay, what is cut out of half the layers of a piece once all are cut. */
    LAID_INNER(false),
    /** On a lay, the way of the warp on a piece. */
    LAID_GRAIN(false),
    /** The scale along a lay. */
    RULER(false),
    /** The title of a sheet. */
    SHEET_TITLE(true),
    /** The name of a piece. */
    PIECE_NAME(true),
    /** What must not be overlooked. */
    WARNING(true),
    /** How many are cut, and how. */
    CUT_COUNT(true),
    /** The lines of a label. */
    LABEL(true),
    /** A word beside a line or mark. */
    CAPTION(true),
    /** Which size a corner belongs to. */
    SIZE_NAME(true),
    /** The letter that pages to be joined share. */
    JOIN_LETTER(true),
    /** The number of a page. */
    PAGE_NAME(true),
    /** The words in a test square. */
    TEST_WORDS(true),
    /** In a lesson, a name that stood before. */
    NAME_BEFORE(true),
    /** In a lesson, a name that is new. */
    NAME_NOW(true),
    /** A measured distance in words. */
    DIMENSION_WORDS(true),
    /** In a lesson, what the teacher says. */
    TEACHING(true),
    /** In a lesson, how a name came about. */
    SENTENCE(true),
    /** The name of a corner. */
    CORNER_NAME(true),
    /** How a corner moves from size to size. */
    CORNER_MOVE(true),
    /** The name of a piece on a lay. */
    LAID_NAME(true),
    /** How a piece lies. */
    LAID_NOTE(true),
    /** Along the edges of a lay. */
    LAY_EDGE(true),
    /** The figures of the scale along a lay. */
    RULER_WORDS(true),
    /** What one rarely reads: the fingerprint. */
    SMALL_PRINT(true);

    /** As many sizes as can be told apart in black and white. */
    public static final int SIZES = 12;

    private final boolean lettering;
    private final String className = name().toLowerCase(Locale.ROOT).replace('_', '-');

    Role(boolean lettering) {
        this.lettering = lettering;
    }

    /** True for words, false for lines and filled shapes. */
    public boolean isLettering() {
        return lettering;
    }

    /**
     * The line of one of several sizes.
     *
     * @param number counts the sizes from 0
     * @throws IllegalArgumentException if there are not so many kinds of line
     */
    public static Role size(int number) {
        if (number < 0 || number >= SIZES) {
            throw new IllegalArgumentException(
                    "There are lines for " + SIZES + " sizes, not for number " + number + ".");
        }
        return values()[SIZE_1.ordinal() + number];
    }

    /** The role as a word for class attributes: {@code fold-bracket}. */
    public String className() {
        return className;
    }
}
