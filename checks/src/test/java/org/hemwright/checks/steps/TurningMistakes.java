package org.hemwright.checks.steps;

import static org.hemwright.checks.steps.MeantFor.OPENINGS;
import static org.hemwright.checks.steps.MeantFor.ORDER;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;

/** What is turned right side out. */
final class TurningMistakes {
  private TurningMistakes() {}

  static final List<StepMistake> ALL =
      List.of(
          ORDER.planted(
              "a bag with no opening to turn it through",
              book ->
                  turnings(book)
                      .map(
                          turning ->
                              new Spoil(
                                  "shut " + turning.close().id(),
                                  without(book, turning),
                                  Set.of(turning.turn().id())))),
          ORDER.spoilt(
              "a folded piece turned inside out",
              "other way",
              book -> book.acts(Act.Fold.class).filter(step -> isTurnedLater(book, step)),
              (book, step) ->
                  book.with(
                      step,
                      Altered.acting(step, new Act.Fold(((Act.Fold) step.act()).along(), true))),
              (book, step) -> turnsOf(book, step)),
          ORDER.again("a piece turned out twice", book -> book.handled(Act.Handling.TURN_OUT)),
          OPENINGS.planted(
              "a turning opening closed before it is used",
              book ->
                  turnings(book)
                      .map(
                          turning ->
                              new Spoil(
                                  turning.close().id() + " before " + turning.turn().id(),
                                  book.movedBefore(turning.close(), turning.turn()),
                                  Set.of(turning.turn().id())))));

  private static boolean isTurnedLater(Workbook book, Step fold) {
    return !turnsOf(book, fold).isEmpty();
  }

  /** The steps that turn out what a step folds. */
  private static Set<String> turnsOf(Workbook book, Step fold) {
    return book.handled(Act.Handling.TURN_OUT)
        .filter(turn -> turn.work().stream().anyMatch(fold.work()::contains))
        .map(Step::id)
        .collect(Collectors.toSet());
  }

  /** A bag that is turned through an opening. */
  record Turning(Step leave, Step turn, Step close) {}

  /** Those whose opening leads to nothing but the bag. */
  private static Stream<Turning> turnings(Workbook book) {
    return book.handled(Act.Handling.TURN_OUT)
        .flatMap(
            turn ->
                book.closing()
                    .filter(close -> book.place(close) > book.place(turn))
                    .flatMap(
                        close ->
                            book.steps().stream()
                                .filter(step -> book.leaving(close).contains(step.id()))
                                .filter(
                                    step ->
                                        turn.work(Work.OfPiece.class).stream()
                                            .map(Work.OfPiece::piece)
                                            .collect(Collectors.toSet())
                                            .equals(book.piecesOf(step)))
                                .map(leave -> new Turning(leave, turn, close))));
  }

  private static List<Step> without(Workbook book, Turning turning) {
    Step shut =
        Altered.copy(
            turning.leave(),
            turning.leave().id(),
            turning.leave().act(),
            turning.leave().work(),
            turning.leave().sewing(),
            turning.leave().press(),
            List.of());
    return book.with(turning.leave(), shut).stream()
        .filter(step -> !step.equals(turning.close()))
        .toList();
  }
}
