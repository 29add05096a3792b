package org.gusset.workbench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDPageLabelRange;
import org.apache.pdfbox.pdmodel.common.PDPageLabels;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.gusset.core.geometry.Vector;
import org.gusset.svg.page.Page;
import org.gusset.svg.scene.Scene;
import org.gusset.svg.style.StyleTable;

/**
 * Pages as one PDF file: vectors, real text in an embedded font, the page's size unrounded. The same pages give the same bytes,
 * so no date is in the file.
 *
 * @param bytes the file
 * @param missing the characters that the font does not have, written as question marks
 */
record PdfPages(byte[] bytes, Set<String> missing) {
    /** Liberation Sans, under the SIL Open Font Licence, which PDFBox has in its jar. */
    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    static PdfPages of(String title, List<Page> pages, StyleTable styles) {
        List<String> names = pages.stream().map(Page::name).toList();
        return of(title, names, pages.stream().map(Page::scene).toList(), styles);
    }

    /** Scenes as pages, numbered from 1. */
    static PdfPages ofScenes(String title, List<Scene> scenes, StyleTable styles) {
        List<String> names = IntStream.rangeClosed(1, scenes.size())
                .mapToObj(Integer::toString)
                .toList();
        return of(title, names, scenes, styles);
    }

    private static PdfPages of(String title, List<String> names, List<Scene> scenes, StyleTable styles) {
        Set<String> missing = new TreeSet<>();
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            PDType0Font font = font(document);
            PDPageLabels labels = new PDPageLabels(document);
            for (int i = 0; i < scenes.size(); i++) {
                add(document, scenes.get(i), font, styles, missing);
                PDPageLabelRange label = new PDPageLabelRange();
                label.setPrefix(names.get(i));
                labels.setLabelItem(i, label);
            }
            describe(document, title, labels);
            document.save(bytes);
            return new PdfPages(bytes.toByteArray(), missing);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static PDType0Font font(PDDocument document) throws IOException {
        try (InputStream file = PDType0Font.class.getResourceAsStream(FONT)) {
            if (file == null) {
                throw new IOException("the font is not where PDFBox has it");
            }
            return PDType0Font.load(document, file, true);
        }
    }

    private static void add(PDDocument document, Scene scene, PDType0Font font, StyleTable styles, Set<String> missing)
            throws IOException {
        PDPage page = new PDPage(
                new PDRectangle((float) (scene.width() * PdfInk.POINTS), (float) (scene.height() * PdfInk.POINTS)));
        document.addPage(page);
        try (PDPageContentStream out = new PDPageContentStream(document, page)) {
            new PdfInk(out, scene.height(), font, styles, missing).draw(scene.items(), new Vector(0, 0));
        }
    }

    private static void describe(PDDocument document, String title, PDPageLabels labels) {
        document.getDocumentCatalog().setPageLabels(labels);
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        preferences.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(preferences);
        document.getDocumentInformation().setTitle(title);
        document.getDocumentInformation().setProducer("Gusset");
        document.setDocumentId((long) title.hashCode());
    }
}
