package org.hemwright.checks.steps;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Work;

/** Openings, elastics and zips. */
final class OpeningMistakes {
  private OpeningMistakes() {}

  static final List<StepMistake> ALL =
      List.of(
          new StepMistake(
              "an opening never closed",
              book ->
                  book.each(
                      Planting.closing(book),
                      s -> true,
                      "without",
                      book::without,
                      Planting.OPENINGS,
                      step -> Planting.leaving(book, step))),
          new StepMistake(
              "an opening closed before it is left",
              book ->
                  book.each(
                      Planting.closing(book),
                      s -> true,
                      "first",
                      book::movedFirst,
                      Planting.OPENINGS,
                      Planting::itself)),
          new StepMistake(
              "an opening closed twice",
              book ->
                  book.each(
                      Planting.closing(book),
                      s -> true,
                      "twice",
                      Planting.twice(book),
                      Planting.OPENINGS,
                      Planting.Again::of)),
          new StepMistake(
              "an opening closed before the elastic is in",
              book ->
                  book.acts(Act.ThreadThrough.class)
                      .flatMap(
                          thread ->
                              Planting.closing(book)
                                  .filter(close -> Planting.opens(close, thread))
                                  .map(
                                      close ->
                                          book.spoilt(
                                              close.id() + " before " + thread.id(),
                                              book.movedBefore(close, thread),
                                              Planting.OPENINGS,
                                              Set.of(close.id()))))),
          new StepMistake(
              "an opening too narrow for its elastic",
              book ->
                  book.acts(Act.ThreadThrough.class)
                      .flatMap(
                          thread ->
                              book.steps().stream()
                                  .filter(step -> Planting.holdsElastic(book, thread))
                                  .filter(step -> Planting.leaves(step, thread))
                                  .map(
                                      step ->
                                          book.spoilt(
                                              "narrow " + step.id(),
                                              book.with(step, Planting.narrowed(step)),
                                              Planting.OPENINGS,
                                              Set.of(step.id()))))),
          new StepMistake(
              "elastic drawn in before there is a casing",
              book ->
                  book.each(
                      book.acts(Act.ThreadThrough.class),
                      s -> true,
                      "first",
                      book::movedFirst,
                      Planting.OPENINGS,
                      Planting::itself)),
          new StepMistake(
              "elastic or a cord left out",
              book ->
                  book.each(
                      book.acts(Act.ThreadThrough.class),
                      s -> true,
                      "without",
                      book::without,
                      Planting.OPENINGS,
                      step ->
                          Planting.all(
                              Planting.held("elastic ", step), Planting.held("cord ", step)))),
          new StepMistake(
              "elastic joined to a ring before it is drawn in",
              book ->
                  book.acts(Act.JoinEnds.class)
                      .flatMap(
                          join ->
                              book.acts(Act.ThreadThrough.class)
                                  .filter(thread -> thread.work().get(0).equals(join.work().get(0)))
                                  .map(
                                      thread ->
                                          book.spoilt(
                                              join.id() + " before " + thread.id(),
                                              book.movedBefore(join, thread),
                                              Planting.OPENINGS,
                                              Set.of(thread.id()))))),
          new StepMistake(
              "elastic not joined before its casing is closed",
              book ->
                  book.each(
                      book.acts(Act.JoinEnds.class),
                      s -> true,
                      "last",
                      book::movedLast,
                      Planting.OPENINGS,
                      step ->
                          Planting.all(Planting.itself(step), Planting.held("elastic ", step)))),
          new StepMistake(
              "elastic never joined",
              book ->
                  book.each(
                      book.acts(Act.JoinEnds.class),
                      s -> true,
                      "without",
                      book::without,
                      Planting.OPENINGS,
                      step -> Planting.held("elastic ", step))),
          new StepMistake(
              "elastic not tried on",
              book ->
                  book.each(
                      book.handled(Act.Handling.TRY_ON),
                      step -> Planting.triesElastic(book, step),
                      "without",
                      book::without,
                      Planting.OPENINGS,
                      step -> Planting.elastics(book))),
          new StepMistake(
              "a zip shorter than its opening",
              book ->
                  book.each(
                      book.acts(Act.InsertZip.class),
                      s -> true,
                      "short",
                      step ->
                          book.with(
                              step,
                              Workbook.copy(
                                  step,
                                  step.id(),
                                  new Act.InsertZip(List.of(50.0)),
                                  step.work(),
                                  step.sewing(),
                                  step.press(),
                                  step.leaves())),
                      Planting.OPENINGS,
                      Planting::itself)),
          new StepMistake(
              "an opening longer than its seam",
              book ->
                  book.each(
                      book.steps().stream()
                          .filter(
                              step ->
                                  !step.leaves().isEmpty()
                                      && !step.work(Work.OfSeam.class).isEmpty()),
                      s -> true,
                      "9 m",
                      step -> book.with(step, Planting.leaving(step, 9000)),
                      Planting.OPENINGS,
                      Planting::itself)),
          new StepMistake(
              "elastic drawn in at an opening of another piece",
              book ->
                  book.acts(Act.ThreadThrough.class)
                      .flatMap(
                          thread ->
                              Planting.elsewhere(book, thread).stream()
                                  .map(
                                      other ->
                                          book.spoilt(
                                              thread.id() + " through " + other.id(),
                                              Planting.through(book, thread, other),
                                              Planting.OPENINGS,
                                              Set.of(thread.id()))))),
          new StepMistake(
              "a casing made on another piece",
              book ->
                  book.acts(Act.FormCasing.class)
                      .flatMap(
                          casing ->
                              Planting.elsewhere(book, casing).stream()
                                  .map(
                                      other ->
                                          book.spoilt(
                                              casing.id() + " on " + other.id(),
                                              book.with(
                                                  casing, Workbook.dealing(casing, other.work())),
                                              Planting.OPENINGS,
                                              Set.of(casing.id()))))),
          new StepMistake(
              "a casing stitched narrower than its elastic",
              book ->
                  book.each(
                      book.acts(Act.FormCasing.class),
                      step ->
                          !step.work(Work.OfEdge.class).isEmpty()
                              && Planting.holdsElastic(book, step),
                      "8 mm",
                      step -> book.with(step, Planting.at(step, 8, Sewing.Distance.From.FOLD)),
                      Planting.OPENINGS,
                      Planting::itself)),
          new StepMistake(
              "elastic put in twice",
              book ->
                  book.each(
                      Stream.concat(book.acts(Act.ThreadThrough.class), book.acts(Act.LayIn.class)),
                      s -> true,
                      "twice",
                      step -> book.followed(step, Workbook.again(step)),
                      Planting.OPENINGS,
                      Planting.Again::of)),
          new StepMistake(
              "elastic joined twice",
              book ->
                  book.each(
                      book.acts(Act.JoinEnds.class),
                      s -> true,
                      "twice",
                      step -> book.followed(step, Workbook.again(step)),
                      Planting.OPENINGS,
                      Planting.Again::of)),
          new StepMistake(
              "a turning opening closed before it is used",
              book ->
                  Planting.turnings(book)
                      .map(
                          turning ->
                              book.spoilt(
                                  turning.close().id() + " before " + turning.turn().id(),
                                  book.movedBefore(turning.close(), turning.turn()),
                                  Planting.OPENINGS,
                                  Set.of(turning.turn().id())))),
          new StepMistake(
              "laid elastic not tried on before it is shut in",
              book ->
                  book.each(
                      book.acts(Act.LayIn.class),
                      s -> true,
                      "untried",
                      step ->
                          book.steps().stream()
                              .filter(
                                  each ->
                                      !book.handled(Act.Handling.TRY_ON).toList().contains(each))
                              .toList(),
                      Planting.OPENINGS,
                      step -> Planting.elastics(book))),
          new StepMistake(
              "a slit that a zip closes sewn shut",
              book ->
                  book.each(
                      book.acts(Act.InsertZip.class),
                      step -> Planting.closesByZip(book),
                      "sewn",
                      step -> book.with(step, Workbook.acting(step, new Act.Close())),
                      Planting.CLOSURES,
                      step -> Planting.zipped(book))));
}
