/**
 * Lessons as one page of HTML: it works from disk with nothing fetched, and, served on the loopback address, with measures that can
 * be changed. It knows drawings and frames, and neither files nor the command line.
 */
@NullMarked
package org.gusset.workbench.lesson;

import org.jspecify.annotations.NullMarked;
