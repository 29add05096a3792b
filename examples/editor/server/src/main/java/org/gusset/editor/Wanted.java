package org.gusset.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.gusset.core.measure.Dimension;
import org.gusset.dsl.names.NameIndex;
import org.gusset.dsl.names.NameKind;
import org.gusset.dsl.names.Named;
import org.gusset.editor.Vocabulary.Kind;

/**
 * What is wanted at a place of a text that is being typed, told from the words before it.
 *
 * @param where what the place is like
 * @param path what stands before the last dot, as in {@code Back} of {@code Back.ti}
 * @param kind the kind that is wanted
 * @param dimension the dimension of the amount that is wanted, where it is known
 * @param words the words of the choice that is compared, where words are wanted
 */
record Wanted(Where where, List<String> path, Kind kind, Optional<Dimension> dimension, List<String> words) {
    /** What a place is like. */
    enum Where {
        /** In a comment, or in the words of a text: nothing is offered. */
        TEXT,
        /** Where a statement begins. */
        STATEMENT,
        /** Inside a statement. */
        INSIDE
    }

    private static final int FARTHEST = 2000;
    private static final Pattern TAIL =
            Pattern.compile("((?:[\\p{L}_][\\p{L}\\p{M}\\p{N}_]*\\.)*)[\\p{L}\\p{M}\\p{N}_]*$");
    private static final Pattern TOKEN =
            Pattern.compile("[\\p{L}_][\\p{L}\\p{M}\\p{N}_]*(?:\\.[\\p{L}\\p{M}\\p{N}_]+)*|\\d[\\d./]*|[<>]=?|\\S");
    private static final Pattern WORD = Pattern.compile("[\\p{L}_].*");

    /** What is wanted at an offset. */
    static Wanted at(String text, int offset, Lines lines, NameIndex names, String source) {
        int lineStart = lines.lineStart(offset);
        String line = text.substring(lineStart, offset);
        String code = code(line);
        if (code == null) {
            return new Wanted(Where.TEXT, List.of(), Kind.ANY, Optional.empty(), List.of());
        }
        Matcher tail = TAIL.matcher(code);
        String dotted = tail.find() ? tail.group(1) : "";
        String head = code.substring(0, tail.start());
        List<String> path = dotted.isEmpty()
                ? List.of()
                : List.of(dotted.substring(0, dotted.length() - 1).split("\\."));
        String trimmed = head.strip();
        boolean begins =
                trimmed.isEmpty() || trimmed.endsWith("{") || trimmed.endsWith("}") || trimmed.equals("change");
        boolean hole = !code.equals(line);
        if (begins && path.isEmpty() && !hole && !goesOn(text, lineStart, trimmed)) {
            return new Wanted(Where.STATEMENT, path, Kind.ANY, Optional.empty(), List.of());
        }
        String before = hole ? "{ " + head : before(text, lineStart) + head;
        return told(tokens(before), path, offset, names, source);
    }

