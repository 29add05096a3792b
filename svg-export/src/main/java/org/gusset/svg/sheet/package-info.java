/** Lays out the sheet of one piece, the sheet of all pieces, the seams, and pages of words to print, as scenes. */
@NullMarked
package org.gusset.svg.sheet;

import org.jspecify.annotations.NullMarked;
