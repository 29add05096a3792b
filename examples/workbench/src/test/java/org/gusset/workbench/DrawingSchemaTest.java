package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The JSON of drawings is what its schema says, and the schema lets nothing else in. Judged by a validator of JSON Schema 2020-12. */
class DrawingSchemaTest {
    private static final Path FILE =
            Fitted.EXAMPLES.resolveSibling("docs").resolve("reference").resolve("drawing.schema.json");
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    private final String text = read();
    private final Schema schema = REGISTRY.getSchema(text, InputFormat.JSON);

    private static String read() {
        try {
            return Files.readString(FILE);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private List<String> wrong(String json) {
        return schema.validate(json, InputFormat.JSON).stream()
                .map(e -> e.getInstanceLocation() + " " + e.getMessage())
                .toList();
    }

    @Test
    void theSchemaIsOne() {
        Schema meta = REGISTRY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(text, InputFormat.JSON)).isEmpty();
        assertThat(meta.validate("{\"type\": \"piece\"}", InputFormat.JSON)).isNotEmpty();
    }

    /** Every object tells all its fields, and every field is described. */
    @Test
    void theSchemaIsStrict() throws IOException {
        List<String> loose = new ArrayList<>();
        looseParts(JSON.std.mapFrom(text), "", loose);
        // The facts of a sentence are named by the sentence.
        assertThat(loose).containsExactly("/$defs/facts");
    }

    private static void looseParts(@Nullable Object part, String at, List<String> loose) {
        if (part instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                looseParts(list.get(i), at + "/" + i, loose);
            }
        } else if (part instanceof Map<?, ?> map) {
            if ("object".equals(map.get("type"))) {
                boolean strict = Boolean.FALSE.equals(map.get("additionalProperties"))
                        && map.get("properties") instanceof Map<?, ?> fields
                        && map.get("required") instanceof List<?> required
                        && new LinkedHashSet<Object>(required).equals(fields.keySet());
                if (!strict || !map.containsKey("description")) {
                    loose.add(at);
                }
            }
            map.forEach((key, value) -> looseParts(value, at + "/" + key, loose));
        }
    }

    @Test
    void everyShippedDrawingIsWhatTheSchemaSays() {
        JsonDrawings.sound()
                .forEach((name, json) -> assertThat(wrong(json)).as(name).isEmpty());
    }

    @Test
    void drawingsInWhichSomethingIsWrongAreToo() {
        JsonDrawings.broken().forEach((name, json) -> {
            assertThat(json).as(name).contains("\"proved\":false");
            assertThat(wrong(json)).as(name).isEmpty();
        });
    }

    /** Each kind of thing that the schema knows stands in some drawing, so that none is held to nothing. */
    @Test
    void theDrawingsHaveEveryKindThatTheSchemaKnows() throws IOException {
        Set<String> known = new TreeSet<>();
        kinds(JSON.std.mapFrom(text), known);
        Set<String> seen = new TreeSet<>();
        List<String> all = new ArrayList<>(JsonDrawings.broken().values());
        all.addAll(JsonDrawings.sound().values());
        for (String kind : known) {
            if (all.stream().anyMatch(json -> json.contains("\"kind\":\"" + kind + "\""))) {
                seen.add(kind);
            }
        }
        assertThat(known).hasSizeGreaterThan(20);
        assertThat(seen).isEqualTo(known);
        for (String field :
                List.of("darts", "fullness", "refused", "leftOut", "strips", "hems", "labels", "strokes", "matched")) {
            assertThat(all)
                    .as(field)
                    .anyMatch(json -> json.contains("\"" + field + "\":[{") || json.contains("\"" + field + "\":[\""));
        }
    }

    private static void kinds(@Nullable Object part, Set<String> known) {
        if (part instanceof List<?> list) {
            list.forEach(one -> kinds(one, known));
        } else if (part instanceof Map<?, ?> map) {
            if (map.get("kind") instanceof Map<?, ?> kind && kind.get("const") instanceof String word) {
                known.add(word);
            }
            map.values().forEach(one -> kinds(one, known));
        }
    }

