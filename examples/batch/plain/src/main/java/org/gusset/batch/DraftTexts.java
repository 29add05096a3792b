package org.gusset.batch;

import java.io.IOException;
import java.io.Serializable;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Draft;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;
import org.gusset.dsl.report.TextReport;

/**
 * A draft as text, with the texts of all drafts that it uses: what is sent to other machines, each of which compiles it once. A
 * compiled draft is never sent, since its stored form is its text.
 *
 * @param first the name of the draft
 * @param texts every text by its name, the draft's own first
 */
public record DraftTexts(String first, Map<String, String> texts) implements Serializable {
    public DraftTexts {
        texts = new LinkedHashMap<>(texts);
    }

    /** Reads a draft and what it uses; names in it count from its folder, and none leads out of that. */
    public static DraftTexts read(Path file) {
        Path named = file.getFileName();
        Path folder = file.toAbsolutePath().normalize().getParent();
        if (named == null || folder == null || !Files.isRegularFile(file)) {
            throw new BatchException("There is no draft `" + file + "`.");
        }
        Map<String, String> texts = new LinkedHashMap<>();
        String first = named.toString();
        texts.put(first, text(file));
        new DraftTexts(first, texts).compile((name, asking) -> {
            String inside = resolved(name, asking.name());
            Path path = inside.isEmpty() ? folder : folder.resolve(inside);
            if (inside.isEmpty() || !Files.isRegularFile(path)) {
                return Sources.Answer.none("there is no such file in the folder of this draft");
            }
            texts.putIfAbsent(inside, text(path));
            return Sources.Answer.of(Source.of(inside, texts.get(inside)));
        });
        return new DraftTexts(first, texts);
    }

    /**
     * The draft, compiled.
     *
     * @throws BatchException with all messages if it has errors
     */
    public Draft compile() {
        return compile((name, asking) -> {
            String inside = resolved(name, asking.name());
            String text = texts.get(inside);
            return text == null
                    ? Sources.Answer.none("it was not sent along")
                    : Sources.Answer.of(Source.of(inside, text));
        });
    }

    private Draft compile(Sources sources) {
        Source source = Source.of(first, String.valueOf(texts.get(first)));
        Outcome<Draft> outcome = Gusset.compile(source, sources);
        if (outcome.value().isEmpty() || outcome.hasErrors()) {
            throw new BatchException(
                    "The draft has errors:\n" + TextReport.of(source).all(outcome.diagnostics()));
        }
        return outcome.value().get();
    }

    /** The name counted from the folder of the text that asks; empty if it leads out of the first draft's folder. */
    private static String resolved(String name, String asking) {
        Path folder = Path.of(asking).getParent();
        Path path = (folder == null ? Path.of(name) : folder.resolve(name)).normalize();
        String inside = path.toString().replace('\\', '/');
        return path.isAbsolute() || inside.equals("..") || inside.startsWith("../") ? "" : inside;
    }

    private static String text(Path file) {
        try {
            byte[] bytes = Files.readAllBytes(file);
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(java.nio.ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith("\ufeff") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new BatchException("The draft `" + file + "` is not UTF-8 text.", e);
        } catch (IOException e) {
            throw new BatchException("The draft `" + file + "` cannot be read: " + e.getMessage() + ".", e);
        }
    }
}
