/** What must hold between pieces: seams, ranges, conditions. */
@NullMarked
package org.gusset.core.check;

import org.jspecify.annotations.NullMarked;
