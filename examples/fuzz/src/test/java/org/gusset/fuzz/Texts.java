package org.gusset.fuzz;

import java.nio.charset.StandardCharsets;

/** Bytes as text, whatever they are: UTF-8 where they are UTF-8, halves of surrogate pairs and stray bytes as single units else. */
final class Texts {
    private Texts() {}

    /** The text; every sequence of UTF-16 units can come out, also those that are no Unicode. */
    static String of(byte[] bytes) {
        StringBuilder out = new StringBuilder(bytes.length);
        int i = 0;
        while (i < bytes.length) {
            int length = length(bytes, i);
            if (length == 3 && (bytes[i] & 0xFF) == 0xED && (bytes[i + 1] & 0xFF) >= 0xA0) {
                out.append((char) (0xD000 | ((bytes[i + 1] & 0x3F) << 6) | (bytes[i + 2] & 0x3F)));
            } else if (length == 1) {
                out.append((char) (bytes[i] & 0xFF));
            } else {
                out.append(new String(bytes, i, length, StandardCharsets.UTF_8));
            }
            i += length;
        }
        return out.toString();
    }

    /** How many bytes the character takes that begins here; 1 for a stray byte. */
    private static int length(byte[] bytes, int at) {
        int first = bytes[at] & 0xFF;
        int wanted = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : first >= 0xC2 ? 2 : 1;
        if (first >= 0xF5 || at + wanted > bytes.length) {
            return 1;
        }
        for (int i = 1; i < wanted; i++) {
            if ((bytes[at + i] & 0xC0) != 0x80) {
                return 1;
            }
        }
        return wanted;
    }
}
