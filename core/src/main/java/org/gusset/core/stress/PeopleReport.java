package org.gusset.core.stress;

import java.util.List;

/**
 * What came of the people of a table.
 *
 * @param tally how many there are, how many of them the draft takes, and how many of those passed
 * @param outside why the draft does not take the others; one person may be outside in several ways
 * @param failures how those fail whom it takes, the commonest first
 */
public record PeopleReport(Tally tally, List<Outside> outside, List<Failure> failures) {
    public PeopleReport {
        outside = List.copyOf(outside);
        failures = List.copyOf(failures);
    }

    /**
     * People that the draft does not take.
     *
     * @param measure the measure
     * @param why what is the matter with it
     * @param people how many
     * @param first the name of the first
     */
    public record Outside(String measure, Why why, int people, String first) {}

    /** Why a draft does not take someone. */
    public enum Why {
        TOO_SMALL,
        TOO_LARGE,
        /** The range runs backward for this body. */
        NO_ROOM,
        /** The draft needs the measure, and the table has none. */
        MISSING
    }
}
