package org.gusset.core.measure;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** What is doubtful in a chart of sizes, and why a body has no place in one. */
public enum ChartCode implements Code {
    FALLS("GRD001", Severity.WARNING, "The {measure} falls from {from} in {first} to {to} in {second}."),
    LARGE_TO_SMALL(
            "GRD002",
            Severity.WARNING,
            "{chart} runs from large to small: the {measure} is {from} in {first}, the first size, and {to} in {last}, the last."),
    OUT_OF_ORDER(
            "GRD003", Severity.WARNING, "{second} stands behind {first} and is smaller: {measures} fall, not grow."),
    SAME_SIZE("GRD004", Severity.WARNING, "{first} and {second} have the same measures."),
    CROWDED(
            "GRD005",
            Severity.WARNING,
            "{second} lies within half a step of {first}: the {measure} goes from {from} to {to}, by {step}, where the step beside it is {beside}."),
    SLIP(
            "GRD006",
            Severity.WARNING,
            "The {measure} goes from {from} in {first} to {to} in {second}: that is many times a step of this chart."),
    GAPS("GRD007", Severity.WARNING, "Not in {sizes}, though other sizes have it: {measures}."),
    TWO_KINDS("GRD008", Severity.WARNING, "The {measure} is {kind} in {first} and {other} in {second}."),
    NO_SUCH_SIZE("GRD011", Severity.ERROR, "There is no size {size} in {chart}."),
    SHARE_OUTSIDE("GRD012", Severity.ERROR, "Between two sizes the share lies from 0 to 1, not at {share}."),
    NOTHING_IN_COMMON(
            "GRD013", Severity.ERROR, "{body} and {chart} have none of these measures in common: {measures}."),
    BEYOND_CHART(
            "GRD014",
            Severity.ERROR,
            "The {measure} of {body}, {value}, lies beyond {chart}: its sizes run from {low} in {first} to {high} in {last}."),
    SEVERAL_PLACES(
            "GRD015",
            Severity.WARNING,
            "The {measure} of {body}, {value}, has more than one place in {chart}: {places}; the first is taken."),
    NOT_IN_BOTH("GRD016", Severity.WARNING, "Left out {between}, since one of the two lacks it: {measures}."),
    STAYS_BLANK(
            "GRD017",
            Severity.WARNING,
            "The {measure} of {body} stays blank: {chart} does not tell it for a {lead} of {value}."),
    NO_LEAD("GRD018", Severity.ERROR, "The {measure} cannot lead for {body}: {who} has none."),
    OUTSIDE(
            "GRD021",
            Severity.WARNING,
            "The {measure} of {body}, {value}, lies outside {chart}: {size}, the {end} size, has {figure} and covers no more than {covers}."),
    SPLIT("GRD022", Severity.NOTE, "The measures of {body} are those of different sizes: {told}.");

    private final String id;
    private final Severity severity;
    private final String english;

    ChartCode(String id, Severity severity, String english) {
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
