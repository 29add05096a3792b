/** Drawings as scenes, scenes as SVG, true to scale. */
module org.gusset.svg {
    requires transitive org.gusset.core;
    requires static transitive org.jspecify;

    exports org.gusset.svg;
}
