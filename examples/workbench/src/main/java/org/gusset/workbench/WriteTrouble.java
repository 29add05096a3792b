package org.gusset.workbench;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;

/** What is said when files cannot be written: where, why, what has become of the files, and what to do. */
final class WriteTrouble {
    private WriteTrouble() {}

    /** For files of which none has changed. */
    static Refusal of(Path folder, IOException why) {
        return new Refusal(cannot(folder, why) + " Nothing was changed. " + advice(folder, why));
    }

    /** For files of which some have, and could not be put back. */
    static Refusal inPart(Path folder, IOException why, List<String> changed) {
        return new Refusal(cannot(folder, why) + " Some files could not be put back: " + String.join("; ", changed)
                + ". " + advice(folder, why));
    }

    private static String cannot(Path folder, IOException why) {
        return "`" + folder + "` cannot be written (" + reason(folder, why) + ").";
    }

    private static String reason(Path folder, IOException why) {
        if (full(why)) {
            return "the disk is full";
        }
        if (readOnly(why)) {
            return "the disk can only be read";
        }
        return why instanceof NoSuchFileException && !Files.exists(folder)
                ? "the folder is not there any more"
                : FileBytes.reason(why);
    }

    private static String advice(Path folder, IOException why) {
        if (full(why)) {
            return "Make room on it, or name a folder on another disk.";
        }
        if (readOnly(why) || why instanceof AccessDeniedException) {
            return "Name a folder that you may write to.";
        }
        if (why instanceof NoSuchFileException && !Files.exists(folder)) {
            return "Run this again; the folder is made anew.";
        }
        return "Name another folder, or put this one right and run this again.";
    }

    private static boolean full(IOException why) {
        return says(why, "No space left") || says(why, "quota") || says(why, "not enough space");
    }

    private static boolean readOnly(IOException why) {
        return says(why, "Read-only file system");
    }

    private static boolean says(IOException why, String words) {
        return why.getMessage() != null && why.getMessage().contains(words);
    }
}
