package org.gusset.workbench;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.NamedValue;
import org.gusset.core.draft.PieceValues;
import org.gusset.core.draft.StripPlan;
import org.gusset.core.geometry.Point;
import org.gusset.core.measure.Dimension;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.Unit;
import org.gusset.core.pattern.JoinPlan;

/** The values of a drawing as a table for people. */
final class ValuesText {
    private static final LengthStyle MM = new LengthStyle(Unit.MM, 0, 3);

    private final LengthStyle style;
    private final List<List<String>> rows = new ArrayList<>();

    private ValuesText(LengthStyle style) {
        this.style = style;
    }

    static void print(PrintWriter out, Drawing drawing, LengthStyle style) {
        out.println(drawing.title() + " for " + drawing.measurements().body());
        ValuesText text = new ValuesText(style);
        text.values(drawing.values());
        text.flush(out);
        for (PieceValues piece : drawing.pieceValues()) {
            out.println();
            out.println(piece.piece());
            text.values(piece.values());
            piece.points().forEach(p -> text.point(p.name(), p.point()));
            piece.lines().forEach(text::line);
            text.flush(out);
        }
        List<Finding> finished = drawing.findings().stream()
                .filter(f -> f.figures().key().equals("finished.figures"))
                .toList();
        if (!finished.isEmpty()) {
            out.println();
            out.println("Finished measures");
            finished.forEach(text::finished);
            text.flush(out);
        }
        if (!drawing.strips().isEmpty()) {
            out.println();
            out.println("Strips");
            drawing.strips().forEach(text::strip);
            text.flush(out);
        }
        out.println();
    }

    private void finished(Finding finding) {
        Map<String, Fact> facts = finding.figures().facts();
        rows.add(List.of(
                finding.name(),
                shown(facts, "finished"),
                "over " + shown(facts, "over") + " " + shown(facts, "body"),
                "ease " + shown(facts, "ease") + ", wanted " + shown(facts, "low") + " to " + shown(facts, "high")));
    }

    private String shown(Map<String, Fact> facts, String name) {
        Fact fact = facts.get(name);
        if (fact instanceof Fact.Length length) {
            return style.show(length.mm());
        }
        return fact instanceof Fact.Words words ? words.text() : "";
    }

    private void strip(StripPlan strip) {
        JoinPlan plan = strip.plan();
        String how = switch (plan.lie()) {
            case ALONG -> "along the warp";
            case ACROSS -> "across the cloth";
            case BIAS -> "on the bias";
        };
        String size = style.show(plan.cutLength()) + " by " + style.show(plan.cutWidth());
        String joined = plan.joins() == 0
                ? "in one length"
                : plan.lengths() + " lengths of " + style.show(plan.each()) + ", " + plan.joins()
                        + (plan.joins() == 1 ? " join" : " joins") + " of " + style.show(plan.allowance())
                        + " each side";
        String often = strip.strips() == 1 ? "" : strip.strips() + " times ";
        rows.add(List.of(strip.piece(), often + size, joined, how + " of " + strip.cloth()));
    }

    private void values(List<NamedValue> values) {
        for (NamedValue value : values) {
            if (value instanceof NamedValue.Amount amount) {
                row(value.name(), amount.quantity(), amount.estimated() ? "estimated" : "");
            } else {
                String shown = value instanceof NamedValue.Word word
                        ? word.word()
                        : ((NamedValue.Answer) value).yes() ? "yes" : "no";
                rows.add(List.of(value.name(), shown, "", ""));
            }
        }
    }

    private void row(String name, Quantity quantity, String note) {
        boolean both = quantity.dimension().length() != 0 && style.unit() != Unit.MM;
        rows.add(List.of(name, MM.show(quantity), both ? style.show(quantity) : "", note));
    }

    private void point(String name, Point point) {
        String there = style.unit() == Unit.MM ? "" : place(style, point);
        rows.add(List.of(name, place(MM, point), there, ""));
    }

    /** Right and down of the origin are positive, as in the language. */
    private static String place(LengthStyle style, Point point) {
        return "(" + style.show(point.x()) + ", " + style.show(point.y()) + ")";
    }

    private void line(PieceValues.NamedLine line) {
        boolean taken = Math.abs(line.length() - line.sewn()) > 1e-9;
        String sewn = taken ? "sewn " + style.show(line.sewn()) : "";
        String edge = line.edge() ? "edge" : "";
        String note = sewn.isEmpty() || edge.isEmpty() ? edge + sewn : edge + ", " + sewn;
        row(line.name(), new Quantity(line.length(), Dimension.LENGTH), note);
    }

    private void flush(PrintWriter out) {
        int[] widths = new int[4];
        for (List<String> row : rows) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        for (List<String> row : rows) {
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                text.append("  ")
                        .append(row.get(i))
                        .append(" ".repeat(widths[i] - row.get(i).length()));
            }
            out.println(text.toString().stripTrailing());
        }
        rows.clear();
    }
}
