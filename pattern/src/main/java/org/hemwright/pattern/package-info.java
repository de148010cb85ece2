/** The domain: sizes, pieces, seams, fabrics, findings. */
@NullMarked
package org.hemwright.pattern;

import org.jspecify.annotations.NullMarked;
