package org.gusset.core.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.gusset.core.construct.Formula;
import org.gusset.core.diagnostic.Place;
import org.gusset.core.seam.Walking;
import org.jspecify.annotations.Nullable;

/**
 * A seam: {@code draft.seam("side", front.line("side")).to(back.line("side"))}. The two sides must be as long as each other but for
 * the ease that is told.
 */
public final class SeamBuilder {
    private record Ease(Value low, Value high, boolean share) {}

    private record Match(
            Spot first, Spot second, int strokes, @Nullable Ease ease) {}

    private record Meeting(boolean smooth, Spot point) {}

    private final DraftBuilder draft;
    private final String name;
    private final List<Sewable> first;
    private final List<Sewable> second = new ArrayList<>();
    private final List<Match> matches = new ArrayList<>();
    private final List<Meeting> meetings = new ArrayList<>();
    private @Nullable Ease ease;
    private Len within = Amounts.mm(Walking.TOLERANCE);
    private String pressed = "";

    SeamBuilder(DraftBuilder draft, String name, List<Sewable> first) {
        this.draft = draft;
        this.name = name;
        this.first = first;
    }

    /** The edges of the second side. */
    public SeamBuilder to(Sewable edge, Sewable... further) {
        second.add(draft.sewable(edge));
        for (Sewable one : further) {
            second.add(draft.sewable(one));
        }
        return this;
    }

    /** How much longer the first side is than the second: eased in, or stretched if negative. */
    public SeamBuilder ease(Len least, Len most) {
        ease = new Ease(draft.own(least), draft.own(most), false);
        return this;
    }

    /** How much longer the first side is, as shares of the second: 0.03 is three in a hundred. */
    public SeamBuilder easeShare(double least, double most) {
        ease = new Ease(Amounts.number(least), Amounts.number(most), true);
        return this;
    }

    /** How far the sides may be off; 1 mm unless told. */
    public SeamBuilder within(Len tolerance) {
        within = draft.own(tolerance);
        return this;
    }

    /** A point of the first side comes to lie on one of the second. */
    public SeamBuilder matching(Spot onFirst, Spot onSecond) {
        return match(onFirst, onSecond, 0, null);
    }

    /** A point of the first side comes to lie on one of the second, and both edges get a notch there. */
    public SeamBuilder matchingNotched(Spot onFirst, Spot onSecond, int strokes) {
        if (strokes < 1 || strokes > 3) {
            throw new IllegalArgumentException("a notch has one, two or three strokes, not " + strokes);
        }
        return match(onFirst, onSecond, strokes, null);
    }

    /** A point of the first side comes to lie on one of the second; the stretch that ends there has an ease of its own. */
    public SeamBuilder matching(Spot onFirst, Spot onSecond, Len leastEase, Len mostEase) {
        return match(onFirst, onSecond, 0, new Ease(draft.own(leastEase), draft.own(mostEase), false));
    }

    private SeamBuilder match(Spot onFirst, Spot onSecond, int strokes, @Nullable Ease own) {
        matches.add(new Match(draft.own(onFirst), draft.own(onSecond), strokes, own));
        return this;
    }

    /** At this end of the seam the neighbouring edges run on smoothly across it. */
    public SeamBuilder smoothAt(Spot end) {
        meetings.add(new Meeting(true, draft.own(end)));
        return this;
    }

    /** At this end of the seam the neighbouring edges are square to it on both sides. */
    public SeamBuilder squareAt(Spot end) {
        meetings.add(new Meeting(false, draft.own(end)));
        return this;
    }

    /** The allowances are pressed toward a piece. */
    public SeamBuilder pressedToward(PieceBuilder piece) {
        pressed = "toward " + piece.name();
        return this;
    }

    /** The allowances are pressed open. */
    public SeamBuilder pressedOpen() {
        pressed = "open";
        return this;
    }

    String name() {
        return name;
    }

    boolean complete() {
        return !second.isEmpty();
    }

