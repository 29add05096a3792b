package org.gusset.fuzz;

import com.code_intelligence.jazzer.junit.DictionaryFile;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.List;
import java.util.stream.Stream;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Draft;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.dsl.lint.Linter;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.provider.MethodSource;

/** Any text is compiled: each message can be read and lies within the text, and the same text gives the same messages. */
@Timeout(60)
class CompileFuzzTest {
    static Stream<byte[]> seeds() {
        return Seeds.drafts();
    }

    @MethodSource("seeds")
    @DictionaryFile(resourcePath = "gusset.dict")
    @FuzzTest
    void compile(byte[] bytes) {
        Must.endSoon(() -> text(Texts.of(bytes)));
    }

    private static void text(String text) {
        Source source = Source.of("some.gusset", text);
        Outcome<Draft> compiled = Gusset.compile(source, Seeds.shelf(), Drawn.STRANGER);
        Judge.messages(compiled.diagnostics(), source);
        List<Diagnostic> again =
                Gusset.compile(source, Seeds.shelf(), Drawn.STRANGER).diagnostics();
        Must.equal(compiled.diagnostics(), again, "compiled twice");
        Judge.messages(Linter.lint(source), source);
    }
}
