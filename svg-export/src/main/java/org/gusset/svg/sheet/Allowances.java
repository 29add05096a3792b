package org.gusset.svg.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gusset.core.pattern.Allowance;
import org.gusset.core.pattern.Edge;

/** Sorts the edges of a piece by their allowance. */
final class Allowances {
    private Allowances() {}

    /** Edges that have the same allowance, in outline order. */
    record Same(Allowance allowance, List<String> edges) {}

    /** The allowance that most edges have, a plain one rather than a turned-up one; of equals, the one met first. */
    static Allowance common(List<Edge> edges) {
        Map<Allowance, Integer> counts = new LinkedHashMap<>();
        for (Edge edge : edges) {
            counts.merge(edge.allowance(), 1, Integer::sum);
        }
        Allowance best = Allowance.NONE;
        int most = 0;
        for (Map.Entry<Allowance, Integer> entry : counts.entrySet()) {
            boolean plainer = best.turnedUp() && !entry.getKey().turnedUp();
            boolean turned = most > 0 && !best.turnedUp() && entry.getKey().turnedUp();
            if (!turned && (plainer || entry.getValue() > most)) {
                best = entry.getKey();
                most = entry.getValue();
            }
        }
        return best;
    }

    /** The edges that have another allowance, grouped, in the order met. */
    static List<Same> others(List<Edge> edges, Allowance common) {
        Map<Allowance, List<String>> groups = new LinkedHashMap<>();
        for (Edge edge : edges) {
            if (!edge.allowance().equals(common)) {
                groups.computeIfAbsent(edge.allowance(), a -> new ArrayList<>()).add(edge.name());
            }
        }
        List<Same> others = new ArrayList<>();
        groups.forEach((allowance, names) -> others.add(new Same(allowance, names)));
        return others;
    }
}
