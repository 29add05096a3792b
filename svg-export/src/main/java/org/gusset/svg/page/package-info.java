/** Sheets on real paper: pieces kept whole or tiled over pages at true scale, joins, test squares, a map of the pages. */
@NullMarked
package org.gusset.svg.page;

import org.jspecify.annotations.NullMarked;
