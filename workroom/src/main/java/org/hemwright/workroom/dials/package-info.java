/**
 * The dials as sliders, and the garment's measurements that answer while one is turned.
 *
 * <p>A turn is shown before it is written; letting go writes the dial's own number, rounded as she
 * writes it. Millimetres, radians or plain inside. Open {@link
 * org.hemwright.workroom.dials.DialView} first.
 */
@NullMarked
package org.hemwright.workroom.dials;

import org.jspecify.annotations.NullMarked;
