/** Assertions for tests of drafts; {@link org.gusset.assertions.GussetAssertions} is where they begin. */
@NullMarked
package org.gusset.assertions;

import org.jspecify.annotations.NullMarked;
