package org.hemwright.pattern.seam;

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
 * @param origin where the document states it
 */
public record Elastic(
    String name, String piece, double width, double finished, double overlap, Origin origin) {
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
