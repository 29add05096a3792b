package org.gusset.core.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.draft.Cloth;
import org.gusset.core.draft.ClothWays;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.draft.NamedValue;
import org.gusset.core.draft.Step;
import org.gusset.core.draft.StripPlan;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.core.pattern.JoinPlan;

/**
 * A drawing as JSON (RFC 8259) for other programs: all that it holds, its outlines as the exact lines, arcs and cubic curves. This is
 * the stored form of a drawing; {@code docs/reference/drawing.schema.json} is its schema, and tells every field and its unit.
 *
 * <p>Lengths are in mm, areas in square mm, angles in degrees; y counts down and angles turn anticlockwise as seen. Numbers are the
 * shortest decimals that read back as the same bits, {@code null} where there is no number. The same drawing gives the same bytes.
 */
public final class DrawingJson {
    /** What the field {@code form} says. */
    public static final String FORM = "gusset-drawing";

    /** What the field {@code formVersion} says; counted up when a field changes its meaning or goes. */
    public static final int FORM_VERSION = 1;

    private final JsonText json = new JsonText();
    private final Drawing drawing;
    private final Wording wording;
    private final Amounts amounts = new Amounts(json);

    private final List<Diagnostic> ofDraft;

    private DrawingJson(Drawing drawing, Wording wording, List<Diagnostic> ofDraft) {
        this.drawing = drawing;
        this.wording = wording;
        this.ofDraft = ofDraft;
    }

    /** The drawing; sentences in English with lengths in centimetres. */
    public static String of(Drawing drawing) {
        return of(drawing, Wording.english());
    }

    /** The drawing; sentences in English with lengths in this style. */
    public static String of(Drawing drawing, LengthStyle lengths) {
        return of(drawing, lengths.wording());
    }

    /** The drawing; sentences in other words. */
    public static String of(Drawing drawing, Wording wording) {
        return of(drawing, wording, List.of());
    }

    /**
     * The drawing of a draft that has messages of its own.
     *
     * @param ofDraft the messages about the draft's text, which a drawing does not hold; they stand before its own, and with an error
     *     among them it is not proved
     */
    public static String of(Drawing drawing, Wording wording, List<Diagnostic> ofDraft) {
        return new DrawingJson(drawing, wording, ofDraft).whole();
    }

    /** What the checks and seams found alone: the array that stands in {@code findings}. */
    public static String findings(Drawing drawing, Wording wording) {
        JsonText json = new JsonText();
        new Findings(json, wording).all(drawing.findings());
        return json.toString();
    }

    /** The teaching steps alone: the array that stands in {@code steps}. */
    public static String steps(Drawing drawing, Wording wording) {
        DrawingJson alone = new DrawingJson(drawing, wording, List.of());
        alone.steps();
        return alone.json.toString();
    }

    private String whole() {
        json.open('{').key("form").text(FORM).key("formVersion").number(FORM_VERSION);
        json.key("library").text(Draft.LIBRARY_VERSION);
        json.key("fingerprint").text(drawing.fingerprint());
        json.key("title").text(drawing.title()).key("note").text(drawing.note());
        json.key("body").text(drawing.measurements().body());
        json.key("proved").truth(drawing.proved() && ofDraft.stream().noneMatch(Diagnostic::isError));
        values();
        json.key("cloths").open('[');
        drawing.cloths().forEach(this::cloth);
        json.close(']');
        Pieces pieces = new Pieces(json, wording, drawing);
        json.key("pieces");
        pieces.sound();
        json.key("refused");
        pieces.refused();
        json.key("leftOut").open('[');
        drawing.leftOut().forEach(json::text);
        json.close(']').key("strips").open('[');
        drawing.strips().forEach(this::strip);
        json.close(']').key("steps");
        steps();
        json.key("findings");
        new Findings(json, wording).all(drawing.findings());
        json.key("sewing");
        new Seams(json, wording).sewing(drawing.sewing());
        json.key("diagnostics");
        List<Diagnostic> all = new ArrayList<>(ofDraft);
        all.addAll(drawing.diagnostics());
        new Messages(json, wording).all(all);
        return json.close('}').toString();
    }

