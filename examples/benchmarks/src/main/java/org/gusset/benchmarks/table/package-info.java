/** The table of ratios: what is held against what, how it is run and how it is shown. */
@NullMarked
package org.gusset.benchmarks.table;

import org.jspecify.annotations.NullMarked;
