package org.gusset.dsl;

import java.util.EnumMap;
import java.util.Map;
import org.gusset.core.graph.Bounds;

/**
 * Bounds of what a draft may ask for, so that one from a stranger can neither fill the memory nor run for ever. Passing a bound is an
 * ordinary error, with a code that begins with LIM and the place where the draft asks for too much. Everything is counted and nothing
 * timed, so that a draft is refused everywhere or nowhere. {@link Bound} tells what each bound counts.
 */
public final class Budget {
    /** Deeper nesting could exhaust the stack of a thread. */
    public static final int DEEPEST_NESTING = 256;

    /** More parts of one statement could exhaust the stack of a thread. */
    public static final int MOST_PARTS = 400;

    /** A longer chain could exhaust the stack of a thread. */
    public static final int LONGEST_CHAIN = 300;

    /** Rules that call one another deeper could exhaust the stack of a thread. */
    public static final int DEEPEST_RULES = 100;

    /** More changes of one piece could exhaust the stack of a thread. */
    public static final int MOST_CHANGES = 200;

    /** More pieces that are each traced from another could exhaust the stack of a thread. */
    public static final int MOST_PIECES = 1000;

    /** More files that each use another could exhaust the stack of a thread. */
    public static final int MOST_FILES = 500;

    private static final Budget DEFAULTS = new Budget(Map.of());

    private final Map<Bound, Long> set;

    private Budget(Map<Bound, Long> set) {
        this.set = set;
    }

    /** Room for every garment. */
    public static Budget defaults() {
        return DEFAULTS;
    }

    /** How much is allowed. */
    public long allows(Bound bound) {
        return set.getOrDefault(bound, bound.usual());
    }

    /**
     * The same with another bound.
     *
     * @throws IllegalArgumentException if it is negative, or so high that the stack of a thread would be exhausted first
     */
    public Budget with(Bound bound, long most) {
        if (most < 0 || most > bound.highest()) {
            throw new IllegalArgumentException("the bound of " + bound.name().toLowerCase(java.util.Locale.ROOT)
                    + " must be 0 to " + bound.highest() + ", not " + most);
        }
        Map<Bound, Long> changed = new EnumMap<>(Bound.class);
        changed.putAll(set);
        changed.put(bound, most);
        return new Budget(changed);
    }

    /** The bounds of an evaluation, which a draft carries with it. */
    public Bounds evaluation() {
        return new Bounds(
                allows(Bound.STEPS),
                segments(),
                (double) allows(Bound.REACH),
                allows(Bound.OUTPUT),
                allows(Bound.PICTURES));
    }

    private int most(Bound bound) {
        return (int) allows(bound);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Budget budget && same(budget);
    }

    private boolean same(Budget other) {
        for (Bound bound : Bound.values()) {
            if (allows(bound) != other.allows(bound)) {
                return false;
            }
        }
        return true;
    }

    @Override
    public int hashCode() {
        int hash = 0;
        for (Bound bound : Bound.values()) {
            hash = 31 * hash + Long.hashCode(allows(bound));
        }
        return hash;
    }

    @Override
    public String toString() {
        return "Budget" + set;
    }

    public int characters() {
        return most(Bound.CHARACTERS);
    }

    public Budget withCharacters(int most) {
        return with(Bound.CHARACTERS, most);
    }

    public int nesting() {
        return most(Bound.NESTING);
    }

    public Budget withNesting(int most) {
        return with(Bound.NESTING, most);
    }

    public int parts() {
        return most(Bound.PARTS);
    }

    public Budget withParts(int most) {
        return with(Bound.PARTS, most);
    }

    public int chain() {
        return most(Bound.CHAIN);
    }

    public Budget withChain(int most) {
        return with(Bound.CHAIN, most);
    }

    public int calls() {
        return most(Bound.CALLS);
    }

    public Budget withCalls(int most) {
        return with(Bound.CALLS, most);
    }

    public int rules() {
        return most(Bound.RULES);
    }

    public Budget withRules(int most) {
        return with(Bound.RULES, most);
    }

    public int files() {
        return most(Bound.FILES);
    }

    public Budget withFiles(int most) {
        return with(Bound.FILES, most);
    }

    public int name() {
        return most(Bound.NAME);
    }

    public Budget withName(int most) {
        return with(Bound.NAME, most);
    }

    public int words() {
        return most(Bound.WORDS);
    }

    public Budget withWords(int most) {
        return with(Bound.WORDS, most);
    }

    public int names() {
        return most(Bound.NAMES);
    }

    public Budget withNames(int most) {
        return with(Bound.NAMES, most);
    }

    public int pieces() {
        return most(Bound.PIECES);
    }

    public Budget withPieces(int most) {
        return with(Bound.PIECES, most);
    }

    public int changes() {
        return most(Bound.CHANGES);
    }

    public Budget withChanges(int most) {
        return with(Bound.CHANGES, most);
    }

    public int checks() {
        return most(Bound.CHECKS);
    }

    public Budget withChecks(int most) {
        return with(Bound.CHECKS, most);
    }

    public int messages() {
        return most(Bound.MESSAGES);
    }

    public Budget withMessages(int most) {
        return with(Bound.MESSAGES, most);
    }

    public int nodes() {
        return most(Bound.NODES);
    }

    public Budget withNodes(int most) {
        return with(Bound.NODES, most);
    }

    public int row() {
        return most(Bound.ROW);
    }

    public Budget withRow(int most) {
        return with(Bound.ROW, most);
    }

    public int trials() {
        return most(Bound.TRIALS);
    }

    public Budget withTrials(int most) {
        return with(Bound.TRIALS, most);
    }

    public Budget withSteps(long most) {
        return with(Bound.STEPS, most);
    }

    public int segments() {
        return most(Bound.SEGMENTS);
    }

    public Budget withSegments(int most) {
        return with(Bound.SEGMENTS, most);
    }

    public Budget withReach(int mm) {
        return with(Bound.REACH, mm);
    }

    public Budget withOutput(long most) {
        return with(Bound.OUTPUT, most);
    }

    public Budget withPictures(long most) {
        return with(Bound.PICTURES, most);
    }
}
