package org.gusset.editor;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintKind;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SemanticTokens;
import org.eclipse.lsp4j.SymbolKind;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.gusset.core.diagnostic.Span;
import org.gusset.dsl.names.NameKind;
import org.gusset.dsl.names.Named;
import org.gusset.dsl.names.Titled;
import org.gusset.dsl.names.Use;

/** What is shown of a text and changes nothing: hovers, the outline, colours of names, values beside definitions. */
final class Reading {
    /** What the colours of names are called in the protocol; a token names its place in this list. */
    static final List<String> COLOURS =
            List.of("class", "namespace", "function", "parameter", "variable", "property", "enumMember", "type");

    /** A name where it is defined. */
    static final List<String> MODIFIERS = List.of("declaration", "readonly");

    private Reading() {}

    // ---- hover

    static Optional<Hover> hover(Analysis analysis, int offset) {
        Document document = analysis.document();
        return analysis.names().at(document.name(), offset).map(use -> {
            Hover hover = new Hover(new MarkupContent(MarkupKind.MARKDOWN, told(use.named(), analysis)));
            hover.setRange(document.lines().range(use.place()));
            return hover;
        });
    }

    private static String told(Named named, Analysis analysis) {
        StringBuilder out = new StringBuilder();
        out.append("**")
                .append(named.fullName())
                .append("**: ")
                .append(named.kind().words());
        if (named.kind() == NameKind.RULE) {
            out.append(" (")
                    .append(String.join(", ", named.words()))
                    .append("), gives ")
                    .append(named.type());
        } else {
            out.append(what(named).substring(named.kind().words().length()));
        }
        if (!named.note().isBlank()) {
            out.append("\n\n").append(escaped(named.note()));
        }
        Optional<Values> values = analysis.values();
        Optional<String> value = values.flatMap(v -> v.value(named.fullName()));
        if (value.isPresent()) {
            out.append("\n\n")
                    .append(escaped(value.get()))
                    .append(" for ")
                    .append(escaped(values.get().body()));
        } else if (!analysis.body().trouble().isEmpty()) {
            out.append("\n\n").append(escaped(analysis.body().trouble()));
        }
        values.flatMap(v -> v.sum(named.fullName()))
                .ifPresent(s -> out.append("\n\n").append(escaped(s)));
        return out.toString();
    }

    /** The kind of a name, and what it gives where that says more. */
    static String what(Named named) {
        String kind = named.kind().words();
        boolean more = !named.type().isEmpty()
                && !named.type().equals(kind)
                && !named.type().equals("a " + kind)
                && !named.type().equals("unknown");
        return more ? kind + ", " + named.type() : kind;
    }

    /** Words as they stand, whatever signs are in them. */
    static String escaped(String words) {
        return words.replaceAll("([\\\\`*_{}\\[\\]<>#|~])", "\\\\$1");
    }

    // ---- outline

    /** A symbol at its place in the text. */
    private record Entry(DocumentSymbol symbol, Span place, Span whole, boolean holds) {
        boolean around(Entry other) {
            return holds
                    && whole.start() < other.place().start()
                    && other.place().end() <= whole.end();
        }
    }

    /** Pieces with their steps, and what is drawn in them; the rest of the file beside them. */
    static List<DocumentSymbol> outline(Analysis analysis) {
        Document document = analysis.document();
        List<Entry> entries = new ArrayList<>();
        analysis.names().names().stream()
                .filter(n -> n.place().source().equals(document.name()))
                .filter(n -> n.written() && n.kind() != NameKind.WORD && n.kind() != NameKind.ARGUMENT)
                .forEach(n -> entries.add(new Entry(
                        symbol(n, document, analysis), n.place(), n.statement(), n.kind() == NameKind.PIECE)));
        analysis.names().steps().stream()
                .filter(s -> s.place().source().equals(document.name()))
                .forEach(s -> entries.add(new Entry(step(s, document), s.place(), s.whole(), true)));
        entries.sort(Comparator.comparingInt(e -> e.place().start()));
        List<DocumentSymbol> top = new ArrayList<>();
        Deque<Entry> open = new ArrayDeque<>();
        for (Entry entry : entries) {
            while (!open.isEmpty() && !open.getLast().around(entry)) {
                open.removeLast();
            }
            List<DocumentSymbol> beside =
                    open.isEmpty() ? top : open.getLast().symbol().getChildren();
            beside.add(entry.symbol());
            if (entry.holds()) {
                entry.symbol().setChildren(new ArrayList<>());
                open.addLast(entry);
            }
        }
        return top;
    }

