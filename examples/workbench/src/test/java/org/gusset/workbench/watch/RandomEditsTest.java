package org.gusset.workbench.watch;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
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
import org.junit.jupiter.api.Test;

/**
 * A draft that is watched while anything at all is done to it: what is shown is always of the text as it stands, and the last good picture
 * stays. {@code -Dgusset.watch.random=10000} makes so many edits, {@code -Dgusset.watch.seed=1} others.
 */
class RandomEditsTest {
    private static final int EDITS = Integer.getInteger("gusset.watch.random", 150);
    private static final long SEED = Long.getLong("gusset.watch.seed", 20261130);
    private static final Path SMOCK =
            Path.of(System.getProperty("gusset.root", "../.."), "examples/drafts/smock.gusset");
    private static final List<String> SCRAPS = List.of(
            "{",
            "}",
            "(",
            "\"",
            "#",
            "=",
            " ",
            "\n",
            "\r\n",
            "\t",
            "piece",
            "point x = ",
            "Front.",
            "0 cm",
            "-",
            "1e9 cm",
            "cut 3",
            "seam s = Front.side to Back.side",
            "\uD83E\uDDF5",
            "\u0000",
            "length(",
            "chest");

    @Test
    void whateverIsWrittenThePageHasAnAnswer() throws IOException {
        String sound = Files.readString(SMOCK);
        Random random = new Random(SEED);
        WatchSession session = new WatchSession(
                text(sound),
                List.of(body("Ottilie Fenn", 960), body("Pip Thistlewick", 720)),
                Choices.none(),
                LengthStyle.CM,
                (body, measure, text, place) -> QuantityText.parse(text, place),
                SheetOptions.defaults());
        String now = sound;
        Object pictures = pictures(session.view(WatchAsk.of(Map.of())));
        int broken = 0;
        for (int i = 0; i < EDITS; i++) {
            now = random.nextInt(8) == 0 ? sound : edited(now, sound, random);
            WatchedText text = text(now);
            session.take(text);
            int onCard = random.nextInt(8);
            if (onCard < 2) {
                session.write("Ottilie Fenn", Map.of("measure-1", SCRAPS.get(random.nextInt(SCRAPS.size())) + " cm"));
            } else if (onCard < 4) {
                session.clear("Ottilie Fenn");
            }
            Map<String, Object> view = session.view(WatchAsk.of(Map.of(
                    "step",
                    String.valueOf(random.nextInt(3)),
                    "beside",
                    random.nextBoolean() ? "Pip Thistlewick" : "")));
            assertThat(JSON.std.asString(view)).startsWith("{\"version\":");
            assertThat(view).containsEntry("text", now);
            Map<String, Object> whole = session.view(WatchAsk.of(Map.of()));
            if (!text.sound()) {
                broken++;
                assertThat(bodies(whole).get(0)).containsEntry("stale", true);
                assertThat((List<?>) whole.get("messages")).isNotEmpty();
            }
            if (!text.sound() && onCard >= 4) {
                assertThat(pictures(whole)).as("edit %d", i).isEqualTo(pictures);
            }
            pictures = pictures(whole);
        }
        assertThat(broken).isGreaterThan(EDITS / 4);
        session.clear("Ottilie Fenn");
        session.take(text(sound));
        assertThat(bodies(session.view(WatchAsk.of(Map.of()))).get(0)).containsEntry("stale", false);
    }

    private static String edited(String text, String sound, Random random) {
        int at = random.nextInt(text.length() + 1);
        return switch (random.nextInt(4)) {
            case 0 -> text.substring(0, at) + text.substring(Math.min(text.length(), at + random.nextInt(12)));
            case 1 -> text.substring(0, at) + SCRAPS.get(random.nextInt(SCRAPS.size())) + text.substring(at);
            case 2 -> {
                int from = random.nextInt(sound.length());
                yield text.substring(0, at)
                        + sound.substring(from, Math.min(sound.length(), from + random.nextInt(200)))
                        + text.substring(at);
            }
            default -> text.substring(0, at) + (char) (32 + random.nextInt(95)) + text.substring(at);
        };
    }

    private static WatchedText text(String text) {
        Outcome<Draft> compiled = Gusset.compile(Source.of("smock.gusset", text));
        return new WatchedText(
                "smock.gusset", text, compiled.value(), compiled.diagnostics(), "", WatchedText.Names.none());
    }

    private static Measurements body(String name, double chest) {
        return Measurements.of(name)
                .with("chest", Quantity.length(chest))
                .with("shoulder_width", Quantity.length(chest * 0.42))
                .with("neck", Quantity.length(chest * 0.38))
                .with("upper_arm", Quantity.length(chest * 0.31))
                .with("arm_length", Quantity.length(560))
                .with("scye_depth", Quantity.length(chest / 8 + 105));
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> bodies(Map<String, Object> view) {
        return (List<Map<String, Object>>) Objects.requireNonNull(view.get("bodies"));
    }

    private static Object pictures(Map<String, Object> view) {
        return Objects.requireNonNull(bodies(view).get(0).get("pictures"));
    }
}
