package org.gusset.core.cloth.packing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads JSON without escapes into maps, lists, strings and doubles: as much as files of piece sets need. */
final class JsonValues {
    private final String text;
    private int at;

    private JsonValues(String text) {
        this.text = text;
    }

    static Object read(String text) {
        return new JsonValues(text).value();
    }

    private Object value() {
        char c = next();
        if (c == '{') {
            at++;
            Map<String, Object> out = new LinkedHashMap<>();
            while (next() != '}') {
                String key = string();
                expect(':');
                out.put(key, value());
                skip(',');
            }
            at++;
            return out;
        }
        if (c == '[') {
            at++;
            List<Object> out = new ArrayList<>();
            while (next() != ']') {
                out.add(value());
                skip(',');
            }
            at++;
            return out;
        }
        return c == '"' ? string() : word();
    }

    private char next() {
        while (Character.isWhitespace(c())) {
            at++;
        }
        return c();
    }

    private char c() {
        return text.charAt(at);
    }

    private void skip(char c) {
        if (next() == c) {
            at++;
        }
    }

    private void expect(char c) {
        if (next() != c) {
            throw new IllegalArgumentException("expected " + c + " at " + at);
        }
        at++;
    }

    private String string() {
        expect('"');
        int end = text.indexOf('"', at);
        String out = text.substring(at, end);
        at = end + 1;
        return out;
    }

    private Object word() {
        int from = at;
        while (at < text.length() && ",]} \n\r\t".indexOf(c()) < 0) {
            at++;
        }
        String word = text.substring(from, at);
        return word.equals("null") || word.equals("true") || word.equals("false") ? word : Double.valueOf(word);
    }
}
