package org.hemwright.paper.type;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The fonts of a house. What it does not bring is set in our own faces.
 *
 * @param words for running text
 * @param bold for words that stand out
 * @param italic for asides
 * @param titles for titles; the words' font where there is none
 */
public record HouseType(
    Optional<HouseFont> words,
    Optional<HouseFont> bold,
    Optional<HouseFont> italic,
    Optional<HouseFont> titles) {
  /** A house whose papers are set in our faces. */
  public static final HouseType OURS =
      new HouseType(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /** Whether it brings any. */
  public boolean isOurs() {
    return equals(OURS);
  }

  /** The font of titles. */
  public Optional<HouseFont> forTitles() {
    return titles.or(() -> words);
  }

  /** Sets a line of the house's words; in our face where hers lacks a letter of it. */
  public SetLine line(String text, double points) {
    return set(words, Face.REGULAR, text, points);
  }

  /** Sets a title; in our face where hers lacks a letter of it. */
  public SetLine title(String text, double points) {
    return set(forTitles(), Face.LIGHT, text, points);
  }

  private static SetLine set(Optional<HouseFont> own, Face ours, String text, double points) {
    return own.map(HouseFont::face)
        .filter(face -> face.missing(text).isEmpty())
        .orElse(ours)
        .set(text, points);
  }

  /** All that it brings. */
  public List<HouseFont> all() {
    return Stream.of(words, bold, italic, titles).flatMap(Optional::stream).distinct().toList();
  }
}
