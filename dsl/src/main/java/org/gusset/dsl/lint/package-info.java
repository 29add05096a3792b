/** Advice about drafts that are sound and yet may not be what was meant. */
@NullMarked
package org.gusset.dsl.lint;

import org.jspecify.annotations.NullMarked;
