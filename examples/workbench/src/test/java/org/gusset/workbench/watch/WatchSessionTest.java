package org.gusset.workbench.watch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.QuantityText;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.svg.sheet.SheetOptions;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class WatchSessionTest {
    private static final String DRAFT = """
            gusset 1
            draft "A call sheet's bag"
            measure width from 10 cm to 60 cm "of the call sheet"
            choose depth = 30 cm from 10 cm to 50 cm
            piece Bag {
              point top = origin
              point far = top right width
              point low = far down depth
              point foot = low left width
              line mouth = top to far
              line side = far to low
              line base = low to foot
              line back = foot to top
              outline mouth, side, base, back
              allow 1 cm
              grain along side
              cut 2
            }
            check length(Bag.mouth) >= 20 cm "The mouth is only {length(Bag.mouth)}."
            check length(Bag.side) >= 1 m "The side is only {length(Bag.side)}."
            """;

    private static WatchedText text(String text) {
        Outcome<Draft> compiled = Gusset.compile(Source.of("bag.gusset", text));
        return new WatchedText(
                "bag.gusset",
                text,
                compiled.value(),
                compiled.diagnostics(),
                "",
                new WatchedText.Names(
                        Map.of("Bag.low", 8), Map.of(20, List.of("Bag.side", "Bag"), 8, List.of("Bag.far"))));
    }

    private static Measurements body(String name, double cm) {
        return Measurements.of(name).with("width", Quantity.length(10 * cm));
    }

    private static WatchSession session() {
        return new WatchSession(
                text(DRAFT),
                List.of(body("Ottilie Fenn", 24), body("Maren Oddway", 30)),
                Choices.none(),
                LengthStyle.CM,
                (body, measure, text, place) -> QuantityText.parse(text, place),
                SheetOptions.defaults());
    }

    private static Map<String, Object> view(WatchSession session) {
        return session.view(WatchAsk.of(Map.of()));
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> list(@Nullable Object of) {
        return (List<Map<String, Object>>) Objects.requireNonNull(of);
    }

    private static Object part(Map<?, ?> of, String name) {
        return Objects.requireNonNull(of.get(name));
    }

    private static List<Map<String, Object>> measures(Map<String, Object> view) {
        return list(((Map<?, ?>) part(view, "card")).get("measures"));
    }

    private static Map<String, Object> first(Map<String, Object> view) {
        return list(view.get("bodies")).get(0);
    }

    @Test
    void theWorstSeamOrCheckStandsFirst() {
        List<Map<String, Object>> seams = list(first(view(session())).get("seams"));
        assertThat(seams.get(0)).containsEntry("state", "fails").containsEntry("line", 20);
        assertThat(seams.subList(1, seams.size())).isNotEmpty().noneMatch(s -> "fails".equals(s.get("state")));
    }

    @Test
    void namesHaveTheirSumAndTheirLine() {
        assertThat(list(view(session()).get("names")))
                .filteredOn(n -> "low".equals(n.get("name")))
                .singleElement()
                .satisfies(n -> {
                    assertThat(n).containsEntry("piece", "Bag").containsEntry("line", 8);
                    assertThat(part(n, "sentence").toString()).contains("down", "30 cm");
                });
    }

    @Test
    void aLineThatMakesNothingSpeaksOfWhatStandsOnIt() {
        Map<String, Object> view = view(session());
        List<Map<String, Object>> names = list(view.get("names"));
        Map<?, ?> speaks = (Map<?, ?>) part(view, "speaks");
        assertThat(speaks.keySet()).asString().isEqualTo("[20]");
        assertThat((List<?>) part(speaks, "20"))
                .singleElement()
                .satisfies(number -> assertThat(names.get((Integer) number)).containsEntry("name", "side"));
    }

    @Test
    void whileTheTextIsBrokenTheLastGoodPictureStays() {
        WatchSession session = session();
        Object good = first(view(session)).get("pictures");
        long before = session.version();
        session.take(text(DRAFT.replace("down depth", "down deep")));
        Map<String, Object> broken = view(session);
        assertThat(session.version()).isGreaterThan(before);
        assertThat(first(broken)).containsEntry("stale", true).containsEntry("pictures", good);
        assertThat(list(broken.get("messages")))
                .anyMatch(m -> Boolean.TRUE.equals(m.get("error"))
                        && Integer.valueOf(8).equals(m.get("line")));
        session.take(text(DRAFT.replace("down depth", "down depth * 2")));
        Map<String, Object> mended = view(session);
        assertThat(first(mended)).containsEntry("stale", false);
        assertThat(first(mended).get("pictures")).isNotEqualTo(good);
    }

    @Test
    void aFileThatCannotBeReadKeepsItsText() {
        WatchSession session = session();
        session.take(new WatchedText(
                "bag.gusset", DRAFT, Optional.empty(), List.of(), "It is not there.", WatchedText.Names.none()));
        Map<String, Object> view = view(session);
        assertThat(view).containsEntry("text", DRAFT).containsEntry("trouble", "It is not there.");
        assertThat(first(view)).containsEntry("stale", true);
        assertThat(list(first(view).get("pictures"))).hasSize(1);
    }

    @Test
    void whatIsWrittenOnTheCardIsDrawnAndOutlivesAnEdit() {
        WatchSession session = session();
        Object before = first(view(session)).get("pictures");
        session.write("Ottilie Fenn", Map.of("measure-1", "40 cm", "choice-1", "30 cm"));
        Object wider = first(view(session)).get("pictures");
        assertThat(wider).isNotEqualTo(before);
        session.take(text(DRAFT.replace("allow 1 cm", "allow 2 cm")));
        assertThat(measures(view(session)).get(0)).containsEntry("text", "40 cm");
        session.take(text(DRAFT));
        assertThat(first(view(session)).get("pictures")).isEqualTo(wider);
        session.clear("Ottilie Fenn");
        assertThat(first(view(session)).get("pictures")).isEqualTo(before);
    }

    @Test
    void whatCannotBeReadIsToldAtItsField() {
        WatchSession session = session();
        session.write("Ottilie Fenn", Map.of("measure-1", "a wagon", "choice-1", "30 cm"));
        Map<String, Object> field = measures(view(session)).get(0);
        assertThat(field).containsEntry("text", "a wagon");
        assertThat(part(field, "wrong").toString()).contains("a wagon");
    }

    @Test
    void whatWasNotMeasuredIsSlidFromItsEstimate() {
        WatchSession session = new WatchSession(
                text(DRAFT.replace("to 60 cm \"of", "to 60 cm else 32 cm \"of")),
                List.of(Measurements.of("Ottilie Fenn")),
                Choices.none(),
                LengthStyle.CM,
                (body, measure, text, place) -> QuantityText.parse(text, place),
                SheetOptions.defaults());
        Map<String, Object> field = measures(view(session)).get(0);
        assertThat(field).containsEntry("text", "");
        assertThat((Map<?, ?>) part(field, "slide"))
                .hasToString("{from=22.0, to=42.0, step=0.5, unit=cm, parts=0, at=32.0}");
        session.write("Ottilie Fenn", Map.of("measure-1", "40 cm", "choice-1", "30 cm"));
        assertThat(((Map<?, ?>) part(measures(view(session)).get(0), "slide")).get("at"))
                .isEqualTo(40.0);
    }

    @Test
    void bodiesStandBesideOneAnother() {
        Map<String, Object> view = session()
                .view(WatchAsk.of(Map.of("body", "Maren Oddway", "beside", "Ottilie Fenn\nNobody", "step", "1")));
        assertThat(list(view.get("bodies")))
                .extracting(b -> b.get("name"))
                .containsExactly("Maren Oddway", "Ottilie Fenn");
        assertThat(view).containsEntry("step", 1);
    }

    @Test
    void whatIsAskedWronglyIsAsAtFirst() {
        assertThat(WatchAsk.of(Map.of("step", "99999999999", "body", "Nobody")).step())
                .isZero();
        Map<String, Object> view = session().view(WatchAsk.of(Map.of("step", "4000", "body", "Nobody")));
        assertThat(first(view)).containsEntry("name", "Ottilie Fenn");
        assertThat((Integer) part(view, "step"))
                .isEqualTo(list(view.get("steps")).size());
    }

    @Test
    void aDraftIsWatchedOnABody() {
        assertThatThrownBy(() -> new WatchSession(
                        text(DRAFT),
                        List.of(),
                        Choices.none(),
                        LengthStyle.CM,
                        (body, measure, text, place) -> QuantityText.parse(text, place),
                        SheetOptions.defaults()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
