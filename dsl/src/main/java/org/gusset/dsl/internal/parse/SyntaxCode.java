package org.gusset.dsl.internal.parse;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** Mistakes of writing. */
public enum SyntaxCode implements Code {
    UNEXPECTED("SYN001", "`{found}` cannot stand here; {expected} is wanted."),
    ENDS_EARLY("SYN002", "The statement breaks off after `{after}`; {expected} is wanted."),
    RESERVED("SYN003", "`{word}` {role}, so it cannot be a name."),
    NO_STATEMENT("SYN004", "`{found}` begins no statement."),
    MIXED_WITHOUT_UNIT("SYN005", "`{text}` has no unit: a number with a fraction must be a length."),
    DASHED_FRACTION("SYN006", "`{text}` would be taken for a subtraction."),
    UNCLOSED_STRING("SYN007", "This text has no closing quote on its line."),
    DECIMAL_COMMA("SYN008", "`{text}` has a comma; decimals are written with a point."),
    UNIT_SIGN("SYN009", "`{text}` cannot stand for a unit."),
    UNIT_NAME("SYN010", "`{found}` is not how this unit is written."),
    STRAY("SYN011", "The character `{found}` has no meaning here."),
    MISSING_BY("SYN012", "`by` is missing before the amount."),
    CHAIN("SYN013", "One comparison cannot be chained to the next."),
    FIRST_AMOUNT("SYN014", "The first amount of `allow` is for all edges; it is missing."),
    BARE_CHANGE("SYN015", "`change` stands alone; what it changes must follow on the same line."),
    MISSING_CLOSE("SYN016", "A `}` is missing before this line: {block} is still open."),
    STRAY_CLOSE("SYN017", "This `}` closes nothing."),
    MISSING_OPEN("SYN018", "A `{` is missing after the head of this block."),
    LOOSE_BLOCK("SYN019", "This `{` belongs to no `piece`, `strip` or `step`."),
    WRONG_LEVEL("SYN020", "`{word}` belongs inside a piece."),
    STEP_OUTSIDE("SYN021", "A `step` stands inside a piece, and steps do not nest."),
    EMPTY_HOLE("SYN022", "There is nothing between these braces."),
    BAD_ESCAPE("SYN023", "`{text}` is no escape; a text knows \\\", \\\\, \\{ and \\}."),
    UNCLOSED_HOLE("SYN024", "A `{` in a text opens a value, and its `}` is missing."),
    VERSION("SYN025", "This draft is written for version {version} of the language, and this library reads version 1."),
    CURLY_QUOTE("SYN026", "Curly quotes do not begin a text."),
    SAID_TWICE("SYN027", "`{word}` is said twice in this statement."),
    UNCLOSED_BRACKET("SYN028", "This `(` is not closed by a `)`."),
    HOLLOW_WITH_WAYS("SYN029", "A hollowed curve bends one straight stretch; it takes no `through` and no `heading`."),
    TOO_LONG("LIM001", "The text has {length} characters, and {most} are allowed."),
    TOO_NESTED("LIM002", "Brackets and blocks are nested more than {most} deep here."),
    NAME_TOO_LONG("LIM107", "This name has {length} letters, and {most} are allowed."),
    WORDS_TOO_LONG("LIM109", "This text has {length} letters, and {most} are allowed."),
    TOO_MANY_PARTS("LIM003", "This statement has more than {most} operators and moves.");

    private final String id;
    private final String english;

    SyntaxCode(String id, String english) {
        this.id = id;
        this.english = english;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public Severity severity() {
        return Severity.ERROR;
    }

    @Override
    public String english() {
        return english;
    }
}
