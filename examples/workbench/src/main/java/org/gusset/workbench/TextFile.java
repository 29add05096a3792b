package org.gusset.workbench;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.OptionalLong;

/** Bytes as text: UTF-8 with or without a byte order mark, nothing else. */
final class TextFile {
    private TextFile() {}

    /** True for what is no text at all, such as a spreadsheet's own file or UTF-16. */
    static boolean binary(byte[] bytes) {
        for (byte b : bytes) {
            if (b == 0) {
                return true;
            }
        }
        // The two byte order marks of UTF-16.
        int mark = bytes.length < 2 ? 0 : ((bytes[0] & 0xFF) << 8) | (bytes[1] & 0xFF);
        return mark == 0xFFFE || mark == 0xFEFF;
    }

    /** The line, from 1, of the first byte that is not UTF-8. */
    static OptionalLong firstBadLine(byte[] bytes) {
        CharsetDecoder decoder = decoder();
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(8192);
        CoderResult result;
        do {
            out.clear();
            result = decoder.decode(in, out, true);
        } while (result.isOverflow());
        if (result.isUnderflow()) {
            return OptionalLong.empty();
        }
        long line = 1;
        for (int i = 0; i < in.position(); i++) {
            if (bytes[i] == '\n') {
                line++;
            }
        }
        return OptionalLong.of(line);
    }

    /** The text without its byte order mark; the bytes must be UTF-8. */
    static String text(byte[] bytes) {
        try {
            String text = decoder().decode(ByteBuffer.wrap(bytes)).toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new IllegalArgumentException("not UTF-8", e);
        }
    }

    private static CharsetDecoder decoder() {
        return StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
    }
}
