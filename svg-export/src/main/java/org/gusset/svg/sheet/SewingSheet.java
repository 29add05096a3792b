package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.check.Finding;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.draft.Cloth;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.StripPlan;
import org.gusset.core.geometry.Vector;
import org.gusset.core.pattern.Allowance;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Grain;
import org.gusset.core.pattern.JoinPlan;
import org.gusset.core.pattern.Notch;
import org.gusset.core.pattern.Piece;
import org.gusset.core.seam.Hem;
import org.gusset.core.seam.SewnSeam;
import org.gusset.core.seam.WalkedSide;

/**
 * The cutting and sewing sheet of a drawing: finished measures with their ease, pieces with counts, cloth, grain, allowances and notches, strips to
 * cut, and the seams in the order of sewing with their lengths. Only what the drawing tells.
 */
public final class SewingSheet {
    /** Nobody eases less, in mm; common practice, no source. */
    private static final double NO_EASE = 0.5;

    private final Drawing drawing;
    private final SheetOptions options;
    private final SheetContent content;
    private final Words words;

    private SewingSheet(Drawing drawing, SheetOptions options) {
        this.drawing = drawing;
        this.options = options;
        this.content = SheetContent.of(drawing);
        this.words = new Words(options.wording());
    }

    /** The sheet. */
    public static Form of(Drawing drawing, SheetOptions options) {
        return new SewingSheet(drawing, options).form();
    }

    private Form form() {
        LabelText label = new LabelText(content, options);
        List<String> notes = new ArrayList<>(label.warnings(3));
        content.choices().forEach(choice -> notes.add(words.choice(choice)));
        if (!content.estimated().isEmpty()) {
            notes.add(words.estimated(content.estimated()));
        }
        if (!content.leftOut().isEmpty()) {
            notes.add(words.leftOut(content.leftOut()));
        }
        List<Form.Section> sections = new ArrayList<>();
        add(sections, words.say("sew-finished", "Finished measures and ease"), finishedHeads(), finished());
        add(sections, words.say("sew-openings", "Openings"), List.of(), openings());
        add(sections, words.say("sew-cloth", "Cloth"), List.of(), cloths());
        add(sections, words.say("sew-pieces", "Pieces"), pieceHeads(), pieces());
        add(sections, words.say("sew-strips", "Strips to cut"), List.of(), strips());
        add(sections, words.say("sew-order", "Order of sewing"), seamHeads(), seams());
        add(sections, words.say("sew-hems", "Hems, when all seams are sewn"), List.of(), hems());
        return new Form(
                words.say("sew-title", "Cutting and sewing: {title}", "title", label.titleAndBody()),
                notes,
                sections,
                words.fingerprint(content.fingerprint()));
    }

    private static void add(List<Form.Section> sections, String title, List<String> heads, List<Form.Row> rows) {
        if (!rows.isEmpty()) {
            sections.add(new Form.Section(title, heads, rows));
        }
    }

    private List<String> finishedHeads() {
        return List.of(
                words.say("sew-measure", "measure"),
                words.say("sew-made", "finished"),
                words.say("sew-over", "over"),
                words.say("sew-ease", "ease"),
                words.say("sew-wanted", "wanted"));
    }

    private List<Form.Row> finished() {
        List<Form.Row> rows = new ArrayList<>();
        for (Finding finding : drawing.findings()) {
            Map<String, Fact> facts = finding.figures().facts();
            if (finding.figures().key().equals("finished.figures")) {
                rows.add(Form.Row.of(
                        Words.spoken(finding.name()),
                        shown(facts, "finished"),
                        Words.spoken(shown(facts, "over")) + " " + shown(facts, "body"),
                        shown(facts, "ease"),
                        words.say(
                                "sew-band",
                                finding.verdict() == Finding.Verdict.PASSED
                                        ? "{low} to {high}"
                                        : "{low} to {high}: IT IS NOT",
                                "low",
                                shown(facts, "low"),
                                "high",
                                shown(facts, "high"))));
            }
        }
        return rows;
    }