    private static DocumentSymbol step(Titled step, Document document) {
        return new DocumentSymbol(
                step.title().isBlank() ? "step" : step.title(),
                SymbolKind.Event,
                document.lines().range(step.whole()),
                document.lines().range(step.place()),
                "step");
    }

    private static DocumentSymbol symbol(Named named, Document document, Analysis analysis) {
        Span whole = named.statement().source().equals(document.name())
                        && named.statement().start() <= named.place().start()
                        && named.statement().end() >= named.place().end()
                ? named.statement()
                : named.place();
        String value = analysis.values().flatMap(v -> v.value(named.fullName())).orElse("");
        String detail = value.isEmpty() ? named.kind().words() : named.kind().words() + ", " + value;
        return new DocumentSymbol(
                named.name(),
                icon(named.kind()),
                document.lines().range(whole),
                document.lines().range(named.place()),
                detail);
    }

    private static SymbolKind icon(NameKind kind) {
        return switch (kind) {
            case PIECE -> SymbolKind.Class;
            case DRAFT -> SymbolKind.Module;
            case RULE -> SymbolKind.Function;
            case CHOICE -> SymbolKind.Enum;
            case CLOTH -> SymbolKind.Struct;
            case MEASURE, FIT -> SymbolKind.Constant;
            case PATH, DART -> SymbolKind.Field;
            case SEAM, FINISHED, OPENING -> SymbolKind.Interface;
            default -> SymbolKind.Variable;
        };
    }

    // ---- colours

    static SemanticTokens colours(Analysis analysis) {
        Document document = analysis.document();
        List<Integer> data = new ArrayList<>();
        int line = 0;
        int column = 0;
        int behind = -1;
        for (Use use : analysis.names().uses()) {
            Span place = use.place();
            if (!place.source().equals(document.name()) || place.start() < behind || !stands(use, document)) {
                continue;
            }
            behind = place.end();
            Range range = document.lines().range(place);
            int newLine = range.getStart().getLine();
            int newColumn = range.getStart().getCharacter();
            boolean fixed =
                    use.named().kind() == NameKind.MEASURE || use.named().kind() == NameKind.WORD;
            data.addAll(Arrays.asList(
                    newLine - line,
                    newLine == line ? newColumn - column : newColumn,
                    place.end() - place.start(),
                    colour(use.named().kind()),
                    (use.defines() ? 1 : 0) | (fixed ? 2 : 0)));
            line = newLine;
            column = newColumn;
        }
        return new SemanticTokens(data);
    }

    /** True if the name itself stands at its place: what the language draws of itself has none. */
    private static boolean stands(Use use, Document document) {
        Span place = use.place();
        return place.end() <= document.text().length()
                && place.end() - place.start() == use.named().name().length()
                && document.text().startsWith(use.named().name(), place.start());
    }

    private static int colour(NameKind kind) {
        return COLOURS.indexOf(
                switch (kind) {
                    case PIECE -> "class";
                    case DRAFT -> "namespace";
                    case RULE -> "function";
                    case MEASURE, FIT, ARGUMENT -> "parameter";
                    case PATH, DART, SEAM, FINISHED, OPENING -> "property";
                    case WORD -> "enumMember";
                    case CLOTH -> "type";
                    default -> "variable";
                });
    }

    // ---- values beside definitions

    static List<InlayHint> values(Analysis analysis, Range shown) {
        Document document = analysis.document();
        Optional<Values> values = analysis.values();
        List<InlayHint> hints = new ArrayList<>();
        if (values.isEmpty()) {
            return hints;
        }
        int from = document.lines().offset(shown.getStart());
        int to = document.lines().offset(shown.getEnd());
        for (Named named : analysis.names().names()) {
            boolean here = named.place().source().equals(document.name())
                    && named.place().start() <= to
                    && named.statement().end() >= from;
            if (!here || !isValued(named.kind())) {
                continue;
            }
            values.get().value(named.fullName()).ifPresent(value -> {
                InlayHint hint =
                        new InlayHint(document.lines().position(named.place().end()), Either.forLeft("= " + value));
                hint.setKind(InlayHintKind.Type);
                hint.setPaddingLeft(true);
                values.get().sum(named.fullName()).ifPresent(s -> hint.setTooltip(s));
                hints.add(hint);
            });
        }
        return hints;
    }

    private static boolean isValued(NameKind kind) {
        return switch (kind) {
            case MEASURE, VALUE, UNKNOWN, PATH -> true;
            default -> false;
        };
    }
}
