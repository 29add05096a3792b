package org.gusset.svg.style;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.gusset.svg.scene.Role;

/**
 * How every role is drawn: a pen for each kind of line, lettering for each kind of words. Immutable and complete.
 *
 * @param pens the pens by role
 * @param letterings the letterings by role
 */
public record StyleTable(Map<Role, Pen> pens, Map<Role, Lettering> letterings) {
    /**
     * Checks that nothing is left without a style.
     *
     * @throws IllegalArgumentException if a role has no pen or no lettering
     */
    public StyleTable {
        Map<Role, Pen> allPens = new EnumMap<>(Role.class);
        allPens.putAll(pens);
        Map<Role, Lettering> allLetterings = new EnumMap<>(Role.class);
        allLetterings.putAll(letterings);
        for (Role role : Role.values()) {
            if (!(role.isLettering() ? allLetterings : allPens).containsKey(role)) {
                throw new IllegalArgumentException(
                        "The style table has no " + (role.isLettering() ? "lettering" : "pen") + " for " + role + ".");
            }
        }
        pens = Collections.unmodifiableMap(allPens);
        letterings = Collections.unmodifiableMap(allLetterings);
    }

    /**
     * Black ink on white. The kinds of line follow the habit of technical drawing (ISO 128, from memory): unbroken for real
     * edges, dashed for what lies within, long dash and dot for a line of symmetry, long dash and two dots for the
     * outline of a neighbouring part, light and unbroken for construction. Nothing that is cut along is broader than 0.35 mm.
     *
     * <p>Sizes that are laid on one another differ in two ways: six rows of dashes, each in a thin and a thick line (0.18 mm and
     * 0.35 mm, two steps apart in the same standard), so dealt out that neighbouring sizes differ in both. None is unbroken: an
     * unbroken line is several sizes at once.
     *
     * <p>What is new in a lesson is drawn more than twice as heavy as what stood before, so that no colour is needed to tell them
     * apart.
     */
    public static StyleTable drafting() {
        Map<Role, Pen> pens = new EnumMap<>(Role.class);
        pens.put(Role.CUTTING, Pen.solid(0.3));
        pens.put(Role.STITCHING, Pen.dashed(0.25, 5.0, 2.0));
        pens.put(Role.FOLD, Pen.dashed(0.3, 14.0, 2.0, 0.8, 2.0));
        pens.put(Role.FOLD_BRACKET, Pen.solid(0.35));
        pens.put(Role.GRAIN, Pen.solid(0.35));
        pens.put(Role.NOTCH, Pen.solid(0.3));
        pens.put(Role.DRILL, Pen.solid(0.25));
        pens.put(Role.BUTTON, Pen.solid(0.25));
        pens.put(Role.BUTTONHOLE, Pen.solid(0.35));
        pens.put(Role.MARKED_LINE, Pen.dashed(0.25, 2.0, 1.5));
        pens.put(Role.GATHERS, Pen.dashed(0.3, 0.8, 1.2));
        pens.put(Role.PLEAT, Pen.solid(0.2));
        pens.put(Role.PLACED_PIECE, Pen.dashed(0.25, 9.0, 1.5, 0.8, 1.5, 0.8, 1.5));
        sizes(pens);
        pens.put(Role.SIZES_TOGETHER, Pen.solid(0.3));
        pens.put(Role.NEST_POINT, Pen.solid(0.25));
        pens.put(Role.BALANCE, Pen.dashed(0.2, 24.0, 3.0));
        pens.put(Role.OLD_LINE, Pen.dashed(0.13, 1.0, 1.0));
        pens.put(Role.CONSTRUCTION, Pen.solid(0.13));
        pens.put(Role.LEADER, Pen.solid(0.18));
        pens.put(Role.SEAM_ROD, Pen.solid(0.3));
        pens.put(Role.SEAM_MATCH, Pen.dashed(0.2, 2.0, 1.5));
        pens.put(Role.SEAM_EASED, Pen.solid(0.2));
        pens.put(Role.TEST_SQUARE, Pen.solid(0.2));
        pens.put(Role.DIVIDER, Pen.solid(0.18));
        pens.put(Role.BLANK_BOX, Pen.solid(0.3));
        pens.put(Role.JOIN_LINE, Pen.dashed(0.15, 1.0, 2.0));
        pens.put(Role.JOIN_MARK, Pen.solid(0.25));
        pens.put(Role.PAGE_EDGE, Pen.solid(0.15));
        pens.put(Role.MAP_PIECE, Pen.solid(0.3));
        pens.put(Role.DRAWN_BEFORE, new Pen(0.5, List.of(), "#4d4d4d"));
        pens.put(Role.DRAWN_NOW, Pen.solid(1.3));
        pens.put(Role.GUIDE_BEFORE, new Pen(0.35, List.of(5.0, 2.5), "#4d4d4d"));
        pens.put(Role.GUIDE_NOW, Pen.dashed(0.9, 7.0, 3.0));
        pens.put(Role.FOLD_NOW, Pen.dashed(1.3, 14.0, 3.0, 2.0, 3.0));
        pens.put(Role.GRAIN_NOW, Pen.solid(0.9));
        pens.put(Role.MARKED_NOW, Pen.dashed(0.9, 4.0, 3.0));
        pens.put(Role.DIMENSION, Pen.solid(0.45));
        pens.put(Role.DIMENSION_REACH, Pen.solid(0.25));
        pens.put(Role.WAY, Pen.dashed(0.45, 0.9, 1.8));
        pens.put(Role.GRADE_FIRST, Pen.solid(0.4));
        pens.put(Role.GRADE_LAST, Pen.dashed(0.3, 12.0, 2.5));
        pens.put(Role.GRADE_TRAVEL, Pen.solid(0.13));
        pens.put(Role.GRADE_EVEN, Pen.solid(0.9));
        pens.put(Role.GRADE_BREAKS, Pen.dashed(0.9, 3.0, 1.6));
        pens.put(Role.GRADE_BENDS, Pen.dashed(0.9, 0.9, 1.1));
        pens.put(Role.GRADE_STAYS, Pen.solid(0.4));
        lay(pens);
        Map<Role, Lettering> letterings = new EnumMap<>(Role.class);
        letterings.put(Role.SHEET_TITLE, Lettering.bold(11));
        letterings.put(Role.PIECE_NAME, Lettering.bold(9));
        letterings.put(Role.WARNING, Lettering.bold(5));
        letterings.put(Role.CUT_COUNT, Lettering.bold(5));
        letterings.put(Role.LABEL, Lettering.plain(5));
        letterings.put(Role.CAPTION, Lettering.plain(4.5));
        letterings.put(Role.SIZE_NAME, Lettering.bold(4));
        letterings.put(Role.JOIN_LETTER, Lettering.bold(4));
        letterings.put(Role.PAGE_NAME, Lettering.bold(8));
        letterings.put(Role.TEST_WORDS, Lettering.plain(4));
        letterings.put(Role.NAME_BEFORE, new Lettering(6.5, false, "#4d4d4d"));
        letterings.put(Role.NAME_NOW, Lettering.bold(7.5));
        letterings.put(Role.DIMENSION_WORDS, Lettering.plain(7));
        letterings.put(Role.TEACHING, Lettering.plain(8));
        letterings.put(Role.SENTENCE, Lettering.plain(7.5));
        letterings.put(Role.CORNER_NAME, Lettering.bold(5));
        letterings.put(Role.CORNER_MOVE, Lettering.plain(5));
        letterings.put(Role.LAID_NAME, Lettering.bold(4));
        letterings.put(Role.LAID_NOTE, Lettering.plain(3));
        letterings.put(Role.LAY_EDGE, Lettering.plain(3.5));
        letterings.put(Role.RULER_WORDS, Lettering.plain(3));
        letterings.put(Role.SMALL_PRINT, Lettering.plain(3.5));
        return new StyleTable(pens, letterings);
    }

