/** Lengths, angles, units, tape fractions, body measures, measurement sets and size charts. */
@NullMarked
package org.gusset.core.measure;

import org.jspecify.annotations.NullMarked;
