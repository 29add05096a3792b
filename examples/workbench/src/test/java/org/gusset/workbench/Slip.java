package org.gusset.workbench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.measure.Unit;

/**
 * A small sound draft, and a slip put into it. The head of its file says, each on a line after {@code #}: the {@code fault} in words, or
 * {@code sound} for what only looks like one; its {@code group} on the page; each {@code slip} as {@code was => becomes}; the code that
 * has to be {@code told} (of what is sound, must not be) and words that its message must hold; words of the {@code hint}; the {@code body} in centimetres.
 *
 * @param becomes what each slip makes of the text, in turn
 * @param told the words; the code stands first
 */
record Slip(
        String name,
        boolean fault,
        String title,
        String group,
        String text,
        List<String> was,
        List<String> becomes,
        List<String> told,
        String hint,
        Measurements body) {
    private static final Path FOLDER = Path.of(
            System.getProperty("gusset.root", "../.."),
            "examples/workbench/src/test/resources/org/gusset/workbench/faults");

    /** All of them, in the order of their groups and names. */
    static List<Slip> all() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            List<Slip> slips = new ArrayList<>();
            for (Path file : files.sorted().toList()) {
                slips.add(read(file));
            }
            slips.sort((a, b) -> a.group().compareTo(b.group()));
            return slips;
        }
    }

    private static Slip read(Path file) throws IOException {
        String text = Files.readString(file, StandardCharsets.UTF_8);
        boolean fault = false;
        String title = "";
        String group = "";
        String hint = "";
        List<String> was = new ArrayList<>();
        List<String> becomes = new ArrayList<>();
        List<String> told = List.of();
        Measurements body = Measurements.of("Trial");
        int start = 0;
        for (String line : text.lines().takeWhile(l -> l.startsWith("# ")).toList()) {
            start += line.length() + 1;
            String key = line.substring(2, line.indexOf(':'));
            String value = line.substring(line.indexOf(':') + 2);
            switch (key) {
                case "fault", "sound" -> {
                    fault = key.equals("fault");
                    title = value;
                }
                case "group" -> group = value;
                case "slip" -> {
                    String[] parts = value.split(" => ", -1);
                    was.add(parts[0].replace("\\n", "\n"));
                    becomes.add(parts[1].replace("\\n", "\n"));
                }
                case "told" -> told = List.of(value.split(" \\| "));
                case "hint" -> hint = value;
                case "body" -> {
                    String[] parts = value.split(" ");
                    body = body.with(parts[0], Quantity.of(Double.parseDouble(parts[1]), Unit.CM));
                }
                default -> throw new IllegalArgumentException(file + ": " + line);
            }
        }
        String name = String.valueOf(file.getFileName()).replace(".gusset", "");
        return new Slip(name, fault, title, group, text.substring(start), was, becomes, told, hint, body);
    }

    /** The draft with the slips put in. */
    String slipped() {
        String slipped = text;
        for (int i = 0; i < was.size(); i++) {
            if (slipped.split(java.util.regex.Pattern.quote(was.get(i)), -1).length != 2) {
                throw new IllegalArgumentException(name + ": `" + was.get(i) + "` does not stand there once");
            }
            slipped = slipped.replace(was.get(i), becomes.get(i));
        }
        return slipped;
    }

    @Override
    public String toString() {
        return name;
    }
}
