package org.hemwright.checks.steps;

import static org.hemwright.checks.steps.MeantFor.CLOSURES;
import static org.hemwright.checks.steps.MeantFor.OPENINGS;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Amount;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.piece.BodyOpening;

/** Openings, elastics and zips. */
final class OpeningMistakes {
  private OpeningMistakes() {}

  static final List<StepMistake> ALL =
      List.of(
          OPENINGS.leftOut(
              "an opening never closed",
              book -> book.closing(),
              (book, step) -> book.leaving(step)),
          OPENINGS.tooEarly("an opening closed before it is left", book -> book.closing()),
          OPENINGS.againAtTheEnd("an opening closed twice", book -> book.closing()),
          OPENINGS.planted(
              "an opening closed before the elastic is in",
              book ->
                  book.acts(Act.ThreadThrough.class)
                      .flatMap(
                          thread ->
                              book.closing()
                                  .filter(close -> opens(close, thread))
                                  .map(
                                      close ->
                                          new Spoil(
                                              close.id() + " before " + thread.id(),
                                              book.movedBefore(close, thread),
                                              Set.of(close.id()))))),
          OPENINGS.planted(
              "an opening too narrow for its elastic",
              book ->
                  book.acts(Act.ThreadThrough.class)
                      .flatMap(
                          thread ->
                              book.steps().stream()
                                  .filter(step -> holdsElastic(book, thread))
                                  .filter(step -> leaves(step, thread))
                                  .map(
                                      step ->
                                          new Spoil(
                                              "narrow " + step.id(),
                                              book.with(step, narrowed(step)),
                                              Set.of(step.id()))))),
          OPENINGS.tooEarly(
              "elastic drawn in before there is a casing",
              book -> book.acts(Act.ThreadThrough.class)),
          OPENINGS.leftOut(
              "elastic or a cord left out",
              book -> book.acts(Act.ThreadThrough.class),
              held("elastic ").and(held("cord "))),
          OPENINGS.planted(
              "elastic joined to a ring before it is drawn in",
              book ->
                  book.acts(Act.JoinEnds.class)
                      .flatMap(
                          join ->
                              book.acts(Act.ThreadThrough.class)
                                  .filter(thread -> thread.work().get(0).equals(join.work().get(0)))
                                  .map(
                                      thread ->
                                          new Spoil(
                                              join.id() + " before " + thread.id(),
                                              book.movedBefore(join, thread),
                                              Set.of(thread.id()))))),
          OPENINGS.tooLate(
              "elastic not joined before its casing is closed",
              book -> book.acts(Act.JoinEnds.class),
              About.ITSELF.and(held("elastic "))),
          OPENINGS.leftOut(
              "elastic never joined", book -> book.acts(Act.JoinEnds.class), held("elastic ")),
          OPENINGS.leftOut(
              "elastic not tried on",
              book -> book.handled(Act.Handling.TRY_ON).filter(step -> triesElastic(book, step)),
              (book, step) -> elastics(book)),
          OPENINGS.spoilt(
              "a zip shorter than its opening",
              "short",
              book -> book.acts(Act.InsertZip.class),
              (book, step) ->
                  book.with(
                      step,
                      Altered.copy(
                          step,
                          step.id(),
                          new Act.InsertZip(List.of(50.0)),
                          step.work(),
                          step.sewing(),
                          step.press(),
                          step.leaves())),
              About.ITSELF),
          OPENINGS.otherwise(
              "an opening longer than its seam",
              "9 m",
              book ->
                  book.steps().stream()
                      .filter(
                          step ->
                              !step.leaves().isEmpty() && !step.work(Work.OfSeam.class).isEmpty()),
              step -> leaving(step, 9000),
              About.ITSELF),
          OPENINGS.planted(
              "elastic drawn in at an opening of another piece",
              book ->
                  book.acts(Act.ThreadThrough.class)
                      .flatMap(
                          thread ->
                              elsewhere(book, thread).stream()
                                  .map(
                                      other ->
                                          new Spoil(
                                              thread.id() + " through " + other.id(),
                                              through(book, thread, other),
                                              Set.of(thread.id()))))),
          OPENINGS.planted(
              "a casing made on another piece",
              book ->
                  book.acts(Act.FormCasing.class)
                      .flatMap(
                          casing ->
                              elsewhere(book, casing).stream()
                                  .map(
                                      other ->
                                          new Spoil(
                                              casing.id() + " on " + other.id(),
                                              book.with(
                                                  casing, Altered.dealing(casing, other.work())),
                                              Set.of(casing.id()))))),
          OPENINGS.otherwise(
              "a casing stitched narrower than its elastic",
              "8 mm",
              book ->
                  book.acts(Act.FormCasing.class)
                      .filter(
                          step ->
                              !step.work(Work.OfEdge.class).isEmpty() && holdsElastic(book, step)),
              step -> Altered.at(step, 8, Sewing.Distance.From.FOLD),
              About.ITSELF),
          OPENINGS.again(
              "elastic put in twice",
              book ->
                  Stream.concat(book.acts(Act.ThreadThrough.class), book.acts(Act.LayIn.class))),
          OPENINGS.again("elastic joined twice", book -> book.acts(Act.JoinEnds.class)),
          OPENINGS.spoilt(
              "laid elastic not tried on before it is shut in",
              "untried",
              book -> book.acts(Act.LayIn.class),
              (book, step) ->
                  book.steps().stream()
                      .filter(each -> !book.handled(Act.Handling.TRY_ON).toList().contains(each))
                      .toList(),
              (book, step) -> elastics(book)),
          CLOSURES.spoilt(
              "a slit that a zip closes sewn shut",
              "sewn",
              book -> book.acts(Act.InsertZip.class).filter(step -> closesByZip(book)),
              (book, step) -> book.with(step, Altered.acting(step, new Act.Close())),
              (book, step) -> zipped(book)));

