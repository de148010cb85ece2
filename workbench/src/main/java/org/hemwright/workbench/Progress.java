package org.hemwright.workbench;

/** Is told how far the work has come, for whoever waits for it. */
public interface Progress {
  /** Tells nobody. */
  Progress SILENT = (doing, done, of) -> {};

  /**
   * A step begins.
   *
   * @param doing what is being done now: "drawing size 14"
   * @param done how many steps are behind
   * @param of how many there are
   */
  void step(String doing, int done, int of);
}
