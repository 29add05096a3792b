/** The ready-to-run program on top of the library. */
@NullMarked
package org.gusset.workbench;

import org.jspecify.annotations.NullMarked;
