/** Definitions, operations and typed handles: what depends on what. */
@NullMarked
package org.gusset.core.graph;

import org.jspecify.annotations.NullMarked;
