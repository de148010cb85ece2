package org.hemwright.paper.style;

import java.util.Optional;
import org.hemwright.paper.sheet.Raster;
import org.hemwright.paper.type.HouseType;

/**
 * What of the pattern house a printed page shows.
 *
 * @param logo for the first page and the key, if it has one
 * @param type its fonts, for titles, the house's own lines and the foot of each page
 */
public record House(Optional<Raster> logo, HouseType type) {
  /** A house that shows nothing but its name. */
  public static final House PLAIN = new House(Optional.empty(), HouseType.OURS);
}
