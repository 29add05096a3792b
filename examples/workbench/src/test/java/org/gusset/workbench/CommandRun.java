package org.gusset.workbench;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** One run of the command line inside the test, with what it wrote. */
record CommandRun(int code, String out, String err) {
    /** With the draft that is put together in Java. */
    static CommandRun of(String... args) {
        return with(SquareDraft.bench(), args);
    }

    /** With the language itself. */
    static CommandRun standard(String... args) {
        return with(Bench.standard(), args);
    }

    private static CommandRun with(Bench bench, String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        PrintWriter outWriter = new PrintWriter(out);
        PrintWriter errWriter = new PrintWriter(err);
        int code = Workbench.run(bench, outWriter, errWriter, args);
        outWriter.flush();
        errWriter.flush();
        return new CommandRun(code, out.toString(), err.toString());
    }

    /** A file with this text, its folders made. */
    static String file(Path folder, String name, String text) {
        try {
            Path file = folder.resolve(name);
            Files.createDirectories(folder);
            Files.writeString(file, text);
            return file.toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All files below a folder, by path relative to it, in alphabetical order. */
    static List<String> filesBelow(Path folder) {
        if (!Files.exists(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(f -> folder.relativize(f).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
