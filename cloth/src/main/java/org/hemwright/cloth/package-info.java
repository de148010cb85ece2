/** Laying pieces on cloth and what to buy. */
@NullMarked
package org.hemwright.cloth;

import org.jspecify.annotations.NullMarked;
