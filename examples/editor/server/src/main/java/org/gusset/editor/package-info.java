/** The language server: what an editor asks about a draft. */
@NullMarked
package org.gusset.editor;

import org.jspecify.annotations.NullMarked;
