/** A draft written in Java, without the language. */
@NullMarked
package org.gusset.embedding.plain;

import org.jspecify.annotations.NullMarked;
