/** Search for bodies that break a draft: the ranges that it takes are tried at their ends, in between, and toward failure. */
@NullMarked
package org.gusset.core.stress;

import org.jspecify.annotations.NullMarked;
