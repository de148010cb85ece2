package org.hemwright.checks.steps;

import java.util.List;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Work;

/** What is left out, or done twice. */
final class EdgeMistakes {
  private EdgeMistakes() {}

  static final List<StepMistake> ALL =
      List.of(
          new StepMistake(
              "a seam left out",
              book ->
                  book.each(
                      book.sewing(),
                      s -> true,
                      "without",
                      book::without,
                      Planting.EDGES,
                      Planting::seams)),
          new StepMistake(
              "a seam sewn twice",
              book ->
                  book.each(
                      book.sewing(),
                      s -> true,
                      "twice",
                      Planting.twice(book),
                      Planting.EDGES,
                      Planting.Again::of)),
          new StepMistake(
              "a hem left out",
              book ->
                  book.each(
                      book.acts(Act.Hem.class),
                      s -> true,
                      "without",
                      book::without,
                      Planting.EDGES,
                      Planting::edges)),
          new StepMistake(
              "a hem turned twice over",
              book ->
                  book.each(
                      book.acts(Act.Hem.class),
                      s -> true,
                      "twice",
                      Planting.twice(book),
                      Planting.EDGES,
                      Planting.Again::of)),
          new StepMistake(
              "an edge hemmed that a seam takes",
              book ->
                  book.sized().seams().stream()
                      .filter(seam -> !book.isPlaced(seam))
                      .flatMap(seam -> Planting.hemmed(book, seam))),
          new StepMistake(
              "a finish left out on cloth that frays",
              book ->
                  book.each(
                      book.acts(Act.Finish.class),
                      step -> step.sewing().raw().isEmpty() && Planting.isNeeded(book, step),
                      "without",
                      book::without,
                      Planting.EDGES,
                      step -> Planting.finished(book, step))),
          new StepMistake(
              "edges finished twice",
              book ->
                  book.each(
                      book.acts(Act.Finish.class).filter(step -> step.sewing().raw().isEmpty()),
                      s -> true,
                      "twice",
                      step -> book.followed(step, Workbook.again(step)),
                      Planting.EDGES,
                      Planting.Again::of)),
          new StepMistake(
              "allowances trimmed after their finish",
              book ->
                  book.each(
                      book.cutting(Act.Cutting.TRIM, Act.Cutting.GRADE),
                      step -> Planting.finishOf(book, step).isPresent(),
                      "late",
                      step -> book.movedAfter(step, Planting.finishOf(book, step).orElseThrow()),
                      Planting.EDGES,
                      Planting::itself)),
          new StepMistake(
              "a dart or pleat left open",
              book ->
                  book.each(
                      book.acts(Act.Close.class),
                      step -> !step.work(Work.OfIntake.class).isEmpty(),
                      "without",
                      book::without,
                      Planting.EDGES,
                      step -> Planting.texts(step.work(Work.OfIntake.class)))),
          new StepMistake(
              "a seam only basted",
              book ->
                  book.each(
                      book.acts(Act.Sew.class),
                      step -> Planting.sewsForGood(book, step),
                      "basted",
                      step -> book.with(step, Workbook.stitched(step, List.of(Planting.BASTING))),
                      Planting.EDGES,
                      Planting::seams)),
          new StepMistake(
              "a hem only basted",
              book ->
                  book.each(
                      book.acts(Act.Hem.class),
                      s -> true,
                      "basted",
                      step -> book.with(step, Workbook.stitched(step, List.of(Planting.BASTING))),
                      Planting.EDGES,
                      Planting::edges)),
          new StepMistake(
              "a woven hem left raw without a word",
              book ->
                  book.each(
                      book.acts(Act.Hem.class),
                      step ->
                          !book.isKnit(step)
                              && !Planting.endsInPlaced(book, step)
                              && Planting.liesOpen(book, step),
                      "raw",
                      step -> Planting.leftRaw(book, step),
                      Planting.EDGES,
                      Planting::edges)));
}
