/** Syntax tree to checked tree: names, kinds and dimensions. */
@NullMarked
package org.gusset.dsl.internal.resolve;

import org.jspecify.annotations.NullMarked;
