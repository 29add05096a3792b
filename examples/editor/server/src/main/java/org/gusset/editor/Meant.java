package org.gusset.editor;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.gusset.core.measure.Dimension;
import org.gusset.dsl.names.NameIndex;
import org.gusset.dsl.names.NameKind;
import org.gusset.dsl.names.Named;
import org.gusset.editor.Vocabulary.Kind;

/**
 * The kind of name that is meant behind some words of a statement. The grammar knows where a name stands and not what it stands for.
 *
 * @param kind the kind that is wanted
 * @param dimension the dimension of the amount that is wanted, where it is known
 * @param words the words of the choice that is compared, where words are wanted
 */
record Meant(Kind kind, Optional<Dimension> dimension, List<String> words) {
    static final Meant ANYTHING = of(Kind.ANY);
    static final Meant CONDITION = of(Kind.CONDITION);

    private static final Pattern WORD = Pattern.compile("[\\p{L}_].*");

    /** Signs between two amounts, or between two edges that are sewn to each other. */
    private static final Set<String> BESIDE_AMOUNTS = Set.of("+", "-", "<", ">", "<=", ">=");

    private static final Set<String> DIRECTIONS = Set.of("left", "right", "up", "down");

    private static Meant of(Kind kind) {
        return new Meant(kind, Optional.empty(), List.of());
    }

    private static Meant amount(Dimension dimension) {
        return new Meant(Kind.AMOUNT, Optional.of(dimension), List.of());
    }

    /** What is meant behind the words of a statement. */
    static Meant of(List<String> tokens, int offset, NameIndex names, String source) {
        if (tokens.isEmpty()) {
            return ANYTHING;
        }
        String last = tokens.get(tokens.size() - 1);
        String before = tokens.size() > 1 ? tokens.get(tokens.size() - 2) : "";
        int changed = tokens.get(0).equals("change") && tokens.size() > 1 ? 1 : 0;
        String statement = tokens.get(changed);
        int compared = compared(tokens);
        if (compared >= 0) {
            List<String> words = meaning(tokens.get(compared), offset, names, source)
                    .filter(n -> n.kind() == NameKind.CHOICE)
                    .map(Named::words)
                    .orElse(List.of());
            return words.isEmpty() ? ANYTHING : new Meant(Kind.WORD, Optional.empty(), words);
        }
        int open = open(tokens);
        if (last.equals("(")) {
            boolean call = Vocabulary.NUMBERS.contains(before)
                    || Vocabulary.MEASURING.containsKey(before)
                    || meaning(before, offset, names, source)
                            .filter(n -> n.kind() == NameKind.RULE)
                            .isPresent();
            return call
                    ? argument(tokens, open, offset, names, source)
                    : of(tokens.subList(0, tokens.size() - 1), offset, names, source);
        }
        if (last.equals(",") && open >= 0) {
            return argument(tokens, open, offset, names, source);
        }
        boolean edges = statement.equals("seam") || statement.equals("opening");
        if (BESIDE_AMOUNTS.contains(last)) {
            if (edges && !tokens.contains("ease") && !tokens.contains("passes")) {
                return of(Kind.PATH);
            }
            Optional<Dimension> left = meaning(before, offset, names, source).flatMap(Named::dimension);
            boolean length = left.isEmpty() && Vocabulary.LENGTH_UNITS.contains(before);
            return new Meant(Kind.AMOUNT, length ? Optional.of(Dimension.LENGTH) : left, List.of());
        }
        if (last.equals("else") && open >= 0) {
            return of(tokens.subList(0, open + 1), offset, names, source);
        }
        if (last.equals("=") || last.equals("else")) {
            Meant given = given(statement, tokens);
            return last.equals("=") && given.kind == Kind.AMOUNT && statement.equals("solve")
                    ? new Meant(
                            Kind.AMOUNT, meaning(before, offset, names, source).flatMap(Named::dimension), List.of())
                    : given;
        }
        return after(last, before, statement, tokens);
    }

