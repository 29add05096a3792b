package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.gusset.core.check.Finding;
import org.gusset.core.check.Tested;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.diagnostic.Related;
import org.gusset.core.measure.Dimension;
import org.gusset.core.pattern.Piece;
import org.gusset.core.seam.Walk.Band;
import org.jspecify.annotations.Nullable;

/** Whether the sides of a seam match, in all and stretch by stretch. */
final class SeamFindings {
    private final Map<String, Piece> pieces;
    private final Set<String> strips;

    /** @param strips the names of the pieces that are strips */
    SeamFindings(Map<String, Piece> pieces, Set<String> strips) {
        this.pieces = pieces;
        this.strips = strips;
    }

    /** @param wrong what is wrong with the matched points */
    Finding of(SewnSeam seam, List<Diagnostic> wrong) {
        Walk walk = seam.walk();
        Band band = walk.ease().orElse(Band.NONE);
        Stretch whole =
                new Stretch("", "", 0, seam.first().length(), 0, seam.second().length(), band);
        List<Tested> tested = new ArrayList<>();
        tested.add(tested(Phrase.of("tested.seam", "the ease of seam {seam}", "seam", seam.name()), whole, walk));
        Diagnostic off = off(seam, whole, true);
        if (seam.stretches().size() > 1) {
            for (Stretch stretch : seam.stretches()) {
                tested.add(tested(
                        Phrase.of(
                                "tested.stretch",
                                "the ease of seam {seam} {where}",
                                "seam",
                                seam.name(),
                                "where",
                                where(stretch)),
                        stretch,
                        walk));
                if (off == null) {
                    off = off(seam, stretch, false);
                } else if (Math.abs(stretch.wanted().beyond(stretch.ease())) > walk.tolerance()) {
                    off = off.with(new Related(
                            Phrase.of(
                                    "seam.there",
                                    "{where}: {difference} off",
                                    "where",
                                    where(stretch),
                                    "difference",
                                    Fact.length(stretch.wanted().beyond(stretch.ease()))),
                            walk.place()));
                }
            }
        }
        Diagnostic message = wrong.isEmpty() ? off : wrong.get(0);
        Finding finding = new Finding(
                seam.name(),
                message == null ? Finding.Verdict.PASSED : Finding.Verdict.FAILED,
                figures(seam, whole),
                walk.place(),
                Optional.ofNullable(message));
        return finding.with(tested.toArray(new Tested[0]));
    }

    private static Tested tested(Phrase what, Stretch stretch, Walk walk) {
        return new Tested(
                what,
                Dimension.LENGTH,
                stretch.ease(),
                stretch.wanted().low(),
                stretch.wanted().high(),
                walk.tolerance());
    }

    /** Where a stretch lies, in words. */
    static Phrase where(Stretch stretch) {
        Phrase from = stretch.from().isEmpty()
                ? Phrase.of("seam.start", "the start of the seam")
                : Phrase.of("seam.place", "`{place}`", "place", stretch.from());
        Phrase to = stretch.to().isEmpty()
                ? Phrase.of("seam.end", "its end")
                : Phrase.of("seam.place", "`{place}`", "place", stretch.to());
        return Phrase.of("seam.between", "between {from} and {to}", "from", from, "to", to);
    }

    private Phrase figures(SewnSeam seam, Stretch whole) {
        Walk walk = seam.walk();
        boolean alike = whole.wanted().low() == 0 && whole.wanted().high() == 0;
        Phrase plain = Phrase.of(
                alike ? "seam.figures.alike" : "seam.figures",
                "{first} {firstLength}, {second} {secondLength}, difference {difference}, wanted "
                        + (alike ? "alike within {tolerance}" : "{low} to {high} within {tolerance}"),
                "first",
                Walk.words(walk.first()),
                "firstLength",
                Fact.length(whole.firstLength()),
                "second",
                Walk.words(walk.second()),
                "secondLength",
                Fact.length(whole.secondLength()),
                "difference",
                Fact.length(whole.ease()),
                "low",
                Fact.length(whole.wanted().low()),
                "high",
                Fact.length(whole.wanted().high()),
                "tolerance",
                Fact.length(walk.tolerance()));
        if (seam.stretches().size() < 2) {
            return plain;
        }
        List<Phrase> parts = new ArrayList<>();
        parts.add(plain);
        for (Stretch stretch : seam.stretches()) {
            parts.add(Phrase.of(
                    "seam.stretch",
                    "{where} ease {ease}",
                    "where",
                    where(stretch),
                    "ease",
                    Fact.length(stretch.ease())));
        }
        return Phrase.joined("seam.stretches", "; ", parts);
    }

    private @Nullable Diagnostic off(SewnSeam seam, Stretch stretch, boolean all) {
        Walk walk = seam.walk();
        double over = stretch.wanted().beyond(stretch.ease());
        if (Math.abs(over) <= walk.tolerance()) {
            return null;
        }
        String first = Walk.words(walk.first());
        String second = Walk.words(walk.second());
        Band band = stretch.wanted();
        Phrase wanted = band.low() == 0 && band.high() == 0
                ? Phrase.of("seam.no-ease", "a seam without ease")
                : Phrase.of(
                        "seam.ease",
                        "an ease of {low} to {high}",
                        "low",
                        Fact.length(band.low()),
                        "high",
                        Fact.length(band.high()));
        Diagnostic strip = all ? strip(seam, over) : null;
        if (strip != null) {
            return strip;
        }
        return Diagnostic.of(
                all ? SeamCode.SEAM_OFF : SeamCode.STRETCH_OFF,
                walk.place(),
                "seam",
                seam.name(),
                "stretch",
                where(stretch),
                "first",
                first,
                "firstLength",
                Fact.length(stretch.firstLength()),
                "second",
                second,
                "secondLength",
                Fact.length(stretch.secondLength()),
                "longer",
                over > 0 ? first : second,
                "difference",
                Fact.length(Math.abs(over)),
                "wanted",
                wanted,
                "tolerance",
                Fact.length(walk.tolerance()),
                "round",
                round(walk, Math.abs(over)));
    }

    /** How often the seam is sewn in the garment: the message says what comes of that. */
    private Phrase round(Walk walk, double difference) {
        int times = 1;
        for (Run run : walk.first()) {
            times = Math.max(times, times(run));
        }
        for (Run run : walk.second()) {
            times = Math.max(times, times(run));
        }
        return times < 2
                ? Phrase.of("seam.once", "")
                : Phrase.of(
                        "seam.round",
                        " It is sewn {times} times: {difference} on each, {all} in the whole garment.",
                        "times",
                        times,
                        "difference",
                        Fact.length(difference),
                        "all",
                        Fact.length(times * difference));
    }

    private int times(Run run) {
        Piece piece = pieces.get(run.piece());
        return run.copies() > 1 || piece == null ? 1 : piece.worn();
    }

    /** The message for a strip that does not reach, if the side that is too short is one strip alone. */
    private @Nullable Diagnostic strip(SewnSeam seam, double over) {
        List<Run> shorter = over > 0 ? seam.walk().second() : seam.walk().first();
        WalkedSide side = over > 0 ? seam.second() : seam.first();
        if (shorter.size() != 1 || !strips.contains(shorter.get(0).piece())) {
            return null;
        }
        return Diagnostic.of(
                SeamCode.STRIP_SHORT,
                seam.walk().place(),
                "piece",
                shorter.get(0).piece(),
                "seam",
                seam.name(),
                "difference",
                Fact.length(Math.abs(over)),
                "length",
                Fact.length(side.length()),
                "wanted",
                Fact.length(side.length() + Math.abs(over)));
    }
}
