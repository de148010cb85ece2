package org.hemwright.checks.steps;

import static org.hemwright.checks.steps.MeantFor.PRESSING;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.PressDirection;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/** Pressing. */
final class PressingMistakes {
  private PressingMistakes() {}

  static final List<StepMistake> ALL =
      List.of(
          PRESSING.spoilt(
              "a seam crossed that is not pressed",
              "unpressed",
              book ->
                  book.sewing().filter(step -> step.press().isPresent() && isCrossed(book, step)),
              (book, step) -> book.with(step, Altered.pressed(step, Optional.empty())),
              About.SEAMS),
          PRESSING.spoilt(
              "allowances finished as one pressed open",
              "open",
              book ->
                  book.acts(Act.Finish.class)
                      .filter(
                          step ->
                              step.act() instanceof Act.Finish finish
                                  && finish.together()
                                  && !step.work(Work.OfSeam.class).isEmpty()),
              (book, step) ->
                  book.with(step, Altered.pressed(step, Optional.of(new PressDirection.Open()))),
              About.ITSELF.and(About.SEAMS)),
          PRESSING.spoilt(
              "a band's three layers pressed open",
              "open",
              book ->
                  book.acts(Act.Attach.class)
                      .filter(step -> step.work(Work.OfSeam.class).size() > 1),
              (book, step) ->
                  book.with(step, Altered.pressed(step, Optional.of(new PressDirection.Open()))),
              About.ITSELF),
          PRESSING.planted("two seams that meet pressed to one side", book -> stacked(book)),
          PRESSING.spoilt(
              "a seam pressed to one side and then to the other",
              "and back",
              book -> book.steps().stream().filter(step -> otherSide(book, step).isPresent()),
              (book, step) -> book.followed(step, otherSide(book, step).orElseThrow()),
              About.SEAMS),
          PRESSING.planted(
              "allowances understitched that lie the other way",
              book ->
                  understitched(book)
                      .map(
                          sewn ->
                              new Spoil(
                                  "open " + sewn.id(),
                                  book.with(
                                      sewn,
                                      Altered.pressed(
                                          sewn, Optional.of(new PressDirection.Open()))),
                                  About.seams(sewn)))),
          PRESSING.spoilt(
              "a seam topstitched that is not pressed",
              "unpressed",
              book ->
                  book.sewing()
                      .filter(step -> step.press().isPresent() && isTopstitched(book, step)),
              (book, step) -> book.with(step, Altered.pressed(step, Optional.empty())),
              About.SEAMS));

  /**
   * Two legs whose inseams are pressed open, pressed to one side; and a turn of the allowances
   * beside each other, left out.
   */
  private static Stream<Spoil> stacked(Workbook book) {
    Stream<Spoil> turned =
        book.acts(Act.Press.class)
            .filter(
                press ->
                    press.work(Work.OfEdge.class).stream()
                        .anyMatch(
                            work ->
                                book.seamsOf(work.piece(), work.edge()).stream()
                                    .flatMap(name -> book.sewn(name).stream())
                                    .anyMatch(sewn -> book.place(sewn) < book.place(press))))
            .map(
                press ->
                    new Spoil(
                        "without " + press.id(),
                        book.without(press),
                        book.steps().stream()
                            .filter(step -> book.place(step) > book.place(press))
                            .map(Step::id)
                            .collect(Collectors.toSet())));
    Stream<Spoil> legs =
        book.steps().stream()
            .filter(step -> step.press().filter(PressDirection.Open.class::isInstance).isPresent())
            .flatMap(
                step ->
                    step.work(Work.OfSeam.class).stream()
                        .flatMap(work -> book.seam(work.seam()).stream())
                        .filter(seam -> meetsItself(book, seam, step))
                        .map(
                            seam ->
                                new Spoil(
                                    "to one side " + step.id(),
                                    book.with(
                                        step,
                                        Altered.pressed(
                                            step,
                                            Optional.of(
                                                new PressDirection.Toward(
                                                    seam.joins()
                                                        .get(0)
                                                        .layers()
                                                        .get(0)
                                                        .run()
                                                        .get(0)
                                                        .piece(),
                                                    Optional.empty(),
                                                    PressDirection.Side.WRONG)))),
                                    book.crossing(seam, step).stream()
                                        .map(Step::id)
                                        .collect(Collectors.toSet()))));
    return Stream.concat(turned, legs);
  }