    /** What a definition is made of. */
    private static Meant given(String statement, List<String> tokens) {
        return switch (statement) {
            case "point", "line", "guide", "arc", "dart" -> of(Kind.POINT);
            case "join", "seam", "opening", "curve" -> of(Kind.PATH);
            case "rule" -> tokens.contains("line") || tokens.contains("curve") ? of(Kind.POINT) : of(Kind.VALUE);
            case "measure" -> amount(Dimension.LENGTH);
            case "points" -> amount(Dimension.NUMBER);
            case "let", "choose" -> of(Kind.VALUE);
            default -> of(Kind.AMOUNT);
        };
    }

    private static Meant after(String last, String before, String statement, List<String> tokens) {
        return switch (last) {
            case "from" ->
                switch (statement) {
                    case "cut" -> of(Kind.CLOTH);
                    case "piece" -> of(Kind.PIECE);
                    case "measure" -> amount(Dimension.LENGTH);
                    case "choose", "fit", "unknown" -> of(Kind.AMOUNT);
                    default -> of(Kind.POINT);
                };
            case "placed" -> of(Kind.PIECE);
            case "toward" -> of(before.equals("pressed") && statement.equals("seam") ? Kind.PIECE : Kind.POINT);
            case "solve" -> of(Kind.UNKNOWN);
            case "closing" -> of(Kind.DART);
            case "dart" -> of(statement.equals("drop") ? Kind.DART : Kind.ANY);
            case "of" -> of(tokens.contains("closing") ? Kind.DART : Kind.PATH);
            case "if", "or", "not", "check" -> CONDITION;
            case "and" ->
                statement.equals("check") || tokens.contains("if") || tokens.contains("or")
                        ? CONDITION
                        : of(Kind.POINT);
            case "cut", "points", "tension" -> amount(Dimension.NUMBER);
            case "*", "/", "ease" -> of(Kind.AMOUNT);
            case "that" -> of(Kind.AMOUNT);
            case "passes", "allow", "spread", "intake" -> amount(Dimension.LENGTH);
            case "angled", "turned", "tilted", "swung", "heading" -> amount(Dimension.ANGLE);
            case "over" -> of(statement.equals("finished") ? Kind.AMOUNT : Kind.PATH);
            case "nearest" -> of(statement.equals("solve") ? Kind.AMOUNT : Kind.POINT);
            case "matching" -> of(statement.equals("seam") ? Kind.POINT : Kind.ANY);
            case "with" ->
                of(
                        statement.equals("seam") && tokens.contains("matching")
                                ? Kind.POINT
                                : statement.equals("pleat") ? Kind.AMOUNT : Kind.ANY);
            case "at" -> at(statement, tokens);
            case "to" -> to(statement, before, tokens);
            case "," -> inRow(statement, tokens);
            default -> word(last, statement, tokens);
        };
    }

    private static Meant word(String last, String statement, List<String> tokens) {
        if (Vocabulary.BEFORE_POINTS.contains(last)) {
            return of(Kind.POINT);
        } else if (Vocabulary.BEFORE_PATHS.contains(last)) {
            return of(Kind.PATH);
        } else if (Vocabulary.BEFORE_LENGTHS.contains(last)) {
            return amount(Dimension.LENGTH);
        }
        boolean edge = statement.equals("allow")
                && tokens.contains(",")
                && WORD.matcher(last).matches();
        return edge ? amount(Dimension.LENGTH) : ANYTHING;
    }

    private static Meant at(String statement, List<String> tokens) {
        return switch (statement) {
            case "mark", "nest", "seam" -> of(Kind.POINT);
            case "lengthen" -> of(Kind.PATH);
            case "dart" -> of(tokens.contains("intake") ? Kind.POINT : Kind.AMOUNT);
            default -> of(Kind.AMOUNT);
        };
    }

