package org.gusset.embedding.plain;

import static org.gusset.core.build.Amounts.PI;
import static org.gusset.core.build.Amounts.abs;
import static org.gusset.core.build.Amounts.cm;
import static org.gusset.core.build.Amounts.degrees;
import static org.gusset.core.build.Amounts.max;
import static org.gusset.core.build.Amounts.min;
import static org.gusset.core.build.Amounts.mm;
import static org.gusset.core.build.Amounts.number;
import static org.gusset.core.build.Amounts.when;
import static org.gusset.core.build.Measured.distance;
import static org.gusset.core.build.Measured.height;
import static org.gusset.core.build.Measured.length;
import static org.gusset.core.build.Measured.width;
import static org.gusset.core.build.Spot.between;
import static org.gusset.core.build.Spot.origin;
import static org.gusset.core.build.Way.right;
import static org.gusset.core.build.Way.squareTo;
import static org.gusset.core.build.Way.toward;

import java.util.List;
import org.gusset.core.build.Cloth;
import org.gusset.core.build.DraftBuilder;
import org.gusset.core.build.Len;
import org.gusset.core.build.Line;
import org.gusset.core.build.PieceBuilder;
import org.gusset.core.build.Spot;
import org.gusset.core.build.Truth;
import org.gusset.core.build.Way;
import org.gusset.core.build.Word;
import org.gusset.core.draft.Draft;

/** The prompter's smock, written in Java: the same draft as {@code smock.gusset}, drawn the same to the last bit. */
final class PlainSmock {
    private final DraftBuilder draft = DraftBuilder.of("Prompter's smock")
            .note(
                    "A boxy smock with a dropped shoulder and a band front, worn over anything in the prompt corner of the"
                            + " Quillhaven Players.");

    private final Len chest =
            draft.measure("chest").from(cm(60)).to(cm(170)).howTo("round the fullest part of the chest, tape level");
    private final Len shoulderWidth = draft.measure("shoulder_width")
            .from(max(cm(20), chest.times(0.29)))
            .to(chest.times(0.5))
            .howTo("bone to bone across the back");
    private final Len neck =
            draft.measure("neck").from(chest.times(0.3)).to(chest.times(0.5)).howTo("round the base of the neck");
    private final Len upperArm = draft.measure("upper_arm")
            .from(chest.times(0.25))
            .to(min(chest.times(0.43), chest.over(4).plus(cm(19))))
            .howTo("round the fullest part of the upper arm, arm bent");
    private final Len armLength = draft.measure("arm_length")
            .from(cm(38))
            .to(cm(75))
            .howTo("shoulder bone over the bent elbow to the wrist bone");
    private final Len scyeDepth = draft.measure("scye_depth")
            .from(max(cm(16), upperArm.over(2).plus(cm(5))))
            .to(upperArm.over(2).plus(cm(14)))
            .otherwise(max(chest.over(8).plus(cm(10.5)), upperArm.over(2).plus(cm(6))))
            .howTo("nape straight down to the level of the underarm");

    private final Len bodyLength = draft.choose("body_length", cm(72))
            .from(max(cm(45), scyeDepth.plus(cm(12))))
            .to(cm(130))
            .note("nape to finished hem");
    private final Len drop =
            draft.choose("drop", cm(1.5)).from(cm(0)).to(cm(8)).note("how far the shoulder falls past the bone");
    private final Len ease = draft.choose("ease", cm(12)).from(cm(4)).to(cm(40)).note("added to the whole chest");
    private final Word neckline = draft.choose("neckline", List.of("vee", "round"), "shape of the front neckline");
    private final Len bandWidth =
            draft.choose("band_width", cm(4)).from(cm(2)).to(cm(7)).note("finished width of the band");
    private final Truth pockets = draft.choose("pockets", true, "a patch pocket on each front");
    private final Len sideIn = draft.fit("side_in", cm(0))
            .from(cm(3).negative())
            .to(cm(3))
            .note("taken in at each side seam at the fitting");

    private final Len quarter = draft.value("quarter", chest.plus(ease).over(4));
    private final Cloth shell = draft.cloth("shell", cm(140)).foldedLengthwise().note("plain cotton");

    private final Body back = new Body("Back", false);
    private final Body front = new Body("Front", true);

    /** A rule is a method: common practice, no source. */
    private static Len neckWidth(Len girth) {
        return girth.over(5).plus(cm(0.5));
    }

    /** What the back and the front have in common; a piece traced from another is a method that draws both. */
    private final class Body {
        private final PieceBuilder piece;
        private final Spot nape;
        private final Spot neckPoint;
        private final Spot tip;
        private final Spot underarm;
        private final Spot pitch;
        private final Line shoulder;
        private final Line neckEdge;
        private final Line armhole;
        private final Line side;
        private final Line centre;

