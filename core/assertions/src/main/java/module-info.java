/** What tests of drafts say of drawings, in the manner of AssertJ. */
module org.gusset.assertions {
    requires transitive org.gusset.core;
    requires transitive org.assertj.core;
    requires static transitive org.jspecify;

    exports org.gusset.assertions;
}
