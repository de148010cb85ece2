package org.hemwright.booklet.part;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Picture;
import org.hemwright.booklet.prose.Prose;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.paper.PrintedFile;
import org.hemwright.paper.type.HouseType;

/**
 * What every part is made from.
 *
 * @param telling the run and the words
 * @param yardage what cloth is needed; absent where it was not laid
 * @param prose the designer's own words
 * @param pictures hers, by name without folder and ending: {@code waist_seam}
 * @param printed the printed files, where they were made; none otherwise
 * @param type the fonts of the house
 * @param drawings the steps' drawings so far
 */
public record Given(
    Telling telling,
    Optional<YardageTable> yardage,
    Prose prose,
    Map<String, Picture> pictures,
    List<PrintedFile> printed,
    HouseType type,
    StepDrawings drawings) {
  public Given {
    pictures = Collections.unmodifiableMap(new LinkedHashMap<>(pictures));
    printed = List.copyOf(printed);
  }

  List<Inline> say(String key) {
    return telling.say(key);
  }

  List<Inline> say(String key, Slots slots) {
    return telling.say(key, slots);
  }

  /** The designer's picture of that name. */
  Optional<Picture> picture(String name) {
    return Optional.ofNullable(pictures.get(name));
  }
}
