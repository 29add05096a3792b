/** The classic sets of pieces for strip packing: how dense the library packs them, and that no plan is ever unsound. */
@NullMarked
package org.gusset.benchmarks.nesting;

import org.jspecify.annotations.NullMarked;
