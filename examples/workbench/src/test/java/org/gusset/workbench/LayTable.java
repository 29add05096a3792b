package org.gusset.workbench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.gusset.core.cloth.LayPlan;

/**
 * The table of {@code docs/reference/lays.md}: how much cloth the shipped drafts take. The figures of plans made at once are always the
 * same, and a test holds the page to them; times are those of the machine that wrote the page. {@code -Dgusset.lays.write=true} writes the
 * rows of each draft anew.
 */
final class LayTable {
    private static final Path PAGE =
            Path.of(System.getProperty("gusset.root", "../.."), "docs", "reference", "lays.md");

    private static final String BEGIN = "<!-- table: begin -->\n";
    private static final String END = "<!-- table: end -->\n";

    /** So many columns of a row are always the same: those of the plans made at once. */
    private static final int KEPT = 7;

    private LayTable() {}

    static boolean writing() {
        return Boolean.getBoolean("gusset.lays.write");
    }

    /** What the page says of a draft: of each row the columns that are always the same. */
    static List<String> kept(String draft) throws IOException {
        String text = Files.readString(PAGE);
        return text.substring(text.indexOf(BEGIN), text.indexOf(END))
                .lines()
                .filter(line -> line.startsWith("| " + title(draft) + " |"))
                .map(LayTable::same)
                .toList();
    }

    /** The columns of a row that are always the same. */
    static String same(String row) {
        int end = 0;
        for (int bars = 0; bars <= KEPT; bars++) {
            end = row.indexOf('|', end) + 1;
        }
        return row.substring(0, end);
    }

    /** Puts the rows of a draft in the place of those that the page has, or at the end. */
    static void write(String draft, List<String> rows) throws IOException {
        String text = Files.readString(PAGE);
        List<String> lines = new ArrayList<>(text.substring(text.indexOf(BEGIN) + BEGIN.length(), text.indexOf(END))
                .lines()
                .toList());
        String start = "| " + title(draft) + " |";
        int at = 0;
        while (at < lines.size() && !lines.get(at).startsWith(start)) {
            at++;
        }
        lines.removeIf(line -> line.startsWith(start));
        lines.addAll(at, rows);
        Files.writeString(
                PAGE,
                text.substring(0, text.indexOf(BEGIN) + BEGIN.length())
                        + String.join("\n", lines)
                        + "\n"
                        + text.substring(text.indexOf(END)));
    }

    private static String title(String draft) {
        return draft.replace(".gusset", "").replace('-', ' ');
    }

    /** Of the plans made at once on cloth without a nap and with one: what is always the same. */
    static String row(String draft, String body, double width, Optional<LayPlan> plain, Optional<LayPlan> oneWay) {
        StringBuilder row = new StringBuilder(
                String.format(Locale.ROOT, "| %s | %s | %.0f |", title(draft), body.split(" ", 2)[0], width / 10));
        row.append(plain.map(p -> String.format(Locale.ROOT, " %s | %.1f %% |", cm(p.needed()), 100 * p.share()))
                .orElse(" too narrow | |"));
        row.append(oneWay.map(p -> String.format(Locale.ROOT, " %s | %s |", cm(p.needed()), more(plain, p)))
                .orElse(" too narrow | |"));
        return row.toString();
    }

    private static String more(Optional<LayPlan> plain, LayPlan oneWay) {
        return plain.map(p -> cm(Math.max(0, oneWay.needed() - p.needed()))).orElse("");
    }

    /** How long the plan on cloth without a nap took, and how busy the machine was. */
    static String measured(double millis) {
        double load = ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
        return String.format(Locale.ROOT, " %.0f | %.1f |", millis, load);
    }

    private static String cm(double mm) {
        return String.format(Locale.ROOT, "%.1f", mm / 10);
    }
}