    /** The part of a line that is no text: all of it, or an open hole of a text; null in a comment or in the words of a text. */
    private static @org.jspecify.annotations.Nullable String code(String line) {
        boolean text = false;
        int hole = -1;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            boolean number =
                    i > 0 && (Character.isDigit(line.charAt(i - 1)) || "¼½¾⅛⅜⅝⅞".indexOf(line.charAt(i - 1)) >= 0);
            if (text && c == '\\') {
                i++;
            } else if (text && c == '{') {
                hole = i + 1;
            } else if (text && c == '}') {
                hole = -1;
            } else if ((c == '"' || c == '\u201C' || c == '\u201D') && (text || !number)) {
                text = !text;
                hole = -1;
            } else if (!text && c == '#') {
                return null;
            }
        }
        if (text) {
            return hole < 0 ? null : line.substring(hole);
        }
        return line;
    }

    /** True if a line goes on with what the one before has begun. */
    private static boolean goesOn(String text, int lineStart, String head) {
        if (!head.isEmpty()) {
            return false;
        }
        String before =
                text.substring(Math.max(0, lineStart - FARTHEST), lineStart).stripTrailing();
        return before.endsWith(",") || before.endsWith("+") || before.endsWith("=");
    }

    /** The statement up to this line, if it goes over several. */
    private static String before(String text, int lineStart) {
        String before = text.substring(Math.max(0, lineStart - FARTHEST), lineStart);
        String[] rows = before.split("\\R");
        int from = rows.length;
        while (from > 0 && rows.length - from < 6 && !beginsStatement(from < rows.length ? rows[from] : "")) {
            from--;
        }
        StringBuilder out = new StringBuilder();
        for (int i = from; i < rows.length; i++) {
            String code = code(rows[i]);
            out.append(code == null ? "" : code).append(' ');
        }
        return out.toString();
    }

    private static boolean beginsStatement(String row) {
        Matcher first = TOKEN.matcher(row);
        return first.find()
                && (Vocabulary.FILE.contains(first.group())
                        || Vocabulary.PIECE.contains(first.group())
                        || Vocabulary.ANYWHERE.contains(first.group()));
    }

    private static List<String> tokens(String code) {
        List<String> tokens = new ArrayList<>();
        Matcher matcher = TOKEN.matcher(code);
        while (matcher.find()) {
            tokens.add(matcher.group());
        }
        // The last statement alone.
        for (int i = tokens.size() - 1; i > 0; i--) {
            boolean brace = tokens.get(i - 1).equals("{") || tokens.get(i - 1).equals("}");
            if (brace || (beginsStatement(tokens.get(i)) && !tokens.get(i - 1).equals("change"))) {
                return tokens.subList(i, tokens.size());
            }
        }
        return tokens;
    }

    private static Wanted told(List<String> tokens, List<String> path, int offset, NameIndex names, String source) {
        String last = tokens.isEmpty() ? "" : tokens.get(tokens.size() - 1);
        String statement = tokens.isEmpty()
                ? ""
                : tokens.get(0).equals("change") && tokens.size() > 1 ? tokens.get(1) : tokens.get(0);
        Kind kind = Kind.ANY;
        Optional<Dimension> dimension = Optional.empty();
        List<String> words = List.of();
        int compared = compared(tokens);
        if (compared >= 0) {
            List<String> options = meaning(tokens.get(compared), offset, names, source)
                    .filter(n -> n.kind() == NameKind.CHOICE)
                    .map(Named::words)
                    .orElse(List.of());
            kind = options.isEmpty() ? Kind.ANY : Kind.WORD;
            words = options;
        } else if (last.equals("(") || (last.equals(",") && open(tokens) >= 0)) {
            kind = argument(tokens, open(tokens));
        } else if (BESIDE_AMOUNTS.contains(last) && tokens.size() > 1) {
            Optional<Named> left = meaning(tokens.get(tokens.size() - 2), offset, names, source);
            boolean edges = statement.equals("seam") || statement.equals("opening");
            kind = edges ? Kind.PATH : Kind.AMOUNT;
            dimension = left.flatMap(Named::dimension);
            if (!edges && dimension.isEmpty() && UNITS.contains(tokens.get(tokens.size() - 2))) {
                dimension = Optional.of(Dimension.LENGTH);
            }
        } else {
            kind = after(last, statement, tokens);
            if (Vocabulary.BEFORE_LENGTHS.contains(last)) {
                dimension = Optional.of(Dimension.LENGTH);
            } else if (last.equals("=") && kind == Kind.AMOUNT && tokens.size() > 1) {
                dimension = meaning(tokens.get(tokens.size() - 2), offset, names, source)
                        .flatMap(Named::dimension);
            }
        }
        return new Wanted(Where.INSIDE, path, kind, dimension, words);
    }

    /** Signs between two amounts, or between two edges that are sewn to each other. */
    private static final Set<String> BESIDE_AMOUNTS = Set.of("+", "-", "<", ">", "<=", ">=");

    private static final List<String> UNITS = List.of("mm", "cm", "m", "in", "ft", "yd");

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

    private static Kind argument(List<String> tokens, int open) {
        String function = open > 0 ? tokens.get(open - 1) : "";
        return Vocabulary.NUMBERS.contains(function)
                ? Kind.AMOUNT
                : Vocabulary.MEASURING.getOrDefault(function, Kind.ANY);
    }

    private static Kind after(String last, String statement, List<String> tokens) {
        String before = tokens.size() > 1 ? tokens.get(tokens.size() - 2) : "";
        if (last.equals("from")) {
            return switch (statement) {
                case "cut" -> Kind.CLOTH;
                case "piece" -> Kind.PIECE;
                case "measure", "choose", "fit", "unknown" -> Kind.AMOUNT;
                default -> Kind.POINT;
            };
        } else if (last.equals("placed")
                || (last.equals("toward") && before.equals("pressed") && statement.equals("seam"))) {
            return Kind.PIECE;
        } else if (last.equals("solve")) {
            return Kind.UNKNOWN;
        } else if (last.equals("closing")) {
            return Kind.DART;
        } else if (last.equals("of")) {
            return before.equals("part") || before.equals("cm") ? Kind.PATH : Kind.ANY;
        } else if (last.equals("to") || last.equals(",") || last.equals("=") || last.equals("and")) {
            return inRow(last, statement, before);
        } else if (Vocabulary.BEFORE_POINTS.contains(last)) {
            return Kind.POINT;
        } else if (last.equals("allow")) {
            return Kind.AMOUNT;
        } else if (Vocabulary.BEFORE_PATHS.contains(last)) {
            return Kind.PATH;
        }
        return Vocabulary.BEFORE_LENGTHS.contains(last) ? Kind.AMOUNT : Kind.ANY;
    }

    private static Kind inRow(String last, String statement, String before) {
        return switch (statement) {
            case "outline", "join", "seam", "corner", "opening", "allow" -> Kind.PATH;
            case "line", "arc", "dart", "slash", "grain" ->
                last.equals("to") && before.equals("square") ? Kind.PATH : Kind.POINT;
            case "curve" -> before.equals("square") ? Kind.PATH : last.equals("=") ? Kind.ANY : Kind.POINT;
            case "point" ->
                last.equals("=") || last.equals("and") ? Kind.POINT : before.equals("square") ? Kind.PATH : Kind.ANY;
            case "let", "unknown", "fit", "gather", "pleat", "finished" -> last.equals("and") ? Kind.ANY : Kind.AMOUNT;
            default -> Kind.ANY;
        };
    }

    private static Optional<Named> meaning(String token, int offset, NameIndex names, String source) {
        if (!WORD.matcher(token).matches()) {
            return Optional.empty();
        }
        List<String> parts = List.of(token.split("\\."));
        List<Named> all = names.visible(source, offset);
        Optional<Named> found = Optional.empty();
        for (String part : parts) {
            found = all.stream().filter(n -> n.name().equals(part)).findFirst();
            if (found.isEmpty()) {
                return found;
            }
            all = names.members(found.get().fullName());
        }
        return found;
    }
}
