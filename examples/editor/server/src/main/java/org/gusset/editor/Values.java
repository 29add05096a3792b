package org.gusset.editor;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.check.Finding;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.NamedValue;
import org.gusset.core.draft.PieceValues;
import org.gusset.core.draft.TraceLine;
import org.gusset.core.geometry.Point;
import org.gusset.core.measure.LengthStyle;

/** What everything in a drawing comes to, by full name, and how. */
final class Values {
    private final Drawing drawing;
    private final LengthStyle style;
    private final Map<String, String> shown = new HashMap<>();
    private final Map<String, String> sums = new HashMap<>();

    Values(Drawing drawing, LengthStyle style) {
        this.drawing = drawing;
        this.style = style;
        drawing.values().forEach(v -> shown.put(v.name(), show(v)));
        for (PieceValues piece : drawing.pieceValues()) {
            String owner = piece.piece() + ".";
            piece.values().forEach(v -> shown.put(owner + v.name(), show(v)));
            piece.points().forEach(p -> shown.put(owner + p.name(), show(p.point())));
            piece.lines().forEach(l -> shown.put(owner + l.name(), show(l)));
        }
        for (Finding finding : drawing.findings()) {
            shown.putIfAbsent(finding.name(), style.wording().say(finding.figures()));
        }
        for (TraceLine line : drawing.trace(style)) {
            sums.put(line.piece().isEmpty() ? line.name() : line.piece() + "." + line.name(), line.sentence());
        }
    }

    /** Whose values they are. */
    String body() {
        return drawing.measurements().body();
    }

    /** The value of a full name, as a drafter writes it. */
    Optional<String> value(String fullName) {
        return Optional.ofNullable(shown.get(fullName));
    }

    /** The sum that led to it. */
    Optional<String> sum(String fullName) {
        return Optional.ofNullable(sums.get(fullName)).filter(s -> !s.isBlank());
    }

    private String show(NamedValue value) {
        if (value instanceof NamedValue.Amount amount) {
            return style.show(amount.quantity()) + (amount.estimated() ? " (estimated)" : "");
        }
        return value instanceof NamedValue.Word word ? word.word() : ((NamedValue.Answer) value).yes() ? "yes" : "no";
    }

    private String show(Point point) {
        return along(point.x(), "right", "left") + ", " + along(point.y(), "down", "up");
    }

    private String along(double mm, String forward, String backward) {
        double rounded = style.rounded(mm);
        return style.show(Math.abs(mm)) + " " + (rounded < 0 ? backward : forward);
    }

    private String show(PieceValues.NamedLine line) {
        String length = style.show(line.length());
        String sewn = style.show(line.sewn());
        return length.equals(sewn) ? length + " long" : length + " long, sewn " + sewn;
    }
}
