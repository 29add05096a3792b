package org.gusset.workbench;

import com.code_intelligence.jazzer.junit.DictionaryFile;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.File;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.provider.MethodSource;

/** Any arguments, one a line, none of which names a file that is there: help, or wrong use told in a few lines. */
@Timeout(60)
class CommandLineFuzzTest {
    /** A line of a stack trace. */
    private static final Pattern TRACE = Pattern.compile("(?m)^\\s+at [\\w.$/]+\\(.*\\)$");

    static Stream<byte[]> seeds() {
        return Stream.of(
                        "draw\nno.gusset\n--measures\nno.csv#'Pip'\n--out\npaper\n--set\nease=10 cm\n--paper\nA4",
                        "grade\nno.gusset\n--chart\nno.csv\n--unit\nin",
                        "check\n--help",
                        "--version",
                        "stress\nno.gusset\n--measures=no.csv\n--",
                        "lesson\nno.gusset\n--serve")
                .map(text -> text.getBytes(StandardCharsets.UTF_8));
    }

    @MethodSource("seeds")
    @DictionaryFile(resourcePath = "/org/gusset/fuzz/words.dict")
    @FuzzTest
    void arguments(byte[] bytes) {
        List<String> arguments = List.of(new String(bytes, StandardCharsets.UTF_8).split("\n", 30)).stream()
                .map(CommandLineFuzzTest::harmless)
                .toList();
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Workbench.run(
                Bench.standard(), new PrintWriter(out), new PrintWriter(err), arguments.toArray(new String[0]));
        String told = out + "\n" + err;
        if (code == ExitCodes.OWN_FAULT || code == ExitCodes.FAULTS) {
            throw new AssertionError(code + " for " + arguments + ":\n" + told);
        }
        if (TRACE.matcher(told).find() || told.isBlank()) {
            throw new AssertionError("not for people: " + arguments + ":\n" + told);
        }
    }

    /** Nothing of the machine is read or written: no path leads out of the folder, and what is there is called otherwise. */
    private static String harmless(String argument) {
        String flat =
                argument.replace('/', '-').replace('\\', '-').replace("..", "-").replace('\0', '-');
        return flat.startsWith("@") || new File(flat).exists() ? "no" + flat : flat;
    }
}
