package org.hemwright.checks.fault;

import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import org.hemwright.checks.fault.Written.Line;

/**
 * One slip of the pen, as it is made in every line of a document that it applies to.
 *
 * @param words what is done, as a row of the table has it
 * @param plant all the ways to do it to a document, one line each
 */
record Slip(String words, Function<Written, Stream<WrittenFault>> plant) {
  /** What a line becomes. */
  @FunctionalInterface
  interface Change {
    /** The line in every way that it is changed; an empty one is left out. */
    List<String> of(Written written, Line line, Matcher matched);
  }

  /**
   * Lines changed.
   *
   * @param section the kind of section they stand in; blank: in none
   * @param regex which lines
   * @param checks that are meant for it
   */
  static Slip changed(String words, String section, String regex, Change change, String... checks) {
    return new Slip(
        words,
        written ->
            written.each(section, regex, (line, m) -> change.of(written, line, m), Set.of(checks)));
  }

  /** Lines left out. */
  static Slip deleted(String words, String section, String regex, String... checks) {
    return changed(words, section, regex, (written, line, m) -> List.of(""), checks);
  }

  /** Other words in the place of those that a group of the pattern matches. */
  static Slip put(
      String words,
      String section,
      String regex,
      int group,
      Function<Matcher, String> text,
      String... checks) {
    return changed(
        words,
        section,
        regex,
        (written, line, m) -> Written.put(line, m, group, text.apply(m)),
        checks);
  }

  /** The words that a group of the pattern matches left out. */
  static Slip cut(String words, String section, String regex, int group, String... checks) {
    return put(words, section, regex, group, m -> "", checks);
  }

  /** Only in those lines in which it is a fault. */
  Slip where(BiPredicate<Written, Line> isFault) {
    return new Slip(
        words,
        written ->
            plant
                .apply(written)
                .filter(fault -> isFault.test(written, written.lines().get(fault.line() - 1))));
  }

  /** A finding may be about any piece, as a fault of a cloth shows on what is cut from it. */
  Slip toldOfAnyPiece() {
    return new Slip(words, written -> plant.apply(written).map(written::ofAnyPiece));
  }

  /** A finding is to be told in the middle size, and in no other. */
  Slip toldInMiddleSize() {
    return new Slip(words, written -> plant.apply(written).map(written::inMiddleSize));
  }
}
