/** The one door to JTS for hosts: fresh polygons and line strings at a stated tolerance. */
@NullMarked
package org.gusset.core.jts;

import org.jspecify.annotations.NullMarked;
