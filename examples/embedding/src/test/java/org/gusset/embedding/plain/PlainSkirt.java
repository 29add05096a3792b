package org.gusset.embedding.plain;

import static org.gusset.core.build.Amounts.abs;
import static org.gusset.core.build.Amounts.cm;
import static org.gusset.core.build.Amounts.max;
import static org.gusset.core.build.Amounts.min;
import static org.gusset.core.build.Amounts.mm;
import static org.gusset.core.build.Amounts.number;
import static org.gusset.core.build.Measured.distance;
import static org.gusset.core.build.Measured.sewn;
import static org.gusset.core.build.Spot.between;
import static org.gusset.core.build.Spot.origin;
import static org.gusset.core.build.Way.down;
import static org.gusset.core.build.Way.right;

import org.gusset.core.build.Cloth;
import org.gusset.core.build.DraftBuilder;
import org.gusset.core.build.Len;
import org.gusset.core.build.Line;
import org.gusset.core.build.OnLine;
import org.gusset.core.build.PieceBuilder;
import org.gusset.core.build.Spot;
import org.gusset.core.construct.Heading.Compass;
import org.gusset.core.draft.Draft;

/** The straight skirt block in Java: darts, a join, a part of an edge in a seam, an unknown. */
final class PlainSkirt {
    private final DraftBuilder draft = DraftBuilder.of("Straight skirt block")
            .note("The block from which the Quillhaven wardrobe cuts its straight skirts. After a metric block of the"
                    + " 1970s and later, seen in worked tutorials: back H/4 + 1.5 cm, front the rest of H/2 + 1.5 cm,"
                    + " darts of 2 cm.");
    private final Len waist = draft.measure("waist")
            .from(cm(46))
            .to(cm(150))
            .howTo("round the natural waist, where the body bends sideways");
    private final Len hip = draft.measure("hip")
            .from(waist.minus(cm(6)))
            .to(waist.plus(cm(52)))
            .howTo("round the fullest part of the seat; a stomach that is larger wants a draft of its own");
    private final Len hipDepth = draft.measure("hip_depth")
            .from(cm(10))
            .to(cm(28))
            .otherwise(cm(20.6))
            .howTo("waist straight down to hip level, at the side");
    private final Len skirtLength =
            draft.choose("skirt_length", cm(60)).from(cm(35)).to(cm(110)).note("waist to finished hem");
    private final Len bandWidth =
            draft.choose("band_width", cm(3)).from(cm(2)).to(cm(6)).note("finished width of the waistband");
    private final Len dartWidth = draft.value(
            "dart_width", max(mm(5), min(cm(2), hip.minus(waist).over(8).plus(mm(6.25)))));
    private final Cloth shell = draft.cloth("shell", cm(150)).foldedLengthwise().note("wool or linen");

    /** One half of the skirt. */
    private final class Half {
        private final PieceBuilder piece;
        private final Spot waistFold;
        private final Spot hipFold;
        private final Spot hipSide;
        private final Spot waistSide;
        private final Line waistEdge;
        private final Line hipCurve;
        private final Line side;
        private final Line hem;
        private final Line centre;
        private final Len up;

        Half(String name, Len ease, double darts, Len rise, boolean back) {
            piece = draft.piece(name);
            up = back ? rise : piece.unknown("rise", cm(4).negative(), cm(10));
            piece.step("Frame");
            waistFold = piece.point("waist_fold", origin());
            hipFold = piece.point("hip_fold", waistFold.down(hipDepth));
            Spot hemFold = piece.point("hem_fold", waistFold.down(skirtLength));
            Len quarter = back ? hip.over(4).plus(ease) : hip.over(4);
            hipSide = piece.point("hip_side", hipFold.right(quarter));
            Spot hemSide = piece.point("hem_side", hipSide.downTo(hemFold));
            if (back) {
                piece.say("Back hip with its ease: {}.", quarter);
            }
            piece.step("Waist and side");
            Len taken = darts == 1 ? dartWidth : number(darts).times(dartWidth);
            waistSide = piece.point(
                    "waist_side",
                    waistFold.right(waist.over(4).plus(mm(2.5)).plus(taken)).up(up));
            waistEdge = piece.curve("waist_edge").from(waistFold, right()).to(waistSide);
            hipCurve = piece.curve("hip_curve").from(waistSide).to(hipSide, down());
            Line low = piece.line("side_low", hipSide, hemSide);
            side = piece.join("side", hipCurve, low);
            hem = piece.line("hem", hemSide, hemFold);
            centre = piece.line("centre", hemFold, waistFold);
            if (!back) {
                piece.say("The side rises by {}: then it is as long as that of the back.", up);
            }
        }