    /** A lay is drawn small, so its lines are thin; the fold is the one that must not be missed. */
    private static void lay(Map<Role, Pen> pens) {
        pens.put(Role.SELVAGE, Pen.dashed(0.25, 1.0, 0.8));
        pens.put(Role.CLOTH_FOLD, Pen.dashed(0.7, 8.0, 1.2, 1.5, 1.2));
        pens.put(Role.CLOTH_END, Pen.solid(0.25));
        pens.put(Role.SECTION_LIMIT, Pen.solid(0.5));
        pens.put(Role.AT_HAND, Pen.dashed(0.6, 3.0, 1.5));
        pens.put(Role.STRIPE, new Pen(0.13, List.of(), "#9a9a9a"));
        pens.put(Role.LAID_PIECE, Pen.solid(0.3));
        pens.put(Role.LAID_TURNED, Pen.dashed(0.3, 4.0, 1.0));
        pens.put(Role.LAID_INNER, Pen.dashed(0.2, 1.5, 1.0));
        pens.put(Role.LAID_GRAIN, Pen.solid(0.2));
        pens.put(Role.RULER, Pen.solid(0.18));
    }

    private static void sizes(Map<Role, Pen> pens) {
        double thin = 0.18;
        double thick = 0.35;
        Double[] shortDashes = {3.0, 2.0};
        Double[] longDashes = {12.0, 2.5};
        Double[] dots = {0.8, 1.6};
        Double[] dashAndDot = {7.0, 1.8, 0.8, 1.8};
        Double[] dashAndTwoDots = {16.0, 1.6, 0.8, 1.6, 0.8, 1.6};
        Double[] pairs = {4.0, 1.2, 4.0, 5.0};
        List<Pen> all = List.of(
                Pen.dashed(thick, shortDashes),
                Pen.dashed(thin, dashAndDot),
                Pen.dashed(thick, longDashes),
                Pen.dashed(thin, dots),
                Pen.dashed(thick, dashAndTwoDots),
                Pen.dashed(thin, pairs),
                Pen.dashed(thick, dots),
                Pen.dashed(thin, longDashes),
                Pen.dashed(thick, dashAndDot),
                Pen.dashed(thin, shortDashes),
                Pen.dashed(thick, pairs),
                Pen.dashed(thin, dashAndTwoDots));
        for (int i = 0; i < all.size(); i++) {
            pens.put(Role.size(i), all.get(i));
        }
    }

