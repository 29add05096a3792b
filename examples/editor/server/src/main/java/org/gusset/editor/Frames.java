package org.gusset.editor;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Messages as they come in, each with a header that holds. A header that promises more or less than there is, or nothing at all, costs
 * the messages that it touches: reading goes on at the next length that is told, and never waits for more than can be taken in.
 */
final class Frames extends InputStream {
    /** The longest message that is taken in, in bytes. */
    static final int LONGEST = 64 << 20;

    /** How much of a line is kept: in front of a header can stand the rest of a message. */
    private static final int KEPT = 256;

    private static final Pattern LENGTH = Pattern.compile("(?i)content-length:\\s*(\\d{1,9})\\s*$");

    private final InputStream in;
    private byte[] header = {};
    private int at;
    private int left;

    Frames(InputStream in) {
        this.in = in;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] into, int from, int most) throws IOException {
        if (most == 0) {
            return 0;
        }
        if (at == header.length && left == 0 && !next()) {
            return -1;
        }
        if (at < header.length) {
            int count = Math.min(most, header.length - at);
            System.arraycopy(header, at, into, from, count);
            at += count;
            return count;
        }
        int count = in.read(into, from, Math.min(most, left));
        left -= Math.max(0, count);
        return count;
    }

    /** Reads up to the next message; false if there is none any more. */
    private boolean next() throws IOException {
        int length = -1;
        while (true) {
            String line = line();
            if (line.isEmpty()) {
                return false;
            }
            Matcher told = LENGTH.matcher(line.stripTrailing());
            if (told.find()) {
                length = Integer.parseInt(told.group(1));
            } else if (line.isBlank()) {
                if (length > 0 && length <= LONGEST) {
                    header = ("Content-Length: " + length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII);
                    at = 0;
                    left = length;
                    return true;
                }
                length = -1;
            }
        }
    }

    /** The end of a line with its break; empty at the end of everything. */
    private String line() throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        byte[] before = {};
        int letter = in.read();
        while (letter >= 0) {
            line.write(letter);
            if (letter == '\n') {
                break;
            }
            if (line.size() == KEPT) {
                before = line.toByteArray();
                line.reset();
            }
            letter = in.read();
        }
        return new String(before, StandardCharsets.ISO_8859_1) + line.toString(StandardCharsets.ISO_8859_1);
    }

    @Override
    public int available() throws IOException {
        return at < header.length ? header.length - at : Math.min(left, in.available());
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
