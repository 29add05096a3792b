/** The facade: compile text to a draft. */
@NullMarked
package org.gusset.dsl;

import org.jspecify.annotations.NullMarked;