        Body(String name, boolean front) {
            Truth vee = neckline.is("vee");
            piece = draft.piece(name).step("Square the frame");
            nape = piece.point("nape", origin());
            Spot hemFold = piece.point("hem_fold", nape.down(bodyLength));
            piece.guideAcross("scye", nape.down(scyeDepth));
            piece.say("Everything is squared from the fold. A quarter of the chest with its ease is {}.", quarter);
            Spot edgeTop = hemFold;
            Spot edgeLow = hemFold;
            if (front) {
                piece.endStep();
                edgeTop = piece.point(
                        "edge_top",
                        nape.right(bandWidth.over(2))
                                .down(when(vee, cm(30), neck.over(5).plus(cm(2)))));
                edgeLow = piece.point("edge_low", edgeTop.downTo(hemFold));
            }

            piece.step("Neck and shoulder");
            neckPoint = piece.point("neck_pt", nape.right(neckWidth(neck)).up(cm(2)));
            tip = piece.point(
                    "tip", nape.right(shoulderWidth.over(2).plus(drop)).down(cm(3)));
            shoulder = piece.line("shoulder", neckPoint, tip);
            neckEdge = piece.curve("neck_edge")
                    .from(front ? edgeTop : nape, front ? Way.when(vee, toward(neckPoint), right()) : right())
                    .to(neckPoint, squareTo(shoulder));
            piece.say(
                    "The shoulder falls {} past the bone, so the sleeve hangs from the arm and not from the joint.",
                    drop);

            piece.step("Armhole");
            underarm = piece.point("underarm", nape.down(scyeDepth).right(quarter.minus(sideIn)));
            armhole = piece.curve("armhole").from(tip, squareTo(shoulder)).to(underarm, right());
            pitch = piece.point("pitch", armhole.at(0.6).spot());
            piece.say("The armhole is {} long; the sleeve will be made to it.", armhole.length());

            piece.step("Side and hem");
            Spot hemSide = piece.point("hem_side", underarm.downTo(hemFold));
            side = piece.line("side", underarm, hemSide);
            Line hem = piece.line("hem", hemSide, front ? edgeLow : hemFold);
            centre = front ? piece.line("centre", edgeLow, edgeTop) : piece.line("centre", hemFold, nape);

            piece.endStep()
                    .outline(neckEdge, shoulder, armhole, side, hem, centre)
                    .allow(cm(1.5))
                    .turnUp(hem, cm(4))
                    .allow(neckEdge, cm(1))
                    .grainAlong(centre);
            if (front) {
                piece.allow(centre, cm(1)).cut(1).inPairs().from(shell);
                piece.notch(side.halfway()).notch(armhole.nearest(pitch));
            } else {
                piece.cut(1).onFold(centre).from(shell);
                piece.notch(armhole.nearest(pitch), 2).notch(side.halfway());
            }
        }
    }

    static Draft draft() {
        return new PlainSmock().build();
    }

    private Draft build() {
        PieceBuilder sleeve = sleeve();
        PieceBuilder band = band();
        pocket();

        draft.seam("shoulder", front.shoulder).to(back.shoulder).pressedToward(back.piece);
        draft.seam("armhole", sleeve.line("cap"))
                .to(front.armhole, back.armhole)
                .pressedToward(sleeve);
        draft.seam("underarm", sleeve.line("front_seam"), front.side)
                .to(sleeve.line("back_seam"), back.side)
                .pressedOpen();
        draft.seam("band", band.line("inner").all()).to(front.centre.all(), front.neckEdge.all(), back.neckEdge.all());

        draft.finished("chest_round", number(4).times(quarter), chest, cm(4), cm(40));
        Len sleeveWidth = width(sleeve.point("back_under"), sleeve.point("front_under"));
        draft.check(
                sleeveWidth.atLeast(upperArm.plus(cm(4))),
                "The sleeve is only {} wide; this arm needs {}. Give the armhole more depth or more drop.",
                sleeveWidth,
                upperArm.plus(cm(4)));
        draft.check(
                distance(back.tip, back.underarm).atLeast(upperArm.over(2)),
                "The armhole is too shallow for this arm.");
        Len napeToWrist = draft.value(
                "nape_to_wrist", width(back.nape, back.tip).plus(height(sleeve.point("crown"), sleeve.point("wrist"))));
        draft.check(
                abs(napeToWrist.minus(shoulderWidth.over(2)).minus(armLength).minus(cm(2)))
                        .atMost(mm(5)),
                "From the nape to the wrist it is {}; half the shoulders and the arm are {}, and 2 cm are wanted more.",
                napeToWrist,
                shoulderWidth.over(2).plus(armLength));
        Len neckWidth = width(back.nape, back.neckPoint);
        draft.check(
                neckWidth.atLeast(neck.over(number(2).times(PI)).plus(cm(1))),
                "The neckline is only {} wide and binds the neck.",
                number(2).times(neckWidth));
        draft.check(
                neckWidth.atMost(neck.over(4)),
                "The neckline is {} wide and slips off the shoulders.",
                number(2).times(neckWidth));
        return draft.build();
    }

