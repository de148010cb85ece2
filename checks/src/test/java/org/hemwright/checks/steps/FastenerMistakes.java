package org.hemwright.checks.steps;

import static org.hemwright.checks.steps.MeantFor.ORDER;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Amount;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;

/** Buttons, buttonholes, bar tacks and eyelets. */
final class FastenerMistakes {
  private FastenerMistakes() {}

  static final List<StepMistake> ALL =
      List.of(
          ORDER.tooEarly(
              "a bar tack before what it holds",
              book ->
                  book.acts(Act.Fasten.class)
                      .filter(step -> !step.work(Work.OfMark.class).isEmpty())),
          ORDER.planted(
              "a button before its buttonhole",
              book ->
                  book.fastened(Act.Fastening.BUTTON).findAny().isPresent()
                      ? book.fastened(Act.Fastening.BUTTON)
                          .map(
                              step ->
                                  new Spoil(
                                      "first " + step.id(),
                                      book.movedFirst(step),
                                      Set.of(step.id())))
                      : Stream.of(
                          new Spoil(
                              "button first",
                              book.added(
                                  fastener(book, Act.Fastening.BUTTON, 3, "sew_buttons"),
                                  fastener(book, Act.Fastening.BUTTONHOLE, 3, "work_holes")),
                              Set.of("sew_buttons")))),
          ORDER.planted(
              "a button too few",
              book ->
                  Stream.of(
                      new Spoil(
                          "too few",
                          book.added(
                              fastener(book, Act.Fastening.BUTTONHOLE, 40, "work_holes"),
                              fastener(book, Act.Fastening.BUTTON, 39, "sew_buttons")),
                          Set.of("make")))),
          ORDER.tooEarly(
              "buttonholes worked before the piece is folded, fused or turned",
              book ->
                  book.fastened(Act.Fastening.BUTTONHOLE).filter(step -> isLayered(book, step))),
          ORDER.tooLate(
              "an eyelet worked through a finished casing",
              book -> book.fastened(Act.Fastening.EYELET)));

  private static Step fastener(Workbook book, Act.Fastening kind, int count, String id) {
    Step any = book.steps().get(0);
    String piece = book.pattern().views().get(0).pieces().get(0);
    return Altered.copy(
        any,
        id,
        new Act.Fasten(kind, count, Amount.mm(12)),
        List.of(new Work.OfPiece(piece, Optional.empty())),
        Sewing.NONE,
        Optional.empty(),
        List.of());
  }

  /** Whether something folds, fuses or turns a piece that is fastened. */
  private static boolean isLayered(Workbook book, Step step) {
    return Stream.of(
            book.acts(Act.Fold.class),
            book.acts(Act.Fuse.class),
            book.handled(Act.Handling.TURN_OUT))
        .flatMap(each -> each)
        .anyMatch(other -> other.work().stream().anyMatch(step.work()::contains));
  }
}
