package org.gusset.workbench.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The page on safety, whose tables are those of the tests. */
public final class SafetyPage {
    private SafetyPage() {}

    /**
     * The table that follows a mark such as {@code <!-- table: drafts -->} has these rows below its headings.
     *
     * <p>With {@code -Dgolden.update=true} it is written, never in CI.
     */
    public static void holds(String table, List<String> rows) {
        Path file = Page.root().resolve("docs/explanation/security.md");
        Matcher found = Pattern.compile("<!-- table: " + table
                        + " -->\\n(?<head>\\|[^\\n]*\\n\\|[^\\n]*\\n)(?<rows>(?:\\|[^\\n]*\\n)*)")
                .matcher(read(file));
        assertThat(found.find()).as("the page has the table of " + table).isTrue();
        String wanted = String.join("\n", rows) + "\n";
        if (Boolean.getBoolean("golden.update") && System.getenv("CI") == null) {
            String text = read(file);
            String written = text.substring(0, found.start("rows")) + wanted + text.substring(found.end("rows"));
            try {
                Files.writeString(file, written);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return;
        }
        assertThat(found.group("rows")).isEqualTo(wanted);
    }

    /** A file of the project. */
    public static Path source(String path) {
        return Page.root().resolve(path);
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
