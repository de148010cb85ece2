package org.hemwright.checks;

/**
 * What is held against clothes for children. The rules bind those who sell garments, differ from
 * place to place and change; a pattern is designed to them and says so (handbook section 7, "Safety
 * texts").
 *
 * @param cordAtNeck the oldest with whom no cord belongs at hood or neck, in one rule (years)
 * @param cordAtNeckTall the same by height (mm)
 * @param youngest the oldest with whom no cord belongs at hood or neck, in the other rule (years)
 * @param youngestTall the same by height (mm)
 * @param freeAtNeck the oldest with whom a cord at hood or neck has no free ends (years)
 * @param freeAtNeckTall the same by height (mm)
 * @param cordAtWaist the oldest with whom a cord at waist or hem is held short (years)
 * @param cordAtWaistTall the same by height (mm)
 * @param shortEnds how far such a cord may hang out in one rule (mm)
 * @param longEnds how far in the other (mm)
 * @param mouths the oldest with whom small parts are kept from the mouth (years)
 * @param mouthsTall the same by height (mm)
 * @param infant the oldest infant whose sleepwear is set apart (years)
 * @param infantTall the same by height (mm)
 * @param sleeper the oldest whose sleepwear fits closely or resists flame (years)
 * @param sleeperTall the same by height (mm)
 * @param onePiece how long an infant's garment of one piece may be (mm)
 * @param eachOfTwo how long each of two pieces may be (mm)
 */
public record ChildLimits(
    double cordAtNeck,
    double cordAtNeckTall,
    double youngest,
    double youngestTall,
    double freeAtNeck,
    double freeAtNeckTall,
    double cordAtWaist,
    double cordAtWaistTall,
    double shortEnds,
    double longEnds,
    double mouths,
    double mouthsTall,
    double infant,
    double infantTall,
    double sleeper,
    double sleeperTall,
    double onePiece,
    double eachOfTwo) {
  /**
   * Handbook section 7: sizes 2T to 12 without a cord at hood and neck, 2T to 16 with 3 in at the
   * waist; under 7 years or up to 134 cm none at hood and neck, 7 to 14 years no free ends, 14 cm
   * at the waist; sleepwear above 9 months up to size 14, an infant's of 64.8 cm or twice 40 cm set
   * apart. Small parts up to 3 years, and the heights that go with ages but for 134 cm, are from
   * memory.
   */
  public static final ChildLimits HANDBOOK =
      new ChildLimits(
          12, 1520, 6.99, 1340, 14, 1640, 16, 1760, 76.2, 140, 3, 980, 0.75, 740, 14, 1640, 648,
          400);
}
