package org.hemwright.booklet;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hemwright.booklet.leaf.Picture;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.paper.PrintedFile;
import org.hemwright.paper.type.HouseType;
import org.hemwright.pattern.SizeRun;

/**
 * What a booklet is made from.
 *
 * @param run the pattern in the sizes that the booklet is for
 * @param yardage what cloth it takes; absent where it was not laid
 * @param prose her texts by file name: {@code booklet.md}, and for another language {@code
 *     booklet.de.md}
 * @param pictures hers, by name without folder and ending
 * @param printed the printed files; none where they were not made
 * @param type the fonts of the house
 */
public record BookletInput(
    SizeRun run,
    Optional<YardageTable> yardage,
    SortedMap<String, String> prose,
    SortedMap<String, Picture> pictures,
    List<PrintedFile> printed,
    HouseType type) {
  /** The name of the designer's text. */
  public static final String PROSE = "booklet.md";

  /** The name of her text in another language: {@code booklet.de.md}. */
  public static String prose(String language) {
    return "booklet." + language + ".md";
  }

  public BookletInput {
    prose = Collections.unmodifiableSortedMap(new TreeMap<>(prose));
    pictures = Collections.unmodifiableSortedMap(new TreeMap<>(pictures));
    printed = List.copyOf(printed);
  }
}
