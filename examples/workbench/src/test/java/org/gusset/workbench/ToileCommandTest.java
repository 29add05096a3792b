package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.Toile;
import org.gusset.core.draft.Unfitted;
import org.gusset.core.geometry.LineSegment;
import org.gusset.core.measure.Quantity;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.scene.Role;
import org.gusset.svg.sheet.SheetContent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ToileCommandTest {
    @TempDir
    Path folder;

    static List<String> drafts() {
        return Fitted.drafts();
    }

    private static Piece piece(List<Piece> pieces, String name) {
        return pieces.stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
    }

    /** The middle of each straight edge of every shipped draft lies as far from the cutting line as the wider of both allowances. */
    @ParameterizedTest
    @MethodSource("drafts")
    void straightEdgesHaveTheWideAllowance(String draft) {
        Drawing drawing = Fitted.drawing(draft, "Maren Oddway");
        Toile toile = drawing.toile(Toile.ALLOWANCE);
        int tried = 0;
        for (Piece wide : toile.pieces()) {
            Piece own = piece(drawing.pieces(), wide.name());
            for (Edge edge : own.edges()) {
                boolean line = edge.path().segments().size() == 1
                        && edge.path().segments().get(0) instanceof LineSegment;
                if (!line
                        || edge.onFold()
                        || edge.path().length() < 120
                        || edge.allowance().width() == 0) {
                    continue;
                }
                double wanted = Math.max(25, edge.allowance().width());
                double distance = wide.cutting()
                        .nearest(edge.path().at(edge.path().length() / 2))
                        .distance();
                assertThat(distance).as(wide.name() + "." + edge.name()).isCloseTo(wanted, within(0.01));
                tried++;
            }
        }
        assertThat(tried).isPositive();
        assertThat(toile.narrow()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void theOutlineTheNotchesAndTheFoldStay(String draft) {
        Drawing drawing = Fitted.drawing(draft, "Maren Oddway");
        for (Piece wide : drawing.toile(Toile.ALLOWANCE).pieces()) {
            Piece own = piece(drawing.pieces(), wide.name());
            assertThat(wide.edges())
                    .extracting(Edge::name)
                    .isEqualTo(own.edges().stream().map(Edge::name).toList());
            assertThat(wide.edges())
                    .extracting(Edge::onFold)
                    .isEqualTo(own.edges().stream().map(Edge::onFold).toList());
            assertThat(wide.area()).isCloseTo(own.area(), within(1e-6));
            assertThat(wide.notches()).hasSameSizeAs(own.notches());
            for (int i = 0; i < own.notches().size(); i++) {
                assertThat(wide.notches()
                                .get(i)
                                .at()
                                .distance(own.notches().get(i).at()))
                        .isLessThan(1e-3);
                assertThat(wide.notches().get(i).ticks())
                        .hasSameSizeAs(own.notches().get(i).ticks());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void balanceLinesEndOnTheOutline(String draft) {
        Toile toile = Fitted.drawing(draft, "Maren Oddway").toile(Toile.ALLOWANCE);
        for (Toile.BalanceLine line : toile.balance()) {
            org.gusset.core.geometry.Path outline =
                    piece(toile.pieces(), line.piece()).stitching();
            assertThat(outline.nearest(line.along().start()).distance()).isLessThan(1e-6);
            assertThat(outline.nearest(line.along().end()).distance()).isLessThan(1e-6);
            assertThat(line.along().length()).isGreaterThan(1);
        }
    }

    @Test
    void theBodiceHasItsBustLineAndTheTrousersHipKneeAndCrease() {
        assertThat(Fitted.drawing("fitted-bodice.gusset", "Maren Oddway")
                        .toile(25)
                        .balance())
                .extracting(line -> line.piece() + "." + line.name())
                .containsExactly("Back.bust_line", "Front.bust_line", "Sleeve.arm_line", "Sleeve.axis");
        assertThat(Fitted.drawing("trouser-block.gusset", "Maren Oddway")
                        .toile(25)
                        .balance())
                .extracting(line -> line.piece() + "." + line.name())
                .contains("Front.hip_line", "Front.knee_line", "Front.crease", "Back.hip_line", "Back.knee_line");
    }

    /** The old side of the smock's back is the side of the back for the same body with the correction at rest. */
    @Test
    void theOldLineIsTheOutlineWithoutTheFit() {
        Choices taken = Choices.none().with("side_in", Quantity.length(15));
        Drawing drawing = Smock.drawing().with(taken);
        Unfitted unfitted = drawing.unfitted().orElseThrow();
        Drawing plain = Smock.drawing();
        assertThat(unfitted.corrections()).extracting(Unfitted.Correction::name).containsExactly("side_in");
        assertThat(unfitted.lines())
                .extracting(line -> line.piece() + "." + line.edge())
                .contains("Back.side", "Front.side")
                .doesNotContain("Back.shoulder", "Back.neck_edge");
        for (Unfitted.OldLine line : unfitted.lines()) {
            Edge old = piece(plain.pieces(), line.piece()).edge(line.edge()).orElseThrow();
            assertThat(line.path()).isEqualTo(old.path());
        }
        Edge side = piece(drawing.pieces(), "Back").edge("side").orElseThrow();
        Unfitted.OldLine was = unfitted.lines().stream()
                .filter(line -> line.piece().equals("Back") && line.edge().equals("side"))
                .findFirst()
                .orElseThrow();
        assertThat(was.path().start().x() - side.path().start().x()).isCloseTo(15, within(1e-9));
        assertThat(plain.unfitted()).isEmpty();
    }

    @Test
    void aFitInTheBodysOwnMeasuresCountsTheSame() {
        Drawing plain = Smock.drawing();
        Drawing drawing = plain.with(plain.measurements().with("Side in", Quantity.length(10)));
        assertThat(drawing.unfitted().orElseThrow().drawing().pieces()).isEqualTo(plain.pieces());
        SheetContent content = SheetContent.toile(drawing, 25);
        assertThat(content.lines()).extracting(SheetContent.PieceLine::role).contains(Role.OLD_LINE, Role.BALANCE);
        assertThat(SheetContent.toile(plain, 25).lines())
                .extracting(SheetContent.PieceLine::role)
                .doesNotContain(Role.OLD_LINE);
    }

    @Test
    void theCommandDrawsATrialGarmentIntoFilesOfItsOwn() throws IOException {
        CommandRun run = CommandRun.standard(
                "draw",
                Smock.DRAFT,
                "--measures",
                Smock.MAREN,
                "--set",
                "side_in=1 cm",
                "--toile",
                "--allowance",
                "3cm",
                "--paper",
                "A1",
                "--out",
                folder.toString());
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(CommandRun.filesBelow(folder))
                .contains(
                        "smock-maren-oddway-toile-sheet.svg",
                        "smock-maren-oddway-toile-back.svg",
                        "smock-maren-oddway-toile-pages.pdf");
        assertThat(Files.readString(folder.resolve("smock-maren-oddway-toile-back.svg")))
                .contains("TOILE: a trial garment", "3 cm", "fitted: side in 1 cm")
                .contains("class=\"old-line\"", "class=\"balance\"");
    }

    @Test
    void theOldLineCanStandOnAnOrdinarySheet() throws IOException {
        CommandRun run = CommandRun.standard(
                "draw",
                Smock.DRAFT,
                "--measures",
                Smock.MAREN,
                "--set",
                "side_in=1 cm",
                "--old-line",
                "--out",
                folder.toString());
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(Files.readString(folder.resolve("smock-maren-oddway-back.svg")))
                .contains("class=\"old-line\"")
                .doesNotContain("TOILE");
    }

    @Test
    void wrongUseIsToldInWords() {
        String[] args = {
            "draw", Smock.DRAFT, "--measures", Smock.MAREN, "--out", folder.toString(), "--allowance", "3cm"
        };
        assertThat(CommandRun.standard(args).err()).contains("add --toile");
        String[] bare = {
            "draw", Smock.DRAFT, "--measures", Smock.MAREN, "--out", folder.toString(), "--toile", "--allowance", "3"
        };
        assertThat(CommandRun.standard(bare).err()).contains("a length with its unit");
    }
}
