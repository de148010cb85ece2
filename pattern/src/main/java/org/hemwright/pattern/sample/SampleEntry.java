package org.hemwright.pattern.sample;

import java.time.LocalDate;
import java.util.OptionalDouble;
import org.hemwright.pattern.finding.Origin;

/**
 * One line of the sample log: what a fitting showed at one place.
 *
 * @param date of the fitting
 * @param size that was sewn
 * @param fabric it was sewn in; blank where unsaid
 * @param where the place, as {@code measure} names it: {@code panel.side}, {@code hip}
 * @param asked how much longer or wider it should be (mm): let out more than 0, pinned out less
 *     than 0, 0 where it sat well
 * @param drafted how long the place was drafted when the sample was cut (mm); nothing where unsaid
 * @param note in the designer's words; blank where there is none
 * @param origin where the line stands
 * @param sizeAt where its size stands
 * @param whereAt where its place stands
 */
public record SampleEntry(
    LocalDate date,
    String size,
    String fabric,
    String where,
    double asked,
    OptionalDouble drafted,
    String note,
    Origin origin,
    Origin sizeAt,
    Origin whereAt) {
  public SampleEntry {
    if (size.isBlank() || where.isBlank() || !Double.isFinite(asked)) {
      throw new IllegalArgumentException("an entry says its size and its place");
    }
  }
}
