/** The syntax tree as records, with a span for every node. */
@NullMarked
package org.gusset.dsl.syntax;

import org.jspecify.annotations.NullMarked;
