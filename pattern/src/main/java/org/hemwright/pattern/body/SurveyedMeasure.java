package org.hemwright.pattern.body;

/**
 * One body measurement as a survey found it, of one sex (mm).
 *
 * @param name as a chart would name it: {@code hip}
 * @param column the survey's own name of it
 * @param likeness how the survey's way of measuring compares with a pattern's
 * @param mean over all who were measured (mm)
 * @param deviation the sample's standard deviation (mm)
 * @param logMean the mean of the natural logarithms of millimetres
 * @param logDeviation their standard deviation; girths spread evenly by share, not by millimetre
 */
public record SurveyedMeasure(
    String name,
    String column,
    Likeness likeness,
    double mean,
    double deviation,
    double logMean,
    double logDeviation) {
  /** How a survey's measuring compares with a pattern's. */
  public enum Likeness {
    /** The same measurement. */
    ALIKE,
    /**
     * The survey's comes out larger: a waist round the navel, an upper arm with the muscle bent. It
     * bounds the pattern's from above and cannot stand for it.
     */
    LARGER
  }

  public SurveyedMeasure {
    if (!(mean > 0) || !(deviation > 0) || !(logDeviation > 0)) {
      throw new IllegalArgumentException("a surveyed measurement varies about a length: " + name);
    }
  }

  /** How many deviations a length (mm, more than 0) lies above the middle, by logarithms. */
  public double deviations(double mm) {
    return (StrictMath.log(mm) - logMean) / logDeviation;
  }

  /** The length so many deviations above the middle (mm). */
  public double at(double deviations) {
    return StrictMath.exp(logMean + deviations * logDeviation);
  }
}
