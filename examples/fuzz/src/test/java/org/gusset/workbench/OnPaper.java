package org.gusset.workbench;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.gusset.core.chalk.ChalkLine;
import org.gusset.core.chalk.ChalkList;
import org.gusset.core.chalk.Tape;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.LengthStyle;
import org.gusset.svg.page.Page;
import org.gusset.svg.scene.Scene;
import org.gusset.svg.style.StyleTable;

/** What the command line makes of a drawing beside SVG and HTML, for the fuzz targets. */
public final class OnPaper {
    private OnPaper() {}

    /** The chalk list of a drawing as text. */
    public static String chalk(Drawing drawing, ChalkLine line, boolean inches) {
        StringWriter text = new StringWriter();
        try (PrintWriter out = new PrintWriter(text)) {
            ChalkList list = ChalkList.of(drawing, line, inches ? Tape.INCHES : Tape.CENTIMETRES);
            new ChalkText(out, list, inches ? LengthStyle.INCHES : LengthStyle.CM).print(drawing);
        }
        return text.toString();
    }

    /** Pages as a PDF file. */
    public static byte[] pdf(Drawing drawing, List<Page> pages) {
        return PdfPages.of(drawing.title(), pages, StyleTable.drafting()).bytes();
    }

    /** Scenes as a PDF file. */
    public static byte[] pdf(Drawing drawing, List<Scene> scenes, StyleTable styles) {
        return PdfPages.ofScenes(drawing.title(), scenes, styles).bytes();
    }
}
