/**
 * Figures drawn from the geometry: pieces laid together as they will be sewn, close-ups of what is
 * done at an edge, the stretch gauge.
 *
 * <p>A figure is a pure function of run, step and drawn size. Millimetres: {@code Scene} holds
 * pieces in true size, moved by rigid motions only, and draws them smaller with pens of the size
 * they have on paper. The right side of cloth is white, the wrong side a darker tint with a hatch.
 * Open {@link org.hemwright.booklet.figure.StepFigures} first.
 */
@NullMarked
package org.hemwright.booklet.figure;

import org.jspecify.annotations.NullMarked;
