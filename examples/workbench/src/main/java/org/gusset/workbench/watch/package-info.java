/** A draft beside its picture, drawn again whenever its file or a measure changes. */
@NullMarked
package org.gusset.workbench.watch;

import org.jspecify.annotations.NullMarked;