    private List<Form.Row> openings() {
        List<Form.Row> rows = new ArrayList<>();
        for (Finding finding : drawing.findings()) {
            Map<String, Fact> facts = finding.figures().facts();
            if (finding.figures().key().equals("opening.figures")) {
                rows.add(Form.Row.of(
                        Words.spoken(finding.name()),
                        words.say("sew-open", "{round} open", "round", shown(facts, "round")),
                        words.say(
                                finding.verdict() == Finding.Verdict.PASSED ? "sew-passes" : "sew-short",
                                finding.verdict() == Finding.Verdict.PASSED
                                        ? "passes {name} {girth}"
                                        : "TOO SMALL for {name} {girth}",
                                "name",
                                Words.spoken(shown(facts, "passes")),
                                "girth",
                                shown(facts, "girth"))));
            }
        }
        return rows;
    }

    private String shown(Map<String, Fact> facts, String name) {
        Fact fact = facts.get(name);
        return fact == null ? "" : words.say("sew-fact", "{fact}", "fact", fact);
    }

    private List<Form.Row> cloths() {
        List<Form.Row> rows = new ArrayList<>();
        for (Cloth cloth : content.cloths()) {
            rows.add(Form.Row.of(words.cloth(cloth)));
        }
        return rows;
    }

    private List<String> pieceHeads() {
        return List.of(
                words.say("sew-piece", "piece"),
                words.say("sew-cut", "cut"),
                words.say("sew-grain", "grain"),
                words.say("sew-allowance", "allowance"),
                words.say("sew-notches", "notches"));
    }

    private List<Form.Row> pieces() {
        List<Form.Row> rows = new ArrayList<>();
        for (int i = 0; i < content.pieces().size(); i++) {
            Piece piece = content.pieces().get(i);
            List<String> cuts = piece.cuts().stream().map(words::cut).toList();
            rows.add(Form.Row.of(
                    new Form.Words((i + 1) + ". " + Words.spoken(piece.name()), ""),
                    new Form.Words(String.join("; ", cuts), ""),
                    new Form.Words(grain(piece), ""),
                    new Form.Words(allowances(piece), ""),
                    new Form.Words(notches(piece), "")));
        }
        return rows;
    }

    private String allowances(Piece piece) {
        List<Edge> edges = piece.edges().stream().filter(e -> !e.onFold()).toList();
        Allowance common = Allowances.common(edges);
        List<String> told = new ArrayList<>();
        told.add(words.edgeAllowance(words.say("sew-edges", "edges"), common));
        Allowances.others(edges, common)
                .forEach(same -> told.add(words.edgeAllowance(Words.spoken(same.edges()), same.allowance())));
        return String.join("; ", told);
    }

