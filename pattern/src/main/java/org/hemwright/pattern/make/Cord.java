package org.hemwright.pattern.make;

import java.util.Optional;
import org.hemwright.pattern.finding.Origin;

/**
 * A cord or drawstring.
 *
 * @param name {@code waist_cord}
 * @param piece the piece whose casing holds it
 * @param place on the garment
 * @param length of the whole cord (mm)
 * @param freeEnds how far each end hangs out when the garment lies flat at its widest (mm)
 * @param toggles whether its ends bear toggles or knots
 * @param tacked whether it is held by a bar tack, so that it cannot be drawn out
 * @param origin where the document says so
 */
public record Cord(
    String name,
    String piece,
    Place place,
    Amount length,
    Optional<Amount> freeEnds,
    boolean toggles,
    boolean tacked,
    Origin origin) {
  /** Where a cord lies. */
  public enum Place {
    HOOD("hood"),
    NECK("neck"),
    WAIST("waist"),
    BACK("back"),
    HEM("hem"),
    CUFF("cuff");

    private final String word;

    Place(String word) {
      this.word = word;
    }

    /** As the document writes it. */
    public String word() {
      return word;
    }
  }
}
