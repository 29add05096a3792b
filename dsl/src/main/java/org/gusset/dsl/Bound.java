package org.gusset.dsl;

import java.util.List;
import org.gusset.core.evaluate.SolveOne;
import org.gusset.core.geometry.Extent;
import org.gusset.core.graph.Bounds;

/** What is bounded of a draft: see {@link Budget}. */
public enum Bound {
    /** UTF-16 units of a text, and of all texts that a draft uses together. */
    CHARACTERS(500_000, "LIM001", "LIM106"),
    /** How deep brackets and blocks may nest. */
    NESTING(64, Budget.DEEPEST_NESTING, "LIM002"),
    /** Operators and moves of one statement. */
    PARTS(250, Budget.MOST_PARTS, "LIM003"),
    /** How long a chain of values may be that each rest on one further down the text. */
    CHAIN(300, Budget.LONGEST_CHAIN, "LIM101"),
    /** Calls of rules that a draft may unfold into. */
    CALLS(50_000, "LIM102"),
    /** How deep rules may call one another. */
    RULES(50, Budget.DEEPEST_RULES, "LIM112"),
    /** Files that a draft may use, each counted as often as it is used. */
    FILES(100, Budget.MOST_FILES, "LIM103"),
    /** Letters of a name. */
    NAME(100, "LIM107"),
    /** Letters of a text in a draft: its title, its notes, labels, sentences. */
    WORDS(5_000, "LIM109"),
    /** Names of a draft, those of used files and those that traced pieces take over among them. */
    NAMES(100_000, "LIM108"),
    /** Pieces, those of used files among them. */
    PIECES(250, Budget.MOST_PIECES, "LIM104"),
    /** Changes of one piece. */
    CHANGES(100, Budget.MOST_CHANGES, "LIM111"),
    /** Seams, finished measures, openings and checks. */
    CHECKS(300, "LIM113"),
    /** Messages about the texts. */
    MESSAGES(500, "LIM110"),
    /** Nodes of the graph, those of solves among them. */
    NODES(500_000, "LIM105"),
    /** Points of a row. */
    ROW(1_000, "LIM201"),
    /** How often the equations of one solve may be tried. */
    TRIALS(SolveOne.USUAL_TRIALS, "LIM202"),
    /** Steps of one evaluation, those of solves among them: see {@link org.gusset.core.graph.Effort}. */
    STEPS(Bounds.defaults().steps(), "LIM203", "LIM206", "LIM207"),
    /** Lines, arcs and cubics of one path. */
    SEGMENTS(Bounds.defaults().segments(), "LIM204"),
    /** How far a point may lie from the corner of its paper, in mm. */
    REACH((long) Bounds.defaults().reach(), (long) Extent.FARTHEST, "LIM205"),
    /** Lines, marks and words of all pieces together, of which documents are made. */
    OUTPUT(Bounds.defaults().output(), "LIM301", "LIM305"),
    /** Lines and points of all pictures of a lesson. */
    PICTURES(Bounds.defaults().pictures(), "LIM302");

    private final long usual;
    private final long highest;
    private final List<String> codes;

    Bound(long usual, String... codes) {
        this(usual, Integer.MAX_VALUE, codes);
    }

    Bound(long usual, long highest, String... codes) {
        this.usual = usual;
        this.highest = highest;
        this.codes = List.of(codes);
    }

    /** What is allowed unless the host says otherwise. */
    public long usual() {
        return usual;
    }

    /** What a host may allow at most; more could exhaust the stack of a thread, or is more than is counted. */
    public long highest() {
        return highest;
    }

    /** The codes of the errors that tell that it was passed. */
    public List<String> codes() {
        return codes;
    }
}