    private PieceBuilder sleeve() {
        PieceBuilder sleeve = draft.piece("Sleeve");
        Len reach = sleeve.unknown("reach", cm(8), cm(80));
        sleeve.step("The head of the sleeve");
        Spot crown = sleeve.point("crown", origin());
        Spot frontUnder = sleeve.point("front_under", crown.right(reach).down(cm(7)));
        Spot backUnder = sleeve.point("back_under", crown.left(reach).down(cm(7)));
        Line cap = sleeve.curve("cap")
                .from(backUnder, Way.angle(degrees(10)))
                .through(crown, right())
                .to(frontUnder, Way.angle(degrees(10).negative()));
        sleeve.say(
                "The head is 7 cm high and as wide as makes it as long as the armholes: {} on each side, {} round.",
                reach,
                cap.length());
        draft.solve(reach, cap.length().equalTo(length(back.armhole, front.armhole)));

        sleeve.step("Down to the wrist");
        Line axis = sleeve.guideDown("axis", crown);
        Spot wrist = sleeve.point("wrist", crown.down(armLength.minus(drop).plus(cm(2))));
        Spot cuffFront = sleeve.point("cuff_front", wrist.right(max(cm(13), reach.times(0.7))));
        Spot cuffBack = sleeve.point("cuff_back", cuffFront.mirroredOver(axis));
        Line frontSeam = sleeve.line("front_seam", frontUnder, cuffFront);
        Line hem = sleeve.line("hem", cuffFront, cuffBack);
        Line backSeam = sleeve.line("back_seam", cuffBack, backUnder);

        sleeve.endStep()
                .outline(cap, frontSeam, hem, backSeam)
                .allow(cm(1.5))
                .turnUp(hem, cm(3))
                .grainAlong(axis)
                .cut(1)
                .inPairs()
                .from(shell);
        return sleeve.notch(cap.nearest(crown))
                .notch(cap.at(front.armhole.part(front.pitch, front.underarm).length(), frontUnder))
                .notch(cap.at(back.armhole.part(back.pitch, back.underarm).length(), backUnder), 2);
    }

    private PieceBuilder band() {
        PieceBuilder band = draft.piece("Band");
        Spot napeIn = band.point("nape_in", origin());
        Spot napeOut = band.point("nape_out", napeIn.down(number(2).times(bandWidth)));
        Spot hemIn = band.point("hem_in", napeIn.right(length(back.neckEdge, front.neckEdge, front.centre)));
        Spot hemOut = band.point("hem_out", napeOut.rightTo(hemIn));
        Line inner = band.line("inner", napeIn, hemIn);
        Line hemEnd = band.line("hem_end", hemIn, hemOut);
        Line outer = band.line("outer", hemOut, napeOut);
        Line fold = band.line("fold", napeOut, napeIn);
        Line crease = band.line("crease", between(napeIn, napeOut), between(hemIn, hemOut));
        band.outline(inner, hemEnd, outer, fold)
                .allow(cm(1))
                .allow(hemEnd, cm(4))
                .grainAlong(inner)
                .notch(inner.at(back.neckEdge.length(), napeIn))
                .cut(1)
                .onFold(fold)
                .from(shell);
        return band.mark().along(crease);
    }

    private void pocket() {
        PieceBuilder pocket = draft.pieceIf(pockets, "Pocket");
        Spot topIn = pocket.point("top_in", origin());
        Spot topOut = pocket.point("top_out", topIn.right(cm(15)));
        Spot lowOut = pocket.point("low_out", topOut.down(cm(17)));
        Spot lowIn = pocket.point("low_in", lowOut.leftTo(topIn));
        Line mouth = pocket.line("mouth", topIn, topOut);
        Line sideOut = pocket.line("side_out", topOut, lowOut);
        Line base = pocket.line("base", lowOut, lowIn);
        Line sideInEdge = pocket.line("side_in_edge", lowIn, topIn);
        pocket.outline(mouth, sideOut, base, sideInEdge)
                .allow(cm(1))
                .turnUp(mouth, cm(3))
                .grainAlong(sideOut)
                .cut(2)
                .from(shell);
        front.piece
                .mark()
                .placed(
                        pocket,
                        front.piece
                                .point("edge_low")
                                .up(cm(27))
                                .right(quarter.minus(bandWidth.over(2))
                                        .minus(sideIn)
                                        .minus(cm(15))
                                        .over(2)));
    }
}
