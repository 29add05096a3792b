/** The formulas of a draft in general-purpose interpreters of expressions. */
@NullMarked
package org.gusset.benchmarks.formula;

import org.jspecify.annotations.NullMarked;
