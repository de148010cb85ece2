package org.hemwright.checks.steps;

import static org.hemwright.checks.steps.MeantFor.ORDER;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/** Bands: joined to a ring, folded, sewn on. */
final class BandMistakes {
  private BandMistakes() {}

  static final List<StepMistake> ALL =
      List.of(
          ORDER.planted(
              "the ring of a band joined after the band is on",
              book ->
                  rings(book)
                      .flatMap(
                          ring ->
                              on(book, ring).stream()
                                  .map(
                                      band ->
                                          new Spoil(
                                              ring.id() + " after " + band.id(),
                                              book.movedAfter(ring, band),
                                              Set.of(band.id()))))),
          ORDER.planted(
              "a band folded before its ends are joined",
              book ->
                  book.acts(Act.Fold.class)
                      .flatMap(
                          fold ->
                              rings(book)
                                  .filter(ring -> pieceOf(book, ring).equals(piece(fold)))
                                  .map(
                                      ring ->
                                          new Spoil(
                                              fold.id() + " before " + ring.id(),
                                              book.movedBefore(fold, ring),
                                              Set.of(ring.id()))))),
          ORDER.leftOut(
              "a band not folded before it is sewn to itself",
              book -> book.acts(Act.Fold.class),
              (book, step) -> foldSeams(book, step)),
          ORDER.planted(
              "a band basted to itself before it is folded",
              book ->
                  book.acts(Act.Fold.class)
                      .flatMap(
                          fold ->
                              book.lines(Act.Line.BASTE)
                                  .filter(baste -> pieceOf(book, baste).equals(piece(fold)))
                                  .map(
                                      baste ->
                                          new Spoil(
                                              fold.id() + " after " + baste.id(),
                                              book.movedAfter(fold, baste),
                                              Set.of(baste.id()))))));

  /** The steps that join a band's ends: of two seams within one piece, the shorter. */
  private static Stream<Step> rings(Workbook book) {
    return book.acts(Act.Sew.class)
        .filter(
            step ->
                step.work(Work.OfSeam.class).size() == 1
                    && step.work(Work.OfSeam.class).stream()
                        .flatMap(work -> book.seam(work.seam()).stream())
                        .anyMatch(
                            seam ->
                                isRing(book, seam)
                                    && book.acts(Act.Fold.class)
                                        .anyMatch(
                                            fold -> piece(fold).equals(pieceOf(book, step)))));
  }

  /** Whether it joins two edges of one piece that are shorter than two others so joined. */
  private static boolean isRing(Workbook book, Seam seam) {
    return joinsTwoEdges(book, seam)
        && book.sized().seams().stream()
            .filter(other -> joinsTwoEdges(book, other))
            .anyMatch(
                other ->
                    firstOf(other).piece().equals(firstOf(seam).piece())
                        && length(book, other) > length(book, seam));
  }

  private static boolean joinsTwoEdges(Workbook book, Seam seam) {
    return book.isWithinOnePiece(seam)
        && Workbook.places(seam).map(EdgePlace::edge).distinct().count() == 2;
  }

  private static EdgePlace firstOf(Seam seam) {
    return seam.joins().get(0).layers().get(0).run().get(0);
  }

  private static double length(Workbook book, Seam seam) {
    EdgePlace place = firstOf(seam);
    return book.sized().piece(place.piece()).stream()
        .flatMap(piece -> piece.edge(place.edge()).stream())
        .mapToDouble(edge -> edge.path().length())
        .sum();
  }

  private static String pieceOf(Workbook book, Step step) {
    return step.work(Work.OfSeam.class).stream()
        .flatMap(work -> book.seam(work.seam()).stream())
        .flatMap(Workbook::places)
        .map(EdgePlace::piece)
        .findFirst()
        .orElse("");
  }

  private static String piece(Step step) {
    return step.work(Work.OfPiece.class).stream().map(Work.OfPiece::piece).findFirst().orElse("-");
  }

  /** The steps that sew a band to the garment. */
  static List<Step> on(Workbook book, Step ring) {
    String band = pieceOf(book, ring);
    return book.sewing()
        .filter(step -> !step.equals(ring))
        .filter(
            step ->
                step.work(Work.OfSeam.class).stream()
                    .flatMap(work -> book.seam(work.seam()).stream())
                    .anyMatch(
                        seam ->
                            !book.isWithinOnePiece(seam)
                                && Workbook.places(seam)
                                    .anyMatch(place -> place.piece().equals(band))))
        .toList();
  }

  private static Set<String> foldSeams(Workbook book, Step fold) {
    return book.sized().seams().stream()
        .filter(book::isWithinOnePiece)
        .filter(seam -> Workbook.places(seam).anyMatch(p -> p.piece().equals(piece(fold))))
        .map(seam -> "seam " + seam.name())
        .collect(Collectors.toSet());
  }
}