  /** Whether a later seam joins a copy to its mirror where this seam ends on both. */
  private static boolean meetsItself(Workbook book, Seam seam, Step after) {
    Set<String> own = Workbook.pieces(seam);
    return own.size() > 1
        && seam.joins().size() > 1
        && seam.joins().stream().allMatch(join -> join.layers().size() == 2)
        && book.crossing(seam, after).stream()
            .flatMap(step -> step.work(Work.OfSeam.class).stream())
            .flatMap(work -> book.seam(work.seam()).stream())
            .filter(over -> !Workbook.pieces(over).equals(own))
            .anyMatch(
                over ->
                    over.joins().stream()
                        .anyMatch(
                            join -> {
                              List<EdgePlace> places =
                                  join.layers().stream()
                                      .flatMap(layer -> layer.run().stream())
                                      .toList();
                              return places.size() == 2
                                  && places.get(0).piece().equals(places.get(1).piece())
                                  && places.get(0).edge().equals(places.get(1).edge())
                                  && !places.get(0).copy().equals(places.get(1).copy());
                            }));
  }

  /** The steps that sew what is understitched, and press it. */
  private static Stream<Step> understitched(Workbook book) {
    return book.lines(Act.Line.UNDERSTITCH)
        .flatMap(step -> step.work(Work.OfSeam.class).stream())
        .flatMap(work -> book.sewn(work.seam()).stream())
        .filter(step -> step.press().isPresent());
  }

  private static boolean isTopstitched(Workbook book, Step sewn) {
    return book.lines(Act.Line.TOPSTITCH)
            .anyMatch(line -> sewn.work().stream().anyMatch(line.work()::contains))
        && book.handled(Act.Handling.TURN_OUT)
            .flatMap(turn -> turn.work(Work.OfPiece.class).stream())
            .noneMatch(work -> book.piecesOf(sewn).contains(work.piece()))
        && book.acts(Act.Finish.class)
            .noneMatch(
                finish ->
                    finish.press().isPresent()
                        && finish.work().stream().anyMatch(sewn.work()::contains));
  }

  /** A step that presses a seam to the other side than a step does. */
  private static Optional<Step> otherSide(Workbook book, Step step) {
    if (!(step.press().orElse(null) instanceof PressDirection.Toward toward)
        || step.work(Work.OfSeam.class).size() != 1
        || step.work().size() != 1) {
      return Optional.empty();
    }
    Seam seam = book.seam(step.work(Work.OfSeam.class).get(0).seam()).orElseThrow();
    return seam.joins().get(0).layers().stream()
        .flatMap(layer -> layer.run().stream())
        .filter(place -> seam.joins().get(0).layers().size() == 2)
        .filter(place -> !place.piece().equals(toward.piece()))
        .filter(place -> Workbook.pieces(seam).contains(toward.piece()))
        .findFirst()
        .map(
            place ->
                Altered.copy(
                    step,
                    "press_back",
                    new Act.Press(),
                    step.work(),
                    Sewing.NONE,
                    Optional.of(
                        new PressDirection.Toward(
                            place.piece(), Optional.empty(), PressDirection.Side.WRONG)),
                    List.of()));
  }

  private static boolean isCrossed(Workbook book, Step step) {
    return step.work(Work.OfSeam.class).stream().anyMatch(work -> book.isCrossed(work, step))
        && book.acts(Act.Press.class)
            .noneMatch(press -> press.work().stream().anyMatch(step.work()::contains))
        && book.acts(Act.Finish.class)
            .noneMatch(
                finish ->
                    finish.press().isPresent()
                        && finish.work().stream().anyMatch(step.work()::contains));
  }
}
