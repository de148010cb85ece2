/**
 * Two versions of a pattern side by side: what changed, which printed pages to print again, and
 * pictures of the old lines against the new. Two size runs in, values out; no file is touched.
 *
 * <p>Open {@link org.hemwright.workbench.compare.Compared}.
 */
@NullMarked
package org.hemwright.workbench.compare;

import org.jspecify.annotations.NullMarked;
