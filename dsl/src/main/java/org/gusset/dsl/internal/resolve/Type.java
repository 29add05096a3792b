package org.gusset.dsl.internal.resolve;

import java.util.List;
import org.gusset.core.measure.Dimension;
import org.jspecify.annotations.Nullable;

/** The kind of a value. */
public sealed interface Type {
    Type NUMBER = new Amount(Dimension.NUMBER);
    Type LENGTH = new Amount(Dimension.LENGTH);
    Type AREA = new Amount(Dimension.AREA);
    Type ANGLE = new Amount(Dimension.ANGLE);
    Type TRUTH = new Plain("a yes or no");
    Type TEXT = new Plain("a text");
    Type POINT = new Plain("a point");
    /** A row of points, evenly along a path. */
    Type ROW = new Plain("a row of points");

    Type DART = new Plain("a dart");
    Type PATH = new Plain("a path");
    /** A path that counts as endless and has no length of its own: {@code across from A}. */
    Type ENDLESS = new Plain("a guide");

    Type PIECE = new Plain("a piece");
    /** A change of a drawn piece, which has no name in the draft. */
    Type CHANGE = new Plain("a change");

    /** Gathers or pleats of an edge, which have no name in the draft. */
    Type FULLNESS = new Plain("gathers or pleats");
    /** The outline of a piece after changes. */
    Type OUTLINE = new Plain("an outline");
    /** An edge of a part of a piece, which the part may lack. */
    Type EDGE_OR_NONE = new Plain("an edge or none");

    /** A seam with all that it joins, which has no value in the draft. */
    Type SEAM = new Plain("a seam");

    Type WAY = new Plain("a way");
    Type CLOTH = new Plain("a cloth");
    Type RULE = new Plain("a rule");
    /** A mistake was told already; nothing more is said. */
    Type BROKEN = new Plain("broken");

    /** In a drafter's words, with the article. */
    String words();

    /** A number with a dimension. */
    record Amount(Dimension dimension) implements Type {
        @Override
        public String words() {
            return dimension.words();
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return this == other || (other instanceof Amount that && dimension.equals(that.dimension));
        }

        @Override
        public int hashCode() {
            return dimension.hashCode();
        }
    }

    /** One of several words. */
    record Word(List<String> options) implements Type {
        public Word {
            options = List.copyOf(options);
        }

        @Override
        public String words() {
            return "a word out of " + String.join(", ", options);
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return this == other || (other instanceof Word that && options.equals(that.options));
        }

        @Override
        public int hashCode() {
            return options.hashCode();
        }
    }

    /** A kind without parts. */
    record Plain(String words) implements Type {
        @Override
        public boolean equals(@Nullable Object other) {
            return this == other || (other instanceof Plain that && words.equals(that.words));
        }

        @Override
        public int hashCode() {
            return words.hashCode();
        }
    }

    default boolean broken() {
        return equals(BROKEN);
    }

    default boolean amount() {
        return this instanceof Amount;
    }

    default boolean path() {
        return equals(PATH) || equals(ENDLESS);
    }

    default boolean shape() {
        return path() || equals(POINT) || equals(ROW) || equals(DART);
    }

    /** The dimension of an amount; that of a plain number for anything else. */
    default Dimension dimension() {
        return this instanceof Amount amount ? amount.dimension() : Dimension.NUMBER;
    }
}
