/** Drawings, findings, steps and messages as JSON for other programs. */
@NullMarked
package org.gusset.core.json;

import org.jspecify.annotations.NullMarked;
