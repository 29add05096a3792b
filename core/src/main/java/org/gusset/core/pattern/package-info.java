/** Pieces: outlines, allowances, corners, notches, grain and cut counts. */
@NullMarked
package org.gusset.core.pattern;

import org.jspecify.annotations.NullMarked;
