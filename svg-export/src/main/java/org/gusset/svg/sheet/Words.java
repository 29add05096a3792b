package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Wording;
import org.gusset.core.draft.Cloth;
import org.gusset.core.pattern.Allowance;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Edge;
import org.gusset.core.pattern.Piece;
import org.gusset.svg.scene.Role;

/** The English table of this module: every sentence on a sheet, as phrases that a wording can translate. */
final class Words {
    private final Wording wording;

    Words(Wording wording) {
        this.wording = wording;
    }

    /** A name of a draft as it is read: underscores are blanks. */
    static String spoken(String name) {
        return name.replace('_', ' ');
    }

    static String spoken(List<String> names) {
        return String.join(", ", names.stream().map(Words::spoken).toList());
    }

    String say(Phrase phrase) {
        return wording.say(phrase);
    }

    String say(String key, String english, Object... namesAndFacts) {
        return wording.say(Phrase.of("svg." + key, english, namesAndFacts));
    }

    String number(int number, int count) {
        return say("number", "piece {number} of {count}", "number", number, "count", count);
    }

    String forBody(String body) {
        return say("body", "for {body}", "body", body);
    }

    String estimated(List<String> measures) {
        return say("estimated", "estimated: {measures}", "measures", spoken(measures));
    }

    String fingerprint(String fingerprint) {
        return say("fingerprint", "fingerprint {fingerprint}", "fingerprint", fingerprint);
    }

    String notProved() {
        return say("not-proved", "NOT PROVED");
    }

    String notProved(String reason) {
        return say("not-proved-because", "NOT PROVED: {reason}", "reason", reason);
    }

    String refused(String piece) {
        return say("refused", "{piece} could not be drawn", "piece", spoken(piece));
    }

    String moreReasons(int count) {
        return count == 1
                ? say("reason-more", "and 1 more reason")
                : say("reasons-more", "and {count} more reasons", "count", count);
    }

    String leftOut(List<String> pieces) {
        return say("left-out", "left out by choice: {pieces}", "pieces", spoken(pieces));
    }

    String choice(SheetContent.ChoiceShown choice) {
        return say("choice", "{name}: {value}", "name", spoken(choice.name()), "value", choice.value());
    }

    String cloth(Cloth cloth) {
        Fact width = Fact.length(cloth.width());
        String name = spoken(cloth.name());
        return cloth.note()
                .map(note -> say(
                        "cloth-note",
                        "{cloth}: {width} wide, {note}",
                        "cloth",
                        name,
                        "width",
                        width,
                        "note",
                        Fact.words(note)))
                .orElseGet(() -> say("cloth", "{cloth}: {width} wide", "cloth", name, "width", width));
    }

    String cut(Cut cut) {
        String how = arrangement(cut);
        Optional<String> cloth = cut.cloth().map(Words::spoken);
        String from = cloth.map(name -> say("cut-from", "{cut} from {cloth}", "cut", how, "cloth", name))
                .orElse(how);
        return cut.allowance().map(width -> withAllowance(from, width)).orElse(from);
    }

    private String arrangement(Cut cut) {
        int count = cut.count();
        switch (cut.arrangement()) {
            case PAIRS:
                return count == 1
                        ? say("cut-pair", "cut 1 pair (2 pieces, mirrored)")
                        : say(
                                "cut-pairs",
                                "cut {count} pairs ({pieces} pieces, half of them mirrored)",
                                "count",
                                count,
                                "pieces",
                                cut.pieces());
            case ON_FOLD:
                return say("cut-fold", "cut {count} on fold", "count", count);
            case LEFT:
                return say("cut-left", "cut {count} for the wearer's left", "count", count);
            case RIGHT:
                return say("cut-right", "cut {count} for the wearer's right", "count", count);
            case LAYERS:
                return count == 1
                        ? say("cut-layer", "cut 1 layer")
                        : say("cut-layers", "cut {count} layers", "count", count);
            default:
                return say("cut", "cut {count}", "count", count);
        }
    }

    private String withAllowance(String cut, double width) {
        return width == 0
                ? say("cut-without", "{cut} without allowance", "cut", cut)
                : say("cut-with", "{cut} with allowance {width} all round", "cut", cut, "width", Fact.length(width));
    }

    /** The allowance of a piece: what most edges have, then the edges that differ. */
    String allowance(Piece piece) {
        List<Edge> edges = piece.edges().stream().filter(e -> !e.onFold()).toList();
        Allowance common = Allowances.common(edges);
        List<String> others = new ArrayList<>();
        for (Allowances.Same same : Allowances.others(edges, common)) {
            others.add(edgeAllowance(spoken(same.edges()), same.allowance()));
        }
        String exceptions = String.join(", ", others);
        if (common.width() == 0) {
            return others.isEmpty()
                    ? say("allowance-none", "no allowance")
                    : say("allowance-none-but", "no allowance, but {exceptions}", "exceptions", exceptions);
        }
        Fact width = Fact.length(common.width());
        String included = common.turnedUp()
                ? say("allowance-turned", "allowance: {width} turned up included", "width", width)
                : say("allowance", "allowance: {width} included", "width", width);
        return others.isEmpty()
                ? included
                : say("allowance-but", "{included}, {exceptions}", "included", included, "exceptions", exceptions);
    }

    String edgeAllowance(String edges, Allowance allowance) {
        if (allowance.width() == 0) {
            return say("edge-none", "{edge} none", "edge", edges);
        }
        Fact width = Fact.length(allowance.width());
        return allowance.turnedUp()
                ? say("edge-turned", "{edge} {width} turned up", "edge", edges, "width", width)
                : say("edge", "{edge} {width}", "edge", edges, "width", width);
    }

    /** Which way up the paper shows the piece. */
    String rightSide(Piece piece) {
        return piece.cuts().stream().anyMatch(c -> c.arrangement() == Cut.Arrangement.PAIRS)
                ? say("right-side-pair", "right side up, the twin mirrored")
                : say("right-side", "right side up");
    }

    /** What is written beside a gathering line. */
    String gatheredTo(double length) {
        return say("gathered-to", "gather to {length}", "length", Fact.length(length));
    }

    String line(Role role) {
        switch (role) {
            case CUTTING:
                return say("line-cutting", "cutting line");
            case STITCHING:
                return say("line-stitching", "stitching line");
            case FOLD:
                return say("line-fold", "fold of the cloth, not cut");
            case GRAIN:
                return say("line-grain", "grain: along the warp");
            case NOTCH:
                return say("line-notch", "notch");
            case DRILL:
                return say("line-drill", "drill hole");
            case BUTTON:
                return say("line-button", "button");
            case BUTTONHOLE:
                return say("line-buttonhole", "buttonhole");
            case MARKED_LINE:
                return say("line-marked", "line to mark");
            case GATHERS:
                return say("line-gathers", "gathering line");
            case PLEAT:
                return say("line-pleat", "pleat: fold, and where it comes to lie");
            case PLACED_PIECE:
                return say("line-placed", "another piece, placed here");
            case BALANCE:
                return say("line-balance", "balance line, to be marked through");
            case OLD_LINE:
                return say("line-old", "old line, before the fitting correction");
            case NEST_POINT:
                return say("line-nest-point", "point at which the sizes lie on one another");
            case SIZES_TOGETHER:
                return say("line-together", "several sizes at once");
            default:
                return role.className();
        }
    }
}
