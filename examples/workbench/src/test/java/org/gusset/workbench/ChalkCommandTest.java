package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.gusset.core.chalk.ChalkLine;
import org.gusset.core.draft.Drawing;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Notch;
import org.gusset.core.pattern.Piece;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The smock is drawn again from the words of its chalk list alone, and laid on the drawing. */
class ChalkCommandTest {
    /** What a curve may stray when its printed offsets are joined by straight strokes, in mm. */
    private static final double CURVE = 2;

    @TempDir
    java.nio.file.Path folder;

    static Stream<Arguments> lists() {
        List<Arguments> lists = new ArrayList<>();
        for (String body : Fitted.cast()) {
            for (ChalkLine line : ChalkLine.values()) {
                for (String unit : List.of("cm", "mm", "in")) {
                    lists.add(Arguments.of(body, line, unit));
                }
            }
        }
        return lists.stream();
    }

    private static CommandRun chalk(String draft, String body, String... more) {
        List<String> args = new ArrayList<>(
                List.of("chalk", Fitted.draftFile(draft), "--measures", Fitted.castFile() + "#" + body));
        args.addAll(List.of(more));
        return CommandRun.standard(args.toArray(new String[0]));
    }

    private static Map<String, ChalkRead.Drawn> drawnAgain(String body, ChalkLine line, String unit) {
        CommandRun run = chalk(
                "smock.gusset",
                body,
                line == ChalkLine.STITCHING ? "--stitching-line" : "--cutting-line",
                "--unit",
                unit);
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        return ChalkRead.of(run.out());
    }

    private static ChalkRead.Drawn piece(Map<String, ChalkRead.Drawn> pieces, String name) {
        return Objects.requireNonNull(pieces.get(name), name);
    }

    private static double part(String unit) {
        return unit.equals("in") ? 25.4 / 16 : 1;
    }

    /** The drawing in the chalk list's frames, worked out by hand: the fold, the grain line and the pocket's edge are upright in the smock. */
    private static final class OnCloth {
        private final Piece piece;
        private final ChalkLine line;
        private final double base;
        private final double top;

        OnCloth(Drawing drawing, String name, ChalkLine line) {
            this.line = line;
            this.piece = named(drawing, name);
            Piece topped = name.equals("Front") ? named(drawing, "Back") : piece;
            this.top = whole(topped).bounds().top();
            this.base = name.equals("Sleeve")
                    ? piece.grain().orElseThrow().from().x()
                    : name.equals("Pocket") ? whole(piece).bounds().right() : 0;
        }

        private static Piece named(Drawing drawing, String name) {
            return drawing.pieces().stream()
                    .filter(p -> p.name().equals(name))
                    .findFirst()
                    .orElseThrow();
        }

        Path whole(Piece of) {
            return line == ChalkLine.STITCHING ? of.stitching() : of.cutting();
        }

        /** A point of the cloth in the piece's own frame. */
        Point back(double across, double down) {
            return new Point(piece.name().equals("Pocket") ? base - across : base + across, top + down);
        }

        List<Point> corners() {
            List<Point> corners = new ArrayList<>();
            for (Edge edge : piece.edges()) {
                Path path = line == ChalkLine.STITCHING ? edge.path() : edge.cut();
                corners.add(path.start());
                corners.add(path.end());
            }
            return corners;
        }

        List<Point> notches() {
            List<Point> notches = new ArrayList<>();
            for (Notch notch : piece.notches()) {
                int strokes = notch.ticks().size();
                Point first = notch.ticks().get((strokes - 1) / 2).outer();
                Point second = notch.ticks().get(strokes / 2).outer();
                notches.add(line == ChalkLine.STITCHING ? notch.at() : first.toward(second, 0.5));
            }
            return notches;
        }
    }

    private static boolean within(Point one, Point other, double half) {
        return Math.abs(one.x() - other.x()) <= half + 1e-6 && Math.abs(one.y() - other.y()) <= half + 1e-6;
    }

