/** Reads charts and drawings, writes exchange files. */
@NullMarked
package org.hemwright.exchange;

import org.jspecify.annotations.NullMarked;
