/** The facade: a drawing's pieces and sheets as SVG. */
@NullMarked
package org.gusset.svg;

import org.jspecify.annotations.NullMarked;
