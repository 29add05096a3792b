/** One draft over a table of a million bodies: rows in, findings, cloth areas and seam figures out. */
@NullMarked
package org.gusset.batch;

import org.jspecify.annotations.NullMarked;
