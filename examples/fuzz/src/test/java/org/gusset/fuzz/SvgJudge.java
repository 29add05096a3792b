package org.gusset.fuzz;

import java.io.ByteArrayInputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** What must hold of an SVG document: it is well-formed, it draws, and it does nothing else. */
final class SvgJudge {
    private static final String SVG = "http://www.w3.org/2000/svg";

    /** No script, style, foreignObject, a, image, use, animation or set. */
    private static final Set<String> ELEMENTS =
            Set.of("svg", "title", "desc", "g", "rect", "path", "circle", "text", "clipPath");

    private static final Set<String> ATTRIBUTES = Set.of(
            "version",
            "width",
            "height",
            "viewBox",
            "role",
            "aria-labelledby",
            "font-family",
            "font-size",
            "font-weight",
            "text-anchor",
            "id",
            "class",
            "d",
            "fill",
            "stroke",
            "stroke-width",
            "stroke-dasharray",
            "cx",
            "cy",
            "r",
            "x",
            "y",
            "transform",
            "clip-path",
            "data-name");

    /** Attributes whose values come of us alone, never out of a draft. */
    private static final Pattern OURS =
            Pattern.compile("[\\w #.,()%/-]*|url\\(#[A-Za-z0-9_.-]+\\)|[\\p{L}\\p{M}\\p{Nd}_. -]*");

    private static final XMLInputFactory READERS = hardened();

    private SvgJudge() {}

    private static XMLInputFactory hardened() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        return factory;
    }

    static void document(String svg) {
        try {
            ByteBuffer bytes = StandardCharsets.UTF_8.newEncoder().encode(CharBuffer.wrap(svg));
            XMLStreamReader reader =
                    READERS.createXMLStreamReader(new ByteArrayInputStream(bytes.array(), 0, bytes.limit()), "UTF-8");
            read(reader, svg);
        } catch (CharacterCodingException e) {
            throw new AssertionError("half a surrogate pair in\n" + svg, e);
        } catch (XMLStreamException e) {
            throw new AssertionError("not well-formed: " + e.getMessage() + "\n" + svg, e);
        }
    }

    private static void read(XMLStreamReader reader, String svg) throws XMLStreamException {
        Set<String> ids = new HashSet<>();
        Set<String> meant = new HashSet<>();
        while (reader.hasNext()) {
            switch (reader.next()) {
                case XMLStreamConstants.START_ELEMENT -> element(reader, ids, meant);
                case XMLStreamConstants.PROCESSING_INSTRUCTION,
                        XMLStreamConstants.DTD,
                        XMLStreamConstants.ENTITY_REFERENCE,
                        XMLStreamConstants.COMMENT ->
                    throw new AssertionError("more than elements and text in\n" + svg);
                default -> {}
            }
        }
        meant.removeAll(ids);
        Must.hold(meant.isEmpty(), () -> "names ids that are not there: " + meant);
    }

    private static void element(XMLStreamReader reader, Set<String> ids, Set<String> meant) {
        Must.hold(
                SVG.equals(reader.getNamespaceURI()) && ELEMENTS.contains(reader.getLocalName()),
                () -> "an element that does not draw: " + reader.getName());
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            String name = reader.getAttributeLocalName(i);
            String value = reader.getAttributeValue(i);
            String namespace = reader.getAttributeNamespace(i);
            Must.hold(
                    (namespace == null || namespace.isEmpty()) && ATTRIBUTES.contains(name),
                    () -> "an attribute that does not draw: " + name);
            if (name.equals("data-name")) {
                continue;
            }
            Must.hold(OURS.matcher(value).matches(), () -> "a strange value of " + name + ": " + value);
            String lower = value.toLowerCase(Locale.ROOT);
            if (name.equals("d") || name.equals("viewBox") || name.equals("transform") || name.equals("width")) {
                Must.hold(
                        !lower.contains("nan") && !lower.contains("inf"), () -> "no number in " + name + ": " + value);
            }
            if (name.equals("id")) {
                Must.hold(ids.add(value), () -> "an id twice: " + value);
            } else if (name.equals("aria-labelledby")) {
                meant.addAll(Set.of(value.split(" ")));
            } else if (lower.startsWith("url(#")) {
                meant.add(value.substring("url(#".length(), value.length() - 1));
            }
        }
    }
}
