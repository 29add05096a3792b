package org.gusset.workbench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.json.DrawingJson;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;

/** Drawings as JSON, sound ones of the shipped drafts and broken ones, made once. */
final class JsonDrawings {
    /** Has what the shipped drafts lack: a piece that crosses itself, values of every kind, mistakes with and without an exact mending. */
    private static final String ODD = """
            gusset 1
            draft "Pockets for the prompter" "One of each."
            measure waist from 50 cm to 120 cm
            measure reach from 5 deg to 90 deg
            measure thigh
            choose flap = yes
            choose shape = round out of round, square
            choose deep = 20 cm from 10 cm to 30 cm
            fit lower = 0 cm from 0 cm to 4 cm "lower it"
            cloth felt wide 90 cm
            cloth plaid wide 150 cm long 2 m folded twice one way repeat 8 cm along, 6 cm across shrinks 3% along, 1% across stretch 40% across matching Tool.c
            let square = waist * waist
            let block = waist * waist * waist
            let part = 1/3
            piece Tool {
              step "Frame" {
                point a = origin
                point b = a right 20 cm
                point c = b down deep + lower
                point d = a down deep + lower
                line top = a to b
                line right_side = b to c
                line low = c to d
                line left_side = d to a
                say "A quarter of the waist is {waist / 4}."
              }
              outline top, right_side, low, left_side
              allow 1 cm, low 3 cm turned up
              cut 1 pair from felt
              cut 1 left from felt with allowance 5 mm
              grain bias
              mark drill a down 5 cm right 5 cm
              gather left_side to 15 cm
              pleat top to 10 cm with 2 box pleats
              label "this side up"
            }
            piece Crossed {
              point a = origin
              point b = a right 20 cm
              point c = a down 10 cm
              point d = b down 10 cm
              line one = a to d
              line two = d to b
              line three = b to c
              line four = c to a
              outline one, two, three, four
              allow 1 cm
              cut 1 from felt
            }
            piece Leg {
              point a = origin
              point b = a right thigh
              line one = a to b
              outline one
              allow 1 cm
              cut 1 from felt
            }
            strip Tie long 400 cm wide 4 cm on bias { allow 1 cm  cut 2 from felt }
            seam long_side = Tool.right_side to Tool.low ease 1 cm to 2 cm pressed open
            seam lost = Leg.one to Tool.low
            piece Flap if flap {
              point a = origin
              point b = a right 20 cm
              point c = a down 8 cm
              line one = a to b
              line two = b to c
              line three = c to a
              outline one, two, three
              allow 1 cm
              cut 1 from felt
            }
            check waist > 60 cm "The waist is {waist}."
            let lost_name = wiast / 2
            """;

    private static final Map<String, Drawing> SHIPPED = drawn();
    private static final Map<String, String> JSON = json();

    private JsonDrawings() {}

    /** By name, every shipped draft on every body of the cast. */
    static Map<String, Drawing> shipped() {
        return SHIPPED;
    }

    /** The same as JSON. */
    static Map<String, String> sound() {
        return JSON;
    }

    private static Map<String, String> json() {
        Map<String, String> all = new LinkedHashMap<>();
        SHIPPED.forEach((name, drawing) -> all.put(name, DrawingJson.of(drawing)));
        return all;
    }

    private static Map<String, Drawing> drawn() {
        Map<String, Drawing> all = new LinkedHashMap<>();
        for (String name : Fitted.drafts()) {
            Draft draft = Fitted.draft(name);
            Drawing before = null;
            for (String body : Fitted.cast()) {
                Measurements measured = Fitted.body(body);
                before = before == null
                        ? draft.evaluate(measured, Choices.none()).orThrow()
                        : before.with(measured);
                all.put(name + " on " + body, before);
            }
        }
        return all;
    }

    /** By name, drawings in which something is wrong. */
    static Map<String, String> broken() {
        Map<String, String> all = new LinkedHashMap<>();
        Draft shirt = Fitted.draft("shirt.gusset");
        Measurements maren = Fitted.body("Maren Oddway");
        all.put(
                "choices that are none",
                json(shirt.evaluate(
                        maren,
                        Choices.none()
                                .with("no_such", true)
                                .with(shirt.options().get(0).name(), "nonsense"))));
        all.put("a body without measures", json(shirt.evaluate(Measurements.of("Nobody"), Choices.none())));
        all.put("a body out of range", json(shirt.evaluate(maren.with("chest", Quantity.length(300)), Choices.none())));
        Outcome<Draft> odd = Gusset.compile(Source.of("odd.gusset", ODD));
        Measurements body = Measurements.of("Pip")
                .with("waist", Quantity.length(550))
                .with("reach", Quantity.angle(20))
                .with("lower", Quantity.length(10));
        List<Diagnostic> ofDraft = new ArrayList<>(odd.diagnostics());
        ofDraft.add(Diagnostic.of(SquareDraft.TestCode.WRONG, Place.nowhere(), "word", "x"));
        for (Choices choices : List.of(
                Choices.none(),
                Choices.none()
                        .with("flap", false)
                        .with("deep", Quantity.length(400))
                        .with("shape", "square"))) {
            Drawing drawing =
                    odd.value().orElseThrow().evaluate(body, choices).value().orElseThrow();
            all.put("odd " + all.size(), DrawingJson.of(drawing, LengthStyle.INCHES.wording(), ofDraft));
        }
        return all;
    }

    /** By name, what is told of drawings in which something is wrong. */
    static Map<String, List<Diagnostic>> brokenDrawings() {
        Map<String, List<Diagnostic>> all = new LinkedHashMap<>();
        Draft shirt = Fitted.draft("shirt.gusset");
        Measurements maren = Fitted.body("Maren Oddway");
        for (Measurements body : List.of(
                maren.with("chest", Quantity.length(1500)),
                maren.with("chest", Quantity.length(700)),
                maren.with("neck", Quantity.length(600)))) {
            all.put("shirt " + all.size(), shirt.evaluate(body, Choices.none()).diagnostics());
        }
        return all;
    }

    private static String json(Outcome<Drawing> outcome) {
        return DrawingJson.of(outcome.value().orElseThrow(), Wording.english());
    }
}
