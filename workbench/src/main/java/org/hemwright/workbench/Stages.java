package org.hemwright.workbench;

/**
 * Several works that follow one another, as one: what is behind is told in thousandths of the
 * whole, so that a bar can say how much time is left.
 *
 * @param whole is told
 */
record Stages(Progress whole) {
  private static final int ALL = 1000;

  /**
   * The progress of one of the works.
   *
   * @param name what it does, for words where it says none itself
   * @param from the share of the whole that is behind when it starts, 0 to 1
   * @param to the share that is behind when it ends
   */
  Progress stage(String name, double from, double to) {
    return (doing, done, of) -> {
      double share = of <= 0 ? 0 : Math.min(1, (double) done / of);
      int behind = (int) Math.round(ALL * (from + (to - from) * share));
      whole.step(doing.isEmpty() ? name : doing, behind, ALL);
    };
  }
}
