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
import org.gusset.dsl.names.FunctionWord;
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

    static Optional<Hover> hover(Analysis analysis, int offset, Workplace workplace) {
        Document document = analysis.document();
        return analysis.names()
                .at(document.name(), offset)
                .map(use -> hover(
                        told(use.named(), analysis, workplace), document.lines().range(use.place())))
                .or(() -> function(document, offset));
    }

    private static Hover hover(String words, Range range) {
        Hover hover = new Hover(new MarkupContent(MarkupKind.MARKDOWN, words));
        hover.setRange(range);
        return hover;
    }

    /** A function, which is known by its bracket. */
    private static Optional<Hover> function(Document document, int offset) {
        String text = document.text();
        int from = offset;
        int to = offset;
        while (from > 0 && isOfFunction(text.charAt(from - 1))) {
            from--;
        }
        while (to < text.length() && isOfFunction(text.charAt(to))) {
            to++;
        }
        boolean called = to < text.length() && text.charAt(to) == '(' && !Wanted.isText(text, from, document.lines());
        Range range = document.lines().range(from, to);
        return FunctionWord.of(called ? text.substring(from, to) : "")
                .map(f -> hover(
                        "**" + escaped(f.form()) + "**: function, gives " + f.gives() + "\n\n" + escaped(f.meaning()),
                        range));
    }

    private static boolean isOfFunction(char letter) {
        return (letter >= 'a' && letter <= 'z') || letter == '_' || (letter >= '0' && letter <= '9');
    }

    private static String told(Named named, Analysis analysis, Workplace workplace) {
        StringBuilder out = new StringBuilder();
        out.append("**")
                .append(escaped(named.fullName()))
                .append("**: ")
                .append(named.kind().words());
        if (named.kind() == NameKind.RULE) {
            out.append(" (")
                    .append(escaped(String.join(", ", named.words())))
                    .append("), gives ")
                    .append(named.type());
        } else {
            out.append(what(named).substring(named.kind().words().length()));
        }
        if (!named.note().isBlank()) {
            out.append("\n\n").append(escaped(named.note()));
        }
        asWritten(named, analysis, workplace)
                .ifPresent(w -> out.append("\n\n```gusset\n").append(w).append("\n```"));
        value(named, analysis, workplace, out);
        return out.toString();
    }

    /** The statement itself, of what has no value of its own: a rule, a cloth. */
    private static Optional<String> asWritten(Named named, Analysis analysis, Workplace workplace) {
        if (named.kind() != NameKind.RULE && named.kind() != NameKind.CLOTH) {
            return Optional.empty();
        }
        boolean own = named.statement().source().equals(analysis.document().name());
        Optional<Document> text = own
                ? Optional.of(analysis.document())
                : workplace.text(named.statement().source());
        return text.filter(d -> named.statement().end() <= d.text().length())
                .map(d -> d.text()
                        .substring(named.statement().start(), named.statement().end()))
                .filter(w -> !w.contains("```"));
    }

    private static void value(Named named, Analysis analysis, Workplace workplace, StringBuilder out) {
        Optional<Values> values = analysis.values();
        String name = named.fullName();
        if (values.flatMap(v -> v.value(name)).isEmpty()) {
            Optional<Alone> alone = alone(named, analysis, workplace);
            if (alone.isPresent()) {
                tell(
                        alone.get().values(),
                        alone.get().name(),
                        ", as " + alone.get().file() + " has it",
                        out);
                return;
            }
        }
        if (values.isPresent()) {
            tell(values.get(), name, "", out);
        } else if (!analysis.body().trouble().isEmpty()) {
            out.append("\n\n").append(escaped(analysis.body().trouble()));
        }
    }

    private static void tell(Values values, String name, String where, StringBuilder out) {
        values.value(name)
                .ifPresent(v -> out.append("\n\n")
                        .append(escaped(v))
                        .append(" for ")
                        .append(escaped(values.body()))
                        .append(escaped(where)));
        values.sum(name).ifPresent(s -> out.append("\n\n").append(escaped(s)));
    }

    /** A name of a draft that is used, as that draft by itself has it. */
    private record Alone(Values values, String name, String file) {}

    /** Only where the draft is used as it is: the choices that are set for it may change everything. */
    private static Optional<Alone> alone(Named named, Analysis analysis, Workplace workplace) {
        String source = named.place().source();
        boolean own = source.equals(analysis.document().name());
        boolean asItIs = !own
                && analysis.names().names().stream()
                        .filter(n ->
                                n.kind() == NameKind.DRAFT && named.fullName().startsWith(n.fullName() + "."))
                        .allMatch(n -> workplace
                                .text(n.statement().source())
                                .filter(d -> n.statement().end() <= d.text().length())
                                .filter(d -> !d.text()
                                        .substring(
                                                n.statement().start(),
                                                n.statement().end())
                                        .contains(" with "))
                                .isPresent());
        if (!asItIs) {
            return Optional.empty();
        }
        return workplace
                .text(source)
                .map(workplace::analysis)
                .flatMap(a -> a.names()
                        .at(source, named.place().start())
                        .filter(u -> u.named().name().equals(named.name()))
                        .flatMap(u -> a.values()
                                .map(v -> new Alone(
                                        v,
                                        u.named().fullName(),
                                        String.valueOf(
                                                java.nio.file.Path.of(source).getFileName())))));
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
