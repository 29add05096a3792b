package org.gusset.workbench;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** What can be wrong with a table of measures as a whole; single amounts have codes of their own in the core. */
public enum TableCode implements Code {
    NOT_UTF8("MEA201", Severity.ERROR, "{table} is not UTF-8 text; line {line} has a byte that does not belong there."),
    NOT_TEXT("MEA202", Severity.ERROR, "{table} is not a table in text form."),
    TOO_BIG("MEA203", Severity.ERROR, "{table} is larger than {megabytes} MB."),
    NO_BODIES("MEA204", Severity.ERROR, "{table} has no bodies."),
    NO_MEASURES("MEA205", Severity.ERROR, "{table} has bodies but no measures."),
    RAGGED_ROW("MEA206", Severity.ERROR, "This row has {cells} cells where the headings are {headings}."),
    BAD_QUOTES(
            "MEA207",
            Severity.ERROR,
            "{table} cannot be read beyond line {line}: a quoted cell does not end where it should."),
    PLAIN_NUMBER("MEA208", Severity.ERROR, "`{text}`, the {measure} of {body}, has no unit."),
    NOT_A_MEASURE("MEA209", Severity.ERROR, "`{text}`, the {measure} of {body}, is a share and not a measure."),
    SAME_MEASURE("MEA210", Severity.ERROR, "The measure {measure} stands in this table twice."),
    SAME_BODY("MEA211", Severity.ERROR, "The body {body} stands in this table twice."),
    NO_MEASURE_NAME("MEA212", Severity.ERROR, "There are amounts here but no name of a measure."),
    NO_BODY_NAME("MEA213", Severity.ERROR, "There are amounts here but no name of a body."),
    UNKNOWN_HEADING_UNIT("MEA214", Severity.ERROR, "`{unit}` in this heading is not a unit of length or angle."),
    CELL_TOO_LONG("MEA216", Severity.ERROR, "This cell has {length} letters, and {most} are allowed."),
    TOO_MANY_CELLS("MEA217", Severity.ERROR, "{table} has more than {most} cells."),
    TOO_MANY_MESSAGES(
            "MEA218", Severity.ERROR, "There are more messages about {table} than {most}, and the rest is not told."),
    LEFT_OUT("MEA215", Severity.WARNING, "The column {heading} has no unit and holds no amounts; it is left out.");

    private final String id;
    private final Severity severity;
    private final String english;

    TableCode(String id, Severity severity, String english) {
        this.id = id;
        this.severity = severity;
        this.english = english;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public Severity severity() {
        return severity;
    }

    @Override
    public String english() {
        return english;
    }
}
