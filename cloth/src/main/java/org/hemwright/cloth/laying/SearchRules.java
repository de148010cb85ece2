package org.hemwright.cloth.laying;

/**
 * The numbers that steer the search by overlap. They were found by trial on published instances;
 * the layouts depend on them, their being right does not.
 *
 * @param wideDraws places drawn over the whole strip for one copy
 * @param closeDraws places drawn near the copy's present place
 * @param kept how many of the places drawn are improved by steps
 * @param steps how many steps down the slope each of them takes at most
 * @param wholeSteps so many of these go as far as the slope promises that nothing overlaps
 * @param shorten by what each step after those is multiplied, once more than the one before
 * @param firstStep first step of a copy that is held to bars, as a share of its lesser side
 * @param middleStep last step for all kept places, first for the best one
 * @param lastStep last step for the best one
 * @param grow by what a step that helped is multiplied
 * @param halve by what a step that did not help is multiplied
 * @param lightest by what a slight overlap's weight is multiplied after each sweep
 * @param heaviest by what the deepest overlap's weight is multiplied
 * @param forget by what the weight of a pair that does not overlap is multiplied, down to 1
 * @param patience sweeps without a gain before an attempt strikes, in exploration
 * @param strikes strikes in a row before an attempt is given up, in exploration
 * @param shortPatience the same patience, in compression
 * @param shortStrikes the same strikes, in compression
 * @param shrink how much shorter the strip becomes after each layout in exploration, as a share
 * @param firstSqueeze how much shorter at the start of compression
 * @param lastSqueeze how much shorter at its end
 * @param explored the share of the work that exploration takes
 */
record SearchRules(
    int wideDraws,
    int closeDraws,
    int kept,
    int steps,
    int wholeSteps,
    double shorten,
    double firstStep,
    double middleStep,
    double lastStep,
    double grow,
    double halve,
    double lightest,
    double heaviest,
    double forget,
    int patience,
    int strikes,
    int shortPatience,
    int shortStrikes,
    double shrink,
    double firstSqueeze,
    double lastSqueeze,
    double explored) {

  /** What {@link Laying} uses. */
  static final SearchRules STANDARD =
      new SearchRules(
          10, 10, 2, 6, 4, 0.6, 0.25, 0.02, 0.004, 1.1, 0.5, 1.2, 2.0, 0.95, 100, 1, 100, 1, 0.001,
          0.0005, 0.00001, 0.8);
}
