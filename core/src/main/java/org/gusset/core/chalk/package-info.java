/** Chalk lists: pieces as marks at rounded distances from a fold, for those who draft straight on cloth. All lengths in mm. */
@NullMarked
package org.gusset.core.chalk;

import org.jspecify.annotations.NullMarked;
