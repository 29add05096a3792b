package org.gusset.fuzz;

import java.io.IOException;
import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Locale;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/**
 * What must hold of a PDF file: PDFBox reads it and every page of it, and nothing in it acts. The keys are those of ISO 32000-1: actions
 * and scripts (12.6), annotations (12.5), forms (12.7), attached and outside files (7.11, 8.10.4).
 */
final class PdfJudge {
    private static final Set<String> ALIVE = Set.of(
            "JS",
            "JavaScript",
            "OpenAction",
            "AA",
            "A",
            "Annots",
            "AcroForm",
            "XFA",
            "EmbeddedFiles",
            "EF",
            "URI",
            "Launch",
            "RichMedia",
            "Ref",
            "F",
            "FFilter",
            "Encrypt");

    private PdfJudge() {}

    /** @param pages how many there must be */
    static void file(byte[] pdf, int pages) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Must.equal(document.getNumberOfPages(), pages, "pages of a PDF");
            inert(document.getDocument().getTrailer(), Collections.newSetFromMap(new IdentityHashMap<>()));
            for (PDPage page : document.getPages()) {
                Must.hold(
                        page.getMediaBox().getWidth() > 0 && page.getMediaBox().getHeight() > 0,
                        () -> "a page without a size");
                for (Object token : new PDFStreamParser(page).parse()) {
                    Must.hold(
                            !(token instanceof COSFloat number) || Float.isFinite(number.floatValue()),
                            () -> "no number on a page: " + token);
                }
            }
        } catch (IOException e) {
            throw new AssertionError("no PDF: " + e.getMessage(), e);
        }
        String head =
                new String(Arrays.copyOf(pdf, Math.min(8, pdf.length)), java.nio.charset.StandardCharsets.US_ASCII);
        Must.hold(head.toLowerCase(Locale.ROOT).startsWith("%pdf-1."), () -> "no PDF begins with " + head);
    }

    private static void inert(COSBase base, Set<COSBase> seen) {
        if (base == null || !seen.add(base)) {
            return;
        }
        if (base instanceof COSObject object) {
            inert(object.getObject(), seen);
        } else if (base instanceof COSArray array) {
            for (int i = 0; i < array.size(); i++) {
                inert(array.get(i), seen);
            }
        } else if (base instanceof COSDictionary dictionary) {
            for (COSName key : dictionary.keySet()) {
                Must.hold(!ALIVE.contains(key.getName()), () -> "something that acts: /" + key.getName());
                inert(dictionary.getItem(key), seen);
            }
        }
    }
}
