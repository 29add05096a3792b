package org.gusset.embedding.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.gusset.core.build.Amounts.cm;
import static org.gusset.core.build.Amounts.degrees;
import static org.gusset.core.build.Amounts.mm;
import static org.gusset.core.build.Amounts.number;
import static org.gusset.core.build.Measured.angle;
import static org.gusset.core.build.Spot.at;
import static org.gusset.core.build.Spot.between;
import static org.gusset.core.build.Spot.origin;
import static org.gusset.core.build.Spot.sweeps;

import java.util.List;
import org.gusset.core.build.Ang;
import org.gusset.core.build.Cloth;
import org.gusset.core.build.DraftBuilder;
import org.gusset.core.build.DrawnDart;
import org.gusset.core.build.Len;
import org.gusset.core.build.Line;
import org.gusset.core.build.Num;
import org.gusset.core.build.PieceBuilder;
import org.gusset.core.build.Row;
import org.gusset.core.build.Spot;
import org.gusset.core.build.Truth;
import org.gusset.core.build.Way;
import org.gusset.core.construct.Heading.Compass;
import org.gusset.core.draft.Choices;
import org.gusset.core.draft.Draft;
import org.gusset.core.draft.Drawing;
import org.gusset.core.measure.Measurements;
import org.gusset.core.measure.Quantity;
import org.gusset.core.pattern.Corner;
import org.gusset.dsl.Gusset;
import org.gusset.dsl.Source;
import org.junit.jupiter.api.Test;

/** Every form of the builder that the smock and the skirt do without, beside the same in the language. */
class FormsTest {
    private static final String TEXT = """
            gusset 1
            draft "Trunk" "All forms."
            measure girth also "round the trunk" from 50 cm to 90 cm else 70 cm "round it"
            measure slope from 5 deg to 40 deg else 20 deg "of the lid"
            choose lined = no "with a lining"
            choose turn = 20 deg from 0 deg to 90 deg "of what is turned"
            choose often = 4 from 1 to 9 "how many holes"
            cloth felt wide 90 cm long 3 m open one way
            cloth lining wide 100 cm folded lengthwise shrinks 3% along, 1% across "thin"
            cloth plaid wide 150 cm folded twice repeat 8 cm along, 6 cm across stretch 10% along, 40% across matching Lid.c, Left.p
            unknown deep from 1 cm to 60 cm
            solve deep so that deep * deep = girth * 10 cm

            piece Lid {
              point a = origin
              point b = at (girth, 3 cm)
              point c = b down deep + 10 cm
              point d = a down deep + 8 cm
              let half = distance(a, b) / 2
              point m1 = between a and b
              point m2 = between a and c at 1/4
              point t1 = a toward c by 5 cm
              line diagonal = a to c
              line other = b to d
              point x = where diagonal meets other
              point t2 = b toward m2 to other
              point p1 = a past m1 by 2 cm
              point g1 = a angled -30 deg by 6 cm
              point g2 = a angled -10 deg to other
              point s1 = a swept by 12 cm to diagonal
              point s2 = x swept by 6 cm to diagonal nearest a
              point s3 = swept 40 cm from a and 50 cm from b nearest d
              point q1 = m1 square to diagonal toward d by 3 cm
              point q2 = m1 square to diagonal up by 3 cm
              guide plumb = down from m1
              guide slant = a to x
              point r1 = t1 mirrored over plumb
              point r2 = t1 turned turn about x
              point u1 = t1 right to plumb
              point u2 = t1 right to x
              point e1 = diagonal.end
              line near = diagonal parallel up by 2 cm
              line near2 = diagonal parallel toward d by 1 cm
              line back = near mirrored over plumb
              line swung = near turned 15 deg about a
              line stretch = part of diagonal between t1 and x
              curve bent = from a to d hollowed right by 1 cm at 1/3
              arc round = from t1 to r2 centre x
              arc swing = from a centre m1 swung 60 deg
              points holes = often on diagonal
              points knobs = 3 on diagonal between t1 and x
              curve top = from a heading slope through m1 to b heading along other tension 1.2
              line right_side = b to c
              line bottom = c to d
              line left_side = d to a
              point tip_of = between c and d up 9 cm
              dart tuck = on bottom at 12 cm from c intake 2 cm to tip_of curved left by 2 mm pressed toward d
              let tuck_angle = tuck.angle
              line fold = tuck.fold_line
              dart inner = between (m1 down 6 cm) and (m1 down 16 cm) intake 1 cm at m1 down 10 cm
              gather top to 0.95 * length(top)
              let held = sewn(top)
              outline top, right_side, bottom, left_side
              allow 1 cm, bottom none, left_side 2 cm
              corner top, right_side blunt
              corner left_side, top squared to top
              cut 2 from felt
              cut 1 pair from lining with allowance 5 mm
              grain from a to d
              notch right_side at 3 cm triple
              notch left_side at 4 cm from end
              mark drill holes
              mark button x
              mark buttonhole t1 along diagonal by 2 cm
              label "Lid of {half}"
              nest at x
            }

            piece Right if lined {
              point o = origin
              point p = o right 10 cm
              point q = p down angle(Lid.a, Lid.x, Lid.b) / 1 deg * 1 mm + 5 cm
              line up_side = o to p
              line out_side = p to q
              line low_side = q to o
              outline up_side, out_side, low_side
              allow 1 cm
              cut 1 from lining
              grain bias
            }
            piece Left traced from Right mirrored over Right.up_side if lined { }

            strip Handle long 80 cm wide 6 cm {
              allow 1 cm
              cut 1 from felt
              notch bottom at 3 cm from end
            }

            seam sides = Lid.right_side to Lid.left_side ease -10% to 10% matching Lid.b with Lid.a meeting square at Lid.b within 2 cm pressed open
            opening mouth = Lid.right_side passes 20 cm with fastening 3 cm stretch 10%
            check area(Lid) > 200 cm * 1 cm and not lined  "It is {area(Lid)}, {lined}."
            """;

