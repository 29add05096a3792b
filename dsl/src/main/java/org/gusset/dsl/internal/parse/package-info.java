/** Text to syntax tree; the only place that knows ANTLR. */
@NullMarked
package org.gusset.dsl.internal.parse;

import org.jspecify.annotations.NullMarked;
