package org.gusset.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemKind;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.gusset.core.measure.Dimension;
import org.gusset.dsl.names.Continuation.NameForm;
import org.gusset.dsl.names.FunctionWord;
import org.gusset.dsl.names.NameIndex;
import org.gusset.dsl.names.NameKind;
import org.gusset.dsl.names.Named;
import org.gusset.editor.Vocabulary.Kind;

/**
 * What can be written at a place. The grammar says which words can follow and whether a name can; of the names those are offered that
 * are of the kind that is meant, or lead to one, what fits in dimension first.
 */
final class Completing {
    private static final String FITS = "0";
    private static final String LEADS = "1";
    private static final String CALLS = "2";
    private static final String WORDS = "3";
    private static final String OTHER = "5";

    private final Analysis analysis;
    private final int offset;
    private final Wanted wanted;
    private final NameIndex names;
    private final List<CompletionItem> items = new ArrayList<>();

    private Completing(Analysis analysis, int offset) {
        Document document = analysis.document();
        this.analysis = analysis;
        this.offset = offset;
        this.names = analysis.names();
        this.wanted = Wanted.at(document.text(), offset, document.lines(), names, document.name());
    }

    static CompletionList at(Analysis analysis, int offset, Workplace workplace) {
        Completing completing = new Completing(analysis, offset);
        completing.read(workplace);
        return new CompletionList(false, completing.items);
    }

    private String source() {
        return analysis.document().name();
    }

    private void read(Workplace workplace) {
        switch (wanted.where()) {
            case TEXT -> {}
            case FILE ->
                workplace
                        .shelf()
                        .usable(source())
                        .forEach(f -> item(f, CompletionItemKind.File, "a draft to use", FITS));
            case STATEMENT -> statements();
            default -> {
                if (wanted.path().isEmpty()) {
                    inside(workplace);
                } else {
                    members();
                }
            }
        }
    }

    private void statements() {
        boolean piece = names.around(source(), offset)
                .filter(r -> r.names().stream().noneMatch(n -> n.kind() == NameKind.ARGUMENT))
                .isPresent();
        (piece ? Vocabulary.PIECE : Vocabulary.FILE).forEach(w -> word(w, FITS));
        Vocabulary.ANYWHERE.forEach(w -> word(w, FITS));
        // What can go on with the statement before, on a line of its own.
        wanted.next()
                .ifPresent(n -> n.words().stream()
                        .filter(w -> !Vocabulary.beginsStatement(w))
                        .forEach(w -> word(w, WORDS)));
    }

    private void inside(Workplace workplace) {
        List<String> tokens = wanted.tokens();
        String statement = tokens.isEmpty() ? "" : tokens.get(0);
        int bracket = tokens.indexOf("(");
        if (statement.equals("use") && tokens.contains("with")) {
            settings(workplace);
            return;
        }
        if (statement.equals("rule") && bracket > 0 && !tokens.contains(")")) {
            if (tokens.size() - bracket > 1 && !tokens.get(tokens.size() - 1).equals(",")) {
                Vocabulary.ARGUMENTS.forEach(w -> word(w, FITS));
            }
            return;
        }
        boolean known = wanted.next().map(n -> n.name() == NameForm.KNOWN).orElse(true);
        wanted.next().ifPresent(n -> n.words().forEach(w -> follow(w, known)));
        if (statement.equals("change") && tokens.size() == 2 && !known) {
            changed(tokens.get(1));
        } else if (known) {
            saying(statement);
        }
    }

    /** Names that mean something already, and functions. */
    private void saying(String statement) {
        wanted.meant().words().forEach(w -> item(w, CompletionItemKind.EnumMember, "a word of the choice", FITS));
        names.visible(source(), offset).stream()
                .filter(n -> !isGiven(n, statement))
                .forEach(this::name);
        Kind kind = wanted.meant().kind();
        if (kind == Kind.PATH) {
            function(FunctionWord.CUT_EDGE);
        } else if (kind == Kind.ANY || fits(Kind.AMOUNT)) {
            for (FunctionWord function : FunctionWord.values()) {
                if (function != FunctionWord.CUT_EDGE || kind == Kind.ANY) {
                    function(function);
                }
            }
            item("pi", CompletionItemKind.Constant, "a plain number, 3.14159...", CALLS);
        }
    }

    /** A word that the grammar lets follow, if it can give what is meant. */
    private void follow(String word, boolean name) {
        Kind meant = wanted.meant().kind();
        Kind begun = Vocabulary.BEGINNINGS.get(word);
        boolean length = Vocabulary.LENGTH_UNITS.contains(word);
        if (length || Vocabulary.ANGLE_UNITS.contains(word)) {
            Dimension unit = length ? Dimension.LENGTH : Dimension.ANGLE;
            if (wanted.beforeLast(offset, names, source()).dimension().stream().allMatch(unit::equals)) {
                word(word, CALLS);
            }
        } else if (word.equals("not")) {
            boolean asked = meant == Kind.ANY || meant == Kind.CONDITION || meant == Kind.WORD || meant == Kind.VALUE;
            if (asked) {
                word(word, WORDS);
            }
        } else if (!name || meant == Kind.ANY || (meant != Kind.WORD && (begun == null || fits(begun)))) {
            word(word, WORDS);
        }
    }

    /** The definitions of one kind in the piece at hand, one of which is to be replaced. */
    private void changed(String form) {
        Kind kind = switch (form) {
            case "point" -> Kind.POINT;
            case "line", "guide", "curve", "arc", "join" -> Kind.PATH;
            case "dart" -> Kind.DART;
            case "let", "unknown" -> Kind.AMOUNT;
            default -> Kind.ANY;
        };
        names.around(source(), offset).stream()
                .flatMap(r -> r.names().stream())
                .filter(n -> kind(n) == kind && !isGiven(n, "change"))
                .forEach(n -> name(n, FITS));
    }

