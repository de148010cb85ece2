/**
 * A whole run as JSON, for keeping and for tools outside: every piece of a pattern in every size,
 * as it was evaluated, so that a version can be asked years later what it was when a maker bought
 * it.
 *
 * <p>The JSON follows the domain's records: a record is an object with its components by name, a
 * choice among several kinds says which under {@code is}, what is absent is left out, a path is a
 * list of curves, each the four numbers of a line or the eight of a cubic. Lengths are millimetres,
 * angles radians. Reading what was written gives an equal run, to the last bit. The form has a
 * number; what a newer form holds is refused and told.
 *
 * <p>Open {@link org.hemwright.exchange.run.SizeRunJson} first.
 */
@NullMarked
package org.hemwright.exchange.run;

import org.jspecify.annotations.NullMarked;
