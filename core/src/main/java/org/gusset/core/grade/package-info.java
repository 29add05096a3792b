/** A draft over a chart of sizes: every size evaluated, the seams by size, and how every corner moves from size to size. */
@NullMarked
package org.gusset.core.grade;

import org.jspecify.annotations.NullMarked;