    private static Draft built() {
        DraftBuilder draft = DraftBuilder.of("Trunk").note("All forms.");
        Len girth = draft.measure("girth")
                .also("round the trunk")
                .from(cm(50))
                .to(cm(90))
                .otherwise(cm(70))
                .howTo("round it");
        Ang slope = draft.angleMeasure("slope")
                .from(degrees(5))
                .to(degrees(40))
                .otherwise(degrees(20))
                .howTo("of the lid");
        Truth lined = draft.choose("lined", false, "with a lining");
        Ang turn = draft.choose("turn", degrees(20))
                .from(degrees(0))
                .to(degrees(90))
                .note("of what is turned");
        Num often =
                draft.choose("often", number(4)).from(number(1)).to(number(9)).note("how many holes");
        Cloth felt = draft.cloth("felt", cm(90)).length(cm(300)).open().oneWay();
        Cloth lining = draft.cloth("lining", cm(100))
                .foldedLengthwise()
                .shrinks(number(0.03), number(0.01))
                .note("thin");
        Cloth plaid = draft.cloth("plaid", cm(150))
                .foldedTwice()
                .repeatAlong(cm(8))
                .repeatAcross(cm(6))
                .stretches(number(0.1), number(0.4));
        Len deep = draft.unknown("deep", cm(1), cm(60));
        draft.solve(deep, deep.times(deep).equalTo(girth.times(cm(10))));

        PieceBuilder lid = draft.piece("Lid");
        Spot a = lid.point("a", origin());
        Spot b = lid.point("b", at(girth, cm(3)));
        Spot c = lid.point("c", b.down(deep.plus(cm(10))));
        Spot d = lid.point("d", a.down(deep.plus(cm(8))));
        Len half = lid.value("half", a.distance(b).over(2));
        Spot m1 = lid.point("m1", between(a, b));
        Spot m2 = lid.point("m2", between(a, c, 0.25));
        Spot t1 = lid.point("t1", a.toward(c, cm(5)));
        Line diagonal = lid.line("diagonal", a, c);
        Line other = lid.line("other", b, d);
        Spot x = lid.point("x", diagonal.meets(other));
        lid.point("t2", b.toward(m2, other));
        lid.point("p1", a.past(m1, cm(2)));
        lid.point("g1", a.angled(degrees(-30), cm(6)));
        lid.point("g2", a.angled(degrees(-10), other));
        lid.point("s1", a.swept(cm(12), diagonal));
        lid.point("s2", x.swept(cm(6), diagonal, a));
        lid.point("s3", sweeps(cm(40), a, cm(50), b, d));
        lid.point("q1", m1.squareTo(diagonal, d, cm(3)));
        lid.point("q2", m1.squareTo(diagonal, Compass.UP, cm(3)));
        Line plumb = lid.guideDown("plumb", m1);
        lid.guide("slant", a, x);
        lid.point("r1", t1.mirroredOver(plumb));
        Spot r2 = lid.point("r2", t1.turned(turn, x));
        lid.point("u1", t1.rightTo(plumb));
        lid.point("u2", t1.rightTo(x));
        lid.point("e1", diagonal.end());
        Line near = lid.line("near", diagonal.parallel(cm(2), Compass.UP));
        lid.line("near2", diagonal.parallel(cm(1), d));
        lid.line("back", near.mirroredOver(plumb));
        lid.line("swung", near.turned(degrees(15), a));
        lid.line("stretch", diagonal.part(t1, x));
        lid.hollow("bent", a, d, Compass.RIGHT, cm(1), 1.0 / 3);
        lid.arc("round", t1, r2, x);
        lid.arc("swing", a, m1, degrees(60));
        Row holes = lid.row("holes", often, diagonal);
        lid.row("knobs", 3, diagonal, t1, x);
        Line top = lid.curve("top")
                .from(a, Way.angle(slope))
                .through(m1)
                .tension(1.2)
                .to(b, Way.along(other));
        Line rightSide = lid.line("right_side", b, c);
        Line bottom = lid.line("bottom", c, d);
        Line leftSide = lid.line("left_side", d, a);
        Spot tipOf = lid.point("tip_of", between(c, d).up(cm(9)));
        DrawnDart tuck = lid.dart("tuck", bottom.at(cm(12), c), cm(2), tipOf)
                .pressedToward(d)
                .curved(Compass.LEFT, mm(2));
        lid.value("tuck_angle", tuck.angle());
        lid.line("fold", tuck.foldLine());
        lid.innerDart("inner", m1.down(cm(6)), m1.down(cm(16)), cm(1), m1.down(cm(10)));
        lid.gather(top, number(0.95).times(top.length()));
        lid.value("held", top.sewn());
        lid.outline(top, rightSide, bottom, leftSide)
                .allow(cm(1))
                .allowNone(bottom)
                .allow(leftSide, cm(2))
                .corner(top, rightSide, Corner.Form.BLUNT)
                .corner(leftSide, top, Corner.Form.SQUARED, top);
        lid.cut(2).from(felt);
        lid.cut(1).inPairs().from(lining).withAllowance(mm(5));
        lid.grain(a, d)
                .notch(rightSide.at(cm(3)), 3)
                .notch(leftSide.fromEnd(cm(4)))
                .label("Lid of {}", half)
                .nestAt(x);
        lid.mark().drill(holes).mark().button(x).mark().buttonhole(t1, diagonal, cm(2));

        half(draft, "Right", lined, angle(a, x, b), lining, false);
        plaid.matching(c, half(draft, "Left", lined, angle(a, x, b), lining, true));

        PieceBuilder handle = draft.strip("Handle", cm(80), cm(6)).allow(cm(1));
        handle.notch(handle.line("bottom").fromEnd(cm(3))).cut(1).from(felt);

        draft.seam("sides", rightSide)
                .to(leftSide)
                .easeShare(-0.1, 0.1)
                .matching(b, a)
                .squareAt(b)
                .within(cm(2))
                .pressedOpen();
        draft.opening("mouth", rightSide.sewn(), cm(20), cm(3), 0.1);
        draft.check(lid.area().moreThan(cm(200).times(cm(1))).and(lined.not()), "It is {}, {}.", lid.area(), lined);
        return draft.build();
    }

