package org.gusset.workbench.lesson;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/** The style sheet and the script of the page, and what a content security policy knows them by. */
final class PageParts {
    private PageParts() {}

    static String style() {
        return read("lesson.css");
    }

    static String script() {
        return read("lesson.js");
    }

    /** The source expression that lets in just this inline text: W3C Content Security Policy Level 3, section 2.3.1. */
    static String hash(String inline) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(inline.getBytes(StandardCharsets.UTF_8));
            return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private static String read(String name) {
        try (InputStream in = PageParts.class.getResourceAsStream(name)) {
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
