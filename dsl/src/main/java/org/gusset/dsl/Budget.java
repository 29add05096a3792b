package org.gusset.dsl;

import org.gusset.core.evaluate.SolveOne;

/**
 * Bounds of what a draft may ask for, so that one from a stranger can neither fill the memory nor run for ever. Passing a bound is an
 * ordinary error, with a code that begins with LIM and the place where the draft asks for too much.
 *
 * @param characters the most UTF-16 units of a text: LIM001
 * @param nesting how deep brackets and blocks may nest, {@value #DEEPEST_NESTING} at most: LIM002
 * @param parts the most operators and moves of one statement, {@value #MOST_PARTS} at most: LIM003
 * @param chain how long a chain of values may be that each rest on one further down the text, {@value #LONGEST_CHAIN} at most:
 *     LIM101
 * @param calls the most calls of rules that a draft may unfold into: LIM102
 * @param files the most files that a draft may use, each counted as often as it is used: LIM103
 * @param pieces the most pieces, those of used files among them: LIM104
 * @param nodes the most nodes of the graph, those of solves among them: LIM105
 * @param row the most points of a row: LIM201
 * @param trials how often the equations of one solve may be tried: LIM202
 */
public record Budget(
        int characters,
        int nesting,
        int parts,
        int chain,
        int calls,
        int files,
        int pieces,
        int nodes,
        int row,
        int trials) {
    /** Deeper nesting could exhaust the stack of a thread. */
    public static final int DEEPEST_NESTING = 256;

    /** More parts of one statement could exhaust the stack of a thread. */
    public static final int MOST_PARTS = 1000;

    /** A longer chain could exhaust the stack of a thread. */
    public static final int LONGEST_CHAIN = 300;

    private static final Budget DEFAULTS =
            new Budget(4_000_000, 64, 250, 300, 50_000, 100, 1000, 1_000_000, 1000, SolveOne.USUAL_TRIALS);

    /**
     * A budget.
     *
     * @throws IllegalArgumentException if a bound is negative, or so high that the stack of a thread would be exhausted first
     */
    public Budget {
        check("characters", characters, Integer.MAX_VALUE);
        check("nesting", nesting, DEEPEST_NESTING);
        check("parts", parts, MOST_PARTS);
        check("chain", chain, LONGEST_CHAIN);
        check("calls", calls, Integer.MAX_VALUE);
        check("files", files, Integer.MAX_VALUE);
        check("pieces", pieces, Integer.MAX_VALUE);
        check("nodes", nodes, Integer.MAX_VALUE);
        check("row", row, Integer.MAX_VALUE);
        check("trials", trials, Integer.MAX_VALUE);
    }

    private static void check(String name, int bound, int highest) {
        if (bound < 0 || bound > highest) {
            throw new IllegalArgumentException("the bound of " + name + " must be 0 to " + highest + ", not " + bound);
        }
    }

    /** Room for every garment. */
    public static Budget defaults() {
        return DEFAULTS;
    }

    public Budget withCharacters(int most) {
        return new Budget(most, nesting, parts, chain, calls, files, pieces, nodes, row, trials);
    }

    public Budget withNesting(int most) {
        return new Budget(characters, most, parts, chain, calls, files, pieces, nodes, row, trials);
    }

    public Budget withParts(int most) {
        return new Budget(characters, nesting, most, chain, calls, files, pieces, nodes, row, trials);
    }

    public Budget withChain(int most) {
        return new Budget(characters, nesting, parts, most, calls, files, pieces, nodes, row, trials);
    }

    public Budget withCalls(int most) {
        return new Budget(characters, nesting, parts, chain, most, files, pieces, nodes, row, trials);
    }

    public Budget withFiles(int most) {
        return new Budget(characters, nesting, parts, chain, calls, most, pieces, nodes, row, trials);
    }

    public Budget withPieces(int most) {
        return new Budget(characters, nesting, parts, chain, calls, files, most, nodes, row, trials);
    }

    public Budget withNodes(int most) {
        return new Budget(characters, nesting, parts, chain, calls, files, pieces, most, row, trials);
    }

    public Budget withRow(int most) {
        return new Budget(characters, nesting, parts, chain, calls, files, pieces, nodes, most, trials);
    }

    public Budget withTrials(int most) {
        return new Budget(characters, nesting, parts, chain, calls, files, pieces, nodes, row, most);
    }
}
