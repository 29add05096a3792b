package org.gusset.dsl.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.gusset.core.construct.NumberFunction;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.junit.jupiter.api.Test;

class FunctionWordTest {
    @Test
    void everyFunctionIsFoundByItsName() {
        for (FunctionWord function : FunctionWord.values()) {
            assertThat(FunctionWord.of(function.word())).contains(function);
            assertThat(function.form()).startsWith(function.word() + "(").endsWith(")");
        }
        assertThat(FunctionWord.of("lenght")).isEmpty();
        assertThat(Arrays.stream(NumberFunction.values()).map(NumberFunction::word))
                .isSubsetOf(Arrays.stream(FunctionWord.values())
                        .map(FunctionWord::word)
                        .toList());
    }

    /** Called without anything, each says what it takes, in the words of the list. */
    @Test
    void aCallWithoutArgumentsTellsWhatIsTaken() {
        for (FunctionWord function : FunctionWord.values()) {
            assertThat(function.takes(0)).isFalse();
            String text = "draft \"Trial\"\nlet a = " + function.word() + "()\n";
            assertThat(Gusset.compile(Source.of("trial.gusset", text)).diagnostics())
                    .as(function.word())
                    .filteredOn(d -> d.code().id().equals("KND003"))
                    .singleElement()
                    .satisfies(d -> assertThat(d.phrase().toString()).contains(function.takes()));
        }
    }
}
