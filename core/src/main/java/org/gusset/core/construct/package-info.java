/** The operations of the drafting table: squared lines, compass arcs, smooth curves, formulas. */
@NullMarked
package org.gusset.core.construct;

import org.jspecify.annotations.NullMarked;
