/**
 * Answers for other programs, as JSON: the shapes that scripts rely on. Fields may be added, never
 * changed. Lengths in millimetres, rounded to a millionth; areas in square millimetres.
 *
 * <p>Open {@link org.hemwright.workbench.report.CheckReport} first.
 */
@NullMarked
package org.hemwright.workbench.report;

import org.jspecify.annotations.NullMarked;
