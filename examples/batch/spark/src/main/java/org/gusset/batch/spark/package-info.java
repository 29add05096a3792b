/** The batch on Apache Spark: the same rows in, the same results out, on as many machines as there are. */
@NullMarked
package org.gusset.batch.spark;

import org.jspecify.annotations.NullMarked;
