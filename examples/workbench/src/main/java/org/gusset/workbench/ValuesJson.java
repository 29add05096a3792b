package org.gusset.workbench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.NamedValue;
import org.gusset.core.draft.PieceValues;
import org.gusset.core.draft.StripPlan;
import org.gusset.core.pattern.JoinPlan;
import org.jspecify.annotations.Nullable;

/** The values of a drawing as maps for JSON: lengths in mm, areas in square mm, angles in degrees. */
final class ValuesJson {
    private ValuesJson() {}

    static Map<String, @Nullable Object> of(Drawing drawing) {
        Map<String, @Nullable Object> top = new LinkedHashMap<>();
        top.put("draft", drawing.title());
        top.put("body", drawing.measurements().body());
        top.put("fingerprint", drawing.fingerprint());
        top.put("proved", drawing.proved());
        top.put("estimated", drawing.estimated());
        top.put("values", values(drawing.values()));
        Map<String, @Nullable Object> pieces = new LinkedHashMap<>();
        for (PieceValues piece : drawing.pieceValues()) {
            pieces.put(piece.piece(), piece(piece));
        }
        top.put("pieces", pieces);
        top.put("finished", finished(drawing));
        top.put("strips", drawing.strips().stream().map(ValuesJson::strip).toList());
        return top;
    }

    /** The ease of each finished measure. */
    private static Map<String, @Nullable Object> finished(Drawing drawing) {
        Map<String, @Nullable Object> all = new LinkedHashMap<>();
        for (Finding finding : drawing.findings()) {
            if (finding.figures().key().equals("finished.figures")) {
                Map<String, @Nullable Object> one = new LinkedHashMap<>();
                for (String name : new String[] {"finished", "body", "ease"}) {
                    if (finding.figures().facts().get(name) instanceof Fact.Length length) {
                        one.put(name, number(length.mm()));
                    }
                }
                all.put(finding.name(), one);
            }
        }
        return all;
    }

    private static Map<String, @Nullable Object> strip(StripPlan strip) {
        JoinPlan plan = strip.plan();
        Map<String, @Nullable Object> one = new LinkedHashMap<>();
        one.put("piece", strip.piece());
        one.put("cloth", strip.cloth());
        one.put("strips", strip.strips());
        one.put("lie", plan.lie().name().toLowerCase(Locale.ROOT));
        one.put("cutLength", number(plan.cutLength()));
        one.put("cutWidth", number(plan.cutWidth()));
        one.put("lengths", plan.lengths());
        one.put("each", number(plan.each()));
        one.put("joinAllowance", number(plan.allowance()));
        return one;
    }

    private static Map<String, @Nullable Object> piece(PieceValues piece) {
        Map<String, @Nullable Object> points = new LinkedHashMap<>();
        for (PieceValues.NamedPoint point : piece.points()) {
            Map<String, @Nullable Object> place = new LinkedHashMap<>();
            place.put("x", number(point.point().x()));
            place.put("y", number(point.point().y()));
            points.put(point.name(), place);
        }
        Map<String, @Nullable Object> edges = new LinkedHashMap<>();
        Map<String, @Nullable Object> lines = new LinkedHashMap<>();
        for (PieceValues.NamedLine line : piece.lines()) {
            Map<String, @Nullable Object> lengths = new LinkedHashMap<>();
            lengths.put("length", number(line.length()));
            lengths.put("sewn", number(line.sewn()));
            (line.edge() ? edges : lines).put(line.name(), lengths);
        }
        Map<String, @Nullable Object> all = new LinkedHashMap<>();
        all.put("values", values(piece.values()));
        all.put("points", points);
        all.put("edges", edges);
        all.put("lines", lines);
        return all;
    }

    private static Map<String, @Nullable Object> values(List<NamedValue> values) {
        Map<String, @Nullable Object> all = new LinkedHashMap<>();
        for (NamedValue value : values) {
            all.put(value.name(), plain(value));
        }
        return all;
    }

    private static @Nullable Object plain(NamedValue value) {
        if (value instanceof NamedValue.Amount amount) {
            return number(amount.quantity().value());
        }
        return value instanceof NamedValue.Word word ? word.word() : ((NamedValue.Answer) value).yes();
    }

    /** Whole numbers without a point; nothing for what is no number. */
    private static @Nullable Object number(double value) {
        if (!Double.isFinite(value)) {
            return null;
        }
        if (value == Math.rint(value) && Math.abs(value) < 1L << 53) {
            return (long) value;
        }
        return value;
    }
}
