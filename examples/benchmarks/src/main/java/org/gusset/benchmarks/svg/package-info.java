/** A sheet's marks, drawn by other means. */
@NullMarked
package org.gusset.benchmarks.svg;

import org.jspecify.annotations.NullMarked;
