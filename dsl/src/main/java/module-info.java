/** The drafting language: text to a draft. */
module org.gusset.dsl {
    requires transitive org.gusset.core;
    requires org.antlr.antlr4.runtime;
    requires static transitive org.jspecify;

    exports org.gusset.dsl;
    exports org.gusset.dsl.syntax;
    exports org.gusset.dsl.report;
    exports org.gusset.dsl.format;
    exports org.gusset.dsl.lint;
    exports org.gusset.dsl.names;
}
