package org.hemwright.checks.steps;

import static org.hemwright.checks.steps.MeantFor.CLOTHS;
import static org.hemwright.checks.steps.MeantFor.MARKS;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.piece.Piece;

/** Marks, and interfacing. */
final class MarkMistakes {
  private MarkMistakes() {}

  static final List<StepMistake> ALL =
      List.of(
          MARKS.leftOut(
              "a placement line not marked",
              book -> book.handled(Act.Handling.MARK).filter(step -> book.marksPlace(step)),
              About.works(Work.OfMark.class)),
          MARKS.spoilt(
              "a band sewn on by parts that bear no marks",
              "by sevenths",
              book ->
                  book.acts(Act.Attach.class)
                      .filter(
                          step ->
                              step.work(Work.OfSeam.class).stream()
                                  .flatMap(work -> book.seam(work.seam()).stream())
                                  .anyMatch(
                                      seam ->
                                          seam.even().isEmpty() && !book.isWithinOnePiece(seam))),
              (book, step) ->
                  book.with(
                      step,
                      Altered.copy(
                          step,
                          step.id(),
                          new Act.Attach(7),
                          step.work(),
                          step.sewing(),
                          step.press(),
                          step.leaves())),
              About.ITSELF),
          MARKS.leftOut(
              "a dart not marked",
              book ->
                  book.handled(Act.Handling.MARK)
                      .filter(step -> !step.work(Work.OfIntake.class).isEmpty()),
              About.works(Work.OfIntake.class)),
          CLOTHS.leftOut(
              "interfacing cut and never fused",
              book -> book.acts(Act.Fuse.class),
              About.works(Work.OfPiece.class)),
          CLOTHS.spoilt(
              "interfacing fused to a piece that has none",
              "another",
              book -> book.acts(Act.Fuse.class).filter(step -> bare(book).isPresent()),
              (book, step) ->
                  book.with(
                      step,
                      Altered.dealing(
                          step,
                          List.of(new Work.OfPiece(bare(book).orElseThrow(), Optional.empty())))),
              (book, step) -> Set.of(bare(book).orElseThrow())));

  /** A piece that no interfacing is cut for. */
  private static Optional<String> bare(Workbook book) {
    return book.sized().pieces().stream()
        .filter(piece -> piece.card().cuts().size() == 1)
        .map(Piece::name)
        .findFirst();
  }
}