        void dart(String name, double share, Len depth) {
            OnLine place = waistEdge.at(share);
            piece.dart(name, place, dartWidth, place.spot().squareTo(waistEdge, Compass.DOWN, depth))
                    .pressedToward(waistFold);
        }

        void finish() {
            piece.endStep()
                    .outline(waistEdge, side, hem, centre)
                    .allow(cm(1.5))
                    .turnUp(hem, cm(5))
                    .allow(waistEdge, cm(1))
                    .grainAlong(centre)
                    .notch(side.nearest(hipSide))
                    .cut(1)
                    .onFold(centre)
                    .from(shell);
        }
    }

    static Draft draft() {
        return new PlainSkirt().build();
    }

    private Draft build() {
        Half back = new Half("Back", cm(1.5), 2, cm(1.25), true);
        back.piece.step("Darts");
        back.dart("dart_1", 1.0 / 3, cm(14));
        back.dart("dart_2", 2.0 / 3, cm(12.5));
        back.piece.say("Two darts of {} leave {} of the back waist.", dartWidth, back.waistEdge.sewn());
        back.finish();

        Half front = new Half("Front", cm(0), 1, cm(0), false);
        front.piece.step("Dart");
        front.dart("dart_1", 2.0 / 3, cm(10));
        front.finish();
        draft.solve(front.up, front.hipCurve.length().equalTo(back.hipCurve.length()));

        PieceBuilder band = draft.piece("Waistband");
        Spot startTop = band.point("start_top", origin());
        Spot endTop = band.point("end_top", startTop.right(waist.plus(cm(1)).plus(cm(3))));
        Spot endLow = band.point("end_low", endTop.down(number(2).times(bandWidth)));
        Spot startLow = band.point("start_low", endLow.leftTo(startTop));
        Line top = band.line("top", startTop, endTop);
        Line lapEnd = band.line("lap_end", endTop, endLow);
        Line bottom = band.line("bottom", endLow, startLow);
        Line plainEnd = band.line("plain_end", startLow, startTop);
        Line crease = band.line("crease", between(startTop, startLow), between(endTop, endLow));
        band.outline(top, lapEnd, bottom, plainEnd)
                .allow(cm(1))
                .grainAlong(top)
                .notch(bottom.at(cm(3), endLow))
                .notch(bottom.at(cm(3).plus(waist.plus(cm(1)).over(2)), endLow))
                .cut(1)
                .from(shell);
        band.mark().along(crease);

        draft.seam("side", front.side).to(back.side).pressedOpen();
        draft.seam("waist", front.waistEdge.all(), back.waistEdge.all())
                .to(bottom.part(bottom.at(cm(3), endLow).spot(), startLow))
                .ease(cm(1).negative(), cm(1));
        Len waistSewn = draft.value("waist_sewn", sewn(front.waistEdge.all(), back.waistEdge.all()));
        draft.check(
                abs(waistSewn.minus(waist)).atMost(cm(1.5)),
                "The waist comes out at {} with the darts closed, and the body has {}.",
                waistSewn,
                waist);
        draft.check(bottom.length().minus(cm(3)).atLeast(waist), "The band is shorter than the waist.");
        Len hipRound =
                number(2).times(distance(back.hipFold, back.hipSide).plus(distance(front.hipFold, front.hipSide)));
        draft.finished("hip_round", hipRound, hip, cm(2), cm(6));
        draft.finished("waist_round", waistSewn, waist, cm(1.5).negative(), cm(1.5));
        draft.finished("band_round", bottom.length().minus(cm(3)), waist, cm(0.8), cm(1.2));
        return draft.build();
    }
}
