/** How each role is drawn: pens for lines, lettering for text, in one table that a host can replace. */
@NullMarked
package org.gusset.svg.style;

import org.jspecify.annotations.NullMarked;
