/** Programs that embed Gusset. */
module org.gusset.embedding {
    requires org.gusset.dsl;
    requires org.gusset.svg;
    requires jdk.httpserver;
    requires static org.jspecify;
}
