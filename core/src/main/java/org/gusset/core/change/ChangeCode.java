package org.gusset.core.change;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Hint;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.diagnostic.Severity;

/** What can be wrong with a change to a drawn piece. */
public enum ChangeCode implements Code {
    NOT_AT_TIP(
            "PCE201",
            "The dart `{dart}` comes to its point {distance} from the place about which it should turn.",
            "Turn about the point of the dart: `pivot about {dart}.tip`."),
    BAD_SHARE(
            "PCE202",
            "{share} of the dart `{dart}` cannot be closed.",
            "Close a share of more than 0 and at most 1, or leave the share out to close all of it."),
    CUTS_DART(
            "PCE203",
            "The cut goes through the dart `{dart}`.",
            "Lead it past the dart, or move the dart out of its way first."),
    OFF_OUTLINE(
            "PCE204",
            "The cut {end} {distance} from the outline.",
            "Let it begin and end on the outline: take the point `on` an edge."),
    AT_CORNER(
            "PCE205",
            "The cut begins at the corner of `{first}` and `{second}`, so that either might open.",
            "Begin it a little way along the edge that is to open."),
    NEGATIVE_SPREAD(
            "PCE206",
            "A slash cannot be spread by {spread}.",
            "Spread by a positive length; to take width away, sew a dart or move the edge."),
    TOO_WIDE(
            "PCE207",
            "The cut is only {length} long: it cannot be spread by {spread}.",
            "Spread it less, or begin it further from the hinge."),
    NOT_STRAIGHT(
            "PCE208",
            "`{path}` is not straight, so that nothing can be lengthened at it.",
            "Lengthen at a straight line or a guide."),
    NOT_ACROSS(
            "PCE209",
            "`{path}` meets the outline at {count} places, so that it does not part the piece in two.",
            "Draw it from edge to edge, so that it meets the outline twice."),
    CORNER_IN_STRIP(
            "PCE210",
            "The strip to be taken out at `{path}` holds a corner of the outline, that of `{first}` and `{second}`.",
            "Take less out, or take it out at another place."),
    DART_ELSEWHERE(
            "PCE211",
            "The dart `{dart}` is not at that place: it opens `{edge}` from {from} to {to} of its start.",
            "Give the place of the dart, or another name for a new one."),
    OTHER_TIP(
            "PCE212",
            "The dart `{dart}` comes to its point {distance} from that of `{closed}`, so that one cannot grow from the other.",
            "Let both come to one point, or open a new dart."),
    EDGE_IN_TWO(
            "PCE213",
            "The part would have two stretches of `{edge}`, which cannot both keep its name.",
            "Draw the line so that it cuts `{edge}` once at most."),
    NO_SUCH_EDGE("PCE214", "The part has no edge `{edge}`.", "It has these: {edges}."),
    NOT_REACHED(
            "PCE215",
            "The line {width} inside `{edge}` does not come out at the outline on both sides.",
            "Take less, or draw the line yourself and say `taken from ... above` it or the like."),
    NO_DART(
            "PCE216",
            "No edge of the outline is opened by the dart `{dart}`.",
            "Close a dart that opens an edge of the outline."),
    DART_CROSSED(
            "PCE217",
            "The cut goes through the dart `{dart}` inside the piece.",
            "Lead it past the dart, or mark the dart after the change."),
    ALONG_OUTLINE(
            "PCE218",
            "The cut runs along the outline, so that it parts nothing off.",
            "Lead it through the inside of the piece."),
    LEAVES_PIECE(
            "PCE219",
            "The cut leaves the piece: it meets the outline between its ends, at {right} to the right and {down} down.",
            "Bend the cut, or let it end where it first meets the outline.");

    private final String id;
    private final String english;
    private final String hint;

    ChangeCode(String id, String english, String hint) {
        this.id = id;
        this.english = english;
        this.hint = hint;
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

    /** The fault with its hint; facts as name and value in turn. */
    Fault fault(Object... namesAndFacts) {
        return new Fault(
                Diagnostic.of(this, Place.nowhere(), namesAndFacts).with(Hint.of("hint." + id, hint, namesAndFacts)));
    }
}