    /** Half of the lining; gives the point at its upper corner. */
    private static Spot half(DraftBuilder draft, String name, Truth lined, Ang corner, Cloth lining, boolean mirrored) {
        PieceBuilder half = draft.pieceIf(lined, name);
        Spot o = half.point("o", origin());
        Spot p = half.point("p", o.right(cm(10)));
        Spot q = half.point("q", p.down(corner.over(degrees(1)).times(mm(1)).plus(cm(5))));
        Line up = half.line("up_side", o, p);
        half.outline(up, half.line("out_side", p, q), half.line("low_side", q, o))
                .allow(cm(1))
                .grainOnBias()
                .cut(1)
                .from(lining);
        if (mirrored) {
            half.mirroredOver(up);
        }
        return p;
    }

    @Test
    void whatTheLanguageSaysTheBuilderSays() {
        Draft plain = built();
        Draft written = Gusset.compile(Source.of("trunk.gusset", TEXT)).orThrow();
        Measurements named = Measurements.of("Trunk").with("round the trunk", Quantity.length(812.5));
        for (Measurements body : List.of(named, Measurements.of("Nobody").with("slope", Quantity.angle(12)))) {
            for (Choices choices :
                    List.of(Choices.none(), Choices.none().with("lined", true).with("often", Quantity.number(7)))) {
                Drawing first = plain.evaluate(body, choices).value().orElseThrow();
                Drawing second = written.evaluate(body, choices).value().orElseThrow();
                assertThat(second.refused()).isEmpty();
                assertThat(second.pieceValues().get(0).points()).hasSize(23);
                assertThat(second.cloths().get(2).ways().matched()).isNotEmpty();
                SameDrawing.holds(first, second, body.body());
            }
        }
    }
}
