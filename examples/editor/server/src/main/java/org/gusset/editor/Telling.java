package org.gusset.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.DiagnosticRelatedInformation;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Related;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.diagnostic.Wording;
import org.gusset.dsl.names.NameKind;
import org.gusset.dsl.names.Use;

/** Messages of the library as the protocol has them. */
final class Telling {
    static final String SOURCE = "gusset";

    private final Analysis analysis;
    private final Workplace workplace;
    private final Wording wording;

    Telling(Analysis analysis, Workplace workplace) {
        this.analysis = analysis;
        this.workplace = workplace;
        this.wording = analysis.style().wording();
    }

    /** Every message about a text. One about a text that it uses stands where that is used. */
    List<org.eclipse.lsp4j.Diagnostic> all() {
        List<org.eclipse.lsp4j.Diagnostic> all = new ArrayList<>();
        analysis.messages().forEach(d -> all.add(told(d)));
        if (!analysis.body().trouble().isEmpty()) {
            org.eclipse.lsp4j.Diagnostic trouble = new org.eclipse.lsp4j.Diagnostic(
                    start(),
                    analysis.body().trouble() + " So no values are shown.",
                    DiagnosticSeverity.Warning,
                    SOURCE);
            all.add(trouble);
        }
        return all;
    }

    org.eclipse.lsp4j.Diagnostic told(Diagnostic diagnostic) {
        StringBuilder message =
                new StringBuilder(elsewhere(diagnostic.place())).append(wording.say(diagnostic.phrase()));
        for (Hint hint : diagnostic.hints()) {
            message.append('\n').append(wording.say(hint.phrase()));
        }
        org.eclipse.lsp4j.Diagnostic told = new org.eclipse.lsp4j.Diagnostic(
                range(diagnostic.place()),
                message.toString(),
                severity(diagnostic),
                SOURCE,
                diagnostic.code().id());
        List<DiagnosticRelatedInformation> related = new ArrayList<>();
        for (Related other : diagnostic.related()) {
            location(other.place())
                    .ifPresent(l -> related.add(new DiagnosticRelatedInformation(l, wording.say(other.phrase()))));
        }
        told.setRelatedInformation(related);
        return told;
    }

    private static DiagnosticSeverity severity(Diagnostic diagnostic) {
        return switch (diagnostic.severity()) {
            case ERROR -> DiagnosticSeverity.Error;
            case WARNING -> DiagnosticSeverity.Warning;
            case NOTE -> DiagnosticSeverity.Information;
        };
    }

    private boolean here(Place place) {
        return place instanceof Span span
                && span.source().equals(analysis.document().name());
    }

    private String elsewhere(Place place) {
        if (place instanceof Span span && !here(place)) {
            return "In " + lastPart(span.source()) + ", line " + span.line() + ": ";
        }
        return place instanceof Place.Cell cell ? "In " + cell.table() + ", row " + cell.row() + ": " : "";
    }

    private static String lastPart(String name) {
        return name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
    }

    /** Where a message stands in the text. */
    Range range(Place place) {
        if (here(place)) {
            return analysis.document().lines().range((Span) place);
        }
        if (place instanceof Span span) {
            return user(span.source()).orElse(start());
        }
        if (place instanceof Place.Named named) {
            return analysis.names().names().stream()
                    .filter(n -> n.fullName().equals(named.name())
                            && n.place().source().equals(analysis.document().name()))
                    .map(n -> analysis.document().lines().range(n.place()))
                    .findFirst()
                    .orElse(start());
        }
        return start();
    }

    /** Where another text is used. */
    private Optional<Range> user(String source) {
        String file = lastPart(source);
        return analysis.names().uses().stream()
                .filter(Use::defines)
                .map(Use::named)
                .filter(n -> n.kind() == NameKind.DRAFT
                        && n.place().source().equals(analysis.document().name())
                        && lastPart(n.note()).equals(file))
                .map(n -> analysis.document().lines().range(n.statement()))
                .findFirst();
    }

    private static Range start() {
        return new Range(new Position(0, 0), new Position(0, 0));
    }

    /** Where a place lies for the editor. */
    Optional<Location> location(Place place) {
        if (!(place instanceof Span span)) {
            return Optional.empty();
        }
        Document document = analysis.document();
        return here(place)
                ? Optional.of(new Location(document.uri(), document.lines().range(span)))
                : workplace
                        .text(span.source())
                        .map(d -> new Location(d.uri(), d.lines().range(span)));
    }
}
