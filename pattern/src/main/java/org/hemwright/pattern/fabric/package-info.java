/** Cloth as the designer names it: kind, widths, stretch, nap. Open Fabric first. */
@NullMarked
package org.hemwright.pattern.fabric;

import org.jspecify.annotations.NullMarked;
