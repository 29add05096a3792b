package org.gusset.svg.sheet;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.gusset.core.geometry.Point;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads a sheet back from its text with the JDK's XML parser. */
final class SvgText {
    private final Document document;

    private SvgText(Document document) {
        this.document = document;
    }

    /** A line of words as a viewer places it, with the room that a wide sans-serif type would take. */
    record Words(String text, String role, double size, Oblong box) {}

    static SvgText parse(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return new SvgText(factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg))));
    }

    Element root() {
        return document.getDocumentElement();
    }

    Element byId(String id) {
        return elements(root(), "*").stream()
                .filter(e -> e.getAttribute("id").equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no element with the id " + id));
    }

    List<String> ids() {
        return elements(root(), "*").stream()
                .map(e -> e.getAttribute("id"))
                .filter(id -> !id.isEmpty())
                .toList();
    }

    static List<Element> elements(Element within, String name) {
        NodeList nodes = within.getElementsByTagNameNS("*", name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    /** The texts within an element, in the order drawn. */
    static List<String> texts(Element within) {
        return elements(within, "text").stream().map(Element::getTextContent).toList();
    }

    /** The lines of words within an element, in its own frame. */
    static List<Words> words(Element within) {
        List<Words> words = new ArrayList<>();
        for (Element text : elements(within, "text")) {
            double size = Double.parseDouble(text.getAttribute("font-size"));
            boolean bold = text.getAttribute("font-weight").equals("bold");
            double width = TextMeasure.width(text.getTextContent(), size, bold);
            double x = Double.parseDouble(text.getAttribute("x"));
            double y = Double.parseDouble(text.getAttribute("y"));
            String rotate = text.getAttribute("transform");
            double turn = rotate.isEmpty()
                    ? 0
                    : -Double.parseDouble(rotate.substring("rotate(".length()).split(" ")[0]);
            double aside = switch (text.getAttribute("text-anchor")) {
                case "middle" -> 0;
                case "end" -> -width / 2;
                default -> width / 2;
            };
            // From 0.75 em above the baseline to 0.22 em below it: capitals and tails.
            Oblong atPoint = new Oblong(new Point(x, y), width, 0.97 * size, turn);
            words.add(new Words(
                    text.getTextContent(),
                    text.getAttribute("class"),
                    size,
                    new Oblong(atPoint.at(aside, -0.265 * size), width, 0.97 * size, turn)));
        }
        return words;
    }

    double number(String attribute) {
        return Double.parseDouble(root().getAttribute(attribute).replace("mm", ""));
    }
}
