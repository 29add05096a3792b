package org.gusset.workbench.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The grammar as a page: the rules of the parser with the words themselves in place of the names of tokens. */
final class SyntaxPage {
    private static final Path GRAMMAR = Page.root().resolve("dsl/src/main/antlr4/org/gusset/dsl/internal/parse");
    private static final int WIDTH = 108;

    /** Rules that take in what is wrong, so that a message can tell it; no draft is written by them. */
    private static final Set<String> RECOVERY = Set.of(
            "strayBrace", "looseBlock", "statement", "single", "leadingAmount", "leadingProduct", "hole", "name");

    /** What a rule holds for recovery's sake. Each must be found, so that a change of the grammar is seen here. */
    private static final Map<String, String> PLAINER = plainer();

    private static final Pattern SECTION = Pattern.compile("(?m)^// ---- (.+)$");
    private static final Pattern RULE = Pattern.compile("(?ms)^([a-z]\\w*)\\s*:\\s*(.*?)\\s*;$");

    private SyntaxPage() {}

    private static Map<String, String> plainer() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put(" | pieceStatement | piece | strip | step | looseBlock | strayBrace)* EOF", " | piece | strip)*");
        all.put(" | step | looseBlock)*", " | step)*");
        all.put(" | looseBlock)*", ")*");
        all.put("(TURNED_UP | leadingAmount TURNED_UP?)?", "TURNED_UP?");
        all.put(" | BROKEN", "");
        all.put("(MORE unit)*", "(NUMBER unit)*");
        return all;
    }

    static String read(String file) {
        try {
            return Files.readString(GRAMMAR.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The words behind the names of tokens. */
    static Map<String, String> words() {
        Map<String, String> words = new HashMap<>();
        Matcher token = Pattern.compile("(?m)^([A-Z_]+): '([^']+)'").matcher(read("GussetLexer.g4"));
        while (token.find()) {
            words.put(token.group(1), "\"" + token.group(2) + "\"");
        }
        words.put("TURNED_UP", "(\"turned\" \"up\")");
        words.put("NUMBER", "number");
        words.put("STRING", "text");
        return words;
    }

    static String text() {
        String grammar = read("GussetParser.g4");
        for (Map.Entry<String, String> form : PLAINER.entrySet()) {
            if (!grammar.contains(form.getKey())) {
                throw new AssertionError("the grammar no longer holds: " + form.getKey());
            }
            grammar = grammar.replace(form.getKey(), form.getValue());
        }
        StringBuilder out = new StringBuilder("""
                # The grammar

                <!-- Written by GeneratedReferenceTest of GussetParser.g4 and GussetLexer.g4; -Dgolden.update=true writes it anew. -->

                Every form of the language as the parser reads it: a program writes this page of the parser's own grammar. What each form means stands in [the language](language.md); to learn it, read [the tutorial](../tutorial/README.md).

                | sign | means |
                | --- | --- |
                | `"word"` | the word itself |
                | `a b` | `a`, then `b` |
                | `a \\| b` | one of the two |
                | `a?`, `a*` | may be left out; any number of times, or none |
                | `( )` | belongs together |
                | `name` | a letter, then letters, digits and `_`; not [a word that is taken](language.md#words-that-are-taken) |
                | `number`, `text` | `12`, `1.5`, `1/2`, `9½`; `"in straight quotes"` |

                Blanks and ends of lines count only in that a statement's word stands first on its line. Whether a sum is a length, or a name a path, is told by the checker and not by the grammar.
                """);
        Matcher section = SECTION.matcher(grammar);
        List<Integer> starts = new ArrayList<>();
        List<String> titles = new ArrayList<>();
        while (section.find()) {
            starts.add(section.start());
            titles.add(section.group(1).replaceFirst(":.*", ""));
        }
        starts.add(grammar.length());
        for (int i = 0; i < titles.size(); i++) {
            out.append("\n## ").append(title(titles.get(i))).append("\n\n```text\n");
            out.append(String.join("\n", rules(grammar.substring(starts.get(i), starts.get(i + 1)))));
            out.append("```\n");
        }
        return out.toString();
    }

    private static String title(String comment) {
        return switch (comment) {
            case "the frame" -> "A file, its pieces and steps";
            case "file level" -> "Statements of a file";
            case "any level" -> "Statements of a file or a piece";
            case "pieces" -> "Statements of a piece";
            case "places, sides, ways" -> "Places, sides, ways";
            case "values" -> "Values, points and paths";
            default -> throw new AssertionError("the grammar has a new section, which wants a title: " + comment);
        };
    }

    private static List<String> rules(String part) {
        List<String> rules = new ArrayList<>();
        Matcher rule = RULE.matcher(part);
        while (rule.find()) {
            if (!RECOVERY.contains(rule.group(1))) {
                String body = rule.group(2)
                        .replaceAll("(?m)//.*$", "")
                        .replaceAll("\\s+", " ")
                        .strip();
                rules.add(laid(spoken(rule.group(1)), spoken(body)));
            }
        }
        return rules;
    }

    /** Tokens by their words, names of rules in small letters with hyphens. */
    private static String spoken(String body) {
        Map<String, String> words = words();
        Matcher name = Pattern.compile("[A-Za-z_]+").matcher(body);
        return name.replaceAll(found -> {
            String known = words.get(found.group());
            if (known == null && found.group().equals(found.group().toUpperCase(Locale.ROOT))) {
                throw new AssertionError("no word is known for " + found.group());
            }
            String spoken = known == null
                    ? found.group().replaceAll("(?<=[a-z])([A-Z])", "-$1").toLowerCase(Locale.ROOT)
                    : known;
            return Matcher.quoteReplacement(spoken);
        });
    }

    /** A rule on one line if it fits, else with each of its alternatives, or what fits, on a line of its own. */
    private static String laid(String name, String body) {
        String head = name + " = ";
        if (head.length() + body.length() <= WIDTH) {
            return head + body + "\n";
        }
        List<String> alternatives = alternatives(body);
        if (alternatives.size() > 1) {
            StringBuilder out = new StringBuilder(name + " =\n");
            for (int i = 0; i < alternatives.size(); i++) {
                out.append(i == 0 ? "      " : "    | ")
                        .append(broken(alternatives.get(i), 6))
                        .append('\n');
            }
            return out.toString();
        }
        return name + " =\n      " + broken(body, 6) + "\n";
    }

    private static String broken(String body, int indent) {
        if (body.length() + indent <= WIDTH) {
            return body;
        }
        int depth = 0;
        int at = -1;
        boolean quoted = false;
        for (int i = 0; i < Math.min(body.length(), WIDTH - indent); i++) {
            char c = body.charAt(i);
            quoted ^= c == '"';
            if (!quoted) {
                depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            }
            // Within one bracket a break before a bar is as good as one between parts.
            if (c == ' ' && (depth == 0 || (depth == 1 && body.startsWith("| ", i + 1)))) {
                at = i;
            }
        }
        return at < 0
                ? body
                : body.substring(0, at) + "\n" + " ".repeat(indent + 2) + broken(body.substring(at + 1), indent + 2);
    }

    /** What stands between bars outside of all brackets. */
    private static List<String> alternatives(String body) {
        List<String> parts = new ArrayList<>();
        int depth = 0;
        int from = 0;
        boolean quoted = false;
        for (int i = 0; i < body.length(); i++) {
            char c = body.charAt(i);
            quoted ^= c == '"';
            if (!quoted) {
                depth += c == '(' ? 1 : c == ')' ? -1 : 0;
                if (c == '|' && depth == 0) {
                    parts.add(body.substring(from, i).strip());
                    from = i + 1;
                }
            }
        }
        parts.add(body.substring(from).strip());
        return parts;
    }
}
