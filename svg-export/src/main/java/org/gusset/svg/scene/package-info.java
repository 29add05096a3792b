/** Format-neutral marks with semantic roles and stable ids; no colours, no weights. All lengths in mm, y counts down. */
@NullMarked
package org.gusset.svg.scene;

import org.jspecify.annotations.NullMarked;
