package org.hemwright.checks.steps;

import static org.hemwright.checks.steps.MeantFor.ORDER;

import java.util.List;
import java.util.stream.Collectors;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/** Patches: their edges turned under, and sewn on while the cloth lies flat. */
final class PatchMistakes {
  private PatchMistakes() {}

  static final List<StepMistake> ALL =
      List.of(
          ORDER.tooLate(
              "a pocket's top hemmed when the pocket is on",
              book -> book.acts(Act.Hem.class).filter(step -> book.endsInPlaced(step))),
          ORDER.tooLate(
              "a placement line marked when the patch is on",
              book -> book.handled(Act.Handling.MARK).filter(step -> book.marksPlace(step))),
          ORDER.tooLate(
              "a patch sewn on when the cloth is a tube",
              book -> book.sewing().filter(step -> placedOnTube(book, step))),
          ORDER.leftOut(
              "a patch sewn on whose edges are not turned under",
              book -> book.acts(Act.Press.class).filter(step -> turnsUnder(book, step)),
              About.EDGES),
          ORDER.tooLate(
              "edges turned under when they are stitched down",
              book -> book.acts(Act.Press.class).filter(step -> turnsUnder(book, step))));

  /** Whether a patch goes on a piece that two seams join to one other, or to itself: a tube. */
  private static boolean placedOnTube(Workbook book, Step step) {
    return step.work(Work.OfSeam.class).stream()
        .flatMap(work -> book.seam(work.seam()).stream())
        .filter(book::isPlaced)
        .flatMap(Workbook::places)
        .filter(
            place -> book.sized().piece(place.piece()).flatMap(p -> p.edge(place.edge())).isEmpty())
        .map(EdgePlace::piece)
        .anyMatch(piece -> isTube(book, piece));
  }

  private static boolean isTube(Workbook book, String piece) {
    List<Seam> joining =
        book.sized().seams().stream()
            .filter(seam -> !book.isPlaced(seam) && Workbook.pieces(seam).contains(piece))
            .filter(seam -> seam.joins().get(0).layers().size() == 2)
            .toList();
    return joining.stream()
        .filter(seam -> Workbook.pieces(seam).size() == 2)
        .flatMap(seam -> seam.joins().stream().map(join -> Workbook.pieces(seam)))
        .collect(Collectors.groupingBy(each -> each, Collectors.counting()))
        .values()
        .stream()
        .anyMatch(count -> count > 1);
  }

  private static boolean turnsUnder(Workbook book, Step press) {
    return press.work(Work.OfEdge.class).stream()
        .anyMatch(
            work ->
                book.seamsOf(work.piece(), work.edge()).stream()
                    .flatMap(name -> book.seam(name).stream())
                    .anyMatch(
                        seam ->
                            book.isPlaced(seam)
                                && book.sewn(seam.name())
                                    .filter(sewn -> book.place(sewn) > book.place(press))
                                    .isPresent()));
  }

  /** Whether the edges of a patch are turned under one by one, not as a bag is turned out. */
  static boolean isTurnedUnder(Workbook book, Step sewn) {
    return book.acts(Act.Press.class)
        .filter(press -> turnsUnder(book, press))
        .flatMap(press -> press.work(Work.OfEdge.class).stream())
        .anyMatch(work -> book.piecesOf(sewn).contains(work.piece()));
  }
}
