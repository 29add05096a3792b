/** What every stage has to say: one kind of message with a code, a place, related places and hints. */
@NullMarked
package org.gusset.core.diagnostic;

import org.jspecify.annotations.NullMarked;
