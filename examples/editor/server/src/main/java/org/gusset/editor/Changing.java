package org.gusset.editor;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Outcome;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.gusset.dsl.Sources;
import org.gusset.dsl.format.Formatter;
import org.gusset.dsl.names.Use;

/** What changes texts: laying out, other names. */
final class Changing {
    private static final Pattern NAME = Pattern.compile("\\p{L}[\\p{L}\\p{M}\\p{N}_]*");

    private Changing() {}

    // ---- laying out

    /** The edits that lay a text out; none if it is so already, or cannot be read. */
    static List<TextEdit> laidOut(Document document) {
        Outcome<String> formatted = Formatter.format(document.source());
        return formatted.value().map(text -> difference(document, text)).orElse(List.of());
    }

    /** One edit of what differs, so that the cursor and marks elsewhere stay where they are. */
    private static List<TextEdit> difference(Document document, String wanted) {
        String text = document.text();
        int most = Math.min(text.length(), wanted.length());
        int same = 0;
        while (same < most && text.charAt(same) == wanted.charAt(same)) {
            same++;
        }
        if (same == text.length() && same == wanted.length()) {
            return List.of();
        }
        int behind = 0;
        while (behind < most - same
                && text.charAt(text.length() - 1 - behind) == wanted.charAt(wanted.length() - 1 - behind)) {
            behind++;
        }
        // Never between the two halves of a letter or of a line break.
        while (same > 0 && splits(text, wanted, same)) {
            same--;
        }
        while (behind > 0 && splits(text, wanted, text.length() - behind, wanted.length() - behind)) {
            behind--;
        }
        return List.of(new TextEdit(
                document.lines().range(same, text.length() - behind),
                wanted.substring(same, wanted.length() - behind)));
    }

    private static boolean splits(String text, String wanted, int at) {
        return splits(text, wanted, at, at);
    }

    private static boolean splits(String text, String wanted, int at, int wantedAt) {
        return halves(text, at) || halves(wanted, wantedAt);
    }

    private static boolean halves(String text, int at) {
        return at > 0
                && at < text.length()
                && (Character.isSurrogatePair(text.charAt(at - 1), text.charAt(at))
                        || (text.charAt(at - 1) == '\r' && text.charAt(at) == '\n'));
    }

    // ---- names

    /** Why a name cannot be given another. */
    static final class Refused extends Exception {
        private static final long serialVersionUID = 1;

        Refused(String why) {
            super(why);
        }
    }

    /** The name at an offset, if the draft itself gives it. */
    static Use renamed(Analysis analysis, int offset) throws Refused {
        Optional<Use> use = analysis.names().at(analysis.document().name(), offset);
        if (use.isEmpty()) {
            throw new Refused("There is no name here that means something.");
        }
        if (!use.get().named().written()) {
            throw new Refused(
                    "`" + use.get().named().name() + "` is a name that the language gives; it cannot be changed.");
        }
        return use.get();
    }

    /**
     * The edits that give a name another, in all texts in which it stands.
     *
     * @throws Refused if the other is no name, or if a draft that was sound would not be so any more
     */
    static WorkspaceEdit rename(Analysis analysis, int offset, String name, Workplace workplace) throws Refused {
        Use use = renamed(analysis, offset);
        if (!NAME.matcher(name).matches()) {
            throw new Refused("`" + name + "` is no name: a letter, then letters, digits and `_`.");
        }
        List<Use> all = workplace.everywhere(analysis.document(), use);
        Map<String, Set<Span>> places = new LinkedHashMap<>();
        for (Use one : all) {
            if (!one.named().written()) {
                throw new Refused(
                        "`" + one.named().fullName() + "` has this name from the language; it cannot be changed.");
            }
            places.computeIfAbsent(one.place().source(), k -> new LinkedHashSet<>())
                    .add(one.place());
        }
        Map<String, Document> texts = new LinkedHashMap<>();
        Map<String, String> after = new LinkedHashMap<>();
        for (Map.Entry<String, Set<Span>> entry : places.entrySet()) {
            boolean own = entry.getKey().equals(analysis.document().name());
            Document text = own
                    ? analysis.document()
                    : workplace
                            .text(entry.getKey())
                            .orElseThrow(() -> new Refused("A text that has this name is gone."));
            texts.put(entry.getKey(), text);
            after.put(entry.getKey(), written(text.text(), entry.getValue(), name));
        }
        for (Document text : texts.values()) {
            for (Analysis reader : workplace.readers(text)) {
                stillSound(reader, after, workplace);
            }
        }
        Map<String, List<TextEdit>> edits = new LinkedHashMap<>();
        places.forEach((source, spans) -> {
            Document text = texts.get(source);
            if (text != null) {
                edits.put(
                        text.uri(),
                        spans.stream()
                                .map(s -> new TextEdit(text.lines().range(s), name))
                                .toList());
            }
        });
        return new WorkspaceEdit(edits);
    }

    private static String written(String text, Set<Span> places, String name) {
        StringBuilder out = new StringBuilder();
        int at = 0;
        for (Span place : places) {
            out.append(text, at, place.start()).append(name);
            at = place.end();
        }
        return out.append(text, at, text.length()).toString();
    }

    private static void stillSound(Analysis reader, Map<String, String> after, Workplace workplace) throws Refused {
        Document document = reader.document();
        Source first = Source.of(document.name(), after.getOrDefault(document.name(), document.text()));
        Sources lent = workplace.shelf().lending(document.source());
        Sources changed = (file, asking) -> {
            Sources.Answer answer = lent.find(file, asking);
            return answer.source()
                    .filter(s -> after.containsKey(s.name()))
                    .map(s -> Sources.Answer.of(Source.of(s.name(), after.getOrDefault(s.name(), s.text()))))
                    .orElse(answer);
        };
        long before = reader.compiled().diagnostics().stream()
                .filter(Diagnostic::isError)
                .count();
        List<Diagnostic> errors = Gusset.compile(first, changed).diagnostics().stream()
                .filter(Diagnostic::isError)
                .toList();
        if (errors.size() > before) {
            Place place = errors.get(0).place();
            String where = place instanceof Span span ? " (line " + span.line() + ")" : "";
            throw new Refused("With that name the draft would not be sound" + where + ": "
                    + errors.get(0).message());
        }
    }
}
