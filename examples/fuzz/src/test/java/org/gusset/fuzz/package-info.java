/** Hostile input of every kind, and what must hold whatever comes in. */
@NullMarked
package org.gusset.fuzz;

import org.jspecify.annotations.NullMarked;
