/**
 * Pieces as DXF, in the form that sewn-product standards describe (ASTM D6673, ANSI/AAMA-292; see
 * the handbook, section 9): a block for each piece, lines by layer, and steps between sizes in a
 * rule table of their own.
 *
 * <p>The standards' own tables could not be read; layers and keys are those that second-hand
 * descriptions agree on, and no conformance is claimed. Curves are written as points, no farther
 * than {@link org.hemwright.exchange.dxf.DxfWriter#CURVE_TOLERANCE} from the curve; every point
 * comes back within 0.01 mm. Seams, steps and cloth have no place in such a file.
 *
 * <p>Reading refuses files that are too large and lists what it cannot read. Open {@link
 * org.hemwright.exchange.dxf.DxfWriter} first.
 */
@NullMarked
package org.hemwright.exchange.dxf;

import org.jspecify.annotations.NullMarked;
