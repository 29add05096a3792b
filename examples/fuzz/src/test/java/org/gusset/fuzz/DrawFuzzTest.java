package org.gusset.fuzz;

import com.code_intelligence.jazzer.junit.DictionaryFile;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.stream.Stream;
import org.gusset.dsl.Source;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.provider.MethodSource;

/** Any text that brings its measures along is drawn, and every document judged; the findings of other targets are kept here as text. */
@Timeout(60)
class DrawFuzzTest {
    static Stream<byte[]> seeds() {
        return Must.SEEKING ? Seeds.drafts() : Stream.empty();
    }

    @MethodSource("seeds")
    @DictionaryFile(resourcePath = "gusset.dict")
    @FuzzTest
    void draw(byte[] bytes) {
        Must.endSoon(() -> {
            String text = Texts.of(bytes);
            Measured measured = Measured.of(text);
            Drawn.all(Source.of("some.gusset", text), measured.body(), measured.choices());
        });
    }
}