    @ParameterizedTest
    @MethodSource("lists")
    void everyMarkIsACornerOrNotchWithinTheRoundingOfTheTape(String body, ChalkLine line, String unit) {
        Drawing drawing = Fitted.drawing("smock.gusset", body);
        double half = part(unit) / 2;
        drawnAgain(body, line, unit).forEach((name, drawn) -> {
            OnCloth cloth = new OnCloth(drawing, name, line);
            assertThat(drawn.strokes()).isNotEmpty();
            for (ChalkRead.Stroke stroke : drawn.strokes()) {
                Point here = cloth.back(stroke.from().across(), stroke.from().down());
                List<Point> same = cloth.corners().stream()
                        .filter(c -> within(c, here, half))
                        .toList();
                assertThat(same).as(name + " " + stroke.from()).isNotEmpty();
                // What is said of the error is so, to the rounding of its own two decimals.
                double off = same.stream().mapToDouble(here::distance).min().orElseThrow();
                assertThat(stroke.from().error()).isBetween(off - 0.13, off + 0.13);
            }
            assertThat(drawn.notches()).hasSize(cloth.notches().size());
            drawn.notches().keySet().forEach(number -> {
                ChalkRead.Spot spot = drawn.spot(number);
                Point here = cloth.back(spot.across(), spot.down());
                assertThat(cloth.notches()).as(name + " " + spot).anyMatch(n -> within(n, here, half));
            });
        });
    }

    @ParameterizedTest
    @MethodSource("lists")
    void theCurvesDrawnAgainStrayNoMoreThanTwoMillimetres(String body, ChalkLine line, String unit) {
        Drawing drawing = Fitted.drawing("smock.gusset", body);
        List<String> curved = new ArrayList<>();
        drawnAgain(body, line, unit).forEach((name, drawn) -> {
            OnCloth cloth = new OnCloth(drawing, name, line);
            for (String edge : drawn.strokes().stream()
                    .filter(ChalkRead.Stroke::curve)
                    .map(ChalkRead.Stroke::edge)
                    .distinct()
                    .toList()) {
                curved.add(name + "." + edge);
                Edge drafted = cloth.piece.edge(edge.replace(' ', '_')).orElseThrow();
                Path truth = line == ChalkLine.STITCHING ? drafted.path() : drafted.cut();
                Path redrawn = joined(cloth, drawn, edge);
                assertThat(farthest(truth, redrawn)).as(name + "." + edge).isLessThanOrEqualTo(CURVE);
                assertThat(farthest(redrawn, truth)).as(name + "." + edge).isLessThanOrEqualTo(CURVE);
            }
        });
        assertThat(curved).contains("Back.armhole", "Back.neck edge", "Front.neck edge", "Sleeve.cap");
    }

    private static Path joined(OnCloth cloth, ChalkRead.Drawn drawn, String edge) {
        List<Point> points = new ArrayList<>();
        for (ChalkRead.Stroke stroke : drawn.strokes()) {
            if (stroke.edge().equals(edge)) {
                stroke.points().forEach(p -> points.add(cloth.back(p[0], p[1])));
            }
        }
        return Path.line(points.toArray(new Point[0]));
    }

    private static double farthest(Path from, Path to) {
        double most = 0;
        for (double s = 0; s <= from.length(); s += 0.5) {
            most = Math.max(most, to.nearest(from.at(s)).distance());
        }
        return most;
    }

    /** Nothing is missing: the line round each piece, every millimetre of it, lies under the strokes. */
    @ParameterizedTest
    @MethodSource("lists")
    void theStrokesCloseRoundEveryPiece(String body, ChalkLine line, String unit) {
        Drawing drawing = Fitted.drawing("smock.gusset", body);
        Map<String, ChalkRead.Drawn> pieces = drawnAgain(body, line, unit);
        assertThat(pieces.keySet()).containsExactly("Back", "Front", "Sleeve", "Band", "Pocket");
        pieces.forEach((name, drawn) -> {
            OnCloth cloth = new OnCloth(drawing, name, line);
            List<Path> strokes = new ArrayList<>(paths(cloth, drawn));
            if (name.equals("Front")) {
                // The upper layer has been cut along the back already.
                strokes.addAll(paths(new OnCloth(drawing, "Back", line), piece(pieces, "Back")));
            } else {
                for (int i = 0; i < drawn.strokes().size(); i++) {
                    ChalkRead.Stroke next =
                            drawn.strokes().get((i + 1) % drawn.strokes().size());
                    assertThat(drawn.strokes().get(i).to()).isEqualTo(next.from());
                }
            }
            Path whole = cloth.whole(cloth.piece);
            for (double s = 0; s < whole.length(); s += 1) {
                Point p = whole.at(s);
                assertThat(strokes.stream()
                                .mapToDouble(t -> t.nearest(p).distance())
                                .min()
                                .orElseThrow())
                        .as(name + " at " + p)
                        .isLessThanOrEqualTo(CURVE);
            }
        });
    }

