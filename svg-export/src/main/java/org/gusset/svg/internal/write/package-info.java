/** Writes scenes as SVG text: the XML, and the one formatter of numbers. */
@NullMarked
package org.gusset.svg.internal.write;

import org.jspecify.annotations.NullMarked;
