/**
 * A pattern for one body, or for a blend of sizes: the body takes the place of a size in the chart,
 * everything is evaluated as ever, and what comes out bears the body's name.
 *
 * <p>Lengths in millimetres. What the document steps or chooses by size is as in the size whose
 * place the body takes. A measurement that the body lacks is never filled in unasked.
 *
 * <p>Open {@link org.hemwright.workbench.tailor.Tailored} first.
 */
@NullMarked
package org.hemwright.workbench.tailor;

import org.jspecify.annotations.NullMarked;
