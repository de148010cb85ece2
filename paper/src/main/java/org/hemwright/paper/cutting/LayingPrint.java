package org.hemwright.paper.cutting;

/** For which print of a booklet a layout is drawn: its words as large as those about it. */
public enum LayingPrint {
  /** Words of 9 pt and more (handbook section 6). */
  USUAL(160, 1),
  /** Words of 16 pt and more, as those of the tables in large print. */
  LARGE(87, 16.0 / 9);

  private final double width;
  private final double enlarged;

  LayingPrint(double width, double enlarged) {
    this.width = width;
    this.enlarged = enlarged;
  }

  /** How wide it is drawn (mm). */
  double width() {
    return width;
  }

  /** How many times as large as it is drawn it is to be printed. */
  public double enlarged() {
    return enlarged;
  }
}
