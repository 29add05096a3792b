/** What the geometry does with curves, done with general-purpose libraries. */
@NullMarked
package org.gusset.benchmarks.curve;

import org.jspecify.annotations.NullMarked;
