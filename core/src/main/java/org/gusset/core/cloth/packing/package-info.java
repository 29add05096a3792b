/**
 * Pieces of any outline on a strip of given width, as short as can be found: a plan at once, a search that shortens it, and checks that know
 * nothing of how it was found. Knows rings of points and nothing of drafts, pieces or folds. x runs along the strip and is what is saved;
 * y runs across it, from 0 to the width.
 */
@NullMarked
package org.gusset.core.cloth.packing;

import org.jspecify.annotations.NullMarked;
