package org.gusset.site;

import java.io.File;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;

/** The pages of the Java interface: what the JDK's own javadoc makes of the three modules together. */
final class ApiDocs {
    /** Where they lie on the site. */
    static final String FOLDER = "api";

    private static final List<String> MODULES = List.of("org.gusset.core", "org.gusset.dsl", "org.gusset.svg");

    private ApiDocs() {}

    /**
     * Writes them.
     *
     * @param root the folder of the project, in which {@code dsl} has been built
     * @param out the folder for them
     * @throws IllegalStateException if there is no javadoc, or it ends with an error
     */
    static void write(Path root, Path out) {
        ToolProvider javadoc = ToolProvider.findFirst("javadoc")
                .orElseThrow(() -> new IllegalStateException("this Java has no javadoc; a JDK is needed"));
        List<String> words = new ArrayList<>(List.of("-quiet", "-notimestamp", "-encoding", "UTF-8", "-docencoding"));
        words.addAll(List.of("UTF-8", "-Xdoclint:none", "-d", out.toString(), "-windowtitle", "Gusset for Java"));
        words.addAll(List.of("-doctitle", "Gusset for Java"));
        words.addAll(List.of("-header", "<a href=\"{@docRoot}/../index.html\">Gusset: all pages</a>"));
        source(words, root, "org.gusset.core", "core/src/main/java");
        source(words, root, "org.gusset.dsl", "dsl/src/main/java", "dsl/target/generated-sources/antlr4");
        source(words, root, "org.gusset.svg", "svg-export/src/main/java");
        words.addAll(List.of("--module-path", others(), "--module", String.join(",", MODULES)));
        StringWriter told = new StringWriter();
        PrintWriter lines = new PrintWriter(told);
        int code = javadoc.run(lines, lines, words.toArray(new String[0]));
        if (code != 0) {
            throw new IllegalStateException("javadoc ended with " + code + ":\n" + told);
        }
    }

    private static void source(List<String> words, Path root, String module, String... folders) {
        List<String> paths = new ArrayList<>();
        for (String folder : folders) {
            paths.add(root.resolve(folder).toString());
        }
        words.add("--module-source-path");
        words.add(module + "=" + String.join(File.pathSeparator, paths));
    }

    /** The jars that this program runs with, less those of the project. */
    private static String others() {
        List<String> jars = new ArrayList<>();
        for (String entry : System.getProperty("java.class.path").split(Pattern.quote(File.pathSeparator))) {
            String name = String.valueOf(Path.of(entry).getFileName());
            if (name.endsWith(".jar") && !name.startsWith("gusset")) {
                jars.add(entry);
            }
        }
        return String.join(File.pathSeparator, jars);
    }
}
