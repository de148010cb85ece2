/**
 * How much cloth to buy: a laying for every view, cloth, size, width and fold, and what it comes to
 * in the shop.
 *
 * <p>Lengths are millimetres; buying lengths are tenths of a metre and eighths of a yard, each
 * rounded up from the exact length (handbook section 5). The table is the same on one core or two
 * and on every machine, since work is counted in places looked at. Along the widths, and from nap
 * to no nap, need never rises; a view with fewer pieces never needs more. Layings that are known
 * from before are taken by their content, and change nothing but the time.
 *
 * <p>Open {@link org.hemwright.cloth.yardage.YardageTable} first.
 */
@NullMarked
package org.hemwright.cloth.yardage;

import org.jspecify.annotations.NullMarked;
