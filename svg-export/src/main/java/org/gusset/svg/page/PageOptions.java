package org.gusset.svg.page;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;

/**
 * What a host can ask of pages.
 *
 * @param paper what is printed on
 * @param margin how far everything keeps from the edges of the paper, in mm
 * @param overlap how much of a tiled piece stands on both of two neighbouring pages, in mm
 * @param most the most pages that the pieces may be spread over: LIM303
 */
public record PageOptions(Paper paper, double margin, double overlap, int most) {
    /** More pages than anyone joins. */
    public static final int USUAL_MOST = 1000;

    /** Printers commonly leave 3 to 5 mm of the paper blank (common practice, no source). */
    public static final double LEAST_MARGIN = 5;

    static final double MOST_MARGIN = 100;

    /** Below this no words fit beside the test square. */
    static final double LEAST_WIDTH = 90;

    static final double LEAST_HEIGHT = 60;

    /** What a further page must bring at least. */
    private static final double LEAST_STEP = 40;

    /** Margins and overlaps of 10 mm. */
    public static PageOptions of(Paper paper) {
        return new PageOptions(paper, 10, 10, USUAL_MOST);
    }

    public PageOptions withMargin(double mm) {
        return new PageOptions(paper, mm, overlap, most);
    }

    public PageOptions withOverlap(double mm) {
        return new PageOptions(paper, margin, mm, most);
    }

    public PageOptions withMost(int pages) {
        return new PageOptions(paper, margin, overlap, pages);
    }

    /** What keeps these options from being carried out (PAP003 to PAP005); nothing if all is well. */
    public List<Diagnostic> faults() {
        List<Diagnostic> faults = new ArrayList<>();
        if (!(margin >= LEAST_MARGIN && margin <= MOST_MARGIN)) {
            faults.add(fault(
                            PaperCode.MARGIN,
                            "margin",
                            Fact.length(margin),
                            "least",
                            Fact.length(LEAST_MARGIN),
                            "most",
                            Fact.length(MOST_MARGIN))
                    .with(Hint.of(
                            "PAP003.printer",
                            "Printers leave up to {least} at the edges blank; marks there would be lost.",
                            "least",
                            Fact.length(LEAST_MARGIN))));
            return faults;
        }
        PageFrame frame = PageFrame.of(this);
        if (frame.window().width() < LEAST_WIDTH || frame.window().height() < LEAST_HEIGHT) {
            faults.add(fault(
                            PaperCode.NO_ROOM,
                            "paper",
                            paper.name(),
                            "margin",
                            Fact.length(margin),
                            "width",
                            Fact.length(Math.max(0, frame.window().width())),
                            "height",
                            Fact.length(Math.max(0, frame.window().height())),
                            "leastWidth",
                            Fact.length(LEAST_WIDTH),
                            "leastHeight",
                            Fact.length(LEAST_HEIGHT))
                    .with(Hint.of("PAP005.larger", "Take a larger paper or narrower margins.")));
            return faults;
        }
        double widest = Math.min(frame.window().width(), frame.window().height()) - LEAST_STEP;
        if (!(overlap >= 0 && overlap <= widest)) {
            faults.add(fault(PaperCode.OVERLAP, "overlap", Fact.length(overlap), "most", Fact.length(widest)));
        }
        return faults;
    }

    private static Diagnostic fault(PaperCode code, Object... namesAndFacts) {
        return Diagnostic.of(code, Place.nowhere(), namesAndFacts);
    }
}
