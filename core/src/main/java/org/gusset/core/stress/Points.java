package org.gusset.core.stress;

import java.util.List;

/** Points of the unit cube to try: its corners, and points that fill it evenly. A quarter of the bodies lacks each measure that a rule
 * estimates. */
final class Points {
    /** All corners are tried if there are no more than this; otherwise so many of them. */
    private static final int MOST_CORNERS = 256;

    private static final double LACKING = 0.25;

    private final List<Variable> variables;
    private final long seed;
    private final Halton halton;
    private final long corners;

    Points(List<Axis> axes, long seed) {
        this.variables = axes.stream().map(Axis::variable).toList();
        this.seed = seed;
        this.halton = Halton.scrambled(axes.size(), seed);
        long product = 1;
        for (Variable variable : variables) {
            product = Math.min(Integer.MAX_VALUE, product * levels(variable));
        }
        this.corners = product;
    }

    private static int levels(Variable variable) {
        return variable.amount() ? 2 : variable.words().size();
    }

    /** How many corners are tried. */
    int corners() {
        return (int) Math.min(corners, MOST_CORNERS);
    }

    /** A corner: all of them in turn if they are few, otherwise one by chance. */
    double[] corner(long index) {
        double[] unit = new double[variables.size()];
        long rest = index;
        for (int i = 0; i < unit.length; i++) {
            int levels = levels(variables.get(i));
            int level = corners <= MOST_CORNERS ? (int) (rest % levels) : Mixing.below(levels, seed, 1, index, i);
            rest /= levels;
            unit[i] = variables.get(i).amount() ? level : (level + 0.5) / levels;
        }
        return lacking(unit, 2, index);
    }

    /** One of the points that fill the cube. */
    double[] spread(long index) {
        double[] unit = new double[variables.size()];
        for (int i = 0; i < unit.length; i++) {
            unit[i] = halton.at(index, i);
        }
        return lacking(unit, 3, index);
    }

    private double[] lacking(double[] unit, int kind, long index) {
        for (int i = 0; i < unit.length; i++) {
            if (variables.get(i).mayLack() && Mixing.share(seed, kind, index, i) < LACKING) {
                unit[i] = Double.NaN;
            }
        }
        return unit;
    }
}
