package org.gusset.core.seam;

import org.gusset.core.diagnostic.Code;
import org.gusset.core.diagnostic.Severity;

/** What is found about seams and what they join. */
public enum SeamCode implements Code {
    SEAM_OFF(
            1,
            Severity.ERROR,
            "Seam `{seam}` does not match: {first} is {firstLength}, {second} is {secondLength}; {longer} is {difference}"
                    + " too long for {wanted} (tolerance {tolerance}).{round}"),
    EASE_TURNED(
            3, Severity.ERROR, "The ease of seam `{seam}` runs from {low} to {high}: the first must be the smaller."),
    STRETCH_OFF(
            6,
            Severity.ERROR,
            "Seam `{seam}` does not match {stretch}: {first} is {firstLength} there, {second} is {secondLength}; {longer} is"
                    + " {difference} too long for {wanted} (tolerance {tolerance}).{round}"),
    MATCH_OFF_EDGE(7, Severity.ERROR, "`{point}` does not lie on {side}, so seam `{seam}` cannot match it{distance}."),
    MATCHES_CROSS(
            8,
            Severity.ERROR,
            "Seam `{seam}` matches its points in another order on {first} than on {second}: `{one}` and `{other}` change"
                    + " places."),
    MEETING_NOT_AT_END(9, Severity.ERROR, "`{point}` is not at an end of seam `{seam}`, so nothing meets there."),
    CORNER_NOT_SMOOTH(
            10,
            Severity.ERROR,
            "Across seam `{seam}`, `{first}` and `{second}` do not run on at `{point}`: their corners have {firstAngle} and"
                    + " {secondAngle}, {sum} together where 180 deg is smooth. Joined, that is {shape} of {dip}."),
    CORNER_NOT_SQUARE(
            11,
            Severity.ERROR,
            "At `{point}`, `{edge}` is not square to seam `{seam}`: their corner has {angle}, {off} off the square. Joined, that"
                    + " is {shape} of {dip}."),
    FOLD_NOT_SQUARE(
            12,
            Severity.ERROR,
            "`{edge}` of {piece} meets the fold `{fold}` at {angle}, not square: opened out, that is {shape} of {dip} in the"
                    + " middle."),
    SEWN_WITHOUT_ALLOWANCE(13, Severity.ERROR, "`{edge}` of {piece} is sewn in seam `{seam}` and has no allowance."),
    SEWN_ON_FOLD(
            14,
            Severity.ERROR,
            "`{edge}` of {piece} lies on the fold and is sewn in seam `{seam}`: there is no edge to sew."),
    ALLOWANCE_DRAWN(
            15,
            Severity.WARNING,
            "`{edge}` of {piece} runs {width} outside `{other}`, as wide as its allowance: the allowance is drawn and then added"
                    + " again."),
    NOT_MIRRORED(
            16,
            Severity.ERROR,
            "{piece} is cut {count} times the same way up, but it is sewn to both hands of {other}: the left and the right one"
                    + " must be mirror images."),
    SEWN_TWICE(
            17,
            Severity.WARNING,
            "{length} of `{edge}` of {piece} is sewn in seam `{seam}` and again in seam `{other}`."),
    NOTCH_ALONE(
            18,
            Severity.WARNING,
            "The notch on `{edge}` of {piece}, {along} along seam `{seam}`, has no partner on {other}."),
    NOTCHES_APART(
            19,
            Severity.ERROR,
            "The notches on `{edge}` of {piece} and `{otherEdge}` of {otherPiece} do not come together in seam `{seam}`: from the"
                    + " end of the seam it is {along} to one and {otherAlong} to the other."),
    FOLD_OFF_GRAIN(
            20,
            Severity.ERROR,
            "The fold `{fold}` of {piece} is neither along the grain nor square to it: it is {angle} off."),
    EDGE_OFF_GRAIN(
            21,
            Severity.WARNING,
            "`{edge}` of {piece} is straight, but runs {angle} off the grain: over its length that is {drift}."),
    PIECE_UNSEWN(22, Severity.NOTE, "No seam uses {piece}, so nothing tells whether it fits."),
    NOT_JOINED(
            23, Severity.WARNING, "Seam `{seam}` goes on from `{one}` to `{other}`, but no seam joins the two there."),
    SEWN_TOO_EARLY(
            24, Severity.ERROR, "Seam `{seam}` cannot be sewn before seam `{other}`, which joins `{one}` to `{next}`."),
    SEWN_IN_CIRCLE(25, Severity.ERROR, "Each of these seams needs another one to be sewn first: {seams}."),
    RING_SEWN_FLAT(
            26,
            Severity.ERROR,
            "In seam `{seam}`, {ring} is closed to a ring by seam `{closed}` before, and {flat} is still flat: seam `{closing}`"
                    + " closes it later."),
    FLAT_HEAD_EASED(
            27,
            Severity.WARNING,
            "Seam `{seam}` eases {ease} into the head `{edge}` of {piece}, which is only {height} high on {width}: the sleeve of a"
                    + " dropped shoulder lies flat and takes no ease."),
    STRIP_SHORT(
            28,
            Severity.ERROR,
            "The strip {piece} is {difference} shorter than what it is sewn to in seam `{seam}`: it is {length} long, and"
                    + " {wanted} is needed."),
    ALLOWANCES_DIFFER(
            29,
            Severity.WARNING,
            "Seam `{seam}` is sewn with {width} on `{edge}` of {piece} and {otherWidth} on `{otherEdge}` of {otherPiece}: laid edge"
                    + " on edge, it is sewn wrong."),
    HEMS_DIFFER(
            30,
            Severity.WARNING,
            "Across seam `{seam}`, `{edge}` of {piece} has {width} and `{otherEdge}` of {otherPiece} has {otherWidth}: they are turned"
                    + " or finished together."),
    HAND_MISSING(
            31,
            Severity.WARNING,
            "{piece} is cut once{cloth}, but in seam `{seam}` it is sewn to {other}, of which there is a left and a right one: one"
                    + " {piece} is missing."),
    HEM_OFF(
            32,
            Severity.WARNING,
            "`{edge}` of {piece} has {width} to be turned up, which is {spare} {way} at its cut edge than what it lies on then."),
    ALLOWANCE_STANDS_OUT(
            33,
            Severity.WARNING,
            "When seam `{seam}` is pressed open, the allowance of `{edge}` of {piece} stands {out} out beyond `{beside}`."),
    LEFT_WITHOUT_SEAMS(
            34,
            Severity.WARNING,
            "{piece} is cut, but each seam that uses it speaks of a piece that the choices leave out: {seams}."),
    HEAD_UNMARKED(
            35,
            Severity.WARNING,
            "Nothing on `{edge}` of {piece} says how it is set into {other} in seam `{seam}`: it has no notch, and no point of it"
                    + " is matched."),
    SEAMS_ALIKE(
            36,
            Severity.NOTE,
            "Seams `{seam}` and `{other}` are equally long ({length}) and notched alike: {first} may be sewn where {second}"
                    + " belongs."),
    ALIKE_ALONE(
            37,
            Severity.WARNING,
            "{piece} is cut {count} times the same way up and is not its own mirror image, and no seam tells on which hand it is"
                    + " worn."),
    BUTTON_NEAR_EDGE(
            38,
            Severity.WARNING,
            "The buttonholes of {piece} lie {distance} from `{edge}`; for buttonholes of {length} it should be {wanted}: the button"
                    + " stands out beyond the edge."),
    BUTTON_BESIDE_HOLE(
            39,
            Severity.WARNING,
            "{piece} has {count} buttons and as many buttonholes, but they do not come together: one button lies {distance} from"
                    + " its buttonhole."),
    GRAIN_TILTED(
            40,
            Severity.WARNING,
            "`{edge}` and `{other}` of {piece} are square to one another, and the grain is {angle} off both: along `{edge}` that is"
                    + " {drift}.");

    private final String id;
    private final Severity severity;
    private final String english;

    SeamCode(int number, Severity severity, String english) {
        this.id = "SEW" + (number < 10 ? "00" : "0") + number;
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
