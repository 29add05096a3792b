package org.gusset.fuzz;

import com.code_intelligence.jazzer.junit.DictionaryFile;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.gusset.core.chalk.ChalkLine;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.Toile;
import org.gusset.core.measure.LengthStyle;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.svg.Svg;
import org.gusset.svg.lesson.Handout;
import org.gusset.svg.lesson.Lessons;
import org.gusset.svg.page.Page;
import org.gusset.svg.page.PageOptions;
import org.gusset.svg.page.Pages;
import org.gusset.svg.page.Paper;
import org.gusset.svg.sheet.SheetContent;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.workbench.OnPaper;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.provider.MethodSource;

/** What is made for paper and cloth of any text that brings its measures along: handout, chalk list, toile, and PDF files of them. */
@Timeout(60)
class PaperFuzzTest {
    private static final Pattern NO_NUMBER = Pattern.compile("(NaN|Infinity|\\u221E) (cm|mm|in)\\b");
    private static final Paper A4 = Paper.parse("A4").orThrow();
    private static final PageOptions PAGES = PageOptions.of(A4).withMost(20);

    static Stream<byte[]> seeds() {
        return Must.SEEKING ? Seeds.drafts() : Seeds.drafts().limit(2);
    }

    @MethodSource("seeds")
    @DictionaryFile(resourcePath = "gusset.dict")
    @FuzzTest
    void paper(byte[] bytes) {
        Must.endSoon(() -> {
            String text = Texts.of(bytes);
            Measured measured = Measured.of(text);
            Outcome<Draft> compiled = Gusset.compile(Source.of("some.gusset", text), Seeds.shelf(), Drawn.STRANGER);
            compiled.value()
                    .flatMap(draft ->
                            draft.evaluate(measured.body(), measured.choices()).value())
                    .ifPresent(drawing -> all(drawing, Math.floorMod(text.hashCode(), 4)));
        });
    }

    /** While cases are sought, one of them for each text. */
    private static void all(Drawing drawing, int turn) {
        if (!Must.SEEKING || turn == 0) {
            for (ChalkLine line : ChalkLine.values()) {
                chalk(OnPaper.chalk(drawing, line, line == ChalkLine.CUTTING));
            }
        }
        if (!Must.SEEKING || turn == 1) {
            SheetOptions options = SheetOptions.defaults();
            Handout handout = Handout.of(drawing, Lessons.of(drawing, LengthStyle.CM, options), A4, 10, options);
            handout.pages().forEach(page -> SvgJudge.document(Svg.write(page, handout.styles())));
            PdfJudge.file(
                    OnPaper.pdf(drawing, handout.pages(), handout.styles()),
                    handout.pages().size());
        }
        if (!Must.SEEKING || turn == 2) {
            SheetContent toile = SheetContent.toile(drawing, Toile.ALLOWANCE);
            Finite.all(drawing.toile(Toile.ALLOWANCE).pieces(), "pieces of a toile");
            SvgJudge.document(Svg.sheet(toile, SheetOptions.defaults()));
            pages(drawing, toile);
        }
        if (!Must.SEEKING || turn == 3) {
            pages(drawing, SheetContent.of(drawing));
        }
    }

    private static void chalk(String text) {
        text.codePoints()
                .forEach(c -> Must.hold(
                        c == '\n' || c == '\r' || !Character.isISOControl(c),
                        () -> "a control character in a chalk list: " + Integer.toHexString(c)));
        Must.hold(!NO_NUMBER.matcher(text).find(), () -> "no number in a chalk list:\n" + text);
    }

    private static void pages(Drawing drawing, SheetContent content) {
        Outcome<List<Page>> pages = Pages.of(content, SheetOptions.defaults(), PAGES);
        Judge.messages(pages.diagnostics());
        pages.value().ifPresent(all -> PdfJudge.file(OnPaper.pdf(drawing, all), all.size()));
    }
}
