/** Seams walked: what is sewn to what, stretch by stretch, in which order, and whether all of it can be sewn. */
@NullMarked
package org.gusset.core.seam;

import org.jspecify.annotations.NullMarked;