    private static Meant to(String statement, String before, List<String> tokens) {
        if (DIRECTIONS.contains(before)) {
            return of(Kind.PLACE);
        } else if (before.equals("square") || before.equals("squared") || before.equals("mirrored")) {
            return of(Kind.PATH);
        }
        return switch (statement) {
            case "measure" -> amount(Dimension.LENGTH);
            case "choose", "fit", "unknown", "gather", "pleat", "finished" -> of(Kind.AMOUNT);
            case "seam" -> of(tokens.contains("ease") ? Kind.AMOUNT : Kind.PATH);
            case "point" -> of(Kind.PATH);
            case "line", "guide", "arc", "dart", "slash", "grain", "curve", "rule" -> of(Kind.POINT);
            default -> ANYTHING;
        };
    }

    private static Meant inRow(String statement, List<String> tokens) {
        return switch (statement) {
            case "outline", "join", "corner", "allow" -> of(Kind.PATH);
            case "curve" -> of(Kind.POINT);
            case "seam" -> of(Kind.POINT);
            case "solve" -> of(tokens.contains("that") ? Kind.AMOUNT : Kind.UNKNOWN);
            default -> ANYTHING;
        };
    }

    /** The number of the token that is compared with a word; -1 if none is. */
    private static int compared(List<String> tokens) {
        int at = tokens.size() - 1;
        if (at > 0 && tokens.get(at).equals("not")) {
            at--;
        }
        return at > 0 && tokens.get(at).equals("is") ? at - 1 : -1;
    }

    /** The number of the last open bracket; -1 if none is open. */
    private static int open(List<String> tokens) {
        int depth = 0;
        for (int i = tokens.size() - 1; i >= 0; i--) {
            if (tokens.get(i).equals(")")) {
                depth++;
            } else if (tokens.get(i).equals("(") && depth-- == 0) {
                return i;
            }
        }
        return -1;
    }

    private static Meant argument(List<String> tokens, int open, int offset, NameIndex names, String source) {
        String function = open > 0 ? tokens.get(open - 1) : "";
        if (Vocabulary.NUMBERS.contains(function)) {
            return of(Kind.AMOUNT);
        } else if (Vocabulary.MEASURING.containsKey(function)) {
            return of(Vocabulary.MEASURING.get(function));
        }
        int depth = 0;
        int count = 0;
        for (String token : tokens.subList(open + 1, tokens.size())) {
            depth += token.equals("(") ? 1 : token.equals(")") ? -1 : 0;
            count += depth == 0 && token.equals(",") ? 1 : 0;
        }
        int which = count;
        return meaning(function, offset, names, source)
                .filter(n -> n.kind() == NameKind.RULE && which < n.words().size())
                .map(n -> ofKind(n.words().get(which)))
                .orElse(ANYTHING);
    }

    /** What an argument takes, as in {@code girth length}. */
    private static Meant ofKind(String argument) {
        return switch (argument.substring(argument.lastIndexOf(' ') + 1)) {
            case "length" -> amount(Dimension.LENGTH);
            case "angle" -> amount(Dimension.ANGLE);
            case "area" -> amount(Dimension.AREA);
            case "number" -> amount(Dimension.NUMBER);
            case "point" -> of(Kind.POINT);
            case "path", "line", "curve", "arc" -> of(Kind.PATH);
            case "piece" -> of(Kind.PIECE);
            default -> CONDITION;
        };
    }

    /** What a name means that stands at an offset, with dots or without. */
    static Optional<Named> meaning(String token, int offset, NameIndex names, String source) {
        if (!WORD.matcher(token).matches()) {
            return Optional.empty();
        }
        List<Named> all = names.visible(source, offset);
        Optional<Named> found = Optional.empty();
        for (String part : token.split("\\.")) {
            found = all.stream().filter(n -> n.name().equals(part)).findFirst();
            if (found.isEmpty()) {
                return found;
            }
            all = names.members(found.get().fullName());
        }
        return found;
    }
}
