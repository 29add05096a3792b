package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What the page about the JSON of drawings shows stands in the drawing that it speaks of. */
class JsonPageTest {
    @Test
    void everyExcerptStandsInTheDrawing() throws IOException {
        String page = Files.readString(Fitted.EXAMPLES.resolveSibling("docs/reference/json.md"));
        Map<String, Object> drawing = JSON.std.mapFrom(
                Objects.requireNonNull(JsonDrawings.sound().get("half-circle-skirt.gusset on Maren Oddway")));
        Matcher excerpt = Pattern.compile("(?s)```json\n(.*?)```").matcher(page);
        int count = 0;
        while (excerpt.find()) {
            Object shown = JSON.std.anyFrom(excerpt.group(1));
            assertThat(contains(drawing, shown)).as(excerpt.group(1)).isTrue();
            count++;
        }
        assertThat(count).isEqualTo(5);
        assertThat(contains(drawing, Map.of("name", "waist"))).isFalse();
    }

    private static boolean contains(@Nullable Object whole, Object part) {
        if (part.equals(whole)) {
            return true;
        }
        Collection<?> inside =
                whole instanceof Map<?, ?> map ? map.values() : whole instanceof List<?> list ? list : List.of();
        return inside.stream().anyMatch(one -> contains(one, part));
    }
}
