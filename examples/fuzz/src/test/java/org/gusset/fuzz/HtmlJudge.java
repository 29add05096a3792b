package org.gusset.fuzz;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What must hold of a lesson's page: one script and one style, ours; nothing of a draft becomes a tag, an attribute or an address. */
final class HtmlJudge {
    private static final Set<String> ELEMENTS = Set.of(
            "html",
            "head",
            "meta",
            "title",
            "style",
            "script",
            "body",
            "a",
            "div",
            "header",
            "h1",
            "h2",
            "h3",
            "p",
            "button",
            "nav",
            "footer",
            "main",
            "section",
            "article",
            "ol",
            "ul",
            "li",
            "dl",
            "dt",
            "dd",
            "span",
            "figure",
            "strong",
            "em",
            "br",
            "svg",
            "desc",
            "g",
            "rect",
            "path",
            "circle",
            "text",
            "clippath",
            "details",
            "summary",
            "figcaption",
            "noscript",
            "template",
            "input",
            "label",
            "form",
            "fieldset",
            "legend",
            "b",
            "code");

    private static final Pattern ATTRIBUTE =
            Pattern.compile("\\s+([^\\s=>\"'/]+)(?:\\s*=\\s*(?:\"([^\"]*)\"|'([^']*)'|([^\\s>\"']+)))?");

    private HtmlJudge() {}

    static void page(String html) {
        Must.hold(html.startsWith("<!DOCTYPE html>\n"), () -> "no document type");
        int scripts = 0;
        int at = "<!DOCTYPE html>".length();
        while (true) {
            int open = html.indexOf('<', at);
            if (open < 0) {
                break;
            }
            int close = endOfTag(html, open);
            String tag = html.substring(open + 1, close);
            String name = tag.replaceFirst("(?s)^/?([A-Za-z0-9]*).*$", "$1").toLowerCase(Locale.ROOT);
            Must.hold(ELEMENTS.contains(name), () -> "a strange tag: <" + tag + ">");
            attributes(tag.substring(tag.startsWith("/") ? name.length() + 1 : name.length()), tag);
            at = close + 1;
            if (tag.startsWith("script") || tag.startsWith("style")) {
                scripts += tag.startsWith("script") ? 1 : 0;
                at = html.indexOf("</" + name + ">", at);
            }
        }
        int found = scripts;
        Must.hold(found == 1, () -> found + " scripts");
    }

    private static int endOfTag(String html, int open) {
        char quote = 0;
        for (int i = open + 1; i < html.length(); i++) {
            char c = html.charAt(i);
            if (quote != 0) {
                quote = c == quote ? 0 : quote;
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (c == '>') {
                return i;
            }
        }
        throw new AssertionError("a tag without an end: " + html.substring(open));
    }

    private static void attributes(String text, String tag) {
        Matcher matcher = ATTRIBUTE.matcher(text);
        int end = 0;
        while (matcher.lookingAt()) {
            String name = matcher.group(1).toLowerCase(Locale.ROOT);
            String value = matcher.group(2) == null ? "" : matcher.group(2).toLowerCase(Locale.ROOT);
            Must.hold(!name.startsWith("on") && !name.equals("style"), () -> "live: <" + tag + ">");
            Must.hold(
                    !Set.of("href", "src", "action", "xlink:href", "formaction").contains(name)
                            || value.startsWith("#")
                            || value.isEmpty(),
                    () -> "an address outside: <" + tag + ">");
            end = matcher.end();
            matcher.region(end, text.length());
        }
        String rest = text.substring(end).strip();
        Must.hold(rest.isEmpty() || rest.equals("/"), () -> "strange attributes: <" + tag + ">");
    }
}
