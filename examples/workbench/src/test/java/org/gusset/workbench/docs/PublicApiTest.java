package org.gusset.workbench.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.gusset.core.draft.Draft;
import org.gusset.dsl.Gusset;
import org.gusset.svg.Svg;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The lists of what the modules offer. A change of them is seen where it is read before it is taken in;
 * {@code -Dgolden.update=true} writes them anew, never in CI.
 */
class PublicApiTest {
    private static final Path LISTS =
            Path.of(System.getProperty("gusset.root", "../..")).resolve("docs/reference/api");

    static Stream<Arguments> modules() {
        return Stream.of(
                Arguments.of("core", Draft.class),
                Arguments.of("dsl", Gusset.class),
                Arguments.of("svg-export", Svg.class));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("modules")
    void isWhatTheListSays(String name, Class<?> type) throws IOException {
        Path list = LISTS.resolve(name + ".txt");
        String offered = PublicApi.of(type);
        assertThat(offered).contains("\n  ").contains(type.getSimpleName());
        if (Boolean.getBoolean("golden.update") && System.getenv("CI") == null) {
            Files.createDirectories(LISTS);
            Files.writeString(list, offered);
        }
        assertThat(offered)
                .as(
                        "docs/reference/api/%s.txt; see docs/api-evolution.md, then write it anew with -Dgolden.update=true",
                        name)
                .isEqualTo(Files.readString(list));
    }
}
