package org.gusset.workbench;

import java.nio.file.Path;
import java.util.Map;

/** A program that tries to write into folders, for a user who may not; says what it is told. */
final class Protected {
    private Protected() {}

    /** @param args folders, into each of which {@code sheet.svg} and {@code back.svg} are written */
    public static void main(String[] args) {
        for (String folder : args) {
            try {
                WholeFiles.write(Path.of(folder), Map.of("sheet.svg", "new", "back.svg", "new"));
                System.out.println(folder + " was written");
            } catch (Refusal e) {
                System.out.println(e.words());
            }
        }
    }
}