    private static List<Path> paths(OnCloth cloth, ChalkRead.Drawn drawn) {
        return drawn.strokes().stream()
                .map(s -> Path.line(
                        s.points().stream().map(p -> cloth.back(p[0], p[1])).toArray(Point[]::new)))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("lists")
    void nothingLiesBeyondTheFoldAndItsEdgeLiesOnIt(String body, ChalkLine line, String unit) {
        Map<String, ChalkRead.Drawn> pieces = drawnAgain(body, line, unit);
        for (String name : List.of("Back", "Front", "Band")) {
            for (ChalkRead.Stroke stroke : piece(pieces, name).strokes()) {
                stroke.points().forEach(p -> assertThat(p[0]).isGreaterThanOrEqualTo(-1e-9));
                if (stroke.fold()) {
                    stroke.points().forEach(p -> assertThat(p[0]).isZero());
                }
            }
        }
        assertThat(piece(pieces, "Back").strokes().stream().filter(ChalkRead.Stroke::fold))
                .hasSize(1);
        assertThat(piece(pieces, "Band").strokes().stream().filter(ChalkRead.Stroke::fold))
                .hasSize(1);
        assertThat(piece(pieces, "Front").strokes()).noneMatch(ChalkRead.Stroke::fold);
    }

    @Test
    void theShallowNeckIsCutThroughAllLayersAndThenTheDeepOneOutOfTheUpperFold() {
        String list = chalk("smock.gusset", "Maren Oddway").out();
        assertThat(list)
                .containsSubsequence(
                        "Chalk list of the CUTTING LINE",
                        "1. Back",
                        "Cut this piece through all layers, then Front out of the upper fold only.",
                        "2. Front",
                        "Cut through the upper fold only",
                        "as Back.")
                .contains("shoulder, armhole, side, corner of side and hem, hem: as Back.");
        assertThat(chalk("smock.gusset", "Maren Oddway", "--stitching-line").out())
                .contains("Chalk list of the STITCHING LINE", "Allowances to add outside the line: 1 cm at neck edge;");
    }

    /** A front and a back that are cut on the same fold and differ in the neck alone, the deeper one named first. */
    @Test
    void twoPiecesOnOneFoldAreLaidTogetherWhicheverIsNamedFirst() {
        String piece = """
                piece %s {
                  point top = origin down %s
                  point neck = origin right 8 cm
                  point low = origin down 60 cm
                  point side = low right 25 cm
                  point tip = side up 57 cm
                  curve neck_edge = from top heading right to neck heading up
                  line shoulder = neck to tip
                  line flank = tip to side
                  line hem = side to low
                  line centre = low to top
                  outline neck_edge, shoulder, flank, hem, centre
                  allow 1 cm
                  cut 1 on fold centre
                  grain along centre
                }
                """;
        String draft = CommandRun.file(
                folder,
                "tabard.gusset",
                "gusset 1\ndraft \"Tabard\"\n" + piece.formatted("Front", "9 cm") + piece.formatted("Back", "2 cm"));
        CommandRun run = CommandRun.standard("chalk", draft, "--measures", Fitted.castFile() + "#Maren Oddway");
        assertThat(run.code()).isZero();
        Map<String, ChalkRead.Drawn> pieces = ChalkRead.of(run.out());
        assertThat(pieces.keySet()).containsExactly("Back", "Front");
        assertThat(piece(pieces, "Front").strokes().stream()
                        .map(ChalkRead.Stroke::edge)
                        .distinct())
                .containsExactly("neck edge");
        // line has above it too.
        ChalkRead.Spot top = piece(pieces, "Front").spot(1);
        assertThat(top.across()).isZero();
        assertThat(run.out()).contains("shoulder, flank, hem, centre: as Back.");
    }

    /** Chalk does not know on which side of the table one stands: a piece to the left of its fold gives the same marks. */
    @Test
    void aPieceToTheLeftOfItsFoldIsTheSameList() {
        String right = """
                gusset 1
                draft "Half"
                piece Half {
                  point top = origin down 3 cm
                  point neck = origin right 8 cm
                  point arm = neck right 9 cm down 20 cm
                  point low = origin down 60 cm
                  point side = low right 17 cm
                  curve neck_edge = from top heading right to neck heading up
                  curve armhole = from neck heading down to arm heading right
                  line flank = arm to side
                  line hem = side to low
                  line centre = low to top
                  outline neck_edge, armhole, flank, hem, centre
                  allow 1 cm, hem 4 cm turned up
                  cut 1 on fold centre
                  grain along centre
                }
                """;
        List<String> lists = new ArrayList<>();
        for (String text : List.of(right, right.replace("right", "left"))) {
            String draft = CommandRun.file(folder, "half.gusset", text);
            CommandRun run = CommandRun.standard("chalk", draft, "--measures", Fitted.castFile() + "#Maren Oddway");
            assertThat(run.err()).isEmpty();
            lists.add(run.out());
        }
        assertThat(lists.get(0)).contains("The piece lies to its right.");
        assertThat(lists.get(1))
                .contains("The piece lies to its left.")
                .isEqualTo(lists.get(0).replace("to its right", "to its left"));
    }

    @Test
    void whatIsEstimatedOrNotProvedIsSaid() {
        assertThat(chalk("smock.gusset", "Bartholo Grumthorpe").out())
                .contains("Estimated, not measured: scye depth.")
                .doesNotContain("NOT PROVED");
        String tight = CommandRun.file(
                folder,
                "tight.csv",
                "measure,A\nchest,97 cm\nshoulder_width,40 cm\nneck,37 cm\nupper_arm,60 cm\narm_length,58 cm\n");
        CommandRun run = CommandRun.standard("chalk", Fitted.draftFile("smock.gusset"), "--measures", tight);
        assertThat(run.code()).isEqualTo(ExitCodes.FAULTS);
        assertThat(run.out()).contains("NOT PROVED");
    }

    @Test
    void aCoarserTapeRoundsMoreAndSaysSo() throws IOException {
        CommandRun run =
                chalk("smock.gusset", "Maren Oddway", "--unit", "in", "--tape", "1/8 in", "--out", folder.toString());
        assertThat(run.out()).contains("Rounded to the tape's 1/8 in").doesNotContain("/16 in across");
        assertThat(Files.readString(folder.resolve("smock-maren-oddway-chalk.txt")))
                .isEqualTo(run.out().substring(0, run.out().indexOf("The list is ")));
        assertThat(chalk("smock.gusset", "Maren Oddway", "--tape", "0.5 cm").out())
                .contains("Rounded to the tape's 0.5 cm, which is at most 0.25 cm each way.");
    }

    @Test
    void whatNoTapeHasIsRefusedWithWhatThereIs() {
        assertThat(chalk("smock.gusset", "Maren Oddway", "--tape", "3 mm").err())
                .contains("No tape in cm has parts of `3 mm`.", "0.5 mm, 1 mm, 2 mm");
        assertThat(chalk("smock.gusset", "Maren Oddway", "--unit", "in", "--tape", "1/3 in")
                        .err())
                .contains("1/16 in");
        assertThat(chalk("smock.gusset", "Maren Oddway", "--tape", "short").code())
                .isEqualTo(ExitCodes.WRONG_USE);
        assertThat(chalk("smock.gusset", "Maren Oddway", "--cutting-line", "--stitching-line")
                        .err())
                .contains("choose --stitching-line or --cutting-line");
    }

    @Test
    void theSameBodyGivesTheSameList() {
        assertThat(chalk("smock.gusset", "Pip Thistlewick").out())
                .isEqualTo(chalk("smock.gusset", "Pip Thistlewick").out());
    }
}
