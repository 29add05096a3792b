package org.gusset.benchmarks.nesting;

import java.util.List;
import java.util.Optional;
import org.gusset.core.cloth.packing.Flaw;
import org.gusset.core.cloth.packing.Packer;
import org.gusset.core.cloth.packing.Packing;
import org.gusset.core.cloth.packing.PackingCheck;
import org.gusset.core.cloth.packing.Search;
import org.gusset.core.cloth.packing.Strip;

/**
 * Packs random small sets, each within ten milliseconds for the plan at once and the search, and checks every plan by both methods. {@code Soak [how many] [first seed]};
 * a set that fails is printed with its seed, and the program ends with 1.
 */
public final class Soak {
    private static final long BUDGET = 10_000_000;

    private Soak() {}

    public static void main(String[] args) {
        long sets = args.length > 0 ? Long.parseLong(args[0]) : 1_000_000;
        long from = args.length > 1 ? Long.parseLong(args[1]) : 1;
        long packed = 0;
        long shorter = 0;
        long misfits = 0;
        long bad = 0;
        for (long seed = from; seed < from + sets; seed++) {
            if (seed > from && (seed - from) % 5000 == 0) {
                System.out.println(seed - from + " sets so far, " + bad + " unsound");
            }
            Strip strip = SmallSets.of(seed);
            long start = System.nanoTime();
            Optional<Packing> first = Packer.first(strip);
            if (first.isEmpty() != !strip.misfits().isEmpty()) {
                bad++;
                System.out.println("seed " + seed + ": no plan, and no misfit that tells why");
            } else if (first.isEmpty()) {
                misfits++;
            } else {
                packed++;
                List<Flaw> flaws = PackingCheck.flaws(strip, first.get());
                Packing better = flaws.isEmpty()
                        ? Packer.improve(
                                strip,
                                first.get(),
                                Search.defaults().withSeed(seed).withSeekers(1).withRounds(Integer.MAX_VALUE),
                                () -> System.nanoTime() - start < BUDGET,
                                Runnable::run,
                                progress -> {})
                        : first.get();
                flaws = PackingCheck.flaws(strip, better);
                shorter += better.length() < first.get().length() ? 1 : 0;
                if (!flaws.isEmpty() || better.length() > first.get().length()) {
                    bad++;
                    System.out.println("seed " + seed + ": " + flaws + " of " + strip);
                }
            }
        }
        System.out.println(sets + " sets: " + packed + " packed, " + shorter + " of them shortened by the search, "
                + misfits + " with a piece that does not fit, " + bad + " unsound");
        if (bad > 0) {
            System.exit(1);
        }
    }
}
