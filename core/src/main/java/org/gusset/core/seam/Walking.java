package org.gusset.core.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.gusset.core.construct.Formula;
import org.gusset.core.construct.Mirror;
import org.gusset.core.diagnostic.Fact;
import org.gusset.core.diagnostic.Fault;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.geometry.Path;
import org.gusset.core.geometry.Point;
import org.gusset.core.geometry.Transform;
import org.gusset.core.graph.Operation;
import org.gusset.core.graph.Values;
import org.gusset.core.pattern.Cut;
import org.gusset.core.pattern.Fullness;
import org.gusset.core.pattern.Piece;
import org.gusset.core.pattern.TakenUp;

/**
 * Gathers what a seam joins. Whole numbers name inputs of the node.
 *
 * @param name the seam's name
 * @param first the edges of the first side
 * @param second those of the second
 * @param ease how much longer the first side may be in all, if told
 * @param tolerance how far the sides may be off, in mm
 * @param pressed how it is pressed, in words
 * @param place where the draft says so
 */
public record Walking(
        String name,
        List<RunInput> first,
        List<RunInput> second,
        Optional<EaseInput> ease,
        Formula tolerance,
        List<MatchInput> matches,
        List<MeetingInput> meetings,
        String pressed,
        Place place)
        implements Operation<Walk> {
    /** Seams match within this unless told, in mm. */
    public static final double TOLERANCE = 1;

    /** The most copies of an edge that a seam takes in. */
    private static final int MOST_COPIES = 1000;

    /**
     * An edge.
     *
     * @param path the path that is sewn
     * @param whole the edge of which it is a part, if it is one; what is taken up counts along that
     * @param taken darts, gathers and pleats on the edge
     * @param all the piece, if all its worn copies are sewn
     * @param mirror the line over which the finished piece is the mirror image, if it is one
     */
    public record RunInput(
            String words,
            String piece,
            String edge,
            int path,
            Optional<Integer> whole,
            List<Integer> taken,
            Optional<Integer> all,
            Optional<Integer> mirror,
            Place place) {
        public RunInput {
            taken = List.copyOf(taken);
        }
    }

    /** A point with its piece; see {@link RunInput} for the mirror. */
    public record SpotInput(String words, String piece, int point, Optional<Integer> mirror) {}

    /** Two points that come together. */
    public record MatchInput(SpotInput first, SpotInput second, Optional<EaseInput> ease, Place place) {}

    /** A corner where edges run on. */
    public record MeetingInput(boolean smooth, SpotInput at, Place place) {}

    /** An ease, as lengths in mm or as shares of the second side. */
    public record EaseInput(Formula low, Formula high, boolean lowIsShare, boolean highIsShare) {}

    public Walking {
        first = List.copyOf(first);
        second = List.copyOf(second);
        matches = List.copyOf(matches);
        meetings = List.copyOf(meetings);
    }

    @Override
    public Walk apply(Values in) {
        List<Run> one = runs(first, in);
        List<Run> other = runs(second, in);
        List<Walk.Match> matched = new ArrayList<>();
        for (MatchInput match : matches) {
            Optional<Walk.Ease> band = Optional.empty();
            if (match.ease().isPresent()) {
                band = Optional.of(ease(match.ease().get(), in));
            }
            matched.add(new Walk.Match(spot(match.first(), in), spot(match.second(), in), band, match.place()));
        }
        List<Walk.Meeting> met = new ArrayList<>();
        for (MeetingInput meeting : meetings) {
            met.add(new Walk.Meeting(meeting.smooth(), spot(meeting.at(), in), meeting.place()));
        }
        Walk plain = new Walk(name, one, other, Optional.empty(), tolerance.number(in), matched, met, pressed, place);
        if (ease.isEmpty()) {
            return plain;
        }
        Walk.Band band = ease(ease.get(), in).over(plain.secondLength());
        return new Walk(name, one, other, Optional.of(band), plain.tolerance(), matched, met, pressed, place);
    }

    private Walk.Ease ease(EaseInput told, Values in) {
        double low = told.low().number(in);
        double high = told.high().number(in);
        if (low > high && told.lowIsShare() == told.highIsShare()) {
            boolean share = told.lowIsShare();
            throw Fault.of(SeamCode.EASE_TURNED, "seam", name, "low", amount(low, share), "high", amount(high, share));
        }
        return new Walk.Ease(low, high, told.lowIsShare(), told.highIsShare());
    }

    private static Object amount(double value, boolean share) {
        return share ? Fact.number(value * 100).toString() + "%" : Fact.length(value);
    }

    private static Walk.Spot spot(SpotInput spot, Values in) {
        Point point = in.point(spot.point());
        return new Walk.Spot(
                spot.words(),
                spot.piece(),
                spot.mirror().isPresent() ? over(spot.mirror().get(), in).apply(point) : point);
    }

    private static Transform over(int mirror, Values in) {
        return Mirror.over(in.path(mirror), "the mirror");
    }

    private static List<Run> runs(List<RunInput> inputs, Values in) {
        List<Run> runs = new ArrayList<>();
        for (RunInput input : inputs) {
            runs.add(run(input, in));
        }
        return runs;
    }

    private static Run run(RunInput input, Values in) {
        Path path = in.path(input.path());
        Path whole = input.whole().isPresent() ? in.path(input.whole().get()) : path;
        List<Run.Taken> taken = new ArrayList<>();
        for (int index : input.taken()) {
            TakenUp one = (TakenUp) in.get(index);
            if (one.intake() > 0) {
                double finished = one instanceof Fullness fullness ? fullness.finished() : 0;
                taken.add(new Run.Taken(one.from(), one.to(), finished));
            }
        }
        taken.sort((a, b) -> Double.compare(a.from(), b.from()));
        if (input.whole().isPresent()) {
            taken = within(taken, path, whole);
        }
        int copies = 1;
        boolean turned = false;
        if (input.all().isPresent()) {
            Piece piece = (Piece) in.get(input.all().get());
            copies = Math.min(piece.worn(), MOST_COPIES);
            turned = piece.cuts().stream()
                    .anyMatch(c ->
                            c.arrangement() == Cut.Arrangement.PAIRS || c.arrangement() == Cut.Arrangement.ON_FOLD);
        }
        Path seen = input.mirror().isPresent()
                ? path.transformed(over(input.mirror().get(), in))
                : path;
        return new Run(input.words(), input.piece(), input.edge(), seen, taken, copies, turned, input.place());
    }

    /** What of a whole edge is taken up within a part of it, counted along the part. */
    private static List<Run.Taken> within(List<Run.Taken> taken, Path part, Path whole) {
        double start = whole.nearest(part.start()).s();
        double end = whole.nearest(part.end()).s();
        boolean back = end < start;
        double low = Math.min(start, end);
        double high = Math.max(start, end);
        List<Run.Taken> inside = new ArrayList<>();
        for (Run.Taken one : taken) {
            double from = Math.max(one.from(), low);
            double to = Math.min(one.to(), high);
            if (to > from) {
                double share = one.finished() / (one.to() - one.from());
                double finished = share * (to - from);
                inside.add(
                        back
                                ? new Run.Taken(high - to, high - from, finished)
                                : new Run.Taken(from - low, to - low, finished));
            }
        }
        inside.sort((a, b) -> Double.compare(a.from(), b.from()));
        return inside;
    }
}
