/** The graph with a body's measures put in. */
@NullMarked
package org.gusset.core.evaluate;

import org.jspecify.annotations.NullMarked;
