package org.hemwright.geometry;

/** Counts steps of a search, so that hostile shapes end it with a reason and never hang it. */
final class Work {
  private long left;

  Work(long most) {
    left = most;
  }

  /** Takes one step. */
  void step() {
    steps(1);
  }

  /** Takes so many steps at once. */
  void steps(long count) {
    left -= count;
    if (left < 0) {
      throw new GeometryProblem(
          "the curves cross or run along one another too often to say where they meet");
    }
  }
}
