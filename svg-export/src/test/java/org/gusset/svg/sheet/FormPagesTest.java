package org.gusset.svg.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.gusset.svg.scene.Ink;
import org.gusset.svg.scene.Role;
import org.gusset.svg.scene.Scene;
import org.junit.jupiter.api.Test;

class FormPagesTest {
    private static Form form(int rows, String words) {
        List<Form.Row> table = new ArrayList<>();
        for (int i = 1; i <= rows; i++) {
            table.add(Form.Row.of(
                    new Form.Words("row " + i, words), new Form.Words("9 1/2 in", ""), new Form.Blank(34, 5)));
        }
        return new Form(
                "Costume list", List.of("A note."), List.of(new Form.Section("Table", List.of(), table)), "The end.");
    }

    private static List<Ink.TextLine> lines(Scene page) {
        return page.items().stream()
                .filter(i -> i instanceof Ink.TextLine)
                .map(i -> (Ink.TextLine) i)
                .toList();
    }

    @Test
    void whatFitsIsOnOnePageOfA4InFullType() {
        List<Scene> pages = FormPages.of(form(12, "as the tape says"));
        assertThat(pages).hasSize(1);
        assertThat(pages.get(0).width()).isEqualTo(210);
        assertThat(pages.get(0).height()).isEqualTo(297);
        assertThat(lines(pages.get(0)).stream()
                        .filter(l -> l.role() == Role.LABEL)
                        .mapToDouble(Ink.TextLine::size))
                .allMatch(size -> size == 3.6);
    }

    @Test
    void typeGrowsSmallerIfThatSavesAPage() {
        List<Scene> pages = FormPages.of(form(26, "in small type"));
        assertThat(pages).hasSize(1);
        assertThat(lines(pages.get(0)).get(2).size()).isLessThan(4.6);
    }

    @Test
    void longFormsGoOnToNumberedPagesWithEveryRowWhole() {
        List<Scene> pages = FormPages.of(form(90, "a row"));
        assertThat(pages).hasSizeGreaterThan(2);
        List<String> rows = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            List<String> page =
                    lines(pages.get(i)).stream().map(Ink.TextLine::text).toList();
            assertThat(page).contains("page " + (i + 1) + " of " + pages.size());
            page.stream().filter(t -> t.startsWith("row ")).forEach(rows::add);
            assertThat(page.stream().filter(t -> t.startsWith("row ")).count())
                    .isEqualTo(page.stream().filter(t -> t.equals("a row")).count())
                    .isEqualTo(pages.get(i).items().stream()
                            .filter(k -> k instanceof Ink.Stroke s && s.role() == Role.BLANK_BOX)
                            .count());
        }
        assertThat(rows).hasSize(90).startsWith("row 1").endsWith("row 90");
    }

    /** Widths as the type measures them, which are rather too wide. */
    @Test
    void nothingLeavesThePageOrRunsIntoTheNextColumn() {
        String wordy = String.join(" ", Collections.nCopies(12, "the longest Sentence that anybody says of a seam"));
        Form form = new Form(
                wordy,
                List.of(wordy),
                List.of(new Form.Section(
                        "Table",
                        List.of("one", "two", "three"),
                        Collections.nCopies(
                                40,
                                Form.Row.of(
                                        new Form.Words("7", ""),
                                        new Form.Words(wordy, wordy),
                                        new Form.Words(wordy, ""))))),
                wordy);
        for (Scene page : FormPages.of(form)) {
            for (Ink.TextLine line : lines(page)) {
                boolean bold = line.role() == Role.SHEET_TITLE || line.role() == Role.PIECE_NAME;
                double width = TextMeasure.width(line.text(), line.size(), bold);
                assertThat(
                                line.anchor() == Ink.Anchor.END
                                        ? line.at().x() - width
                                        : line.at().x())
                        .isGreaterThanOrEqualTo(10);
                if (line.anchor() == Ink.Anchor.START) {
                    assertThat(line.at().x() + width).isLessThanOrEqualTo(200);
                }
                assertThat(line.at().y()).isBetween(10.0, 292.0);
                for (Ink.TextLine other : lines(page)) {
                    boolean beside = other.at().x() > line.at().x()
                            && Math.abs(other.at().y() - line.at().y()) < 1;
                    if (beside && other.anchor() == Ink.Anchor.START) {
                        assertThat(line.at().x() + width)
                                .isLessThanOrEqualTo(other.at().x());
                    }
                }
            }
        }
    }
}