  /** The elastic or cord that the step works on, as a subject and by its name. */
  private static About held(String word) {
    return (book, step) -> Set.of(word + step.work().get(0).text(), step.work().get(0).text());
  }

  private static Set<String> elastics(Workbook book) {
    return book.sized().elastics().stream()
        .map(elastic -> "elastic " + elastic.name())
        .collect(Collectors.toSet());
  }

  private static boolean opens(Step close, Step thread) {
    return thread.act() instanceof Act.ThreadThrough through
        && close.work().contains(new Work.OfOpening(through.opening()));
  }

  private static boolean leaves(Step step, Step thread) {
    return thread.act() instanceof Act.ThreadThrough through
        && step.leaves().stream().anyMatch(left -> left.name().equals(through.opening()));
  }

  private static Step narrowed(Step step) {
    return Altered.copy(
        step,
        step.id(),
        step.act(),
        step.work(),
        step.sewing(),
        step.press(),
        step.leaves().stream()
            .map(left -> new Step.Opening(left.name(), Amount.mm(8), left.where()))
            .toList());
  }

  /** Whether it is the one fitting between the elastic's going in and its closing. */
  private static boolean triesElastic(Workbook book, Step tryOn) {
    return book.acts(Act.ThreadThrough.class)
        .anyMatch(
            thread ->
                book.place(thread) < book.place(tryOn)
                    && book.closing()
                        .anyMatch(
                            close ->
                                opens(close, thread) && book.place(tryOn) < book.place(close)));
  }

  /** A step that sews a seam without the piece that holds an elastic, before it goes in. */
  private static Optional<Step> elsewhere(Workbook book, Step step) {
    Set<String> holding =
        book.sized().elastics().stream()
            .map(elastic -> elastic.piece())
            .collect(Collectors.toSet());
    return book.sewing()
        .filter(other -> book.place(other) < book.place(step) && other.leaves().isEmpty())
        .filter(other -> other.act() instanceof Act.Sew && !book.placed(other))
        .filter(other -> book.piecesOf(other).stream().noneMatch(holding::contains))
        .filter(other -> holdsElastic(book, step))
        .findFirst();
  }

  private static boolean holdsElastic(Workbook book, Step step) {
    String name =
        step.act() instanceof Act.FormCasing casing ? casing.holds() : step.work().get(0).text();
    return book.sized().elastics().stream().anyMatch(elastic -> elastic.name().equals(name));
  }

  private static List<Step> through(Workbook book, Step thread, Step other) {
    Step slit =
        Altered.copy(
            other,
            other.id(),
            other.act(),
            other.work(),
            other.sewing(),
            other.press(),
            List.of(new Step.Opening("slit", Amount.mm(60), Optional.empty())));
    Step drawn = Altered.acting(thread, new Act.ThreadThrough("slit"));
    return book.steps().stream()
        .map(step -> step.equals(other) ? slit : step.equals(thread) ? drawn : step)
        .toList();
  }

  /** The slits that a zip closes, as the document names them. */
  private static Set<String> zipped(Workbook book) {
    return book.sized().pieces().stream()
        .flatMap(
            piece ->
                piece.bodyOpenings().stream()
                    .filter(
                        opening ->
                            opening
                                .closure()
                                .filter(closure -> closure.kind() == BodyOpening.Kind.ZIP)
                                .isPresent())
                    .map(opening -> piece.name() + "." + opening.edge()))
        .collect(Collectors.toSet());
  }

  private static boolean closesByZip(Workbook book) {
    return !zipped(book).isEmpty();
  }

  private static Step leaving(Step step, double length) {
    Step.Opening left = step.leaves().get(0);
    return Altered.copy(
        step,
        step.id(),
        step.act(),
        step.work(),
        step.sewing(),
        step.press(),
        List.of(new Step.Opening(left.name(), Amount.mm(length), left.where())));
  }
}
