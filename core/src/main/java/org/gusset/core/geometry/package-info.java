/** Points and analytic paths: lines, circular arcs and cubic curves, with arc length, meeting, splitting and parallels. */
@NullMarked
package org.gusset.core.geometry;

import org.jspecify.annotations.NullMarked;