    /** True for what the statement at hand itself defines: it cannot be made of itself. */
    private boolean isGiven(Named named, String statement) {
        boolean around = named.statement().source().equals(source())
                && named.statement().start() <= offset
                && named.statement().end() >= offset;
        boolean block = named.kind() == NameKind.PIECE;
        return around
                && named.kind() != NameKind.ARGUMENT
                && (!block || statement.equals("piece") || statement.equals("strip"));
    }

    /** The choices of a draft that is used, and the words of the one that is set. */
    private void settings(Workplace workplace) {
        List<String> tokens = wanted.tokens();
        String file = tokens.get(1).replaceAll("[\"\u201C\u201D]", "");
        List<Named> choices = workplace.used(analysis.document(), file).stream()
                .flatMap(a -> a.names().names().stream()
                        .filter(n -> n.place().source().equals(a.document().name())))
                .filter(n -> n.kind() == NameKind.CHOICE)
                .toList();
        String last = tokens.get(tokens.size() - 1);
        if (last.equals("with") || last.equals(",")) {
            choices.forEach(n -> name(n, FITS));
        } else if (last.equals("=")) {
            String set = tokens.get(tokens.size() - 2);
            List<String> words = choices.stream()
                    .filter(n -> n.name().equals(set))
                    .flatMap(n -> n.words().stream())
                    .toList();
            words.forEach(w -> item(w, CompletionItemKind.EnumMember, "a word of the choice", FITS));
            if (words.isEmpty()) {
                wanted.next().ifPresent(n -> n.words().forEach(w -> follow(w, true)));
                saying("use");
            }
        }
    }

    private void members() {
        Optional<Named> owner = Optional.empty();
        List<Named> among = names.visible(source(), offset);
        for (String part : wanted.path()) {
            owner = among.stream().filter(n -> n.name().equals(part)).findFirst();
            among = owner.map(o -> names.members(o.fullName())).orElse(List.of());
        }
        for (Named member : among) {
            name(member, rank(member).orElse(OTHER));
        }
        owner.ifPresent(o -> Vocabulary.PARTS.getOrDefault(kind(o), Map.of()).entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(p -> item(
                        p.getKey(),
                        CompletionItemKind.Property,
                        "of " + o.kind().words(),
                        fits(p.getValue()) ? FITS : OTHER)));
    }

    private void name(Named named) {
        rank(named).ifPresent(r -> name(named, r));
    }

    private void name(Named named, String rank) {
        if (named.name().isEmpty()) {
            return;
        }
        CompletionItem item = item(named.name(), icon(named.kind()), detail(named), rank);
        if (!named.note().isBlank()) {
            item.setDocumentation(new MarkupContent(MarkupKind.PLAINTEXT, named.note()));
        }
    }

    private void function(FunctionWord function) {
        CompletionItem item = item(
                function.word(), CompletionItemKind.Function, function.form() + " gives " + function.gives(), CALLS);
        item.setDocumentation(new MarkupContent(MarkupKind.PLAINTEXT, function.meaning()));
    }

    private String detail(Named named) {
        String what = named.kind() == NameKind.RULE
                ? "(" + String.join(", ", named.words()) + ") gives " + named.type()
                : Reading.what(named);
        return analysis.values()
                .flatMap(v -> v.value(named.fullName()))
                .map(v -> what + ", " + v)
                .orElse(what);
    }

    /** How well a name fits; empty for one that cannot be meant. */
    private Optional<String> rank(Named named) {
        Kind meant = wanted.meant().kind();
        Kind kind = kind(named);
        if (meant == Kind.UNKNOWN) {
            return named.kind() == NameKind.UNKNOWN ? Optional.of(FITS) : Optional.empty();
        } else if (meant == Kind.WORD) {
            return Optional.empty();
        } else if (fits(kind)) {
            Optional<Dimension> dimension = wanted.meant().dimension();
            boolean same = dimension.isEmpty() || named.dimension().isEmpty() || dimension.equals(named.dimension());
            return Optional.of(same ? FITS : OTHER);
        } else if (kind == Kind.ANY || meant == Kind.VALUE) {
            return Optional.of(kind == Kind.PIECE || named.kind() == NameKind.DRAFT ? LEADS : OTHER);
        }
        boolean leads = switch (kind) {
            case PIECE -> meant != Kind.CLOTH;
            case DART -> meant != Kind.CLOTH && meant != Kind.PIECE;
            case PATH -> meant == Kind.POINT;
            default -> false;
        };
        return leads || named.kind() == NameKind.DRAFT ? Optional.of(LEADS) : Optional.empty();
    }

    private boolean fits(Kind kind) {
        Kind meant = wanted.meant().kind();
        return switch (meant) {
            case ANY -> true;
            case CONDITION, VALUE -> kind == Kind.AMOUNT || kind == Kind.CHOICE;
            case PLACE -> kind == Kind.POINT || kind == Kind.PATH;
            default -> kind == meant;
        };
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
        return switch (named.type()) {
            case "a point" -> Kind.POINT;
            case "a path" -> Kind.PATH;
            default -> Kind.ANY;
        };
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
        item.setTextEdit(
                Either.forLeft(new TextEdit(analysis.document().lines().range(wanted.start(), offset), label)));
        if (!detail.isEmpty()) {
            item.setDetail(detail);
        }
        items.add(item);
        return item;
    }
}
