/** The documentation as static HTML: Markdown in, pages with a search out. Reads the folders of the project, fetches nothing. */
@NullMarked
package org.gusset.site;

import org.jspecify.annotations.NullMarked;
