/** Long drafts, made to be compiled. */
@NullMarked
package org.gusset.benchmarks.text;

import org.jspecify.annotations.NullMarked;
