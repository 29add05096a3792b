/** Diagnostics as text for people and as JSON for programs. */
@NullMarked
package org.gusset.dsl.report;

import org.jspecify.annotations.NullMarked;
