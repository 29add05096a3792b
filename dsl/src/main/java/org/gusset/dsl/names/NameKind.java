package org.gusset.dsl.names;

/** What a name stands for. */
public enum NameKind {
    MEASURE("measure"),
    CHOICE("choice"),
    /** One of the words of a choice. */
    WORD("word"),
    FIT("fitting correction"),
    VALUE("value"),
    UNKNOWN("unknown"),
    RULE("rule"),
    /** What a rule is given. */
    ARGUMENT("argument"),
    /** Another draft, by the name under which it is used. */
    DRAFT("draft"),
    CLOTH("cloth"),
    PIECE("piece"),
    POINT("point"),
    /** A line, guide, curve, arc or join. */
    PATH("path"),
    /** A row of points. */
    ROW("row of points"),
    DART("dart"),
    SEAM("seam"),
    FINISHED("finished measure"),
    OPENING("opening"),
    /** Something whose definition cannot be read. */
    BROKEN("definition that cannot be read");

    private final String words;

    NameKind(String words) {
        this.words = words;
    }

    /** In a drafter's words, without the article. */
    public String words() {
        return words;
    }
}
