/** A draft written by hand in plain Java, without graph and language. */
@NullMarked
package org.gusset.benchmarks.plain;

import org.jspecify.annotations.NullMarked;
