package org.gusset.core.cloth.packing;

import java.util.Optional;
import java.util.function.BooleanSupplier;

/** One search: shortens the strip, moves pieces until none overlap, shortens again. Works in portions and goes on where it stopped. */
final class Seeker {
    /** So many sweeps without getting calmer, and the search goes back to the calmest plan; so many times, and it has failed. */
    private static final int QUIET_SWEEPS = 100;

    private static final int STRIKES = 3;
    /** Less crowded by less than this share is not calmer. */
    private static final double CALMER = 0.98;
    /** The strip is shortened by this share at first; by half as much after a failure, but not by less than the last. */
    private static final double FIRST_STEP = 0.01;

    private static final double LAST_STEP = 0.0005;
    /** And by this share where a stuck plan is stirred. */
    private static final double STIRRED_STEP = 0.002;

    private final Shapes shapes;
    private final Crowding crowd;
    private final Moving moving;
    private final Chance chance;
    private final Stirring stirring;
    private final double leastLength;
    private final int[] order;

    private Layout best;
    private double target;
    private double step = FIRST_STEP;
    private boolean aimed;
    private boolean stirred;
    /** The least crowded plan since the aim was taken. */
    private Layout calmest;

    private double least;
    private double leastBefore;
    private int quiet;
    private int strikes;

    Seeker(Shapes shapes, Depths depths, Layout start, double leastLength, long seed, int number) {
        this.shapes = shapes;
        this.crowd = new Crowding(shapes, depths, start);
        this.chance = new Chance(seed, number);
        this.moving = new Moving(shapes, crowd, chance);
        this.stirring = new Stirring(shapes, crowd, chance);
        this.leastLength = leastLength;
        this.best = start;
        this.calmest = start;
        order = new int[crowd.pieces];
    }

    Layout best() {
        return best;
    }

    /** How many places have been tried. */
    long asked() {
        return crowd.asked;
    }

    /** Takes over a shorter plan. */
    void adopt(Layout shorter) {
        if (shorter.length() < best.length()) {
            best = shorter;
            if (target >= best.length()) {
                aimed = false;
            }
        }
    }

    boolean finished() {
        return best.length() <= leastLength * (1 + 1e-12);
    }

    /** Goes on for about so many places tried. */
    void run(long places, BooleanSupplier keepGoing) {
        long until = crowd.asked + places;
        // A sweep that moves nothing counts too.
        for (; crowd.asked < until && !finished() && keepGoing.getAsBoolean(); crowd.asked++) {
            if (!aimed) {
                aim();
            }
            if (!sweep(keepGoing)) {
                return;
            }
            judge();
        }
    }

    private void aim() {
        target = Math.max(leastLength, best.length() * (1 - step));
        crowd.start(best);
        stirring.shorten(best.length(), target);
        begin();
    }

    private void begin() {
        crowd.evenWeights();
        crowd.measureAll();
        calmest = crowd.layout(target);
        least = crowd.total();
        leastBefore = least;
        quiet = 0;
        strikes = 0;
        aimed = true;
    }

    /** Moves every piece that overlaps another, in an order by chance; false if it was stopped. */
    private boolean sweep(BooleanSupplier keepGoing) {
        int count = 0;
        for (int i = 0; i < crowd.pieces; i++) {
            if (crowd.crowded(i)) {
                order[count++] = i;
            }
        }
        for (int k = count - 1; k > 0; k--) {
            int other = chance.below(k + 1);
            int kept = order[k];
            order[k] = order[other];
            order[other] = kept;
        }
        for (int k = 0; k < count; k++) {
            if (!keepGoing.getAsBoolean()) {
                return false;
            }
            if (crowd.crowded(order[k])) {
                moving.move(order[k], target);
            }
        }
        return true;
    }

    private void judge() {
        double total = crowd.total();
        if (total == 0) {
            solved();
            return;
        }
        crowd.weigh();
        if (total < least) {
            quiet = total < CALMER * least ? 0 : quiet + 1;
            least = total;
            calmest = crowd.layout(target);
        } else {
            quiet++;
        }
        if (quiet < QUIET_SWEEPS) {
            return;
        }
        strikes = least < CALMER * leastBefore ? 0 : strikes + 1;
        leastBefore = least;
        quiet = 0;
        if (strikes >= STRIKES) {
            failed();
        } else {
            crowd.start(calmest);
            crowd.measureAll();
        }
    }

    private void solved() {
        Optional<Layout> exact = Settling.settle(shapes, crowd.layout(crowd.end()));
        aimed = false;
        if (exact.isPresent() && exact.get().length() < best.length()) {
            best = exact.get();
            if (stirred) {
                stirred = false;
                step = STIRRED_STEP;
            }
        }
    }

    private void failed() {
        if (!stirred && step > LAST_STEP) {
            step = Math.max(step / 2, LAST_STEP);
            aimed = false;
            return;
        }
        if (stirred) {
            crowd.start(calmest);
        } else {
            stirred = true;
            step = STIRRED_STEP;
            aim();
        }
        stirring.swap(target);
        begin();
    }
}
