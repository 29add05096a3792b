package org.gusset.dsl.drafts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.draft.Draft;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.dsl.report.TextReport;
import org.junit.jupiter.api.Test;

/** Ten different mistakes in one draft, of writing, names, dimensions and kinds: ten messages in one run, and no eleventh. */
class TenMistakesTest {
    private static final String TEXT = """
            gusset 1
            draft "Understudy's tabard"  "Two panels for whoever goes on tonight."
            measure chest from 60 cm to 170 cm  "round the fullest part of the chest"
            measure neck  from 28 cm to 60 cm   "round the base of the neck"
            choose ease = 12 cm from 4 cm to 40 cm  "added to the whole chest"
            let quarter = (chest + ease) / 4
            let overlap = 3 1/2
            let depth   = neck / 5 + 12
            cloth sailcloth wide 140 cm
            piece Panel {
              point nape  = origin
              point grain = nape down 70 cm
              point tip   = nape right quater down 2 cm
              point low   = tip toward grain 3 cm
              poimt badge = on side at 1/3
              line  top    = nape to tip
              line  side   = tip to grain
              line  centre = grain to nape
              point buckle = on side at 1/4 from tip
              line  strap  = top to badge
              outline top, side, centre
              allow 1 cm, hem 4 cm turned up
              cut 2 from salecloth
              grain along centre
              label "Panel {quarter} {overlap} {depth}"
            }
            check length(Panel.side) > neck + depth  "The side is too short."
            """;

    private static final List<String> EXPECTED = List.of(
            "SYN005 7:15 3 1/2",
            "DIM001 8:15 neck / 5 + 12",
            "SYN003 12:9 grain",
            "NAM001 13:28 quater",
            "SYN012 14:34 3",
            "SYN004 15:3 poimt",
            "KND005 19:26 at 1/4 from tip",
            "KND001 20:18 top",
            "KND009 22:15 hem",
            "NAM009 23:14 salecloth");

    private static String brief(Diagnostic diagnostic) {
        Span span = (Span) diagnostic.place();
        return diagnostic.code().id() + " " + span.line() + ":" + span.column() + " "
                + TEXT.substring(span.start(), span.end());
    }

    @Test
    void tenMistakesGiveTenMessagesInOneRun() {
        Outcome<Draft> outcome = Gusset.compile(Source.of("tabard.gusset", TEXT));
        assertThat(outcome.diagnostics()).extracting(TenMistakesTest::brief).containsExactlyElementsOf(EXPECTED);
        assertThat(outcome.diagnostics())
                .allMatch(Diagnostic::isError)
                .allMatch(d -> !d.hints().isEmpty());
    }

    @Test
    void eachIsShownWithItsLineItsUnderlinedSpanAndAHint() {
        Source source = Source.of("tabard.gusset", TEXT);
        TextReport report = TextReport.of(source);
        List<Diagnostic> diagnostics = Gusset.compile(source).diagnostics();
        List<String> lines = TEXT.lines().toList();
        for (Diagnostic diagnostic : diagnostics) {
            Span span = (Span) diagnostic.place();
            List<String> shown = report.one(diagnostic).lines().toList();
            assertThat(shown.get(0)).startsWith("tabard.gusset:" + span.line() + ":" + span.column() + ": error ");
            assertThat(shown.get(1))
                    .isEqualTo("    " + lines.get(span.line() - 1).stripTrailing());
            assertThat(shown.get(2))
                    .isEqualTo(" ".repeat(4 + span.column() - 1) + "^" + "~".repeat(span.end() - span.start() - 1));
            assertThat(shown.get(3)).startsWith("  hint: ");
        }
        assertThat(report.all(diagnostics)).endsWith("10 errors\n");
    }

    @Test
    void aMisspeltNameSuggestsTheRightOneAsAnEdit() {
        Diagnostic unknown = Gusset.compile(Source.of("tabard.gusset", TEXT)).diagnostics().stream()
                .filter(d -> d.code().id().equals("NAM001"))
                .findFirst()
                .orElseThrow();
        assertThat(unknown.hints().get(0).phrase().toString()).isEqualTo("Did you mean `quarter`?");
        assertThat(unknown.hints().get(0).edit().orElseThrow().text()).isEqualTo("quarter");
    }

    /** The mended draft is sound, so that each message comes from its mistake and from nothing else. */
    @Test
    void mendedTheDraftHasNoMistake() {
        String mended = TEXT.replace("= 3 1/2", "= 3 1/2 in")
                .replace("/ 5 + 12", "/ 5 + 12 cm")
                .replace("point grain = ", "point hem_pt = ")
                .replace("grain 3 cm", "hem_pt by 3 cm")
                .replace("tip to grain", "tip to hem_pt")
                .replace("= grain to", "= hem_pt to")
                .replace("quater", "quarter")
                .replace("poimt", "point")
                .replace("at 1/4 from tip", "at 3 cm from tip")
                .replace("= top to badge", "= nape to badge")
                .replace("hem 4 cm turned up", "side 4 cm")
                .replace("salecloth", "sailcloth");
        assertThat(Gusset.compile(Source.of("tabard.gusset", mended)).diagnostics())
                .isEmpty();
    }
}
