/** Changes to pieces that are drawn already: darts moved, pieces slashed, lengthened and taken apart. */
@NullMarked
package org.gusset.core.change;

import org.jspecify.annotations.NullMarked;
