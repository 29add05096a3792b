package org.gusset.embedding.plain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.PieceValues;
import org.gusset.core.measure.LengthStyle;
import org.gusset.svg.Svg;

/** Holds two drawings to each other, to the last bit; places differ, since a draft in Java has no text. */
final class SameDrawing {
    private SameDrawing() {}

    static void holds(Drawing plain, Drawing written, String body) {
        assertThat(plain.pieces()).as("pieces of " + body).isEqualTo(written.pieces());
        assertThat(plain.values()).as("values of " + body).isEqualTo(written.values());
        assertThat(named(plain)).as("what the pieces of " + body + " name").isEqualTo(named(written));
        assertThat(plain.steps()).as("steps of " + body).isEqualTo(written.steps());
        assertThat(told(plain.findings())).as("findings of " + body).isEqualTo(told(written.findings()));
        assertThat(told(plain.sewing().seams()))
                .as("seams of " + body)
                .isEqualTo(told(written.sewing().seams()));
        assertThat(plain.sewing().needs()).isEqualTo(written.sewing().needs());
        assertThat(told(plain.sewing().hems())).isEqualTo(told(written.sewing().hems()));
        assertThat(plain.leftOut()).isEqualTo(written.leftOut());
        assertThat(plain.cloths()).isEqualTo(written.cloths());
        assertThat(messages(plain)).as("messages of " + body).isEqualTo(messages(written));
        assertThat(trace(plain)).as("trace of " + body).isEqualTo(trace(written));
        assertThat(sheet(plain)).as("sheet of " + body).isEqualTo(sheet(written));
    }

    /** The sheet without the words on the pieces, which are placed by their widths, the fingerprint's among them. */
    private static List<String> sheet(Drawing drawing) {
        return Svg.sheet(drawing)
                .lines()
                .filter(l -> !l.matches(".*class=\"(piece-name|cut-count|label|small-print|warning)\".*"))
                .map(l -> l.replace(drawing.fingerprint(), "FINGERPRINT"))
                .toList();
    }

    /** In the order of names: a handle must be there before it is used, where the text may change a traced line later. */
    private static List<String> named(Drawing drawing) {
        return drawing.pieceValues().stream()
                .map(p -> new PieceValues(
                                p.piece(),
                                p.values(),
                                p.points().stream()
                                        .sorted(Comparator.comparing(PieceValues.NamedPoint::name))
                                        .toList(),
                                p.lines())
                        .toString())
                .toList();
    }

    private static List<String> trace(Drawing drawing) {
        return drawing.trace(LengthStyle.CM).stream()
                .map(Object::toString)
                .sorted()
                .toList();
    }

    private static List<String> messages(Drawing drawing) {
        return drawing.diagnostics().stream()
                .map(d -> d.severity() + " " + d.phrase())
                .sorted()
                .toList();
    }

    /** Every figure to the last bit, as records print them, without places; a condition is told as it is written. */
    private static List<String> told(List<?> records) {
        return records.stream()
                .map(r -> r.toString()
                        .replaceAll("(place|Related)=?\\[?=?(Span|Named|Nowhere|Cell)\\[[^\\]]*\\]", "place=_")
                        .replace("<= 1 1/2 cm", "<= 1.5 cm")
                        .replaceAll("\\s+", " "))
                .toList();
    }
}
