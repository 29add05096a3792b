package org.gusset.site;

import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Blocks of code, those in the language with its parts told apart. The text stays as it is written, so that it can be copied. */
final class Colours {
    private static final Pattern PARTS = Pattern.compile(
            "(?<comment>#[^\n]*)|(?<text>\"(?:\\\\.|[^\"\\\\\n])*\")|(?<word>[A-Za-z_][\\w.]*)|(?<number>[\\d\u00BC-\u00BE\u2150-\u215E][\\d./\u00BC-\u00BE\u2150-\u215E]*\"?)");

    private final Set<String> statements;

    private Colours(Set<String> statements) {
        this.statements = statements;
    }

    /** The words of statements are those of the grammar of the lexer. */
    static Colours of(String lexer) {
        int from = lexer.indexOf("// ---- statement words");
        int to = lexer.indexOf("// ---- directions");
        if (from < 0 || to < from) {
            throw new IllegalStateException("the grammar has no statement words where they were");
        }
        Set<String> words = new TreeSet<>();
        Matcher literal = Pattern.compile(": '(\\p{L}+)';").matcher(lexer.substring(from, to));
        while (literal.find()) {
            words.add(literal.group(1));
        }
        return new Colours(words);
    }

    /**
     * A block of code.
     *
     * @param language what stands behind its fence
     */
    String block(String code, String language) {
        String name = language.strip().toLowerCase(Locale.ROOT);
        String body = name.equals("gusset") ? coloured(code) : Html.escape(code);
        String of = name.matches("[a-z]+") ? " class=\"language-" + name + "\"" : "";
        return "<pre tabindex=\"0\"><code" + of + ">" + body + "</code></pre>";
    }

    private String coloured(String code) {
        StringBuilder out = new StringBuilder();
        Matcher part = PARTS.matcher(code);
        int end = 0;
        while (part.find()) {
            out.append(Html.escape(code.substring(end, part.start())));
            end = part.end();
            String words = Html.escape(part.group());
            String kind = kind(part);
            out.append(kind.isEmpty() ? words : "<span class=\"" + kind + "\">" + words + "</span>");
        }
        return out.append(Html.escape(code.substring(end))).toString();
    }

    private String kind(Matcher part) {
        if (part.group("comment") != null) {
            return "comment";
        }
        if (part.group("text") != null) {
            return "text";
        }
        if (part.group("number") != null) {
            return "number";
        }
        return statements.contains(part.group("word")) ? "statement" : "";
    }
}
