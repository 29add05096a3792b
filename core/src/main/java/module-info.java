/** Measures, geometry, the graph of a draft, its evaluation, pieces and checks. Knows nothing of the language. */
module org.gusset.core {
    requires static transitive org.jspecify;
    requires org.locationtech.jts;
    requires org.apache.commons.numbers.rootfinder;

    exports org.gusset.core.diagnostic;
    exports org.gusset.core.measure;
    exports org.gusset.core.geometry;
    exports org.gusset.core.jts;
    exports org.gusset.core.graph;
    exports org.gusset.core.construct;
    exports org.gusset.core.evaluate;
    exports org.gusset.core.pattern;
    exports org.gusset.core.change;
    exports org.gusset.core.check;
    exports org.gusset.core.seam;
    exports org.gusset.core.draft;
    exports org.gusset.core.json;
    exports org.gusset.core.build;
    exports org.gusset.core.chalk;
    exports org.gusset.core.stress;
    exports org.gusset.core.grade;
    exports org.gusset.core.sizing;
    exports org.gusset.core.cloth;
    exports org.gusset.core.cloth.packing;
}
