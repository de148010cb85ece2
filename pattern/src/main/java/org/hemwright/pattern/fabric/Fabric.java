package org.hemwright.pattern.fabric;

import java.util.List;
import java.util.OptionalDouble;
import org.hemwright.pattern.finding.Origin;

/**
 * A cloth that the designer names, as the maker must find it in a shop.
 *
 * @param name in the document: {@code main}, {@code lining}
 * @param title for the maker: "Cotton jersey"; the name when she gave none
 * @param kind knit or woven
 * @param widths the widths it is sold in (mm), as labelled, rising
 * @param stretchAcross the least stretch it needs across (selvedge to selvedge), 0.35 for 35 %
 * @param stretchAlong the least stretch it needs along the grain
 * @param nap whether every piece must point the same way
 * @param origin where the document names it
 */
public record Fabric(
    String name,
    String title,
    Kind kind,
    List<Double> widths,
    OptionalDouble stretchAcross,
    OptionalDouble stretchAlong,
    Nap nap,
    Origin origin) {
  public Fabric {
    widths = List.copyOf(widths);
    if (name.isBlank()) {
      throw new IllegalArgumentException("a fabric has a name");
    }
  }

  /** How cloth is made, as far as a pattern cares. */
  public enum Kind {
    KNIT,
    WOVEN
  }

  /** Whether pieces may be turned end for end on the cloth (handbook section 5). */
  public enum Nap {
    /** Pieces may be turned by half a turn. */
    EITHER_WAY,
    /** Pile, sheen, one-way print, and all knits: every piece points the same way. */
    ONE_WAY
  }
}
