package org.gusset.core.measure;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** What can be wrong with an amount as written. Every one is an error: no amount is guessed. */
public enum MeasureCode implements Code {
    EMPTY("MEA001", "There is no amount here."),
    UNREADABLE("MEA002", "`{text}` cannot be read as an amount."),
    DECIMAL_COMMA("MEA003", "`{text}` has a comma where the decimal point belongs."),
    GROUPED_DIGITS("MEA004", "`{text}` has its thousands set apart."),
    FRACTION_WITHOUT_UNIT("MEA005", "`{text}` is a tape fraction without a unit."),
    INCH_SIGN("MEA006", "`{text}` uses a sign for inches or feet; the units are written `in` and `ft`."),
    UNKNOWN_UNIT("MEA007", "`{unit}` in `{text}` is not a unit."),
    NO_NUMBER("MEA008", "`{text}` has a unit but no number before it."),
    HYPHENED_FRACTION("MEA009", "`{text}` has a hyphen between the whole and the fraction."),
    ZERO_BELOW("MEA010", "`{text}` divides by zero."),
    FRACTION_TOO_BIG("MEA011", "In `{text}` the fraction after the whole number is not less than one."),
    MIXED_UNITS("MEA012", "`{text}` mixes units that do not follow one another."),
    TOO_LARGE("MEA013", "`{text}` is larger than a thousand kilometres, and no draft is."),
    POWER_OF_TEN("MEA014", "`{text}` is written with a power of ten."),
    NOT_FINITE("MEA015", "`{text}` is not an amount."),
    SECOND_WITHOUT_UNIT("MEA016", "`{text}` has a number without a unit.");

    private final String id;
    private final String english;

    MeasureCode(String id, String english) {
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
