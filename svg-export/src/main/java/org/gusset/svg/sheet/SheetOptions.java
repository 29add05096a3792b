package org.gusset.svg.sheet;

import org.gusset.core.diagnostic.Wording;
import org.gusset.core.measure.LengthStyle;
import org.gusset.svg.style.StyleTable;

/**
 * What a host can ask of sheets.
 *
 * @param wording turns phrases into words: the language, and the unit of lengths
 * @param showBody false to leave out the name of the body or size
 * @param styles how each role is drawn
 */
public record SheetOptions(Wording wording, boolean showBody, StyleTable styles) {
    /** English, centimetres, the body shown, black ink by the habits of technical drawing. */
    public static SheetOptions defaults() {
        return new SheetOptions(Wording.english(), true, StyleTable.drafting());
    }

    /** English words with lengths in this style. */
    public SheetOptions withLengths(LengthStyle lengths) {
        return withWording(lengths.wording());
    }

    public SheetOptions withWording(Wording newWording) {
        return new SheetOptions(newWording, showBody, styles);
    }

    public SheetOptions withShowBody(boolean show) {
        return new SheetOptions(wording, show, styles);
    }

    public SheetOptions withStyles(StyleTable newStyles) {
        return new SheetOptions(wording, showBody, newStyles);
    }
}
