/** Which size of a chart fits a body, measure by measure, and what is left to alter. */
@NullMarked
package org.gusset.core.sizing;

import org.jspecify.annotations.NullMarked;
