package org.gusset.workbench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** A program that writes the same five files over and over, each time full of the next letter, until somebody ends it. */
final class Generations {
    static final int LENGTH = 300_000;
    static final List<String> NAMES = List.of("a.svg", "b.svg", "c.svg", "d.svg", "e.svg");

    private Generations() {}

    /** Says when the first set is written. */
    public static void main(String[] args) {
        for (int generation = 0; ; generation++) {
            WholeFiles.writeBytes(Path.of(args[0]), files((char) ('a' + generation % 26)));
            if (generation == 0) {
                System.out.println("begun");
            }
        }
    }

    static Map<String, byte[]> files(char letter) {
        byte[] bytes = String.valueOf(letter).repeat(LENGTH).getBytes(StandardCharsets.US_ASCII);
        Map<String, byte[]> files = new LinkedHashMap<>();
        NAMES.forEach(name -> files.put(name, bytes));
        return files;
    }

    /** The letters of which the files of a folder are full. @throws AssertionError if one is not whole */
    static Set<Character> letters(Path folder) throws IOException {
        Set<Character> letters = new TreeSet<>();
        for (String name : NAMES) {
            byte[] bytes = Files.readAllBytes(folder.resolve(name));
            byte[] whole = new byte[LENGTH];
            Arrays.fill(whole, bytes.length == 0 ? 0 : bytes[0]);
            if (!Arrays.equals(bytes, whole)) {
                throw new AssertionError(name + " is not whole: " + bytes.length + " bytes");
            }
            letters.add((char) bytes[0]);
        }
        return letters;
    }
}
