package org.hemwright.paper.sheet;

import java.time.LocalDate;
import java.util.List;

/**
 * What a written file says of itself, all of it given from outside, so that the same sheets make
 * the same bytes on any day.
 *
 * @param title of the file: "Sandling skirt 1.0, sizes 8 to 20"
 * @param author the pattern house
 * @param about one sentence, for search
 * @param language a BCP 47 tag such as {@code en-GB}
 * @param dated the date of the pattern's version
 * @param sizes the names of the sizes that have a layer, in order
 */
public record DocumentFacts(
    String title,
    String author,
    String about,
    String language,
    LocalDate dated,
    List<String> sizes) {
  public DocumentFacts {
    sizes = List.copyOf(sizes);
  }
}
