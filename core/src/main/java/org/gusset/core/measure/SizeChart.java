package org.gusset.core.measure;

import java.util.List;
import java.util.Optional;

/** A table of bodies or sizes in order: one measurement set a column. */
public record SizeChart(String name, List<Measurements> sizes) {
    public SizeChart {
        sizes = List.copyOf(sizes);
    }

    /** The size or body with this name, exactly as written. */
    public Optional<Measurements> size(String name) {
        return sizes.stream().filter(m -> m.body().equals(name)).findFirst();
    }

    /** The names of the sizes or bodies, in order. */
    public List<String> names() {
        return sizes.stream().map(Measurements::body).toList();
    }
}
