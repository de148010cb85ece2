package org.hemwright.checks.steps;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Amount;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.make.Work;

/** Stitches. */
final class StitchMistakes {
  private StitchMistakes() {}

  static final List<StepMistake> ALL =
      List.of(
          new StepMistake(
              "a stitch that does not stretch, on a knit",
              book ->
                  book.each(
                      Planting.mustStretch(book),
                      s -> true,
                      "straight",
                      step -> book.with(step, Workbook.stitched(step, List.of(Planting.STRAIGHT))),
                      Planting.STITCHES,
                      Planting::itself)),
          new StepMistake(
              "such a stitch among the choices",
              book ->
                  book.each(
                      Planting.mustStretch(book),
                      s -> true,
                      "or straight",
                      step ->
                          book.with(
                              step,
                              Workbook.stitched(
                                  step,
                                  Stream.concat(
                                          step.sewing().choices().stream(),
                                          Stream.of(Planting.STRAIGHT))
                                      .toList())),
                      Planting.STITCHES,
                      Planting::itself)),
          new StepMistake(
              "a hem stitched beyond its depth",
              book ->
                  book.each(
                      book.acts(Act.Hem.class),
                      step -> step.sewing().distance().isPresent(),
                      "beyond",
                      step -> book.with(step, Planting.beyond(step)),
                      Planting.STITCHES,
                      Planting::itself)),
          new StepMistake(
              "allowances trimmed to more than they are",
              book ->
                  book.each(
                      book.cutting(Act.Cutting.TRIM, Act.Cutting.GRADE),
                      s -> true,
                      "to 5 cm",
                      step ->
                          book.with(
                              step,
                              Workbook.copy(
                                  step,
                                  step.id(),
                                  new Act.CutInto(
                                      ((Act.CutInto) step.act()).kind(),
                                      Optional.of(Amount.mm(50))),
                                  step.work(),
                                  step.sewing(),
                                  step.press(),
                                  step.leaves())),
                      Planting.STITCHES,
                      Planting::itself)),
          new StepMistake(
              "a seam sewn at another width than its allowance",
              book ->
                  book.each(
                      book.acts(Act.Sew.class),
                      step ->
                          step.sewing().distance().isEmpty()
                              && !step.work(Work.OfSeam.class).isEmpty(),
                      "at 2 mm",
                      step -> book.with(step, Planting.at(step, 2, Sewing.Distance.From.RAW_EDGE)),
                      Planting.STITCHES,
                      Planting::seams)),
          new StepMistake(
              "staystitching beyond the allowance",
              book ->
                  book.each(
                      book.lines(Act.Line.STAYSTITCH),
                      step ->
                          step.work(Work.OfEdge.class).stream()
                              .allMatch(work -> Planting.allowance(book, work) > 0),
                      "at 9 cm",
                      step -> book.with(step, Planting.at(step, 90, Sewing.Distance.From.RAW_EDGE)),
                      Planting.STITCHES,
                      Planting::itself)),
          new StepMistake(
              "a patch stitched beyond what is turned under",
              book ->
                  book.each(
                      book.sewing(),
                      step ->
                          step.sewing().distance().isPresent()
                              && Planting.placed(book, step)
                              && Planting.isTurnedUnder(book, step),
                      "at 9 cm",
                      step -> book.with(step, Planting.at(step, 90, Sewing.Distance.From.EDGE)),
                      Planting.STITCHES,
                      Planting::itself)),
          new StepMistake(
              "rows of a hem beyond its depth",
              book ->
                  book.each(
                      book.acts(Act.Hem.class),
                      step -> step.sewing().distance().isPresent(),
                      "two rows",
                      step -> book.with(step, Planting.rows(step, 90)),
                      Planting.STITCHES,
                      Planting::itself)),
          new StepMistake(
              "a curve clipped that takes wedges, or the other way round",
              book ->
                  book.each(
                      book.cutting(Act.Cutting.CLIP, Act.Cutting.NOTCH),
                      step -> Planting.isPlainCurve(book, step),
                      "other cut",
                      step -> book.with(step, Planting.otherCut(step)),
                      Planting.STITCHES,
                      Planting::itself)),
          new StepMistake(
              "an edge gathered that has nothing to gather",
              book ->
                  book.each(
                      book.acts(Act.Hem.class),
                      s -> true,
                      "gathered",
                      step ->
                          book.followed(
                              step,
                              Workbook.copy(
                                  step,
                                  "gather_it",
                                  new Act.Stitching(Act.Line.GATHER),
                                  step.work(),
                                  step.sewing(),
                                  Optional.empty(),
                                  List.of())),
                      Planting.STITCHES,
                      step -> Set.of("gather_it"))),
          new StepMistake(
              "a buttonhole shorter than its button",
              book ->
                  book.each(
                      Planting.fastened(book, Act.Fastening.BUTTONHOLE),
                      step -> Planting.isCountedOut(book),
                      "3 mm",
                      step ->
                          book.with(
                              step,
                              Workbook.acting(
                                  step,
                                  new Act.Fasten(
                                      Act.Fastening.BUTTONHOLE,
                                      ((Act.Fasten) step.act()).count(),
                                      Amount.mm(3)))),
                      Planting.STITCHES,
                      Planting::itself)),
          new StepMistake(
              "a stitch of the hand on the machine",
              book ->
                  book.each(
                      book.sewing(),
                      s -> true,
                      "slip stitch",
                      step ->
                          book.with(
                              step,
                              Workbook.stitched(step, List.of(Stitch.of(Stitch.Kind.SLIP_STITCH)))),
                      Planting.SETTINGS,
                      Planting::itself)),
          new StepMistake(
              "a stitch of the machine by hand",
              book ->
                  book.each(
                      book.acts(Act.HandSew.class),
                      s -> true,
                      "overlock",
                      step ->
                          book.with(
                              step,
                              Workbook.stitched(
                                  step, List.of(Stitch.of(Stitch.Kind.OVERLOCK_THREE)))),
                      Planting.SETTINGS,
                      Planting::itself)),
          new StepMistake(
              "a stitch longer than a machine makes",
              book ->
                  book.each(
                      book.sewing(),
                      s -> true,
                      "25 mm",
                      step ->
                          book.with(
                              step,
                              Workbook.stitched(step, List.of(Stitch.of(Stitch.Kind.STRETCH, 25)))),
                      Planting.SETTINGS,
                      Planting::itself)),
          new StepMistake(
              "a zigzag wider than a machine makes",
              book ->
                  book.each(
                      book.acts(Act.Finish.class),
                      s -> true,
                      "25 mm",
                      step ->
                          book.with(step, Workbook.stitched(step, List.of(Stitch.zigzag(25, 2)))),
                      Planting.SETTINGS,
                      Planting::itself)),
          new StepMistake(
              "a needle that cuts the cloth",
              book ->
                  book.each(
                      book.sewing(),
                      s -> true,
                      "leather",
                      step -> book.with(step, Planting.needle(step)),
                      Planting.SETTINGS,
                      Planting::itself)));
}
