package org.hemwright.pattern.traced;

/** How an outline changes from size to size. */
public interface OutlineGrading {
  /** The outline in the size at a position of the chart. */
  GradedOutline in(int position);
}
