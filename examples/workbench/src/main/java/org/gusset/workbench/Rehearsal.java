package org.gusset.workbench;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Goes through the usual commands once, for the Java machine to note which classes they take; from its notes an archive is made that lets
 * the program start sooner. Nothing that is drawn is kept.
 */
public final class Rehearsal {
    private Rehearsal() {}

    /** @param args a draft, and a table of measures with the name of one body */
    public static void main(String[] args) throws IOException {
        if (args.length != 2) {
            System.err.println("Say which draft and which body: smock.gusset cast.csv#'Maren Oddway'");
            System.exit(ExitCodes.WRONG_USE);
        }
        String draft = args[0];
        String body = args[1];
        Path folder = Files.createTempDirectory("gusset-rehearsal");
        try {
            String out = folder.toString();
            for (List<String> command : List.of(
                    List.of("draw", draft, "--measures", body, "--out", out),
                    List.of("draw", draft, "--measures", body, "--paper", "A4", "--json", "--out", out),
                    List.of("check", draft, "--measures", body),
                    List.of("values", draft, "--measures", body))) {
                PrintWriter nowhere = new PrintWriter(new StringWriter());
                int code = Workbench.run(Bench.standard(), nowhere, nowhere, command.toArray(new String[0]));
                if (code != ExitCodes.GOOD) {
                    System.exit(code);
                }
            }
        } finally {
            remove(folder);
        }
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
