/** What the names of a draft mean: where each is defined, where it is used, and which can be said at a place. */
@NullMarked
package org.gusset.dsl.names;

import org.jspecify.annotations.NullMarked;
