package org.gusset.embedding;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page about embedding shows what the examples have. */
class EmbedPageTest {
    private static String page() throws IOException {
        return Files.readString(Cast.root().resolve("docs/how-to/embed.md"));
    }

    @Test
    void theJavaOfThePageIsThatOfTheExamples() throws IOException {
        Matcher block = Pattern.compile("(?s)<!-- region: (\\w+) (\\w+) -->\n```java\n(.*?)```")
                .matcher(page());
        int count = 0;
        while (block.find()) {
            count++;
            String source = source(block.group(1) + ".java");
            Matcher region = Pattern.compile("(?s) *// region: " + block.group(2) + "\n(.*?) *// endregion")
                    .matcher(source);
            assertThat(region.find()).as(block.group(2)).isTrue();
            assertThat(block.group(3)).isEqualTo(region.group(1).replaceAll("(?m)^ {4}", ""));
        }
        assertThat(count).isEqualTo(page().split("```java\n", -1).length - 1).isPositive();
    }

    @Test
    void theProgramsOfThePageAreThere() throws IOException {
        Matcher program =
                Pattern.compile("org\\.gusset\\.embedding\\.\\w+\\.(\\w+)").matcher(page());
        int count = 0;
        while (program.find()) {
            count++;
            assertThat(source(program.group(1) + ".java")).contains("public static void main");
        }
        assertThat(count).isPositive();
    }

    private static String source(String name) throws IOException {
        try (Stream<Path> files = Files.walk(Cast.root().resolve("examples/embedding/src/main/java"))) {
            return Files.readString(
                    files.filter(f -> f.endsWith(name)).findFirst().orElseThrow());
        }
    }
}
