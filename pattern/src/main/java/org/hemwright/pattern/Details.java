package org.hemwright.pattern;

import java.time.LocalDate;
import java.util.Optional;
import org.hemwright.pattern.body.Wearers;
import org.hemwright.pattern.quantity.LengthFormat;

/**
 * Who made the pattern and how its papers speak.
 *
 * @param title "Sandling skirt"
 * @param version "1.0", as the designer writes it
 * @param dated the date of this version, from the document; never the day it is printed
 * @param by the pattern house
 * @param units which unit stands first on paper
 * @param spelling American or British words for the maker
 * @param wearers whom the size chart is for, where the document says so
 * @param brand what of the house its papers show
 */
public record Details(
    String title,
    String version,
    LocalDate dated,
    String by,
    Units units,
    Spelling spelling,
    Optional<Wearers> wearers,
    Brand brand) {
  /** Details that do not say whom the chart is for. */
  public Details(
      String title, String version, LocalDate dated, String by, Units units, Spelling spelling) {
    this(title, version, dated, by, units, spelling, Optional.empty(), Brand.NONE);
  }

  /** Which unit stands first where both are shown. */
  public enum Units {
    CENTIMETRES,
    INCHES
  }

  /** Whose words the maker reads: fabric and yardage, or cloth and metrage. */
  public enum Spelling {
    AMERICAN,
    BRITISH
  }

  /** How the designer reads lengths: inches first and metric beside them, or metric alone. */
  public LengthFormat lengths() {
    return LengthFormat.of(
        units == Units.INCHES
            ? LengthFormat.Edition.INCHES_FIRST
            : LengthFormat.Edition.METRIC_ONLY);
  }

  /** The same, called another version of another day. */
  public Details versioned(String otherVersion, LocalDate otherDay) {
    return new Details(title, otherVersion, otherDay, by, units, spelling, wearers, brand);
  }
}