    /** The notches that it asks for, by the name of the piece. */
    Map<String, List<Layout.SeamNotch>> notches() {
        Map<String, List<Layout.SeamNotch>> notches = new LinkedHashMap<>();
        for (Match match : matches) {
            if (match.strokes() > 0) {
                for (Spot spot : List.of(match.first(), match.second())) {
                    PieceBuilder frame = spot.term().home().frame();
                    if (frame != null) {
                        notches.computeIfAbsent(frame.name(), k -> new ArrayList<>())
                                .add(new Layout.SeamNotch(spot.term(), match.strokes(), name));
                    }
                }
            }
        }
        return notches;
    }

    /** The seam as an operation over its edges. */
    Term made() {
        Inputs in = new Inputs();
        Place place = Place.named(name);
        List<Walking.RunInput> one = runs(first, in);
        List<Walking.RunInput> other = runs(second, in);
        Optional<Walking.EaseInput> eased = ease(ease, in);
        List<Walking.MatchInput> matched = new ArrayList<>();
        for (Match match : matches) {
            matched.add(new Walking.MatchInput(
                    spot(match.first(), in), spot(match.second(), in), ease(match.ease(), in), place));
        }
        List<Walking.MeetingInput> met = new ArrayList<>();
        for (Meeting meeting : meetings) {
            met.add(new Walking.MeetingInput(meeting.smooth(), spot(meeting.point(), in), place));
        }
        Formula tolerance = in.formula(within.term());
        Walking walking = new Walking(name, one, other, eased, tolerance, matched, met, pressed, place);
        return new Term.Made(walking, in.terms(), Kind.TRUTH, new Home(draft, null), p -> name, 3);
    }

    private static Optional<Walking.EaseInput> ease(@Nullable Ease told, Inputs in) {
        return told == null
                ? Optional.empty()
                : Optional.of(new Walking.EaseInput(
                        in.formula(told.low().term()), in.formula(told.high().term()), told.share(), told.share()));
    }

    private static Walking.SpotInput spot(Spot spot, Inputs in) {
        PieceBuilder frame = spot.term().home().frame();
        return new Walking.SpotInput(
                spot.toString(), frame == null ? "" : frame.name(), in.add(spot.term()), mirror(frame, in));
    }

    private static Optional<Integer> mirror(@Nullable PieceBuilder piece, Inputs in) {
        Term mirror = piece == null ? null : piece.layout().mirror;
        return mirror == null ? Optional.empty() : Optional.of(in.add(mirror));
    }

    private List<Walking.RunInput> runs(List<Sewable> side, Inputs in) {
        List<Walking.RunInput> runs = new ArrayList<>();
        for (Sewable sewn : side) {
            runs.add(run(sewn, in));
        }
        return runs;
    }

    private Walking.RunInput run(Sewable sewn, Inputs in) {
        Line line = sewn instanceof AllCopies all ? all.edge() : (Line) sewn;
        Line whole = line.whole();
        Term named = whole == null ? line.term() : whole.term();
        PieceBuilder piece = line.term().home().frame();
        List<Integer> taken = new ArrayList<>();
        String edge = "";
        if (piece != null && named instanceof Term.Ref ref) {
            String line0 = ref.symbol().name();
            boolean ofOutline = piece.layout().outline.containsKey(line0);
            edge = whole == null && ofOutline ? line0 : "";
            piece.dartsOn(line0).forEach(d -> taken.add(in.add(new Term.Ref(d))));
            piece.fullness().stream()
                    .filter(f -> f.edge().equals(line0))
                    .forEach(f -> taken.add(in.add(new Term.Ref(f.symbol()))));
        }
        Optional<Integer> all = sewn instanceof AllCopies && piece != null
                ? Optional.of(in.add(new Term.Ref(piece.symbol())))
                : Optional.empty();
        return new Walking.RunInput(
                sewn.toString(),
                piece == null ? "" : piece.name(),
                edge,
                in.add(line.term()),
                whole == null ? Optional.empty() : Optional.of(in.add(whole.term())),
                taken,
                all,
                mirror(piece, in),
                Place.named(name));
    }
}
