package org.gusset.core.grade;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.geometry.Vector;

/** Moves and grade rules in words, lengths as facts. */
public final class GradeWords {
    /** More moves than this are told by the least and the most of them. */
    private static final int MOST_TOLD = 3;

    /** More sizes than this are counted. */
    private static final int MOST_SIZES = 4;

    /** Moves that differ by less, in mm, are told as one with the difference: two figures would read alike. */
    private static final double HAIR = 0.2;

    private GradeWords() {}

    /** A move: {@code right 1 cm, up 0.5 cm}, or that there is none. */
    public static Phrase move(Vector move) {
        List<Phrase> ways = new ArrayList<>();
        if (Math.abs(move.dx()) > GradeRules.ALIKE) {
            ways.add(across(move.dx()));
        }
        if (Math.abs(move.dy()) > GradeRules.ALIKE) {
            ways.add(along(move.dy()));
        }
        return ways.isEmpty() ? Phrase.of("grade.stays", "stays where it is") : Phrase.joined("grade.move", ", ", ways);
    }

    private static Phrase across(double right) {
        return right > 0
                ? Phrase.of("grade.right", "right {length}", "length", Fact.length(right))
                : Phrase.of("grade.left", "left {length}", "length", Fact.length(-right));
    }

    private static Phrase along(double down) {
        return down > 0
                ? Phrase.of("grade.down", "down {length}", "length", Fact.length(down))
                : Phrase.of("grade.up", "up {length}", "length", Fact.length(-down));
    }

    /** The moves of a rule: the one that is the same from size to size, or each with the size from which on it is so. */
    public static Phrase moves(CornerRule rule, List<String> sizes) {
        List<Vector> moves = rule.moves();
        if (moves.isEmpty()) {
            return Phrase.of("grade.no-move", "no move is known");
        }
        if (rule.course() == Course.CONSTANT) {
            return move(moves.get(0));
        }
        List<Phrase> runs = new ArrayList<>();
        Vector last = moves.get(0);
        for (int i = 1; i < sizes.size(); i++) {
            if (rule.move(i).isEmpty()) {
                continue;
            }
            Vector move = rule.move(i).get();
            if (runs.isEmpty() || !alike(move, last)) {
                runs.add(Phrase.of("grade.from", "{move} from {size} on", "size", sizes.get(i), "move", move(move)));
                last = move;
            }
        }
        return runs.size() <= MOST_TOLD ? Phrase.joined("grade.runs", "; ", runs) : range(moves);
    }

    private static boolean alike(Vector a, Vector b) {
        return Math.abs(a.dx() - b.dx()) <= GradeRules.ALIKE && Math.abs(a.dy() - b.dy()) <= GradeRules.ALIKE;
    }

    /** The least and the most that a corner moves, across and along. */
    public static Phrase range(List<Vector> moves) {
        return Phrase.joined("grade.move", ", ", ranges(moves));
    }

    /** The least and the most that a corner moves across, then along; nothing for a way in which it does not move. */
    public static List<Phrase> ranges(List<Vector> moves) {
        List<Phrase> ways = new ArrayList<>();
        range(moves.stream().map(Vector::dx).toList(), GradeWords::across, "right", "left")
                .ifPresent(ways::add);
        range(moves.stream().map(Vector::dy).toList(), GradeWords::along, "down", "up")
                .ifPresent(ways::add);
        return ways;
    }

    private static Optional<Phrase> range(
            List<Double> moves, DoubleFunction<Phrase> words, String forward, String back) {
        double low = Collections.min(moves);
        double high = Collections.max(moves);
        boolean backward = Math.abs(low) > Math.abs(high);
        double less = backward ? high : low;
        double more = backward ? low : high;
        double apart = high - low;
        if (Math.abs(more) <= GradeRules.ALIKE) {
            return Optional.empty();
        } else if (apart <= GradeRules.ALIKE) {
            return Optional.of(words.apply(more));
        } else if (Math.abs(more) < HAIR) {
            return Optional.of(Phrase.of("grade.hardly", "{most} at most", "most", words.apply(more)));
        } else if (apart < HAIR) {
            return Optional.of(Phrase.of(
                    "grade.nearly",
                    "{most} or up to {apart} less",
                    "most",
                    words.apply(more),
                    "apart",
                    Fact.length(apart)));
        } else if (less * more < 0 && Math.abs(less) > GradeRules.ALIKE) {
            return Optional.of(Phrase.of(
                    "grade.either-way", "{least} to {most}", "least", words.apply(less), "most", words.apply(more)));
        }
        return Optional.of(Phrase.of(
                "grade.between." + (backward ? back : forward),
                (backward ? back : forward) + " {least} to {most}",
                "least",
                length(Math.abs(less)),
                "most",
                Fact.length(Math.abs(more))));
    }

    /** A difference of lengths that are worked out to a few billionths of a millimetre: what is less than a move is none. */
    public static Fact length(double mm) {
        return Fact.length(Math.abs(mm) <= GradeRules.ALIKE ? 0 : mm);
    }

    /** The sizes at which a rule breaks: all if there are few, else the first and how many more. */
    public static Phrase breaks(CornerRule rule, List<String> sizes) {
        List<String> all = rule.breaks().stream().map(sizes::get).toList();
        return all.size() <= MOST_SIZES
                ? Phrase.of("grade.sizes", "{sizes}", "sizes", String.join(", ", all))
                : Phrase.of(
                        "grade.first-sizes", "{first} and {more} more", "first", all.get(0), "more", all.size() - 1);
    }

    /** A rule in a sentence without its corner: constant, with the chart, or bending, with its moves and the sizes at which it breaks. */
    public static Phrase rule(CornerRule rule, List<String> sizes) {
        Phrase moves = moves(rule, sizes);
        Phrase at = breaks(rule, sizes);
        switch (rule.course()) {
            case CONSTANT:
                return rule.stays() ? moves : Phrase.of("grade.constant", "{moves} per size", "moves", moves);
            case WITH_CHART:
                return Phrase.of(
                        "grade.with-chart", "breaks with the chart at {at}: {moves}", "at", at, "moves", moves);
            case BENDS:
                return Phrase.of("grade.bends", "bends at {at}: {moves}", "at", at, "moves", moves);
            default:
                return moves;
        }
    }
}
