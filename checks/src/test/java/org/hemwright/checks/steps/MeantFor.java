package org.hemwright.checks.steps;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hemwright.pattern.make.Step;

/**
 * The check that is to tell a mistake. Each of its methods makes a mistake of one shape, planted in
 * every step that is given, one at a time.
 *
 * @param check its name
 */
record MeantFor(String check) {
  static final MeantFor EDGES = new MeantFor("making-edges");
  static final MeantFor ORDER = new MeantFor("making-order");
  static final MeantFor OPENINGS = new MeantFor("making-openings");
  static final MeantFor PRESSING = new MeantFor("making-pressing");
  static final MeantFor STITCHES = new MeantFor("making-stitches");
  static final MeantFor MARKS = new MeantFor("making-marks");
  static final MeantFor CLOSURES = new MeantFor("closure-length");
  static final MeantFor CLOTHS = new MeantFor("cloth-role");
  static final MeantFor SETTINGS = new MeantFor("stitch-settings");

  /** The steps of a garment in which a mistake is planted. */
  @FunctionalInterface
  interface Where extends Function<Workbook, Stream<Step>> {}

  /** A step left out. */
  StepMistake leftOut(String words, Where where, About about) {
    return spoilt(words, "without", where, Workbook::without, about);
  }

  /** A step done before all others. */
  StepMistake tooEarly(String words, Where where) {
    return tooEarly(words, where, About.ITSELF);
  }

  /** A step done before all others. */
  StepMistake tooEarly(String words, Where where, About about) {
    return spoilt(words, "first", where, Workbook::movedFirst, about);
  }

  /** A step done after all others. */
  StepMistake tooLate(String words, Where where) {
    return tooLate(words, where, About.ITSELF);
  }

  /** A step done after all others. */
  StepMistake tooLate(String words, Where where, About about) {
    return spoilt(words, "last", where, Workbook::movedLast, about);
  }

  /** A step done again at once. */
  StepMistake again(String words, Where where) {
    return spoilt(
        words,
        "twice",
        where,
        (book, step) -> book.followed(step, Altered.again(step)),
        About.AGAIN);
  }

  /** A step done again when all is made. */
  StepMistake againAtTheEnd(String words, Where where) {
    return spoilt(
        words, "twice", where, (book, step) -> book.added(Altered.again(step)), About.AGAIN);
  }

  /** A step done otherwise. */
  StepMistake otherwise(
      String words, String how, Where where, Function<Step, Step> change, About about) {
    return spoilt(words, how, where, (book, step) -> book.with(step, change.apply(step)), about);
  }

  /** All the steps changed because of one. */
  StepMistake spoilt(
      String words,
      String how,
      Where where,
      BiFunction<Workbook, Step, List<Step>> spoil,
      About about) {
    return new StepMistake(
        words,
        book ->
            where
                .apply(book)
                .map(
                    step ->
                        book.spoilt(
                            how + " " + step.id(),
                            spoil.apply(book, step),
                            check,
                            about.of(book, step))));
  }

  /** A mistake of a shape of its own. */
  StepMistake planted(String words, Function<Workbook, Stream<Spoil>> plant) {
    return new StepMistake(
        words,
        book ->
            plant
                .apply(book)
                .map(spoil -> book.spoilt(spoil.how(), spoil.steps(), check, spoil.about())));
  }
}
