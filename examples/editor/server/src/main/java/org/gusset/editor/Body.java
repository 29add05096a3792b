package org.gusset.editor;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.measure.Measurements;
import org.gusset.workbench.MeasureTable;

/**
 * The body for which values are shown.
 *
 * @param measures its measures; empty if there are none
 * @param trouble why there are none although somebody was asked for; empty if there is nothing to tell
 * @param file the table; empty for none
 * @param state when the table was written and how long it was
 */
record Body(Optional<Measurements> measures, String trouble, Optional<Path> file, String state) {
    private static final long LARGEST_TABLE = 16L << 20;

    static Body none() {
        return new Body(Optional.empty(), "", Optional.empty(), "");
    }

    private static Body lacking(String why) {
        return new Body(Optional.empty(), why, Optional.empty(), "");
    }

    private Body in(Path table, String then) {
        return new Body(measures, trouble, Optional.of(table), then);
    }

    /** False if another program has written the table since. */
    boolean isFresh() {
        return file.isEmpty() || state(file.get()).equals(state);
    }

    private static String state(Path table) {
        try {
            return Files.getLastModifiedTime(table) + " " + Files.size(table);
        } catch (IOException | SecurityException e) {
            return "";
        }
    }

    /** @param root where a relative name of the table counts from */
    static Body of(Options options, Optional<Path> root) {
        if (options.measures().isBlank()) {
            return none();
        }
        Path file;
        try {
            Path named = Path.of(options.measures());
            file = root.map(r -> r.resolve(named)).orElse(named);
        } catch (InvalidPathException e) {
            return lacking("The table of measures `" + options.measures() + "` cannot be read.");
        }
        String state = state(file);
        return read(options, file).in(file, state);
    }

    private static Body read(Options options, Path file) {
        byte[] bytes;
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > LARGEST_TABLE) {
                return lacking("There is no table of measures `" + options.measures() + "`.");
            }
            bytes = Files.readAllBytes(file);
        } catch (IOException | SecurityException e) {
            return lacking("The table of measures `" + options.measures() + "` cannot be read.");
        }
        MeasureTable table = MeasureTable.read(String.valueOf(file.getFileName()), bytes);
        Optional<Diagnostic> fault =
                table.diagnostics().stream().filter(Diagnostic::isError).findFirst();
        if (fault.isPresent()) {
            return lacking(fault.get().message());
        }
        List<String> names = table.names();
        String name = options.body().isBlank() && !names.isEmpty()
                ? names.get(0)
                : options.body().strip();
        Optional<Outcome<Measurements>> body = table.body(name);
        return body.isEmpty()
                ? lacking("There is no body `" + name + "` in the table of measures. It has "
                        + String.join(", ", names.subList(0, Math.min(12, names.size()))) + ".")
                : new Body(body.get().value(), "", Optional.empty(), "");
    }
}
