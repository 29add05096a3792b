/**
 * How the pieces of a drawing are laid on cloth: what is cut of which cloth, how the cloth is folded, which piece lies where, how much
 * cloth that takes. All lengths in mm; x runs along the cloth, y across it, from its fold where it is folded.
 */
@NullMarked
package org.gusset.core.cloth;

import org.jspecify.annotations.NullMarked;
