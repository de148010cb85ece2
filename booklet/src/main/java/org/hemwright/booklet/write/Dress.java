package org.hemwright.booklet.write;

import java.util.List;
import java.util.Optional;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Picture;
import org.hemwright.paper.type.HouseType;

/**
 * What of the house a page for a screen shows.
 *
 * @param house its name
 * @param logo above the title, if it has one
 * @param footer its own line at the foot
 * @param type its fonts
 * @param proof the word that marks the page, if anything does
 */
public record Dress(
    String house,
    Optional<Picture> logo,
    List<Inline> footer,
    HouseType type,
    Optional<String> proof) {
  public Dress {
    footer = List.copyOf(footer);
  }
}
