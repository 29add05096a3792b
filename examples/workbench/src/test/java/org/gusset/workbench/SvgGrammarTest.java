package org.gusset.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.svg.Svg;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * All SVG documents of the shipped drafts by the published grammars of SVG 1.1; each for one body of the cast by turns, with {@code
 * -Dgusset.pictures.all=true} for all of them.
 */
class SvgGrammarTest {
    private static final SvgGrammar GRAMMAR = SvgGrammar.read();

    static List<String> drafts() {
        return Fitted.drafts();
    }

    private static List<String> bodies(String draft) {
        return Boolean.getBoolean("gusset.pictures.all") ? Fitted.cast() : List.of(Fitted.turn(draft));
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void everyDocumentIsValid(String name) {
        Draft draft = Fitted.draft(name);
        for (String body : bodies(name)) {
            Map<String, String> pictures = ShippedDocuments.pictures(
                    draft.evaluate(Fitted.body(body), Choices.none()).orThrow());
            assertThat(pictures).containsKeys("sheet", "seams", "page 1-1", "sewing 1", "toile", "lesson 1");
            pictures.forEach((document, svg) -> {
                assertThat(GRAMMAR.bySchema(svg)).as(body + ", " + document).isEmpty();
                // The document type is read anew each time, which takes longer than all else here.
                if (body.equals("Maren Oddway") || !document.matches("(page|lesson) .*")) {
                    assertThat(SvgGrammar.byDocumentType(svg))
                            .as(body + ", " + document)
                            .isEmpty();
                }
            });
        }
        Map<String, String> ofAll = new LinkedHashMap<>(ShippedDocuments.card(draft));
        assertThat(ofAll).isNotEmpty();
        ofAll.put("nest", ShippedDocuments.nest(draft));
        ofAll.forEach((document, svg) -> {
            assertThat(GRAMMAR.bySchema(svg)).as(document).isEmpty();
            assertThat(SvgGrammar.byDocumentType(svg)).as(document).isEmpty();
        });
    }

    /** So that silence means something: a document with one slip is told of, by the document type, the schema or both. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "</svg>|<svg>|both",
                "version=\"1.1\"|version=\"1.1\" wide=\"2\"|both",
                "<rect class|<square class|both",
                " d=\"M| d=\"Q5 M|schema",
                "role=\"img\"|role=\"drawing\"|both",
                "id=\"sheet-description\"|id=\"sheet-title\"|type",
                "labelledby=\"sheet-title|labelledby=\"sheet-heading|type",
                "id=\"sheet-title\"|id=\"sheet title\"|both",
                "<title id|<!-- a -- b --><title id|both",
            })
    void aDocumentWithASlipIsRefused(String right, String wrong, String by) {
        String svg = Svg.sheet(Fitted.drawing("drawstring-bag.gusset", "Maren Oddway"));
        assertThat(svg).contains(right);
        int at = svg.indexOf(right);
        String slip = svg.substring(0, at) + wrong + svg.substring(at + right.length());
        assertThat(SvgGrammar.byDocumentType(slip).isEmpty()).as("by type").isEqualTo(by.equals("schema"));
        assertThat(GRAMMAR.bySchema(slip).isEmpty()).as("by schema").isEqualTo(by.equals("type"));
    }
}