    private void values() {
        Map<String, NamedValue> known = new LinkedHashMap<>();
        drawing.values().forEach(value -> known.put(value.name(), value));
        json.key("measures").open('[');
        for (Draft.Measure measure : drawing.draft().measures()) {
            Optional<NamedValue> value = Optional.ofNullable(known.remove(measure.name()));
            boolean estimated = value.isPresent() && value.get() instanceof NamedValue.Amount a && a.estimated();
            named(measure.name(), value, value.isEmpty() ? "none" : estimated ? "estimated" : "measured");
        }
        json.close(']').key("choices").open('[');
        for (Draft.Option option : drawing.draft().options()) {
            named(option.name(), Optional.ofNullable(known.remove(option.name())), source(option));
        }
        json.close(']').key("values").open('[');
        for (NamedValue value : known.values()) {
            json.open('{').key("name").text(value.name()).key("value");
            amounts.value(value);
            json.close('}');
        }
        json.close(']');
    }

    private String source(Draft.Option option) {
        Measurements body = drawing.measurements();
        if (drawing.choices().settings().containsKey(option.name())) {
            return "chosen";
        }
        return option.fit() && body.entry(option.name()).isPresent() ? "measured" : "default";
    }

    private void named(String name, Optional<NamedValue> value, String source) {
        json.open('{').key("name").text(name).key("source").text(source).key("value");
        if (value.isPresent()) {
            amounts.value(value.get());
        } else {
            json.none();
        }
        json.close('}');
    }

    private void cloth(Cloth cloth) {
        json.open('{').key("name").text(cloth.name()).key("width").number(cloth.width());
        json.key("length");
        json.numberOrNone(cloth.length());
        ways(cloth.ways());
        json.key("note");
        json.textOrNone(cloth.note());
        json.close('}');
    }

    private void ways(ClothWays ways) {
        json.key("laid");
        json.textOrNone(ways.laid().map(laid -> laid.name().toLowerCase(Locale.ROOT)));
        json.key("oneWay").truth(ways.oneWay());
        json.key("repeatAlong");
        json.numberOrNone(ways.repeatAlong());
        json.key("repeatAcross");
        json.numberOrNone(ways.repeatAcross());
        json.key("shrinksAlong").number(ways.shrinksAlong());
        json.key("shrinksAcross").number(ways.shrinksAcross());
        json.key("stretchAlong").number(ways.stretchAlong());
        json.key("stretchAcross").number(ways.stretchAcross());
        json.key("matched").open('[');
        for (ClothWays.Matched matched : ways.matched()) {
            json.open('{').key("piece").text(matched.piece()).key("name").text(matched.name());
            json.key("at");
            amounts.point(matched.at());
            json.close('}');
        }
        json.close(']');
    }

    private void strip(StripPlan strip) {
        JoinPlan plan = strip.plan();
        json.open('{').key("piece").text(strip.piece()).key("cloth").text(strip.cloth());
        json.key("strips").number(strip.strips());
        json.key("lie").text(plan.lie().name().toLowerCase(Locale.ROOT));
        json.key("cutLength").number(plan.cutLength()).key("cutWidth").number(plan.cutWidth());
        json.key("longest").number(plan.longest());
        json.key("lengths").number(plan.lengths()).key("each").number(plan.each());
        json.key("joinAllowance").number(plan.allowance()).close('}');
    }

    private void steps() {
        json.open('[');
        for (Step step : drawing.steps()) {
            json.open('{').key("piece").text(step.piece()).key("title").text(step.title());
            json.key("names").open('[');
            step.names().forEach(json::text);
            json.close(']').key("words").open('[');
            List<String> words = step.words().stream().map(wording::say).toList();
            words.forEach(json::text);
            json.close(']').close('}');
        }
        json.close(']');
    }
}
