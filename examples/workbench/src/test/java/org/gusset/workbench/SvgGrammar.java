package org.gusset.workbench;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;
import nu.validator.datatype.Html5DatatypeLibraryFactory;
import nu.validator.localentities.LocalCacheEntityResolver;
import nu.validator.vendor.relaxng.datatype.DatatypeLibraryFactory;
import nu.validator.vendor.thaiopensource.datatype.xsd.DatatypeLibraryFactoryImpl;
import nu.validator.vendor.thaiopensource.util.PropertyMap;
import nu.validator.vendor.thaiopensource.util.PropertyMapBuilder;
import nu.validator.vendor.thaiopensource.validate.Schema;
import nu.validator.vendor.thaiopensource.validate.ValidateProperty;
import nu.validator.vendor.thaiopensource.validate.prop.rng.RngProperty;
import nu.validator.vendor.thaiopensource.validate.rng.CompactSchemaReader;
import nu.validator.xml.NullEntityResolver;
import org.apache.batik.util.XMLResourceDescriptor;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/** What the two published grammars of SVG 1.1 say against a document; nothing if it is well formed and valid. */
final class SvgGrammar {
    /**
     * The document type of SVG 1.1 (W3C, second edition), as Batik ships it. The roles and labels of WAI-ARIA came with SVG 2, so it does
     * not know them; they are declared beside it, the labels as references, so that each must lead to an id of the document. So
     * is {@code data-name}, whose kind came with SVG 2 too.
     */
    private static final String DOCUMENT_TYPE = """
            <!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "svg11.dtd" [
            <!ATTLIST svg role (img) #IMPLIED aria-labelledby IDREFS #IMPLIED>
            <!ATTLIST g role (group) #IMPLIED aria-labelledby IDREFS #IMPLIED data-name CDATA #IMPLIED>
            ]>
            """;

    private static final String DTD = "/org/apache/batik/dom/svg/resources/svg11-flat.dtd";

    /** SVG 1.1 in RELAX NG with the data of the attributes, path data above all, and WAI-ARIA, as the Nu checker ships it. */
    private static final String SCHEMA = "http://s.validator.nu/svg-xhtml5-rdf-mathml.rnc";

    private final Schema schema;

    private SvgGrammar(Schema schema) {
        this.schema = schema;
    }

    static SvgGrammar read() {
        Complaints complaints = new Complaints();
        try {
            LocalCacheEntityResolver resolver = new LocalCacheEntityResolver(new NullEntityResolver());
            resolver.setAllowRnc(true);
            PropertyMapBuilder properties = new PropertyMapBuilder();
            properties.put(ValidateProperty.ERROR_HANDLER, complaints);
            properties.put(ValidateProperty.ENTITY_RESOLVER, resolver);
            properties.put(RngProperty.DATATYPE_LIBRARY_FACTORY, dataTypes());
            Schema schema = CompactSchemaReader.getInstance()
                    .createSchema(resolver.resolveEntity(null, SCHEMA), properties.toPropertyMap());
            if (!complaints.said.isEmpty()) {
                throw new IllegalStateException(String.join("\n", complaints.said));
            }
            return new SvgGrammar(schema);
        } catch (Exception e) {
            throw new IllegalStateException("The grammar cannot be read.", e);
        }
    }

    private static DatatypeLibraryFactory dataTypes() {
        Html5DatatypeLibraryFactory web = new Html5DatatypeLibraryFactory();
        DatatypeLibraryFactoryImpl xsd = new DatatypeLibraryFactoryImpl();
        return uri ->
                Objects.requireNonNullElseGet(web.createDatatypeLibrary(uri), () -> xsd.createDatatypeLibrary(uri));
    }

    /** By the document type: elements, where they may stand, attributes, ids that are used once and references that lead somewhere. */
    static List<String> byDocumentType(String svg) {
        int start = svg.indexOf("?>") + 2;
        String typed = svg.substring(0, start) + DOCUMENT_TYPE + svg.substring(start);
        Complaints complaints = new Complaints();
        try {
            SAXParserFactory factory = SAXParserFactory.newInstance();
            factory.setValidating(true);
            SAXParser parser = factory.newSAXParser();
            // The type is longer than newer JDKs let an outside text be.
            parser.setProperty("jdk.xml.totalEntitySizeLimit", "0");
            parser.setProperty("jdk.xml.maxGeneralEntitySizeLimit", "0");
            parser.setProperty("jdk.xml.maxParameterEntitySizeLimit", "0");
            parser.setProperty("jdk.xml.entityExpansionLimit", "0");
            parser.parse(new InputSource(new StringReader(typed)), complaints);
        } catch (SAXException | IOException | ParserConfigurationException e) {
            complaints.said.add(String.valueOf(e.getMessage()));
        }
        return complaints.said;
    }

    /** By the schema: elements, attributes and what they may hold. As with the checker itself, it does not see {@code data-} attributes. */
    List<String> bySchema(String svg) {
        Complaints complaints = new Complaints();
        PropertyMapBuilder properties = new PropertyMapBuilder();
        properties.put(ValidateProperty.ERROR_HANDLER, complaints);
        PropertyMap all = properties.toPropertyMap();
        try {
            SAXParserFactory factory = SAXParserFactory.newInstance();
            factory.setNamespaceAware(true);
            XMLReader reader = factory.newSAXParser().getXMLReader();
            reader.setErrorHandler(complaints);
            reader.setContentHandler(schema.createValidator(all).getContentHandler());
            reader.parse(new InputSource(new StringReader(svg.replaceAll(" data-name=\"[^\"<]*\"", ""))));
        } catch (SAXException | IOException | ParserConfigurationException e) {
            complaints.said.add(String.valueOf(e.getMessage()));
        }
        return complaints.said;
    }

    private static final class Complaints extends DefaultHandler implements ErrorHandler {
        private final List<String> said = new ArrayList<>();

        @Override
        public InputSource resolveEntity(String publicId, String systemId) {
            InputStream dtd = XMLResourceDescriptor.class.getResourceAsStream(DTD);
            return new InputSource(Objects.requireNonNull(dtd, DTD));
        }

        @Override
        public void warning(SAXParseException e) {
            note(e);
        }

        @Override
        public void error(SAXParseException e) {
            note(e);
        }

        @Override
        public void fatalError(SAXParseException e) throws SAXParseException {
            throw e;
        }

        private void note(SAXParseException e) {
            said.add("line " + e.getLineNumber() + ": " + e.getMessage());
        }
    }
}
