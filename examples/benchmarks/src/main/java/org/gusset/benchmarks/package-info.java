/** Speed of the library as ratios to baselines that are measured in the same run. */
@NullMarked
package org.gusset.benchmarks;

import org.jspecify.annotations.NullMarked;
