package org.gusset.workbench.lesson;

import java.io.IOException;
import java.io.StringReader;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * An SVG document made fit to stand inside a page beside others: every id gets a beginning of its own, style sheets are taken out
 * (the page writes them, bound to this picture), styles on elements become attributes, and only what draws is let in.
 */
final class EmbeddedPicture {
    private static final Set<String> DRAWS = Set.of(
            "svg",
            "g",
            "defs",
            "symbol",
            "use",
            "title",
            "desc",
            "path",
            "line",
            "rect",
            "circle",
            "ellipse",
            "polyline",
            "polygon",
            "text",
            "tspan",
            "textPath",
            "marker",
            "clipPath",
            "mask",
            "pattern",
            "linearGradient",
            "radialGradient",
            "stop");
    private static final Pattern REFERENCE = Pattern.compile("url\\(\\s*['\"]?#([^)'\"\\s]+)['\"]?\\s*\\)");
    private static final Pattern DECLARATION = Pattern.compile("\\s*([a-z-]+)\\s*:\\s*([^;]+?)\\s*(?:;|$)");
    private static final Pattern ID_IN_SELECTOR = Pattern.compile("#([A-Za-z_][\\w-]*)");
    private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^{}]*)\\}");

    private final String prefix;
    private final Map<String, String> places = new LinkedHashMap<>();
    private final StringBuilder rules = new StringBuilder();
    private final StringBuilder markup = new StringBuilder();

    private EmbeddedPicture(String prefix) {
        this.prefix = prefix;
    }

    /**
     * Reads a picture.
     *
     * @param prefix what all ids begin with; starts with a letter
     * @param label what the picture is called if it has no title of its own
     * @throws IllegalArgumentException if it is not well-formed SVG, or holds what does more than draw
     */
    static EmbeddedPicture of(String svg, String prefix, String label) {
        EmbeddedPicture picture = new EmbeddedPicture(prefix);
        Element root = parse(svg).getDocumentElement();
        if (!root.getTagName().equals("svg")) {
            throw new IllegalArgumentException("a picture must be an svg element, not " + root.getTagName());
        }
        picture.root(root, label);
        return picture;
    }

    /** The svg element as HTML. */
    String html() {
        return markup.toString();
    }

    /** The id of the first place of each name in the picture, in the picture's order. */
    Map<String, String> places() {
        return Collections.unmodifiableMap(places);
    }

    /** The picture's own style rules, their selectors bound below a selector that only this picture lies in. */
    String rules(String scope) {
        StringBuilder out = new StringBuilder();
        Matcher rule = RULE.matcher(rules);
        while (rule.find()) {
            StringBuilder selectors = new StringBuilder();
            for (String selector : rule.group(1).split(",", -1)) {
                selectors.append(selectors.isEmpty() ? "" : ", ").append(scope).append(' ');
                selectors.append(ID_IN_SELECTOR.matcher(selector.strip()).replaceAll("#" + prefix + "$1"));
            }
            out.append(selectors)
                    .append(" { ")
                    .append(references(rule.group(2).strip()))
                    .append(" }\n");
        }
        return out.toString();
    }

    private static Document parse(String svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setXIncludeAware(false);
            factory.setExpandEntityReferences(false);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(null);
            return builder.parse(new InputSource(new StringReader(svg)));
        } catch (SAXException e) {
            throw new IllegalArgumentException("a picture is not well-formed: " + e.getMessage(), e);
        } catch (ParserConfigurationException | IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private void root(Element root, String label) {
        root.setAttribute("role", "img");
        root.setAttribute("focusable", "false");
        // Its description is left where it is: as part of the name it would be read out each time.
        Element title = child(root, "title");
        root.removeAttribute("aria-labelledby");
        if (title == null) {
            root.setAttribute("aria-label", label);
        } else {
            if (!title.hasAttribute("id")) {
                title.setAttribute("id", "title");
            }
            root.setAttribute("aria-labelledby", title.getAttribute("id"));
        }
        element(root);
    }

    private static @Nullable Element child(Element parent, String tag) {
        for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element && element.getTagName().equals(tag)) {
                return element;
            }
        }
        return null;
    }

    private void element(Element element) {
        String tag = element.getTagName();
        if (tag.equals("style")) {
            rules.append(withoutComments(element.getTextContent())).append('\n');
            return;
        }
        if (!DRAWS.contains(tag)) {
            throw new IllegalArgumentException("a picture of a lesson must not hold <" + tag + ">");
        }
        String name = element.getAttribute("data-name");
        if (!name.isEmpty() && !places.containsKey(name)) {
            if (!element.hasAttribute("id")) {
                element.setAttribute("id", "at-" + (places.size() + 1));
            }
            places.put(name, prefix + element.getAttribute("id"));
        }
        markup.append('<').append(tag);
        NamedNodeMap attributes = element.getAttributes();
        Map<String, String> all = new LinkedHashMap<>();
        for (int i = 0; i < attributes.getLength(); i++) {
            Attr attribute = (Attr) attributes.item(i);
            attribute(attribute.getName(), attribute.getValue(), all);
        }
        all.forEach((key, value) -> markup.append(' ')
                .append(key)
                .append("=\"")
                .append(Html.escape(value))
                .append('"'));
        markup.append('>');
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                element(inner);
            } else if (child.getNodeType() == Node.TEXT_NODE || child.getNodeType() == Node.CDATA_SECTION_NODE) {
                String text = child.getNodeValue();
                markup.append(text.isBlank() ? "\n" : Html.escape(text));
            }
        }
        markup.append("</").append(tag).append('>');
    }

    private void attribute(String name, String value, Map<String, String> all) {
        String small = name.toLowerCase(Locale.ROOT);
        if (small.startsWith("on")) {
            throw new IllegalArgumentException("a picture of a lesson must not hold the attribute " + name);
        }
        if (small.equals("href") || small.equals("xlink:href")) {
            if (!value.startsWith("#")) {
                throw new IllegalArgumentException("a picture of a lesson must not refer to `" + value + "`");
            }
            all.put("href", "#" + prefix + value.substring(1));
        } else if (small.equals("style")) {
            Matcher declaration = DECLARATION.matcher(value);
            while (declaration.find()) {
                all.put(declaration.group(1), references(declaration.group(2)));
            }
        } else if (small.equals("id")) {
            all.put(name, prefix + value);
        } else if (small.equals("aria-labelledby") || small.equals("aria-describedby")) {
            all.put(name, value.strip().replaceAll("(\\S+)", Matcher.quoteReplacement(prefix) + "$1"));
        } else if (!small.startsWith("xmlns") && !small.startsWith("xml:")) {
            all.putIfAbsent(name, references(value));
        }
    }

    private String references(String value) {
        Matcher reference = REFERENCE.matcher(value);
        String own = reference.replaceAll("url(#" + Matcher.quoteReplacement(prefix) + "$1)");
        if (own.toLowerCase(Locale.ROOT)
                .replace("url(#" + prefix.toLowerCase(Locale.ROOT), "")
                .contains("url(")) {
            throw new IllegalArgumentException("a picture of a lesson must not refer to `" + value + "`");
        }
        return own;
    }

    private static String withoutComments(String css) {
        String plain = css.replaceAll("(?s)/\\*.*?\\*/", "");
        if (plain.contains("@") || plain.contains("<") || plain.contains("\\")) {
            throw new IllegalArgumentException(
                    "a style sheet of a picture may hold plain rules only: " + plain.strip());
        }
        return plain;
    }
}
