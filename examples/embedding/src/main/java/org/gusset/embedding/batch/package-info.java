/** A chart of sizes, drawn in one go. */
@NullMarked
package org.gusset.embedding.batch;

import org.jspecify.annotations.NullMarked;
