package org.gusset.core.cloth;

import java.util.List;
import java.util.Optional;
import org.gusset.core.diagnostic.Phrase;

/**
 * How all that is cut of one cloth is laid on it.
 *
 * @param cloth the cloth
 * @param sections its stretches, one after the other
 * @param pieces the area of all pieces that are wanted, in square mm
 * @param compared every arrangement that was tried, the one taken among them
 * @param withoutNap the length that was found for the same cloth without its nap, if it has one
 * @param sale in which steps the cloth is sold
 */
public record LayPlan(
        LayCloth cloth,
        List<LaySection> sections,
        double pieces,
        List<Compared> compared,
        Optional<Double> withoutNap,
        Sale sale) {
    /**
     * An arrangement that was tried.
     *
     * @param words how the cloth is folded
     * @param length how much washed cloth it takes
     * @param taken true for the one that the plan shows
     * @param asked true if it is the one that the draft or the host asks for
     */
    public record Compared(Phrase words, double length, boolean taken, boolean asked) {}

    public LayPlan {
        sections = List.copyOf(sections);
        compared = List.copyOf(compared);
    }

    /** How much washed cloth it takes. */
    public double length() {
        return sections.stream().mapToDouble(LaySection::clothLength).sum();
    }

    /** How much cloth as bought. */
    public double needed() {
        return cloth.bought(length());
    }

    /** What is to be bought: {@link #needed()}, rounded up to how cloth is sold. */
    public double toBuy() {
        return sale.roundedUp(needed());
    }

    /** The share of the cloth, from 0 to 1, that becomes pieces. */
    public double share() {
        return length() > 0 ? pieces / (length() * cloth.usable()) : 0;
    }

    /** How much longer the cloth must be, as bought, because it has a nap; empty if it has none. */
    public Optional<Double> costOfNap() {
        return withoutNap.map(l -> cloth.bought(Math.max(0, length() - l)));
    }

    /** The shortest length, as bought, of which the pieces could come out if they fitted into one another without any loss. */
    public double leastByArea() {
        return cloth.bought(pieces / cloth.usable());
    }

    /** How the cloth is folded, section by section. */
    public Phrase words() {
        return Phrase.joined(
                "lay.sections",
                ", then ",
                sections.stream().map(s -> s.folding().words()).toList());
    }

    /** All pieces, section by section. */
    public List<LaidPiece> laid() {
        return sections.stream().flatMap(s -> s.pieces().stream()).toList();
    }

    /** How often the shears go round a piece: once for each that is laid, once more for what is then cut out of it. */
    public int cuts() {
        return laid().stream().mapToInt(p -> p.inner().isPresent() ? 2 : 1).sum();
    }

    LayPlan with(List<Compared> all, Optional<Double> nap) {
        return new LayPlan(cloth, sections, pieces, all, nap, sale);
    }
}
