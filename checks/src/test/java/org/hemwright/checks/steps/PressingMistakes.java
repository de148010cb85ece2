package org.hemwright.checks.steps;

import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.PressDirection;
import org.hemwright.pattern.make.Work;

/** Pressing. */
final class PressingMistakes {
  private PressingMistakes() {}

  static final List<StepMistake> ALL =
      List.of(
          new StepMistake(
              "a seam crossed that is not pressed",
              book ->
                  book.each(
                      book.sewing(),
                      step -> step.press().isPresent() && Planting.isCrossed(book, step),
                      "unpressed",
                      step -> book.with(step, Workbook.pressed(step, Optional.empty())),
                      Planting.PRESSING,
                      Planting::seams)),
          new StepMistake(
              "allowances finished as one pressed open",
              book ->
                  book.each(
                      book.acts(Act.Finish.class),
                      step ->
                          step.act() instanceof Act.Finish finish
                              && finish.together()
                              && !step.work(Work.OfSeam.class).isEmpty(),
                      "open",
                      step ->
                          book.with(
                              step, Workbook.pressed(step, Optional.of(new PressDirection.Open()))),
                      Planting.PRESSING,
                      step -> Planting.all(Planting.itself(step), Planting.seams(step)))),
          new StepMistake(
              "a band's three layers pressed open",
              book ->
                  book.each(
                      book.acts(Act.Attach.class),
                      step -> step.work(Work.OfSeam.class).size() > 1,
                      "open",
                      step ->
                          book.with(
                              step, Workbook.pressed(step, Optional.of(new PressDirection.Open()))),
                      Planting.PRESSING,
                      Planting::itself)),
          new StepMistake(
              "two seams that meet pressed to one side", book -> Planting.stacked(book)),
          new StepMistake(
              "a seam pressed to one side and then to the other",
              book ->
                  book.each(
                      book.steps().stream(),
                      step -> Planting.otherSide(book, step).isPresent(),
                      "and back",
                      step -> book.followed(step, Planting.otherSide(book, step).orElseThrow()),
                      Planting.PRESSING,
                      Planting::seams)),
          new StepMistake(
              "allowances understitched that lie the other way",
              book ->
                  Planting.understitched(book)
                      .map(
                          sewn ->
                              book.spoilt(
                                  "open " + sewn.id(),
                                  book.with(
                                      sewn,
                                      Workbook.pressed(
                                          sewn, Optional.of(new PressDirection.Open()))),
                                  Planting.PRESSING,
                                  Planting.seams(sewn)))),
          new StepMistake(
              "a seam topstitched that is not pressed",
              book ->
                  book.each(
                      book.sewing(),
                      step -> step.press().isPresent() && Planting.isTopstitched(book, step),
                      "unpressed",
                      step -> book.with(step, Workbook.pressed(step, Optional.empty())),
                      Planting.PRESSING,
                      Planting::seams)));
}