    /** The edges along which the warp runs, or its angle off the piece's upright. */
    private String grain(Piece piece) {
        if (piece.grain().isEmpty()) {
            return words.say("no-grain", "no grain is told");
        }
        Grain grain = piece.grain().get();
        if (grain.bias()) {
            return words.say("sew-bias", "on the bias");
        }
        Vector warp = grain.to().minus(grain.from()).unit();
        List<String> along = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            Vector way = edge.path().end().minus(edge.path().start()).unit();
            if (edge.path().straight() && Math.abs(warp.cross(way)) < 1e-9) {
                along.add(Words.spoken(edge.name()));
            }
        }
        if (!along.isEmpty()) {
            return words.say("sew-along", "along {edges}", "edges", String.join(", ", along));
        }
        double off = Math.min(warp.degrees() % 180, 180 - warp.degrees() % 180);
        return off < 1e-6
                ? words.say("sew-level", "level on the piece")
                : Math.abs(off - 90) < 1e-6
                        ? words.say("sew-upright", "upright on the piece")
                        : words.say("sew-angle", "{angle} off level", "angle", Fact.angle(off));
    }

    private String notches(Piece piece) {
        List<String> strokes = List.of(
                "",
                words.say("sew-single", "single"),
                words.say("sew-double", "double"),
                words.say("sew-triple", "triple"));
        Map<String, List<String>> edges = new LinkedHashMap<>();
        for (Notch notch : piece.notches()) {
            edges.computeIfAbsent(Words.spoken(notch.edge()), e -> new ArrayList<>())
                    .add(strokes.get(notch.ticks().size()));
        }
        List<String> told = new ArrayList<>();
        edges.forEach((edge, kinds) -> told.add(edge + " " + String.join(", ", kinds)));
        return told.isEmpty() ? words.say("sew-none", "none") : String.join("; ", told);
    }

    private List<Form.Row> strips() {
        List<Form.Row> rows = new ArrayList<>();
        for (StripPlan strip : drawing.strips()) {
            JoinPlan plan = strip.plan();
            String lie = switch (plan.lie()) {
                case ALONG -> words.say("sew-lie-along", "along the warp");
                case ACROSS -> words.say("sew-lie-across", "across the cloth");
                case BIAS -> words.say("sew-bias", "on the bias");
            };
            rows.add(Form.Row.of(
                    Words.spoken(strip.piece()),
                    words.say(
                            strip.strips() == 1 ? "sew-strip" : "sew-strips",
                            strip.strips() == 1 ? "{length} by {width}" : "{count} times {length} by {width}",
                            "count",
                            strip.strips(),
                            "length",
                            Fact.length(plan.cutLength()),
                            "width",
                            Fact.length(plan.cutWidth())),
                    plan.joins() == 0
                            ? words.say("sew-one-length", "in one length")
                            : words.say(
                                    plan.joins() == 1 ? "sew-join" : "sew-joins",
                                    plan.joins() == 1
                                            ? "{lengths} lengths of {each}, 1 join of {allowance} each side"
                                            : "{lengths} lengths of {each}, {joins} joins of {allowance} each side",
                                    "lengths",
                                    plan.lengths(),
                                    "each",
                                    Fact.length(plan.each()),
                                    "joins",
                                    plan.joins(),
                                    "allowance",
                                    Fact.length(plan.allowance())),
                    words.say("sew-of", "{lie} of {cloth}", "lie", lie, "cloth", Words.spoken(strip.cloth()))));
        }
        return rows;
    }

    private List<String> seamHeads() {
        return List.of(
                words.say("sew-seam", "seam"),
                words.say("sew-first", "one side"),
                words.say("sew-second", "to the other"),
                words.say("sew-how", "how"));
    }

    private List<Form.Row> seams() {
        List<Form.Row> rows = new ArrayList<>();
        List<SewnSeam> seams = drawing.sewing().seams();
        for (int i = 0; i < seams.size(); i++) {
            SewnSeam seam = seams.get(i);
            boolean off = drawing.sewing().findings().get(i).verdict() == Finding.Verdict.FAILED;
            String ease = Math.abs(seam.ease()) < NO_EASE
                    ? ""
                    : words.say(
                            seam.ease() > 0 ? "sew-eased-one" : "sew-eased-other",
                            seam.ease() > 0 ? "Ease {ease} of the one side in. " : "Ease {ease} of the other side in. ",
                            "ease",
                            Fact.length(Math.abs(seam.ease())));
            String how =
                    ease + SeamWords.how(words, seam, drawing.sewing().needs().get(i)) + beforeClipping(seam);
            rows.add(Form.Row.of(
                    new Form.Words(
                            (i + 1) + ". " + Words.spoken(seam.name()),
                            off ? words.say("sew-off", "DOES NOT MATCH") : ""),
                    side(seam.first()),
                    side(seam.second()),
                    new Form.Words(how, "")));
        }
        return rows;
    }

    /** Curved edges are clipped and trimmed, which cannot be undone. */
    private String beforeClipping(SewnSeam seam) {
        boolean curved = seam.first().legs().stream()
                        .anyMatch(l -> !l.run().path().straight())
                || seam.second().legs().stream().anyMatch(l -> !l.run().path().straight());
        return curved ? words.say("sew-clip", " Check that both edges match before you trim or clip.") : "";
    }

    private List<Form.Row> hems() {
        List<Form.Row> rows = new ArrayList<>();
        for (Hem hem : drawing.sewing().hems()) {
            rows.add(Form.Row.of(
                    Words.spoken(hem.piece() + "." + hem.edge()),
                    words.say("sew-hem", "{width} turned up", "width", Fact.length(hem.width())),
                    hem.drops()
                            ? words.say(
                                    "sew-hem-drops",
                                    "it runs up to {angle} off the grain: let it hang for a day, then level it",
                                    "angle",
                                    Fact.angle(hem.offGrain()))
                            : ""));
        }
        return rows;
    }

    private Form.Cell side(WalkedSide side) {
        Map<String, Integer> edges = new LinkedHashMap<>();
        side.legs().forEach(leg -> edges.merge(Words.spoken(leg.run().words().replace("all ", "")), 1, Integer::sum));
        List<String> told = new ArrayList<>();
        edges.forEach((edge, count) -> told.add(
                count == 1 ? edge : words.say("sew-times", "{count} times {edge}", "count", count, "edge", edge)));
        String length = words.say("sew-fact", "{fact}", "fact", Fact.length(side.length()));
        return new Form.Words(length, String.join(" + ", told));
    }
}
