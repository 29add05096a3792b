package org.gusset.benchmarks;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/** Refuses to measure two sides that do not compute the same. */
final class Same {
    private Same() {}

    static void bits(String what, Object one, Object other) {
        if (!Objects.equals(one, other)) {
            throw new IllegalStateException(what + " differs:\n" + one + "\n" + other);
        }
    }

    static <T> void each(String what, List<T> one, List<T> other, Function<T, ?> seen) {
        bits("number of " + what, one.size(), other.size());
        for (int i = 0; i < one.size(); i++) {
            bits(what + " " + i, seen.apply(one.get(i)), seen.apply(other.get(i)));
        }
    }

    static void within(String what, double tolerance, double one, double other) {
        if (!(Math.abs(one - other) <= tolerance)) {
            throw new IllegalStateException(
                    what + " is " + one + " and " + other + ", which is more than " + tolerance + " apart");
        }
    }
}
