package org.gusset.workbench;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.LengthStyle;
import org.gusset.svg.Svg;
import org.gusset.svg.lesson.Handout;
import org.gusset.svg.lesson.LessonStep;
import org.gusset.svg.lesson.Lessons;
import org.gusset.svg.page.PageOptions;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.workbench.lesson.LessonPage;

/**
 * The files of a lesson: a picture with its sentences for each step, and the handout as pages and as one PDF file.
 *
 * @param files by name
 * @param steps how many steps
 * @param pages how many pages the handout has
 * @param missing characters that the PDF file's font does not have
 */
record LessonFiles(Map<String, byte[]> files, int steps, int pages, Set<String> missing) {
    /** The page for the browser. */
    static final String PAGE = "lesson.html";

    /** {@code stem} is what all names begin with. */
    static LessonFiles of(
            Drawing drawing, LengthStyle lengths, SheetOptions options, PageOptions paper, List<String> stem) {
        List<LessonStep> steps = Lessons.of(drawing, lengths, options);
        FileNames names = new FileNames();
        Map<String, byte[]> files = new LinkedHashMap<>();
        int digits = Math.max(2, String.valueOf(steps.size()).length());
        for (LessonStep step : steps) {
            List<String> parts = new ArrayList<>(stem);
            parts.add(number(step.number(), digits));
            if (!step.piece().isEmpty()) {
                parts.add(step.piece());
            }
            parts.add(step.title());
            files.put(
                    names.unused(".svg", parts.toArray(new String[0])),
                    utf8(Svg.write(step.scene(), options.styles())));
        }
        files.put(PAGE, utf8(LessonPage.of(LessonPages.content(drawing, steps, options))));
        Handout handout = Handout.of(drawing, steps, paper.paper(), paper.margin(), options);
        int pageDigits = String.valueOf(handout.pages().size()).length();
        for (int i = 0; i < handout.pages().size(); i++) {
            List<String> parts = new ArrayList<>(stem);
            parts.add("handout");
            parts.add(number(i + 1, pageDigits));
            files.put(
                    names.unused(".svg", parts.toArray(new String[0])),
                    utf8(Svg.write(handout.pages().get(i), handout.styles())));
        }
        String title = drawing.title()
                + (options.showBody() ? " " + drawing.measurements().body() : "");
        PdfPages pdf = PdfPages.ofScenes(title.strip(), handout.pages(), handout.styles());
        List<String> parts = new ArrayList<>(stem);
        parts.add("handout");
        files.put(names.unused(".pdf", parts.toArray(new String[0])), pdf.bytes());
        return new LessonFiles(files, steps.size(), handout.pages().size(), pdf.missing());
    }

    private static String number(int number, int digits) {
        return String.format(Locale.ROOT, "%0" + digits + "d", number);
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
