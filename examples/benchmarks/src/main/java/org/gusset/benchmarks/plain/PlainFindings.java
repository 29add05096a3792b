package org.gusset.benchmarks.plain;

import static org.gusset.core.diagnostic.Fact.length;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.check.CheckCode;
import org.gusset.core.check.Finding;
import org.gusset.core.check.Tested;
import org.gusset.core.construct.Condition;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.measure.Dimension;
import org.gusset.core.seam.Sewing;

/** What the smock's ranges, seams and checks find. */
final class PlainFindings {
    private static final double HAIR = 1e-9;
    private static final Place NOWHERE = Place.nowhere();

    private final PlainSmock smock;
    private final List<Finding> findings = new ArrayList<>();

    PlainFindings(PlainSmock smock) {
        this.smock = smock;
    }

    List<Finding> of(Sewing sewing) {
        ranges();
        findings.addAll(sewing.findings());
        ease();
        checks();
        return List.copyOf(findings);
    }

    private void ranges() {
        Body body = smock.body();
        Wanted wanted = smock.wanted();
        double chest = body.chest();
        double arm = body.upperArm();
        range("chest", chest, 600, 1700);
        range("shoulder_width", body.shoulderWidth(), Math.max(200, chest * 0.29), chest * 0.5);
        range("neck", body.neck(), chest * 0.3, chest * 0.5);
        range("upper_arm", arm, chest * 0.25, Math.min(chest * 0.43, chest / 4 + 190));
        range("arm_length", body.armLength(), 380, 750);
        range("scye_depth", body.scyeDepth(), Math.max(160, arm / 2 + 50), arm / 2 + 140);
        range("body_length", wanted.bodyLength(), Math.max(450, body.scyeDepth() + 120), 1300);
        range("drop", wanted.drop(), 0, 80);
        range("ease", wanted.ease(), 40, 400);
        range("band_width", wanted.bandWidth(), 20, 70);
        range("side_in", wanted.sideIn(), -30, 30);
    }

    private void range(String name, double value, double low, double high) {
        Phrase figures = Phrase.of(
                "range.figures",
                "{name} {value}, taken from {low} to {high}",
                "name",
                name,
                "value",
                length(value),
                "low",
                length(low),
                "high",
                length(high));
        double slack = HAIR * Math.max(1, Math.abs(value));
        Tested tested = new Tested(
                Phrase.of("tested.range", "{name}", "name", name), Dimension.LENGTH, value, low, high, slack);
        if (value >= low - slack && value <= high + slack) {
            passed(name, figures, tested);
        } else {
            CheckCode code = value < low ? CheckCode.BELOW_RANGE : CheckCode.ABOVE_RANGE;
            failed(name, figures, tested, Diagnostic.of(code, NOWHERE, "name", name, "value", length(value)));
        }
    }

    private void ease() {
        double finished = 4 * smock.quarter();
        double chest = smock.body().chest();
        double ease = finished - chest;
        Object[] facts = {
            "name", "chest_round",
            "finished", length(finished),
            "over", "chest",
            "body", length(chest),
            "ease", length(ease),
            "low", length(40),
            "high", length(400)
        };
        Phrase figures = Phrase.of(
                "finished.figures", "{finished} over {over} {body}, ease {ease}, wanted {low} to {high}", facts);
        Tested tested = new Tested(
                Phrase.of("tested.ease", "the ease of {name}", "name", "chest_round"),
                Dimension.LENGTH,
                ease,
                40,
                400,
                Condition.LENGTH_TOLERANCE);
        if (tested.holds()) {
            passed("chest_round", figures, tested);
        } else {
            failed("chest_round", figures, tested, Diagnostic.of(CheckCode.EASE_OUT, NOWHERE, facts));
        }
    }

    private void checks() {
        Body body = smock.body();
        check(
                "width(Sleeve.back_under, Sleeve.front_under) >= upper_arm + 4 cm",
                body.upperArm() + 40,
                smock.sleeveWidth(),
                "The sleeve is too narrow for this arm.");
        check(
                "distance(Back.tip, Back.underarm) >= upper_arm / 2",
                body.upperArm() / 2,
                smock.armholeDepth(),
                "The armhole is too shallow for this arm.");
        double napeToWrist = smock.napeToWrist();
        check(
                "abs(nape_to_wrist - shoulder_width / 2 - arm_length - 2 cm) <= 5 mm",
                Math.abs(napeToWrist - body.shoulderWidth() / 2 - body.armLength() - 20),
                5,
                "The sleeve has a wrong length.");
        check(
                "width(Back.nape, Back.neck_pt) >= neck / (2 * pi) + 1 cm",
                body.neck() / (2 * Math.PI) + 10,
                smock.neckWidth(),
                "The neckline binds the neck.");
        check(
                "width(Back.nape, Back.neck_pt) <= neck / 4",
                smock.neckWidth(),
                body.neck() / 4,
                "The neckline slips off the shoulders.");
    }

    private void check(String source, double less, double more, String telling) {
        boolean turned = source.contains(">");
        boolean holds = less <= more + Condition.LENGTH_TOLERANCE;
        Phrase figures = Phrase.of(
                holds ? "check.compared" : "check.wanted",
                holds ? "{left} {relation} {right}" : "{left}, wanted {relation} {right}",
                "left",
                length(turned ? more : less),
                "relation",
                turned ? ">=" : "<=",
                "right",
                length(turned ? less : more));
        Tested tested = new Tested(
                Phrase.of("tested.check", "{check}", "check", source),
                Dimension.LENGTH,
                more - less,
                0,
                Double.POSITIVE_INFINITY,
                Condition.LENGTH_TOLERANCE);
        if (holds) {
            passed(source, figures, tested);
        } else {
            failed(source, figures, tested, Diagnostic.of(CheckCode.CHECK_FAILED, NOWHERE, "telling", telling));
        }
    }

    private void passed(String name, Phrase figures, Tested tested) {
        findings.add(new Finding(name, Finding.Verdict.PASSED, figures, NOWHERE, Optional.empty(), List.of(tested)));
    }

    private void failed(String name, Phrase figures, Tested tested, Diagnostic diagnostic) {
        findings.add(
                new Finding(name, Finding.Verdict.FAILED, figures, NOWHERE, Optional.of(diagnostic), List.of(tested)));
    }
}
