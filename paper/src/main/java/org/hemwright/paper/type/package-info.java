/**
 * Words set in type: faces of one open family, kerned, with tabular figures and set fractions.
 *
 * <p>Sizes are points (1/72 in), positions and widths millimetres. Every writer places the same
 * glyphs at the same places, since the setting is done here, once. Only horizontal writing from
 * left to right is known; a character that the family lacks is set as a question mark and can be
 * asked for. Open {@link org.hemwright.paper.type.Face} first.
 */
@NullMarked
package org.hemwright.paper.type;

import org.jspecify.annotations.NullMarked;
