package org.gusset.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.LengthStyle;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Settings;
import org.gusset.dsl.Sources;
import org.gusset.dsl.lint.Linter;
import org.gusset.dsl.names.NameIndex;
import org.jspecify.annotations.Nullable;

/** What the library says of one state of a text: each part is worked out when it is first asked for. For one thread. */
final class Analysis {
    private final Document document;
    private final Sources sources;
    private final Body body;
    private final LengthStyle style;
    private @Nullable NameIndex names;
    private @Nullable Outcome<Draft> compiled;
    private @Nullable Optional<Outcome<Drawing>> drawn;
    private @Nullable Optional<Values> values;

    Analysis(Document document, Sources sources, Body body, LengthStyle style) {
        this.document = document;
        this.sources = sources;
        this.body = body;
        this.style = style;
    }

    Document document() {
        return document;
    }

    Body body() {
        return body;
    }

    LengthStyle style() {
        return style;
    }

    NameIndex names() {
        NameIndex known = names;
        if (known == null) {
            known = Gusset.names(document.source(), sources, Settings.defaults());
            names = known;
        }
        return known;
    }

    Outcome<Draft> compiled() {
        Outcome<Draft> known = compiled;
        if (known == null) {
            known = Gusset.compile(document.source(), sources);
            compiled = known;
        }
        return known;
    }

    private Optional<Outcome<Drawing>> drawn() {
        Optional<Outcome<Drawing>> known = drawn;
        if (known == null) {
            known = body.measures().flatMap(m -> compiled().value().map(d -> d.evaluate(m, Choices.none())));
            drawn = known;
        }
        return known;
    }

    /** What the names come to for the chosen body, as far as the draft is sound; empty if no body is chosen. */
    Optional<Values> values() {
        Optional<Values> known = values;
        if (known == null) {
            known = drawn().flatMap(Outcome::value).map(d -> new Values(d, style));
            values = known;
        }
        return known;
    }

    /** Every message: of the text, advice if nothing is wrong with it, and what is wrong for the chosen body. */
    List<Diagnostic> messages() {
        List<Diagnostic> all = new ArrayList<>(compiled().diagnostics());
        if (!compiled().hasErrors()) {
            all.addAll(Linter.lint(document.source()));
            drawn().ifPresent(d -> all.addAll(d.diagnostics()));
        }
        return all;
    }
}
