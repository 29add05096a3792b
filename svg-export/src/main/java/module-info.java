/** Drawings as scenes, scenes as SVG, true to scale. */
module org.gusset.svg {
    requires transitive org.gusset.core;
    requires static transitive org.jspecify;

    exports org.gusset.svg;
    exports org.gusset.svg.lesson;
    exports org.gusset.svg.page;
    exports org.gusset.svg.scene;
    exports org.gusset.svg.sheet;
    exports org.gusset.svg.style;
}
