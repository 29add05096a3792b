package org.gusset.batch.spark;

import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.gusset.batch.BatchOrder;
import org.gusset.batch.Headings;
import org.gusset.batch.RowFitter;

/** Compiled drafts of this machine's process: text is sent, and the first task that needs a draft compiles it for all others. */
final class Fitters {
    private static final ConcurrentMap<Key, RowFitter> COMPILED = new ConcurrentHashMap<>();

    private record Key(BatchOrder order, Headings headings) {}

    private Fitters() {}

    static RowFitter of(BatchOrder order, Headings headings) {
        return COMPILED.computeIfAbsent(new Key(order, headings), key -> new RowFitter(order.ready(), headings));
    }
}
