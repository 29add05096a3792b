package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.List;
import org.gusset.core.diagnostic.Diagnostic;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Phrase;
import org.gusset.core.seam.Walk.Band;

/** Cuts a seam at its matched points into stretches. */
final class Stretches {
    private final Walk walk;
    private final Directions.Pair pair;
    private final List<Diagnostic> diagnostics = new ArrayList<>();

    Stretches(Walk walk, Directions.Pair pair) {
        this.walk = walk;
        this.pair = pair;
    }

    private record Place(double first, double second, Walk.Match match) {}

    List<Diagnostic> diagnostics() {
        return diagnostics;
    }

    List<Stretch> of() {
        List<Place> places = places();
        Band whole = walk.ease().orElse(Band.NONE);
        // Where the draft does not say on which stretch the ease lies, it may lie on any.
        Band within = new Band(Math.min(0, whole.low()), Math.max(0, whole.high()));
        List<Stretch> stretches = new ArrayList<>();
        double first = 0;
        double second = 0;
        String from = "";
        for (Place place : places) {
            String words = place.match().first().words();
            double secondLength = place.second() - second;
            Band wanted = place.match().ease().map(e -> e.over(secondLength)).orElse(within);
            stretches.add(new Stretch(from, words, first, place.first(), second, place.second(), wanted));
            first = place.first();
            second = place.second();
            from = words;
        }
        Band last = places.isEmpty() ? whole : within;
        stretches.add(new Stretch(
                from, "", first, pair.first().length(), second, pair.second().length(), last));
        return stretches;
    }

    private List<Place> places() {
        List<Place> places = new ArrayList<>();
        for (Walk.Match match : walk.matches()) {
            List<Double> first = pair.first().places(match.first());
            List<Double> second = pair.second().places(match.second());
            if (first.isEmpty()) {
                off(match, match.first(), pair.first(), Walk.words(walk.first()));
            }
            if (second.isEmpty()) {
                off(match, match.second(), pair.second(), Walk.words(walk.second()));
            }
            int count = Math.min(first.size(), second.size());
            for (int i = 0; i < count; i++) {
                double one = first.size() == count ? first.get(i) : nearest(second.get(i), first);
                double other = second.size() == count ? second.get(i) : nearest(first.get(i), second);
                places.add(new Place(one, other, match));
            }
        }
        places.sort((a, b) -> Double.compare(a.first(), b.first()));
        for (int i = 0; i + 1 < places.size(); i++) {
            if (places.get(i + 1).second() < places.get(i).second() - walk.tolerance()) {
                crossed(places.get(i).match(), places.get(i + 1).match());
            }
        }
        return places;
    }

    private static double nearest(double at, List<Double> places) {
        return places.stream()
                .min((a, b) -> Double.compare(Math.abs(a - at), Math.abs(b - at)))
                .orElse(at);
    }

    private void off(Walk.Match match, Walk.Spot spot, WalkedSide side, String words) {
        double distance = side.distance(spot);
        diagnostics.add(Diagnostic.of(
                SeamCode.MATCH_OFF_EDGE,
                match.place(),
                "point",
                spot.words(),
                "side",
                words,
                "seam",
                walk.name(),
                "distance",
                Double.isInfinite(distance)
                        ? Phrase.of("match.elsewhere", ": no edge of its piece is sewn there")
                        : Phrase.of("match.away", ": it is {away} away", "away", Fact.length(distance))));
    }

    private void crossed(Walk.Match one, Walk.Match other) {
        diagnostics.add(Diagnostic.of(
                SeamCode.MATCHES_CROSS,
                other.place(),
                "seam",
                walk.name(),
                "first",
                Walk.words(walk.first()),
                "second",
                Walk.words(walk.second()),
                "one",
                one.first().words(),
                "other",
                other.first().words()));
    }
}
