package org.gusset.core.build;

/** What has a length and can be sewn: a line, or an edge in all the copies of its piece that are worn. */
public sealed interface Sewable permits Line, AllCopies {}
