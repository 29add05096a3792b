package org.gusset.dsl.names;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What the names of a draft mean, in its text and in those that it uses: made by {@code Gusset.names}. It holds as much as is sound;
 * names that mean nothing are not in it. Offsets count UTF-16 units from 0. Immutable.
 */
public final class NameIndex {
    private final List<Use> uses;
    private final Map<String, List<Region>> regions;
    private final Map<String, List<Named>> members;
    private final List<Titled> steps;
    private final Map<String, TreeMap<Integer, Use>> starts = new HashMap<>();
    private final Map<Spot, Set<Use>> together = new HashMap<>();

    /** Where a definition stands, with its name: what the language draws of itself shares a place. */
    private record Spot(String source, int start, String name) {
        static Spot of(Named named) {
            return new Spot(named.place().source(), named.place().start(), named.name());
        }
    }

    /** Two names that are one for a drafter: of a definition and of the change that replaces it in a traced piece. */
    public record Bond(Named one, Named other) {}

    /**
     * An index of what was found.
     *
     * @param uses every place at which a name stands, definitions included
     * @param bonds which names must be changed together
     * @param regions where which names can be said
     * @param members what lies in pieces and in drafts that are used, by their full names
     * @param steps the steps of all texts, as they stand in them
     */
    public NameIndex(
            List<Use> uses,
            List<Bond> bonds,
            List<Region> regions,
            Map<String, List<Named>> members,
            List<Titled> steps) {
        this.steps = List.copyOf(steps);
        this.uses = uses.stream()
                .sorted(Comparator.<Use, String>comparing(u -> u.place().source())
                        .thenComparing(u -> u.place().start()))
                .toList();
        Map<String, List<Region>> bySource = new LinkedHashMap<>();
        regions.forEach(r -> bySource.computeIfAbsent(r.place().source(), k -> new ArrayList<>())
                .add(r));
        this.regions = bySource;
        this.members = Map.copyOf(members);
        for (Use use : this.uses) {
            starts.computeIfAbsent(use.place().source(), k -> new TreeMap<>())
                    .putIfAbsent(use.place().start(), use);
            together.computeIfAbsent(Spot.of(use.named()), k -> new LinkedHashSet<>())
                    .add(use);
        }
        bonds.forEach(this::join);
    }

    private void join(Bond bond) {
        Set<Use> one = together.computeIfAbsent(Spot.of(bond.one()), k -> new LinkedHashSet<>());
        Set<Use> other = together.computeIfAbsent(Spot.of(bond.other()), k -> new LinkedHashSet<>());
        if (one == other) {
            return;
        }
        Set<Use> larger = one.size() >= other.size() ? one : other;
        Set<Use> smaller = larger == one ? other : one;
        larger.addAll(smaller);
        together.replaceAll((spot, set) -> set == smaller ? larger : set);
    }

    /** Every place at which a name stands, definitions included, by source and offset. */
    public List<Use> uses() {
        return uses;
    }

    /** Every definition, by source and offset. */
    public List<Named> names() {
        return uses.stream().filter(Use::defines).map(Use::named).toList();
    }

    /** The steps of all texts, as they stand in them. */
    public List<Titled> steps() {
        return steps;
    }

    /** The name at an offset, also right behind it; empty if none stands there that means something. */
    public Optional<Use> at(String source, int offset) {
        TreeMap<Integer, Use> inSource = starts.get(source);
        Map.Entry<Integer, Use> before = inSource == null ? null : inSource.floorEntry(offset);
        return Optional.ofNullable(before)
                .map(Map.Entry::getValue)
                .filter(u -> offset <= u.place().end());
    }

    /**
     * Every place at which a name stands that is one for a drafter, definitions included, by source and offset: with the names that
     * traced pieces take over, and those of the changes that replace a definition there. Whoever gives it another name must write it
     * at all of these places.
     */
    public List<Use> together(Named named) {
        return together.getOrDefault(Spot.of(named), Set.of()).stream()
                .sorted(Comparator.<Use, String>comparing(u -> u.place().source())
                        .thenComparing(u -> u.place().start()))
                .toList();
    }

    /** What can be said by its name alone at an offset: first what lies in the rule or piece there, then what the file defines. */
    public List<Named> visible(String source, int offset) {
        List<Named> visible = new ArrayList<>();
        around(source, offset).ifPresent(r -> visible.addAll(r.names()));
        List<Region> all = regions.getOrDefault(source, List.of());
        if (!all.isEmpty()) {
            visible.addAll(all.get(0).names());
        }
        return visible;
    }

    /** The piece or rule in which an offset lies, with its names. */
    public Optional<Region> around(String source, int offset) {
        List<Region> all = regions.getOrDefault(source, List.of());
        Region last = null;
        for (Region region : all.subList(Math.min(1, all.size()), all.size())) {
            boolean begun = region.place().start() < offset;
            if (begun && (last == null || region.place().start() >= last.place().start())) {
                last = region;
            }
        }
        return Optional.ofNullable(last)
                .filter(r -> !r.closed() || offset < r.place().end());
    }

    /** What lies in a piece, or in a draft that is used, by its full name. */
    public List<Named> members(String fullName) {
        return members.getOrDefault(fullName, List.of());
    }
}
