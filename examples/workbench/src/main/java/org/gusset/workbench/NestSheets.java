package org.gusset.workbench;

import java.util.ArrayList;
import java.util.List;
import org.gusset.svg.sheet.Nest;

/**
 * Deals sizes out to nests when there are more than lines can be told apart. The last size of a sheet is the first of the next, so
 * that no step from size to size is missing.
 */
final class NestSheets {
    private NestSheets() {}

    /** The sizes of each sheet, as evenly as they go. */
    static <T> List<List<T>> of(List<T> sizes) {
        int steps = Math.max(1, sizes.size() - 1);
        int sheets = (steps + Nest.MOST - 2) / (Nest.MOST - 1);
        List<List<T>> all = new ArrayList<>();
        for (int i = 0; i < sheets; i++) {
            int from = i * steps / sheets;
            int to = (i + 1) * steps / sheets;
            all.add(List.copyOf(sizes.subList(from, Math.min(sizes.size(), to + 1))));
        }
        return all;
    }
}
