package org.hemwright.checks.steps;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Work;

/** Marks. */
final class MarkMistakes {
  private MarkMistakes() {}

  static final List<StepMistake> ALL =
      List.of(
          new StepMistake(
              "a placement line not marked",
              book ->
                  book.each(
                      book.handled(Act.Handling.MARK),
                      step -> Planting.marksPlace(book, step),
                      "without",
                      book::without,
                      Planting.MARKS,
                      step -> Planting.texts(step.work(Work.OfMark.class)))),
          new StepMistake(
              "a band sewn on by parts that bear no marks",
              book ->
                  book.each(
                      book.acts(Act.Attach.class),
                      step ->
                          step.work(Work.OfSeam.class).stream()
                              .flatMap(work -> book.seam(work.seam()).stream())
                              .anyMatch(
                                  seam -> seam.even().isEmpty() && !book.isWithinOnePiece(seam)),
                      "by sevenths",
                      step ->
                          book.with(
                              step,
                              Workbook.copy(
                                  step,
                                  step.id(),
                                  new Act.Attach(7),
                                  step.work(),
                                  step.sewing(),
                                  step.press(),
                                  step.leaves())),
                      Planting.MARKS,
                      Planting::itself)),
          new StepMistake(
              "a dart not marked",
              book ->
                  book.each(
                      book.handled(Act.Handling.MARK),
                      step -> !step.work(Work.OfIntake.class).isEmpty(),
                      "without",
                      book::without,
                      Planting.MARKS,
                      step -> Planting.texts(step.work(Work.OfIntake.class)))),
          new StepMistake(
              "interfacing cut and never fused",
              book ->
                  book.each(
                      book.acts(Act.Fuse.class),
                      s -> true,
                      "without",
                      book::without,
                      Planting.CLOTHS,
                      step -> Planting.texts(step.work(Work.OfPiece.class)))),
          new StepMistake(
              "interfacing fused to a piece that has none",
              book ->
                  book.each(
                      book.acts(Act.Fuse.class),
                      step -> Planting.bare(book).isPresent(),
                      "another",
                      step ->
                          book.with(
                              step,
                              Workbook.dealing(
                                  step,
                                  List.of(
                                      new Work.OfPiece(
                                          Planting.bare(book).orElseThrow(), Optional.empty())))),
                      Planting.CLOTHS,
                      step -> Set.of(Planting.bare(book).orElseThrow()))));
}
