package org.gusset.dsl.internal.resolve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.diagnostic.Span;
import org.gusset.core.measure.Dimension;
import org.gusset.dsl.names.NameKind;
import org.gusset.dsl.names.Named;
import org.gusset.dsl.syntax.Name;
import org.gusset.dsl.syntax.Statement;
import org.gusset.dsl.syntax.Words;
import org.jspecify.annotations.Nullable;

/** The entries of an index of names: symbols as they are told to a drafter. */
final class Entries {
    private final Messages messages;
    private final Rules rules;
    private final Map<Symbol, Named> known = new IdentityHashMap<>();
    private final Map<Span, Named> words = new HashMap<>();

    Entries(Messages messages, Rules rules) {
        this.messages = messages;
        this.rules = rules;
    }

    /** Everything in a scope that a draft can name. */
    List<Named> all(Scope scope) {
        List<Named> all = new ArrayList<>();
        for (Symbol symbol : scope.symbols()) {
            if (symbol.role() != Symbol.Role.CHANGE && symbol.role() != Symbol.Role.FULLNESS) {
                all.add(of(symbol));
            }
        }
        return all;
    }

    Named of(Symbol symbol) {
        return known.computeIfAbsent(symbol, this::made);
    }

    private Named made(Symbol symbol) {
        Statement statement = symbol.statement();
        Type type = symbol.role() == Symbol.Role.RULE ? rules.gives(symbol) : symbol.type();
        return named(
                symbol.fullName(),
                symbol.name(),
                kind(symbol.role()),
                type,
                symbol.span(),
                statement == null ? symbol.span() : statement.span(),
                note(statement),
                words(statement));
    }

    private Named named(
            String fullName,
            String name,
            NameKind kind,
            Type type,
            Span place,
            Span statement,
            String note,
            List<String> words) {
        Optional<Dimension> dimension = type.amount() ? Optional.of(type.dimension()) : Optional.empty();
        boolean written = messages.text(place).equals(name);
        String told = type.broken() ? "unknown" : type.words();
        return new Named(fullName, name, kind, told, dimension, place, written, statement, note, words);
    }

    Named argument(Symbol argument, Statement.Rule rule) {
        Named named = named(
                rule.name().text() + "." + argument.name(),
                argument.name(),
                NameKind.ARGUMENT,
                argument.type(),
                argument.span(),
                rule.span(),
                "",
                List.of());
        known.put(argument, named);
        return named;
    }

    /** A second definition of a name: what another file says of a measure, or what a later change replaces. */
    Named again(Name name, Statement statement, Context at) {
        String piece = at.piece();
        return named(
                piece.isEmpty() ? at.home().prefix() + name.text() : piece + "." + name.text(),
                name.text(),
                kind(Definitions.role(statement)),
                Definitions.type(statement),
                name.span(),
                statement.span(),
                note(statement),
                words(statement));
    }

    Named word(String word, @Nullable Symbol choice, Statement.Choose choose) {
        Span place = choose.options().stream()
                .filter(o -> o.text().equals(word))
                .findFirst()
                .orElse(choose.name())
                .span();
        String owner = choice == null ? choose.name().text() : choice.fullName();
        return words.computeIfAbsent(
                place,
                p -> named(
                        owner + "." + word,
                        word,
                        NameKind.WORD,
                        choice == null ? Type.BROKEN : choice.type(),
                        p,
                        choose.span(),
                        note(choose),
                        List.of()));
    }

    /** Something that is stated of pieces and has a name that only messages say. */
    Named check(Name name, NameKind kind, Statement statement, Home home) {
        return new Named(
                home.prefix() + name.text(),
                name.text(),
                kind,
                kind.words(),
                Optional.empty(),
                name.span(),
                true,
                statement.span(),
                "",
                List.of());
    }

    Named lost(Name name) {
        return named(name.text(), name.text(), NameKind.BROKEN, Type.BROKEN, name.span(), name.span(), "", List.of());
    }

    /** True if a piece ends in its brace. */
    boolean isClosed(Span span) {
        return messages.text(span).endsWith("}");
    }

    private static String note(@Nullable Statement statement) {
        Optional<Words> note = Optional.empty();
        if (statement instanceof Statement.Measure s) {
            note = s.howTo();
        } else if (statement instanceof Statement.Choose s) {
            note = s.note();
        } else if (statement instanceof Statement.Fit s) {
            note = s.note();
        } else if (statement instanceof Statement.Rule s) {
            note = s.note();
        } else if (statement instanceof Statement.Cloth s) {
            note = s.note();
        } else if (statement instanceof Statement.Use s) {
            note = Optional.of(s.file());
        }
        return note.map(Words::plain).orElse("");
    }

    private static List<String> words(@Nullable Statement statement) {
        if (statement instanceof Statement.Choose choose) {
            return choose.options().stream().map(Name::text).toList();
        }
        return statement instanceof Statement.Rule rule
                ? rule.parameters().stream()
                        .map(p -> p.name().text() + " " + p.kind().text())
                        .toList()
                : List.of();
    }

    private static NameKind kind(Symbol.Role role) {
        return switch (role) {
            case MEASURE -> NameKind.MEASURE;
            case CHOICE -> NameKind.CHOICE;
            case FIT -> NameKind.FIT;
            case VALUE -> NameKind.VALUE;
            case UNKNOWN -> NameKind.UNKNOWN;
            case RULE -> NameKind.RULE;
            case ARGUMENT -> NameKind.ARGUMENT;
            case PIECE -> NameKind.PIECE;
            case USED -> NameKind.DRAFT;
            case CLOTH -> NameKind.CLOTH;
            case POINT -> NameKind.POINT;
            case PATH -> NameKind.PATH;
            case ROW -> NameKind.ROW;
            case DART -> NameKind.DART;
            case CHANGE, FULLNESS, BROKEN -> NameKind.BROKEN;
        };
    }
}
