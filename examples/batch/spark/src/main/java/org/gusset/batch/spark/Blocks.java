package org.gusset.batch.spark;

import org.apache.spark.Partitioner;

/** Cuts a stretch of row numbers into blocks of equal length. */
final class Blocks extends Partitioner {
    private static final long serialVersionUID = 1L;

    private final long from;
    private final long to;
    private final int blocks;

    Blocks(long from, long to, int blocks) {
        this.from = from;
        this.to = to;
        this.blocks = blocks;
    }

    @Override
    public int numPartitions() {
        return blocks;
    }

    @Override
    public int getPartition(Object key) {
        return (int) (((Long) key - from) * blocks / (to - from));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Blocks b && b.from == from && b.to == to && b.blocks == blocks;
    }

    @Override
    public int hashCode() {
        return Long.hashCode(from * 31 + to) * 31 + blocks;
    }
}
