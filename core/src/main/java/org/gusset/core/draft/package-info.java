/** A whole draft and the drawing it gives for one body: what hosts use. */
@NullMarked
package org.gusset.core.draft;

import org.jspecify.annotations.NullMarked;
