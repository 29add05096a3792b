package org.gusset.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Span;

/** What can be done about messages: the edit of every hint that has one, and of those that an editor can carry out all the same. */
final class Mending {
    private final Analysis analysis;
    private final Document document;
    private final Workplace workplace;
    private final Telling telling;

    private Mending(Analysis analysis, Workplace workplace) {
        this.analysis = analysis;
        this.document = analysis.document();
        this.workplace = workplace;
        this.telling = new Telling(analysis, workplace);
    }

    /** Something that can be done, in words. */
    private record Deed(String title, WorkspaceEdit edit) {}

    /** What can be done in a stretch of a text, and laying out. */
    static List<CodeAction> actions(Analysis analysis, Range range, Workplace workplace) {
        Mending mending = new Mending(analysis, workplace);
        List<CodeAction> actions = new ArrayList<>();
        for (Diagnostic diagnostic : analysis.messages()) {
            if (mending.isNear(diagnostic.place(), range)) {
                actions.addAll(mending.actions(diagnostic));
            }
        }
        List<TextEdit> layout = Changing.laidOut(analysis.document());
        if (!layout.isEmpty()) {
            CodeAction action = new CodeAction("Lay the draft out");
            action.setKind(CodeActionKind.Source);
            action.setEdit(mending.edit(analysis.document(), layout));
            actions.add(action);
        }
        return actions;
    }

    /** What is wrong in a text that is used is told where it is used, and mended from there. */
    private boolean isNear(Place place, Range range) {
        Range told = telling.range(place);
        Lines lines = document.lines();
        return lines.offset(told.getStart()) <= lines.offset(range.getEnd())
                && lines.offset(told.getEnd()) >= lines.offset(range.getStart());
    }

    private List<CodeAction> actions(Diagnostic diagnostic) {
        List<Deed> deeds = diagnostic.hints().stream()
                .flatMap(h -> deeds(h, diagnostic).stream())
                .toList();
        List<CodeAction> actions = new ArrayList<>();
        for (Deed deed : deeds) {
            CodeAction action = new CodeAction(deed.title());
            action.setKind(CodeActionKind.QuickFix);
            action.setEdit(deed.edit());
            action.setDiagnostics(List.of(telling.told(diagnostic)));
            // Where there are several, only the drafter knows which is meant.
            action.setIsPreferred(deeds.size() == 1);
            actions.add(action);
        }
        return actions;
    }

    private List<Deed> deeds(Hint hint, Diagnostic diagnostic) {
        String title = analysis.style().wording().say(hint.phrase());
        if (hint.edit().isPresent()) {
            return edit(hint.edit().get()).map(e -> new Deed(title, e)).stream().toList();
        }
        if (!(diagnostic.place() instanceof Span place) || !place.source().equals(document.name())) {
            return List.of();
        }
        return switch (hint.phrase().key()) {
            // Here and wherever it is used, so that one edit is not enough.
            case "name.letter" ->
                renamed(place, fact(hint, "name")).map(e -> new Deed(title, e)).stream()
                        .toList();
            case "name.elsewhere" -> chosen(place, fact(hint, "names"));
            case "tabs.blanks" ->
                Optional.of(Changing.laidOut(document)).filter(l -> !l.isEmpty()).map(l -> edit(document, l)).stream()
                        .map(e -> new Deed(title, e))
                        .toList();
            default -> List.of();
        };
    }

    private static String fact(Hint hint, String name) {
        return hint.phrase().facts().get(name) instanceof Fact.Words words ? words.text() : "";
    }

    /** A name that several pieces have, of each of them. */
    private List<Deed> chosen(Span place, String names) {
        List<Deed> deeds = new ArrayList<>();
        for (String name : names.split(", ")) {
            deeds.add(new Deed(
                    "Write `" + name + "`.",
                    edit(document, List.of(new TextEdit(document.lines().range(place), name)))));
        }
        return deeds;
    }

    private Optional<WorkspaceEdit> renamed(Span place, String name) {
        try {
            return Optional.of(Changing.rename(analysis, place.start(), name, workplace));
        } catch (Changing.Refused e) {
            return Optional.empty();
        }
    }

    private Optional<WorkspaceEdit> edit(Hint.Edit edit) {
        boolean own = edit.at().source().equals(document.name());
        Optional<Document> text =
                own ? Optional.of(document) : workplace.text(edit.at().source());
        return text.map(d -> edit(d, List.of(new TextEdit(d.lines().range(edit.at()), edit.text()))));
    }

    private WorkspaceEdit edit(Document text, List<TextEdit> edits) {
        return new WorkspaceEdit(Map.of(text.uri(), edits));
    }
}