    /**
     * The pen of a role.
     *
     * @throws IllegalArgumentException if the role is one of words
     */
    public Pen pen(Role role) {
        Pen pen = pens.get(role);
        if (pen == null) {
            throw new IllegalArgumentException(role + " is written, not drawn with a pen.");
        }
        return pen;
    }

    /**
     * The lettering of a role.
     *
     * @throws IllegalArgumentException if the role is one of lines
     */
    public Lettering lettering(Role role) {
        Lettering lettering = letterings.get(role);
        if (lettering == null) {
            throw new IllegalArgumentException(role + " is drawn, not written.");
        }
        return lettering;
    }

    /** This table with another pen for a role. */
    public StyleTable with(Role role, Pen pen) {
        Map<Role, Pen> all = new EnumMap<>(pens);
        all.put(role, pen);
        return new StyleTable(all, letterings);
    }

    /** This table with every pen's weight and dashes and every size of type multiplied. */
    public StyleTable scaled(double factor) {
        Map<Role, Pen> scaledPens = new EnumMap<>(Role.class);
        pens.forEach((role, pen) -> scaledPens.put(
                role,
                new Pen(
                        pen.weight() * factor,
                        pen.dashes().stream().map(d -> d * factor).toList(),
                        pen.colour())));
        Map<Role, Lettering> scaledLetterings = new EnumMap<>(Role.class);
        letterings.forEach((role, lettering) -> scaledLetterings.put(
                role, new Lettering(lettering.size() * factor, lettering.bold(), lettering.colour())));
        return new StyleTable(scaledPens, scaledLetterings);
    }

    /** This table with other lettering for a role. */
    public StyleTable with(Role role, Lettering lettering) {
        Map<Role, Lettering> all = new EnumMap<>(letterings);
        all.put(role, lettering);
        return new StyleTable(pens, all);
    }
}
