/** Drafts written in Java, without the language: names, sums, shapes, pieces and seams that become the nodes of a graph. */
@NullMarked
package org.gusset.core.build;

import org.jspecify.annotations.NullMarked;
