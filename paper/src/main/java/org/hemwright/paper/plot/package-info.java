/**
 * Figures of numbers, drawn as sheets like everything else: a seam's difference over the sizes, and
 * the bodies that a size chart serves. Millimetres on the sheet; words of 9 points and more. They
 * judge nothing: limits come from whoever asks. Open {@link org.hemwright.paper.plot.SeamPlot}.
 */
@NullMarked
package org.hemwright.paper.plot;

import org.jspecify.annotations.NullMarked;
