package org.gusset.dsl.internal.parse;

import java.util.Optional;

/** How each statement is written, in an example or two for hints. */
final class Forms {
    private Forms() {}

    /** The form of the statement that a word begins, in backquotes. */
    static Optional<String> of(int head) {
        String form = switch (head) {
            case GussetLexer.DRAFT -> "`draft \"title\"`";
            case GussetLexer.MEASURE -> "`measure chest from 60 cm to 170 cm \"how to take it\"`";
            case GussetLexer.CHOOSE -> "`choose ease = 12 cm` or `choose neckline = vee out of vee, round`";
            case GussetLexer.FIT -> "`fit side_in = 0 cm from -3 cm to 3 cm`";
            case GussetLexer.RULE -> "`rule neck_width(girth length) = girth / 5`";
            case GussetLexer.USE -> "`use \"file\" as b`";
            case GussetLexer.CLOTH -> "`cloth shell wide 140 cm`";
            case GussetLexer.PIECE -> "`piece Name {` or `piece Name traced from Other {`";
            case GussetLexer.STRIP -> "`strip Name long L wide W {`";
            case GussetLexer.STEP -> "`step \"title\" {`";
            case GussetLexer.SEAM -> "`seam name = Front.side to Back.side`";
            case GussetLexer.FINISHED -> "`finished name = expression over chest ease 8 cm to 24 cm`";
            case GussetLexer.OPENING -> "`opening name = Front.neck_edge + Back.neck_edge passes head`";
            case GussetLexer.LET -> "`let name = 3 cm`";
            case GussetLexer.UNKNOWN -> "`unknown name from 4 cm to 25 cm`";
            case GussetLexer.SOLVE -> "`solve name so that length(cap) = 40 cm`";
            case GussetLexer.CHECK -> "`check condition \"what to tell\"`";
            case GussetLexer.SAY -> "`say \"words\"`";
            case GussetLexer.LABEL -> "`label \"words\"`";
            default -> shape(head);
        };
        return form.isEmpty() ? Optional.empty() : Optional.of(form);
    }

    private static String shape(int head) {
        return switch (head) {
            case GussetLexer.POINT -> "`point p = origin down 3 cm`";
            case GussetLexer.POINTS -> "`points b = 7 on centre`";
            case GussetLexer.LINE -> "`line l = A to B`";
            case GussetLexer.GUIDE -> "`guide g = across from A` or `guide g = A to B`";
            case GussetLexer.CURVE -> "`curve c = from A heading right through B to C heading up`";
            case GussetLexer.ARC -> "`arc a = from A to B centre O`";
            case GussetLexer.JOIN -> "`join j = a, b`";
            case GussetLexer.OUTLINE -> "`outline neck_edge, shoulder, side, hem`";
            case GussetLexer.ALLOW -> "`allow 1.5 cm, hem 4 cm turned up, neck_edge none`";
            case GussetLexer.CORNER -> "`corner side, hem mitred` or `corner side, hem squared to hem`";
            case GussetLexer.CUT -> "`cut 1 pair from shell` or `cut 1 on fold centre`";
            case GussetLexer.GRAIN -> "`grain along centre`, `grain from A to B` or `grain bias`";
            case GussetLexer.NOTCH -> "`notch armhole at 1/3 double`";
            case GussetLexer.MARK -> "`mark button P`, `mark along crease` or `mark placed Pocket at P`";
            case GussetLexer.DART -> "`dart d = on waist_edge at 1/3 intake 3 cm to P`";
            case GussetLexer.SLASH -> "`slash from A to B spread 5 cm`";
            case GussetLexer.PIVOT -> "`pivot about P closing d spreading hem halfway`";
            case GussetLexer.LENGTHEN -> "`lengthen at hip_line by 3 cm`";
            case GussetLexer.GATHER -> "`gather waist_edge to 40 cm`";
            case GussetLexer.PLEAT -> "`pleat waist_edge to 40 cm with 5 knife pleats`";
            case GussetLexer.NEST -> "`nest at P`";
            case GussetLexer.DROP -> "`drop dart d` or `drop notch armhole`";
            case GussetLexer.CHANGE -> "`change line hem = A to B`";
            default -> "";
        };
    }
}
