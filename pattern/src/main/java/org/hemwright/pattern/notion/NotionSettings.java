package org.hemwright.pattern.notion;

import java.util.List;

/**
 * What the handbook leaves to practice when thread and notions are counted.
 *
 * @param leastWaste share added to the least, 0.10 for 10 %
 * @param mostWaste share added to the most
 * @param tail thread left at each end of a line of stitching, all threads together (mm)
 * @param clothThickness of one layer of cloth (mm)
 * @param spool the length of thread on one spool (mm)
 * @param cone the length of thread on one cone for an overlocker (mm)
 * @param button thread to sew one button on (mm)
 * @param zips the lengths in which zips are sold (mm), rising, for steps that name none
 */
public record NotionSettings(
    double leastWaste,
    double mostWaste,
    double tail,
    double clothThickness,
    double spool,
    double cone,
    double button,
    List<Double> zips) {
  /**
   * Handbook section 7: waste of 10 to 15 %, spools of 100 m the smallest. Cloth of 0.5 mm, tails
   * of 20 cm, cones of 1000 m, half a metre for a button and the lengths of zips are common
   * practice, no source.
   */
  public static final NotionSettings HANDBOOK =
      new NotionSettings(
          0.10,
          0.15,
          200,
          0.5,
          100_000,
          1_000_000,
          500,
          List.of(
              100.0, 120.0, 150.0, 180.0, 200.0, 220.0, 250.0, 300.0, 350.0, 400.0, 450.0, 500.0,
              550.0, 600.0, 650.0, 700.0));

  public NotionSettings {
    zips = List.copyOf(zips);
    boolean inOrder = leastWaste >= 0 && mostWaste >= leastWaste && tail >= 0 && button >= 0;
    if (!inOrder || !(clothThickness > 0) || !(spool > 0) || !(cone > 0)) {
      throw new IllegalArgumentException("waste runs upward from 0, and spools hold thread");
    }
  }
}
