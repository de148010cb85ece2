package org.hemwright.geometry;

/**
 * A point that two paths, or two stretches of one path, have in common.
 *
 * @param point where they meet
 * @param distanceOnThis the length walked on the path that was asked (mm); at the start of a closed
 *     path 0, never its length
 * @param distanceOnOther the length walked on the other path (mm); for a path that meets itself,
 *     the later of the two lengths
 */
public record Meeting(Point point, double distanceOnThis, double distanceOnOther) {}
