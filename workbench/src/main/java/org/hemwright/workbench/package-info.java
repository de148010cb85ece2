/** The flow in one readable class. */
@NullMarked
package org.hemwright.workbench;

import org.jspecify.annotations.NullMarked;
