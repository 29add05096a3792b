package org.gusset.workbench.lesson;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/** The style sheet and the script of a page, and what a content security policy knows them by. */
public final class PageParts {
    private PageParts() {}

    /** The style sheet that all pages of the workbench share. */
    public static String style() {
        return read(PageParts.class, "lesson.css");
    }

    static String script() {
        return read(PageParts.class, "lesson.js");
    }

    /** The source expression that lets in just this inline text: W3C Content Security Policy Level 3, section 2.3.1. */
    public static String hash(String inline) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(inline.getBytes(StandardCharsets.UTF_8));
            return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** A text that lies beside a class in the program. */
    public static String read(Class<?> beside, String name) {
        try (InputStream in = beside.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the program");
            }
            // A carriage return would not survive the browser's reading, and the hash would not fit.
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
