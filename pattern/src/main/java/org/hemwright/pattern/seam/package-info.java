/** What is sewn to what: layers of edge places. Open Seam first. */
@NullMarked
package org.hemwright.pattern.seam;

import org.jspecify.annotations.NullMarked;
