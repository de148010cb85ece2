package org.hemwright.pattern.seam;

import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.pattern.finding.Origin;

/**
 * A length of elastic in one size (handbook section 4): the finished loop and the cut length are
 * two numbers.
 *
 * @param name {@code waist_elastic}
 * @param piece the piece whose casing holds it
 * @param width of the elastic (mm)
 * @param finished the loop once joined (mm)
 * @param overlap how far its ends overlap (mm)
 * @param edge the edge of the piece whose turned-back casing, or folded band, holds it; nothing
 *     where the document names the piece only
 * @param round the measurement of the chart that it holds, {@code waist}; nothing where unsaid
 * @param over the measurement that it must pass, {@code hip}; nothing where unsaid
 * @param stretch how far the elastic can be counted on to stretch, 1 for twice its length
 * @param origin where the document states it
 */
public record Elastic(
    String name,
    String piece,
    double width,
    double finished,
    double overlap,
    Optional<String> edge,
    Optional<String> round,
    Optional<String> over,
    OptionalDouble stretch,
    Origin origin) {
  /** An elastic of which nothing more is said. */
  public Elastic(
      String name, String piece, double width, double finished, double overlap, Origin origin) {
    this(
        name,
        piece,
        width,
        finished,
        overlap,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        origin);
  }

  public Elastic {
    if (!(width > 0) || !(finished > 0) || !(overlap >= 0)) {
      throw new IllegalArgumentException("an elastic has a width and a length: " + name);
    }
  }

  /** What the maker cuts (mm): the loop and its overlap. */
  public double cut() {
    return finished + overlap;
  }
}
