package org.gusset.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemKind;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;
import org.gusset.core.measure.Dimension;
import org.gusset.dsl.names.NameIndex;
import org.gusset.dsl.names.NameKind;
import org.gusset.dsl.names.Named;
import org.gusset.editor.Vocabulary.Kind;

/** What can be written at a place: what fits in kind and dimension first. */
final class Completing {
    private static final String FITS = "0";
    private static final String LEADS = "1";
    private static final String CALLS = "2";
    private static final String OTHER = "5";

    private final Analysis analysis;
    private final int offset;
    private final List<CompletionItem> items = new ArrayList<>();

    private Completing(Analysis analysis, int offset) {
        this.analysis = analysis;
        this.offset = offset;
    }

    static CompletionList at(Analysis analysis, int offset) {
        Completing completing = new Completing(analysis, offset);
        completing.read();
        return new CompletionList(false, completing.items);
    }

    private void read() {
        Document document = analysis.document();
        NameIndex names = analysis.names();
        Wanted wanted = Wanted.at(document.text(), offset, document.lines(), names, document.name());
        if (wanted.where() == Wanted.Where.TEXT) {
            return;
        }
        if (wanted.where() == Wanted.Where.STATEMENT) {
            boolean piece = names.around(document.name(), offset)
                    .filter(r -> r.names().stream().noneMatch(n -> n.kind() == NameKind.ARGUMENT))
                    .isPresent();
            (piece ? Vocabulary.PIECE : Vocabulary.FILE).forEach(w -> word(w, FITS));
            Vocabulary.ANYWHERE.forEach(w -> word(w, FITS));
            return;
        }
        if (!wanted.path().isEmpty()) {
            members(wanted, names);
            return;
        }
        wanted.words().forEach(w -> item(w, CompletionItemKind.EnumMember, "a word of the choice", FITS));
        for (Named named : names.visible(document.name(), offset)) {
            name(named, wanted);
        }
        if (wanted.kind() == Kind.ANY || wanted.kind() == Kind.AMOUNT) {
            Vocabulary.MEASURING.keySet().stream()
                    .sorted()
                    .forEach(f -> item(f, CompletionItemKind.Function, "measures", CALLS));
            Vocabulary.NUMBERS.stream()
                    .sorted()
                    .forEach(f -> item(f, CompletionItemKind.Function, "of amounts", CALLS));
        }
        if (wanted.kind() == Kind.POINT || wanted.kind() == Kind.ANY) {
            word("origin", LEADS);
        }
    }

    private void members(Wanted wanted, NameIndex names) {
        Optional<Named> owner = Optional.empty();
        List<Named> among = names.visible(analysis.document().name(), offset);
        for (String part : wanted.path()) {
            owner = among.stream().filter(n -> n.name().equals(part)).findFirst();
            among = owner.map(o -> names.members(o.fullName())).orElse(List.of());
        }
        among.forEach(n -> name(n, wanted));
        owner.ifPresent(o -> {
            Kind kind = kind(o);
            Vocabulary.PARTS
                    .getOrDefault(kind, List.of())
                    .forEach(p -> item(
                            p, CompletionItemKind.Property, "of " + o.kind().words(), FITS));
        });
    }

    private void name(Named named, Wanted wanted) {
        if (named.kind() == NameKind.BROKEN && named.name().isEmpty()) {
            return;
        }
        CompletionItem item = item(named.name(), icon(named.kind()), detail(named), rank(named, wanted));
        if (!named.note().isBlank()) {
            item.setDocumentation(new MarkupContent(MarkupKind.PLAINTEXT, named.note()));
        }
    }

    private String detail(Named named) {
        String what = named.kind() == NameKind.RULE
                ? "(" + String.join(", ", named.words()) + ") gives " + named.type()
                : named.kind().words() + ", " + named.type();
        return analysis.values()
                .flatMap(v -> v.value(named.fullName()))
                .map(v -> what + ", " + v)
                .orElse(what);
    }

    private static String rank(Named named, Wanted wanted) {
        Kind kind = kind(named);
        if (wanted.kind() == Kind.ANY) {
            return FITS;
        }
        if (kind == wanted.kind() || (wanted.kind() == Kind.UNKNOWN && named.kind() == NameKind.UNKNOWN)) {
            Optional<Dimension> dimension = wanted.dimension();
            boolean fits = dimension.isEmpty() || named.dimension().isEmpty() || dimension.equals(named.dimension());
            return fits ? FITS : OTHER;
        }
        boolean leads = kind == Kind.PIECE
                || named.kind() == NameKind.DRAFT
                || (kind == Kind.DART && wanted.kind() == Kind.POINT);
        return leads ? LEADS : OTHER;
    }

    private static Kind kind(Named named) {
        return switch (named.kind()) {
            case POINT -> Kind.POINT;
            case PATH -> Kind.PATH;
            case PIECE -> Kind.PIECE;
            case CLOTH -> Kind.CLOTH;
            case DART -> Kind.DART;
            case CHOICE -> named.dimension().isPresent() ? Kind.AMOUNT : Kind.CHOICE;
            case MEASURE, FIT, UNKNOWN -> Kind.AMOUNT;
            case VALUE, RULE, ARGUMENT -> ofType(named);
            default -> Kind.ANY;
        };
    }

    private static Kind ofType(Named named) {
        if (named.dimension().isPresent()) {
            return Kind.AMOUNT;
        }
        return named.type().equals("a point") ? Kind.POINT : named.type().equals("a path") ? Kind.PATH : Kind.ANY;
    }

    private static CompletionItemKind icon(NameKind kind) {
        return switch (kind) {
            case PIECE -> CompletionItemKind.Class;
            case DRAFT -> CompletionItemKind.Module;
            case RULE -> CompletionItemKind.Function;
            case WORD -> CompletionItemKind.EnumMember;
            case CHOICE -> CompletionItemKind.Enum;
            case CLOTH -> CompletionItemKind.Struct;
            case PATH, DART -> CompletionItemKind.Field;
            case MEASURE, FIT -> CompletionItemKind.Constant;
            default -> CompletionItemKind.Variable;
        };
    }

    private void word(String word, String rank) {
        item(word, CompletionItemKind.Keyword, "", rank);
    }

    private CompletionItem item(String label, CompletionItemKind kind, String detail, String rank) {
        CompletionItem item = new CompletionItem(label);
        item.setKind(kind);
        item.setSortText(rank + label);
        if (!detail.isEmpty()) {
            item.setDetail(detail);
        }
        items.add(item);
        return item;
    }
}
