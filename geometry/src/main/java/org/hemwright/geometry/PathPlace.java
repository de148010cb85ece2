package org.hemwright.geometry;

/**
 * A place on a path.
 *
 * @param distance the length walked from the start of the path (mm)
 * @param point where that is
 * @param tangent the unit vector along the path; at a corner, that of the curve which starts there
 * @param curvature 1/mm, positive where the path bends to the left; infinite at a cusp
 */
public record PathPlace(double distance, Point point, Vector tangent, double curvature) {
  /** The unit vector square to the path, to its left. */
  public Vector left() {
    return tangent.left();
  }
}
