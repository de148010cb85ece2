package org.hemwright.pattern.body;

/**
 * How one measurement of a body compares with another of the same body, over a survey: their ratio,
 * spread about its middle by logarithms.
 *
 * @param logMean the mean logarithm of the ratio
 * @param logDeviation its standard deviation, more than 0
 */
public record Proportion(double logMean, double logDeviation) {
  public Proportion {
    if (!(logDeviation > 0)) {
      throw new IllegalArgumentException("a proportion varies from body to body");
    }
  }

  /** The ratio so many deviations above the middle. */
  public double at(double deviations) {
    return StrictMath.exp(logMean + deviations * logDeviation);
  }

  /** How many deviations a ratio (more than 0) lies above the middle; less than 0 below. */
  public double deviations(double ratio) {
    return (StrictMath.log(ratio) - logMean) / logDeviation;
  }
}
