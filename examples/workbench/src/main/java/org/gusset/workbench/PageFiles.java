package org.gusset.workbench;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.gusset.svg.Svg;
import org.gusset.svg.page.Page;
import org.gusset.svg.page.PageOptions;
import org.gusset.svg.page.Pages;
import org.gusset.svg.sheet.SheetContent;
import org.gusset.svg.sheet.SheetOptions;

/**
 * The pages of one body: an SVG file for each and a PDF file with all of them, of the same scenes.
 *
 * @param count how many pages
 * @param pdf the name of the PDF file
 * @param missing characters that its font does not have
 */
record PageFiles(int count, String pdf, Set<String> missing) {
    /** Adds the files to those of a body. {@code stem} is what all names begin with. */
    static PageFiles add(
            SheetContent content,
            SheetOptions options,
            PageOptions paper,
            List<String> stem,
            FileNames names,
            Map<String, byte[]> files) {
        String title = content.title() + (options.showBody() ? " " + content.body() : "");
        return add(title.strip(), Pages.of(content, options, paper).orThrow(), options, stem, names, files);
    }

    /** Adds the files of pages. */
    static PageFiles add(
            String title,
            List<Page> pages,
            SheetOptions options,
            List<String> stem,
            FileNames names,
            Map<String, byte[]> files) {
        int rows = digits(pages.stream().mapToInt(Page::row).max().orElse(1));
        int columns = digits(pages.stream().mapToInt(Page::column).max().orElse(1));
        for (Page page : pages) {
            String number =
                    String.format(Locale.ROOT, "page-%0" + rows + "d-%0" + columns + "d", page.row(), page.column());
            files.put(
                    names.unused(".svg", parts(stem, number)),
                    Svg.write(page.scene(), options.styles()).getBytes(StandardCharsets.UTF_8));
        }
        PdfPages pdf = PdfPages.of(title, pages, options.styles());
        String name = names.unused(".pdf", parts(stem, "pages"));
        files.put(name, pdf.bytes());
        return new PageFiles(pages.size(), name, pdf.missing());
    }

    /** What was written. */
    String words() {
        return Messages.count(count, "page") + ", together in " + pdf
                + (missing.isEmpty() ? "" : "; the PDF file's font does not have " + String.join(" ", missing));
    }

    private static int digits(int number) {
        return String.valueOf(number).length();
    }

    private static String[] parts(List<String> stem, String last) {
        String[] parts = stem.toArray(new String[stem.size() + 1]);
        parts[stem.size()] = last;
        return parts;
    }
}
