package org.hemwright.geometry;

/** Counts steps of a search, so that hostile shapes end it with a reason and never hang it. */
final class Work {
  private long left;

  Work(long most) {
    left = most;
  }

  /** Takes one step. */
  void step() {
    if (--left < 0) {
      throw new GeometryProblem(
          "the curves lie so close along one another that no one can say where they meet");
    }
  }
}
