/** Checked tree to the graph of core. */
@NullMarked
package org.gusset.dsl.internal.lower;

import org.jspecify.annotations.NullMarked;
