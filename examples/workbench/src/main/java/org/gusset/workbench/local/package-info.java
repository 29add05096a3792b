/** Serving pages to the browsers of this machine, and to nobody else. */
@NullMarked
package org.gusset.workbench.local;

import org.jspecify.annotations.NullMarked;
