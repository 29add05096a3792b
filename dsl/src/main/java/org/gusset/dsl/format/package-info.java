/** Drafts laid out afresh. */
@NullMarked
package org.gusset.dsl.format;

import org.jspecify.annotations.NullMarked;
