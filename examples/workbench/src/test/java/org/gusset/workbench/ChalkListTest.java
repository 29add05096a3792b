package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.gusset.core.chalk.ChalkFrame;
import org.gusset.core.chalk.ChalkLine;
import org.gusset.core.chalk.ChalkList;
import org.gusset.core.chalk.ChalkMark;
import org.gusset.core.chalk.ChalkPiece;
import org.gusset.core.chalk.ChalkStroke;
import org.gusset.core.chalk.Tape;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every shipped draft as a chalk list. */
class ChalkListTest {
    static List<String> drafts() {
        return Fitted.drafts();
    }

    private static Stream<ChalkList> lists(String draft) {
        return Fitted.cast().stream().flatMap(body -> {
            Drawing drawing = Fitted.drawing(draft, body);
            return Stream.of(Tape.CENTIMETRES, Tape.INCHES)
                    .flatMap(tape -> Stream.of(ChalkLine.values()).map(line -> ChalkList.of(drawing, line, tape)));
        });
    }

    /** Both roundings of a mark at their largest give the half part times the root of two. */
    @ParameterizedTest
    @MethodSource("drafts")
    void marksAreWithinTheTapeAndCurvesWithinTwoMillimetres(String draft) {
        lists(draft).forEach(list -> {
            assertThat(list.pieces()).isNotEmpty();
            for (ChalkPiece piece : list.pieces()) {
                String name = draft + " " + list.line() + " " + piece.piece().name();
                assertThat(piece.largestError())
                        .as(name)
                        .isLessThanOrEqualTo(list.tape().error() * Math.sqrt(2) + 1e-9);
                assertThat(piece.largestStray()).as(name).isLessThanOrEqualTo(2);
            }
        });
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void theStrokesRunRoundEachPiece(String draft) {
        lists(draft)
                .forEach(list -> list.pieces().forEach(piece -> {
                    List<ChalkStroke> strokes = piece.outline();
                    for (int i = 0; i < strokes.size(); i++) {
                        assertThat(strokes.get(i).to())
                                .isEqualTo(strokes.get((i + 1) % strokes.size()).from());
                    }
                    assertThat(piece.marks().stream().map(ChalkMark::down)).allMatch(d -> d >= 0);
                    if (piece.frame().base() != ChalkFrame.Base.GRAIN) {
                        assertThat(piece.outline().stream().map(s -> s.from().across()))
                                .as(draft + " " + piece.piece().name())
                                .allMatch(a -> a >= 0);
                    }
                }));
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void whatIsCutOnAFoldIsSetOffFromIt(String draft) {
        lists(draft)
                .forEach(list -> list.pieces().stream()
                        .filter(p -> p.within().isEmpty())
                        .forEach(piece -> assertThat(piece.frame().base() == ChalkFrame.Base.FOLD)
                                .isEqualTo(piece.piece().fold().isPresent())));
    }

    @ParameterizedTest
    @MethodSource("tapes")
    void aTapeShowsWhatItRoundsTo(String part) {
        Unit unit = part.startsWith("1/") ? Unit.IN : Unit.CM;
        double mm = unit == Unit.IN ? 25.4 / Integer.parseInt(part.substring(2)) : Double.parseDouble(part);
        Optional<Tape> tape = Tape.of(unit, mm);
        assertThat(tape).isPresent();
        for (double length : new double[] {0, 0.24, 0.25, 0.26, 123.4567, 999.9999, -17.3}) {
            double rounded = tape.get().rounded(length);
            assertThat(Math.abs(rounded - length)).isLessThanOrEqualTo(mm / 2 + 1e-9);
            double parts = rounded / mm;
            assertThat(parts).isCloseTo(Math.rint(parts), org.assertj.core.data.Offset.offset(1e-9));
            // What is written loses nothing of it.
            assertThat(tape.get().style().rounded(rounded))
                    .isCloseTo(rounded, org.assertj.core.data.Offset.offset(1e-9));
        }
    }

    static List<String> tapes() {
        return List.of("0.5", "1", "2", "5", "10", "1/1", "1/2", "1/4", "1/8", "1/16", "1/32", "1/64");
    }
}
