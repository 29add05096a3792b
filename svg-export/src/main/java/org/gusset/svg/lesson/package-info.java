/** Drawings as lessons: one scene for each step, and a handout. */
@NullMarked
package org.gusset.svg.lesson;

import org.jspecify.annotations.NullMarked;