    /** Each field of each kind of object, taken out, doubled under another name, and given another kind of value: all are refused. */
    @Test
    void aFieldThatIsMissingStrangeOrOfAnotherKindIsRefused() throws IOException {
        Map<String, Object> document =
                JSON.std.mapFrom(Objects.requireNonNull(JsonDrawings.sound().get("shirt.gusset on Maren Oddway")));
        Map<String, @Nullable Object> small = shortened(document);
        assertThat(wrong(written(small))).isEmpty();
        Tampering tampering = new Tampering();
        tampering.of(small, "");
        int tried = 0;
        for (Tampering.Change change : tampering.changes()) {
            change.make().run();
            assertThat(wrong(written(small))).as(change.what()).isNotEmpty();
            change.undo().run();
            tried++;
        }
        assertThat(tried).isGreaterThan(300);
        assertThat(wrong(written(small))).isEmpty();
    }

    /** A cloth of which all is told; the shipped drafts have none with a pattern to match. */
    @Test
    void allThatAClothCanSayOfItselfIsTold() throws IOException {
        Map<String, Object> whole =
                JSON.std.mapFrom(Objects.requireNonNull(JsonDrawings.broken().get("odd 3")));
        whole.put("cloths", ((List<?>) Objects.requireNonNull(whole.get("cloths"))).subList(1, 2));
        Map<String, @Nullable Object> document = shortened(whole);
        List<?> cloths = (List<?>) Objects.requireNonNull(document.get("cloths"));
        @SuppressWarnings("unchecked")
        Map<String, Object> plaid = (Map<String, Object>) cloths.get(0);
        assertThat(plaid).isEqualTo(JSON.std.mapFrom("""
                {"name": "plaid", "width": 1500, "length": 2000, "laid": "twice", "oneWay": true, "repeatAlong": 80,
                 "repeatAcross": 60, "shrinksAlong": 0.03, "shrinksAcross": 0.01, "stretchAlong": 0, "stretchAcross": 0.4,
                 "matched": [{"piece": "Tool", "name": "c", "at": [200, 210]}], "note": null}"""));
        assertThat(wrong(written(document))).isEmpty();
        Tampering tampering = new Tampering();
        tampering.of(Map.of("cloths", cloths), "");
        for (Tampering.Change change : tampering.changes()) {
            if (change.what().contains(".cloths[]")) {
                change.make().run();
                assertThat(wrong(written(document))).as(change.what()).isNotEmpty();
                change.undo().run();
            }
        }
        Map<String, Object> none = Map.of(
                "laid",
                "across",
                "shrinksAlong",
                1,
                "stretchAcross",
                -0.1,
                "repeatAcross",
                0,
                "matched",
                List.of(Map.of("piece", "Tool", "name", "c", "at", List.of(200))));
        for (Map.Entry<String, Object> one : none.entrySet()) {
            Object right = Objects.requireNonNull(plaid.put(one.getKey(), one.getValue()));
            assertThat(wrong(written(document))).as(one.getKey()).isNotEmpty();
            plaid.put(one.getKey(), right);
        }
        assertThat(wrong(written(document))).isEmpty();
    }

    private static String written(Map<String, ?> document) throws IOException {
        return JSON.std.with(JSON.Feature.WRITE_NULL_PROPERTIES).asString(document);
    }

    /** Lists cut to their first thing, points left whole, so that hundreds of readings take seconds. */
    private static Map<String, @Nullable Object> shortened(Map<String, ? extends @Nullable Object> map) {
        Map<String, @Nullable Object> out = new LinkedHashMap<>();
        map.forEach((key, value) -> out.put(key, shortenedValue(value)));
        return out;
    }

    @SuppressWarnings("unchecked")
    private static @Nullable Object shortenedValue(@Nullable Object value) {
        if (value instanceof Map<?, ?> map) {
            return shortened((Map<String, Object>) map);
        } else if (value instanceof List<?> list) {
            List<@Nullable Object> out = new ArrayList<>();
            boolean pair = list.size() == 2 && list.get(0) instanceof Number;
            for (Object one : list.subList(0, Math.min(pair ? 2 : 1, list.size()))) {
                out.add(shortenedValue(one));
            }
            return out;
        }
        return value;
    }
}
