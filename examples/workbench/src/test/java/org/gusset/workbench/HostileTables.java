package org.gusset.workbench;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.measure.Measurements;

/** Tables of measures that are none, or more than one. */
final class HostileTables {
    private static final String GOOD = "measure,Pip\nchest,97 cm\n";

    private HostileTables() {}

    private static HostileInput table(String what, String gets, byte[] bytes) {
        return new HostileInput(what, gets, () -> told(MeasureTable.read("table.csv", bytes)));
    }

    private static HostileInput table(String what, String gets, String text) {
        return table(what, gets, text.getBytes(StandardCharsets.UTF_8));
    }

    private static String told(MeasureTable table) {
        List<Diagnostic> all = new ArrayList<>(table.chart().diagnostics());
        String codes = HostileInput.errors(all);
        return codes.equals("drawn") ? "read: " + String.join(", ", table.names()) + sizes(table) : codes;
    }

    private static String sizes(MeasureTable table) {
        return table.chart().value().orElseThrow().sizes().stream()
                        .map(Measurements::entries)
                        .anyMatch(e -> e.containsKey("chest"))
                ? ""
                : " without a measure";
    }

    private static String bodies(int count) {
        StringBuilder names = new StringBuilder();
        for (int i = 0; i < count; i++) {
            names.append(",Body ").append(i);
        }
        return names.toString();
    }

    private static byte[] encoded(String charset) {
        return GOOD.replace("Pip", "Zo\u00eb").getBytes(Charset.forName(charset));
    }

    private static byte[] joined(byte[] first, byte[] second) {
        byte[] both = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, both, first.length, second.length);
        return both;
    }

    static List<HostileInput> all() {
        return List.of(
                table("UTF-16 with a byte order mark", HostileInput.page("MEA202"), encoded("UTF-16")),
                table("UTF-16 without one", HostileInput.page("MEA202"), encoded("UTF-16LE")),
                table("UTF-32", HostileInput.page("MEA202"), encoded("UTF-32")),
                table("Latin-1", HostileInput.page("MEA201"), encoded("ISO-8859-1")),
                table(
                        "UTF-8, then Latin-1",
                        HostileInput.page("MEA201"),
                        joined(encoded("UTF-8"), encoded("ISO-8859-1"))),
                table(
                        "UTF-8 with a byte order mark",
                        "read: Zo\u00eb",
                        joined(new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF}, encoded("UTF-8"))),
                table("NUL in a cell", HostileInput.page("MEA202"), "measure,Pip\nchest,97\0 cm\n"),
                table("nothing at all", HostileInput.page("MEA204"), ""),
                table(
                        "a quotation mark that is never closed",
                        HostileInput.page("MEA207"),
                        "measure,Pip\nchest,\"97 cm\n" + "hip,90 cm\n".repeat(20_000)),
                table(
                        "a cell of a million letters",
                        HostileInput.page("MEA216"),
                        "measure," + "P".repeat(1_000_000) + "\nchest,97 cm\n"),
                table(
                        "more than a million columns",
                        HostileInput.page("MEA217"),
                        "measure" + ",P".repeat(1_000_001) + "\nchest,97 cm\n"),
                table(
                        "two thousand rows of five hundred bodies",
                        HostileInput.page("MEA217"),
                        HostileDrafts.lines(2_001, i -> "m" + i + (i == 0 ? bodies(500) : ",1 cm".repeat(500)))),
                table("more than sixteen megabytes", HostileInput.page("MEA203"), new byte[(16 << 20) + 1]),
                table(
                        "two thousand cells that are no amounts",
                        HostileInput.page("MEA002") + ", " + HostileInput.page("MEA218"),
                        "measure,Pip\n" + HostileDrafts.lines(2_000, i -> "m" + i + ",wide")),
                table(
                        "two columns of one name, two rows of one measure",
                        HostileInput.page("MEA210") + ", " + HostileInput.page("MEA211"),
                        "measure,Pip,Pip\nchest,97 cm,98 cm\nChest,97 cm,98 cm\n"),
                table(
                        "rows of other lengths than the headings",
                        HostileInput.page("MEA206"),
                        "measure,Pip\nchest,97 cm,98 cm,99 cm\n"),
                table(
                        "line ends of all kinds",
                        "read: Pip",
                        "measure,Pip\r\nchest,97 cm\rhip,104 cm\nwaist,80 cm\n\r\n\r"),
                table(
                        "NaN, infinity, 1e308, 0x61",
                        HostileInput.page("MEA007") + ", " + HostileInput.page("MEA014") + ", "
                                + HostileInput.page("MEA015"),
                        "measure,Pip\nchest,NaN cm\nhip,infinity\nwaist,1e308 cm\nneck,0x61 cm\n"),
                table("a formula as a name", "read: =1+1", "measure,=1+1\nchest,97 cm\n"),
                table("a formula as an amount", HostileInput.page("MEA002"), "measure,Pip\nchest,=1+1\n"));
    }
}
