package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.gusset.core.cloth.LayCheck;
import org.gusset.core.cloth.LayCloth;
import org.gusset.core.cloth.LayOptions;
import org.gusset.core.cloth.LayPlan;
import org.gusset.core.cloth.LayPlanner;
import org.gusset.core.cloth.LaySearch;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.json.DrawingJson;
import org.gusset.core.measure.LengthStyle;
import org.gusset.core.measure.Measurements;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;
import org.gusset.dsl.format.Formatter;
import org.gusset.dsl.lint.Linter;
import org.gusset.dsl.report.JsonReport;
import org.gusset.dsl.report.TextReport;
import org.gusset.svg.Svg;
import org.gusset.svg.page.Page;
import org.gusset.svg.page.PageOptions;
import org.gusset.svg.page.Pages;
import org.gusset.svg.page.Paper;
import org.gusset.svg.sheet.FormPages;
import org.gusset.svg.sheet.SewingSheet;
import org.gusset.svg.sheet.SheetContent;
import org.gusset.svg.sheet.SheetOptions;
import org.gusset.svg.style.StyleTable;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Takes a text down every road of the library, and looks whether anything in what comes out is alive. */
final class EveryRoad {
    /** Letters of one document at the most; see {@link org.gusset.dsl.Bound#OUTPUT}. */
    private static final int LARGEST = 40_000_000;

    private EveryRoad() {}

    /** What a draft gets, for nobody in particular. */
    static String walk(String text, Sources sources) {
        return walk(text, sources, Measurements.of("Pip Thistlewick"));
    }

    /** The errors of compiling and evaluating, and of pages and lessons behind them. */
    static String walk(String text, Sources sources, Measurements body) {
        Source source = Source.of("first", text);
        Outcome<Draft> compiled = Gusset.compile(source, sources);
        List<Diagnostic> told = new ArrayList<>(compiled.diagnostics());
        Linter.lint(source);
        Formatter.format(source);
        String behind = "";
        if (compiled.value().isPresent()) {
            Drawing drawing = compiled.value()
                    .get()
                    .evaluate(body, Choices.none())
                    .value()
                    .orElseThrow();
            told.addAll(drawing.diagnostics());
            behind = rendered(drawing);
        }
        reported(source, told);
        return HostileInput.errors(told) + behind;
    }

    private static void reported(Source source, List<Diagnostic> told) {
        String report = TextReport.of(source).all(told);
        assertThat(report.codePoints()
                        .filter(c -> Character.getType(c) == Character.CONTROL && c != '\n')
                        .mapToObj(Integer::toHexString))
                .as("signs that a terminal obeys")
                .isEmpty();
        json(JsonReport.of(told));
    }

    private static String rendered(Drawing drawing) {
        SheetOptions options = SheetOptions.defaults();
        documents(Svg.pieces(drawing, options).values());
        documents(List.of(Svg.sheet(drawing), Svg.seams(drawing, options)));
        documents(Svg.lesson(drawing, LengthStyle.CM, options));
        documents(FormPages.of(SewingSheet.of(drawing, options)).stream()
                .map(scene -> Svg.write(scene, StyleTable.drafting()))
                .toList());
        json(DrawingJson.of(drawing));
        List<Diagnostic> lays = laid(drawing, options);
        List<Diagnostic> explained = drawing.explained(LengthStyle.INCHES);
        PageOptions paper = PageOptions.of(Paper.parse("A4").orThrow());
        Outcome<List<Page>> pages = Pages.of(SheetContent.of(drawing), options, paper);
        if (pages.value().isPresent()) {
            PdfPages.of(drawing.title(), pages.value().get(), StyleTable.drafting());
        }
        List<Diagnostic> also = new ArrayList<>(pages.diagnostics());
        Stream.of(
                        drawing.diagnostics().stream().filter(d -> d.code().id().equals("LIM302")),
                        explained.stream().filter(d -> d.code().id().equals("LIM207")),
                        lays.stream().filter(d -> d.code().id().equals("LIM306")))
                .flatMap(all -> all)
                .forEach(also::add);
        return also.isEmpty()
                ? ""
                : ", but "
                        + String.join(
                                ", ",
                                also.stream()
                                        .map(d -> HostileInput.page(d.code().id()))
                                        .toList());
    }

    /** Plans at once on the cloths that the draft tells, or on one for all. */
    private static List<Diagnostic> laid(Drawing drawing, SheetOptions options) {
        List<LayCloth> told = LayPlanner.cloths(drawing);
        List<LayCloth> cloths = told.isEmpty() ? List.of(LayCloth.of("shell", 1400)) : told;
        Outcome<List<LayPlan>> plans = new LayPlanner(LayOptions.defaults(), LaySearch.none()).plan(drawing, cloths);
        plans.value().orElse(List.of()).forEach(plan -> {
            assertThat(LayCheck.faults(
                            drawing, plan, LayOptions.defaults(), plan.cloth().equals(cloths.get(0))))
                    .isEmpty();
            documents(List.of(Svg.lay(drawing, plan, Optional.empty(), options)));
        });
        return plans.diagnostics();
    }

    private static void json(String json) {
        assertThat(json).hasSizeLessThan(LARGEST).doesNotContain("<");
        try {
            JSON.std.anyFrom(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Documents that are well formed, and in which nothing runs and nothing is fetched. */
    static void documents(Collection<String> svgs) {
        for (String svg : svgs) {
            assertThat(svg.length()).isLessThan(LARGEST);
            assertThat(svg).doesNotContain("<!DOCTYPE", "<!ENTITY", "<![CDATA[", "<?xml-stylesheet");
            inert(parsed(svg));
        }
    }

    private static Element parsed(String svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return factory.newDocumentBuilder()
                    .parse(new InputSource(new StringReader(svg)))
                    .getDocumentElement();
        } catch (ParserConfigurationException | SAXException e) {
            throw new AssertionError(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void inert(Element element) {
        assertThat(element.getTagName())
                .isIn("svg", "g", "path", "rect", "circle", "text", "title", "desc", "clipPath");
        for (int i = 0; i < element.getAttributes().getLength(); i++) {
            Node attribute = element.getAttributes().item(i);
            assertThat(attribute.getNodeName().toLowerCase(Locale.ROOT))
                    .doesNotStartWith("on")
                    .doesNotContain("href")
                    .isNotEqualTo("style");
            if (attribute.getNodeName().equals("clip-path")) {
                assertThat(attribute.getNodeValue()).matches("url\\(#[\\w.-]+\\)");
            }
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                inert(inner);
            }
        }
    }
}
