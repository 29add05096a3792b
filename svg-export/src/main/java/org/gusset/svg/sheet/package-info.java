/** Lays out the sheet of one piece and the sheet of all pieces as scenes. */
@NullMarked
package org.gusset.svg.sheet;

import org.jspecify.annotations.NullMarked;
