package org.gusset.workbench;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Suggestions;
import org.gusset.core.measure.Measurements;

/** The bodies that {@code FILE} or {@code FILE#NAME} stands for. */
record Bodies(MeasureTable table, List<String> names) {
    private static final int MOST_NAMES_SHOWN = 12;

    static Bodies open(String written) {
        int hash = nameMark(written);
        String file = hash < 0 ? written : written.substring(0, hash);
        MeasureTable table = MeasureTable.read(file, FileBytes.read(file, "table of measures"));
        if (hash < 0 || table.names().isEmpty()) {
            return new Bodies(table, table.names());
        }
        String name = written.substring(hash + 1).strip();
        if (table.body(name).isEmpty()) {
            throw new Refusal("There is no body `" + name + "` in " + file + "." + known(name, table.names()));
        }
        return new Bodies(table, List.of(name));
    }

    /** Only those with these names, in their order. */
    Bodies only(List<String> wanted) {
        List<String> chosen = new ArrayList<>();
        for (String name : wanted) {
            if (!names.contains(name.strip())) {
                throw new Refusal("There is no body `" + name + "` in the table." + known(name, names));
            }
            if (!chosen.contains(name.strip())) {
                chosen.add(name.strip());
            }
        }
        return new Bodies(table, List.copyOf(chosen));
    }

    /** True if the table cannot be read at all. */
    boolean unreadable() {
        return table.names().isEmpty();
    }

    /** True if something is wrong with the table itself, so that no body can be trusted. */
    boolean spoilt() {
        return table.diagnostics().stream().anyMatch(Diagnostic::isError);
    }

    Outcome<Measurements> body(String name) {
        return table.body(name).orElseThrow();
    }

    /** Where the name begins; a file whose own name has the mark in it wins. */
    private static int nameMark(String written) {
        if (Files.exists(FileBytes.path(written))) {
            return -1;
        }
        int hash = written.indexOf('#');
        for (int at = hash; at >= 0; at = written.indexOf('#', at + 1)) {
            if (at > 0 && Files.isRegularFile(FileBytes.path(written.substring(0, at)))) {
                return at;
            }
        }
        return hash;
    }

    private static String known(String name, List<String> names) {
        String shown =
                names.stream().limit(MOST_NAMES_SHOWN).map(n -> "`" + n + "`").collect(Collectors.joining(", "));
        String more = names.size() > MOST_NAMES_SHOWN ? " and " + (names.size() - MOST_NAMES_SHOWN) + " more" : "";
        String meant = Suggestions.nearest(name, names)
                .map(n -> " Did you mean `" + n + "`?")
                .orElse("");
        return meant + " It has " + shown + more + ".";
    }
}
