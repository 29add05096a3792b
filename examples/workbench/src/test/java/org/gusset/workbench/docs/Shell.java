package org.gusset.workbench.docs;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.gusset.workbench.Workbench;

/** Runs a documented command line inside the test; it writes to a new folder of its own. */
final class Shell {
    private static final String PROGRAM = "sh examples/gusset ";
    private static final Pattern WORD = Pattern.compile("(?:[^\\s'\"]|'[^']*'|\"[^\"]*\")+");

    /** How a command ended and what it told. */
    record Run(int code, String out, String err) {}

    private Shell() {}

    static Run run(String command) {
        return run(command, Map.of());
    }

    /**
     * Runs it where a reader has saved these files.
     *
     * @param files texts by the names that the command may say
     */
    static Run run(String command, Map<String, String> files) {
        if (!command.startsWith(PROGRAM)) {
            throw new AssertionError("a documented command begins with `" + PROGRAM + "`: " + command);
        }
        try {
            Path out = Files.createTempDirectory("gusset-docs");
            Path here = Files.createTempDirectory("gusset-docs");
            for (Map.Entry<String, String> file : files.entrySet()) {
                Files.writeString(here.resolve(file.getKey()), file.getValue());
            }
            List<String> words = new ArrayList<>();
            Matcher matcher = WORD.matcher(command.substring(PROGRAM.length()));
            while (matcher.find()) {
                String word = matcher.group().replaceAll("['\"]", "");
                if (word.startsWith("examples/")) {
                    word = Page.root().resolve(word).toString();
                } else if (word.equals("out")) {
                    word = out.toString();
                } else if (files.containsKey(word)) {
                    word = here.resolve(word).toString();
                }
                words.add(word);
            }
            Run run = run(words.toArray(new String[0]));
            run = new Run(run.code(), asTyped(run.out(), out, here), asTyped(run.err(), out, here));
            delete(out);
            delete(here);
            return run;
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** What it told, with the folders as the reader has them. */
    private static String asTyped(String told, Path out, Path here) {
        return told.replace(out.toString(), "out").replace(here + "/", "");
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    /** The program's own entry ends the Java machine; the method behind it, which returns the exit code, is its package's. */
    private static Run run(String[] words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        try {
            Class<?> bench = Class.forName(Workbench.class.getPackageName() + ".Bench");
            Method standard = bench.getDeclaredMethod("standard");
            standard.setAccessible(true);
            Method run = Arrays.stream(Workbench.class.getDeclaredMethods())
                    .filter(m -> m.getName().equals("run") && m.getParameterCount() == 4)
                    .findFirst()
                    .orElseThrow();
            run.setAccessible(true);
            int code = (int) run.invoke(null, standard.invoke(null), new PrintWriter(out), new PrintWriter(err), words);
            return new Run(code, out.toString(), err.toString());
        } catch (ClassNotFoundException | NoSuchMethodException | IllegalAccessException e) {
            throw new AssertionError(e);
        } catch (InvocationTargetException e) {
            throw new AssertionError(e.getCause());
        }
    }
}
