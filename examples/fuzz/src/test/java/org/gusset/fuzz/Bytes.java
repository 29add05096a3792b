package org.gusset.fuzz;

import java.util.List;

/** Decisions out of bytes, one byte each; what is beyond the end is 0, so that every beginning of an input is one. */
final class Bytes {
    private final byte[] bytes;
    private int at;

    Bytes(byte[] bytes) {
        this.bytes = bytes;
    }

    boolean left() {
        return at < bytes.length;
    }

    /** From 0 to less than {@code n}, which is 256 at most. */
    int below(int n) {
        return at < bytes.length ? (bytes[at++] & 0xFF) % n : 0;
    }

    boolean flip() {
        return below(2) == 1;
    }

    <T> T of(List<T> list) {
        return list.get(list.size() <= 256 ? below(list.size()) : (below(256) * 256 + below(256)) % list.size());
    }

    String of(String... words) {
        return words[below(words.length)];
    }
}
