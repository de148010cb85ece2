/** Sheets, nests, pages and their PDF, SVG and PNG writers. */
@NullMarked
package org.hemwright.paper;

import org.jspecify.annotations.NullMarked;
