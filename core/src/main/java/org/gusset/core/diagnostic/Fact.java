package org.gusset.core.diagnostic;

/** One typed fact in a phrase, so that words can be translated and lengths shown in the wanted unit. */
public sealed interface Fact {
    /** Words that are shown as they are: a name, an excerpt of the source, a list already put together. */
    record Words(String text) implements Fact {}

    /** A length in millimetres. */
    record Length(double mm) implements Fact {}

    /** An area in square millimetres. */
    record Area(double squareMm) implements Fact {}

    /** An angle in degrees. */
    record Angle(double degrees) implements Fact {}

    /** A plain number. */
    record Number(double value) implements Fact {}

    /** A phrase within a phrase, its own facts typed. */
    record Said(Phrase phrase) implements Fact {}

    static Fact words(String text) {
        return new Words(text);
    }

    static Fact length(double mm) {
        return new Length(mm);
    }

    static Fact area(double squareMm) {
        return new Area(squareMm);
    }

    static Fact angle(double degrees) {
        return new Angle(degrees);
    }

    static Fact number(double value) {
        return new Number(value);
    }
}
