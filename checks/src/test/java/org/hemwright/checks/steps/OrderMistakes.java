package org.hemwright.checks.steps;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Work;

/** What is done too early or too late. */
final class OrderMistakes {
  private OrderMistakes() {}

  static final List<StepMistake> ALL =
      List.of(
          new StepMistake(
              "a dart or pleat closed when its edge is sewn",
              book ->
                  book.each(
                      book.acts(Act.Close.class),
                      step -> !step.work(Work.OfIntake.class).isEmpty(),
                      "late",
                      book::movedLast,
                      Planting.ORDER,
                      step -> Planting.intakeEdges(book, step))),
          new StepMistake(
              "a seam sewn before the one that it runs over",
              book ->
                  book.each(
                      book.sewing(),
                      step -> Planting.runsOver(book, step),
                      "first",
                      book::movedFirst,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "the ring of a band joined after the band is on",
              book ->
                  Planting.rings(book)
                      .flatMap(
                          ring ->
                              Planting.on(book, ring).stream()
                                  .map(
                                      band ->
                                          book.spoilt(
                                              ring.id() + " after " + band.id(),
                                              book.movedAfter(ring, band),
                                              Planting.ORDER,
                                              Set.of(band.id()))))),
          new StepMistake(
              "a band folded before its ends are joined",
              book ->
                  book.acts(Act.Fold.class)
                      .flatMap(
                          fold ->
                              Planting.rings(book)
                                  .filter(
                                      ring ->
                                          Planting.pieceOf(book, ring).equals(Planting.piece(fold)))
                                  .map(
                                      ring ->
                                          book.spoilt(
                                              fold.id() + " before " + ring.id(),
                                              book.movedBefore(fold, ring),
                                              Planting.ORDER,
                                              Set.of(ring.id()))))),
          new StepMistake(
              "a band not folded before it is sewn to itself",
              book ->
                  book.each(
                      book.acts(Act.Fold.class),
                      s -> true,
                      "without",
                      book::without,
                      Planting.ORDER,
                      step -> Planting.foldSeams(book, step))),
          new StepMistake(
              "a hem turned before the seams that end in it",
              book ->
                  book.each(
                      book.acts(Act.Hem.class),
                      step -> Planting.endsInSeams(book, step),
                      "first",
                      book::movedFirst,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "a pocket's top hemmed when the pocket is on",
              book ->
                  book.each(
                      book.acts(Act.Hem.class),
                      step -> Planting.endsInPlaced(book, step),
                      "last",
                      book::movedLast,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "a patch sewn on when the cloth is a tube",
              book ->
                  book.each(
                      book.sewing(),
                      step -> Planting.placedOnTube(book, step),
                      "last",
                      book::movedLast,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "a patch sewn on whose edges are not turned under",
              book ->
                  book.each(
                      book.acts(Act.Press.class),
                      step -> Planting.turnsUnder(book, step),
                      "without",
                      book::without,
                      Planting.ORDER,
                      Planting::edges)),
          new StepMistake(
              "edges turned under when they are stitched down",
              book ->
                  book.each(
                      book.acts(Act.Press.class),
                      step -> Planting.turnsUnder(book, step),
                      "last",
                      book::movedLast,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "a seam finished when it is crossed or shut in",
              book ->
                  book.each(
                      book.acts(Act.Finish.class),
                      step ->
                          step.work(Work.OfSeam.class).stream()
                              .anyMatch(work -> Planting.isCrossed(book, work, step)),
                      "last",
                      book::movedLast,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "a cut edge finished when it is hemmed",
              book ->
                  book.each(
                      book.acts(Act.Finish.class),
                      step -> Planting.isHemmedLater(book, step),
                      "last",
                      book::movedLast,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "an edge staystitched when it is sewn",
              book ->
                  book.each(
                      book.lines(Act.Line.STAYSTITCH),
                      s -> true,
                      "last",
                      book::movedLast,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "a seam pinned or basted when it is sewn",
              book ->
                  book.each(
                      Stream.concat(book.handled(Act.Handling.PIN), book.lines(Act.Line.BASTE)),
                      step -> !step.work(Work.OfSeam.class).isEmpty(),
                      "last",
                      book::movedLast,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "topstitching before its seam",
              book ->
                  book.each(
                      book.lines(Act.Line.TOPSTITCH),
                      step -> !step.work(Work.OfSeam.class).isEmpty(),
                      "first",
                      book::movedFirst,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "understitching before its seam",
              book ->
                  book.each(
                      book.lines(Act.Line.UNDERSTITCH),
                      s -> true,
                      "first",
                      book::movedFirst,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "allowances trimmed, graded, clipped or notched before their seam",
              book ->
                  book.each(
                      book.acts(Act.CutInto.class),
                      step -> !step.work(Work.OfSeam.class).isEmpty(),
                      "first",
                      book::movedFirst,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "allowances trimmed, graded, clipped or notched when they are shut in",
              book ->
                  book.each(
                      book.acts(Act.CutInto.class),
                      step -> Planting.isShutIn(book, step),
                      "last",
                      book::movedLast,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "a seam pressed before it is sewn",
              book ->
                  book.each(
                      book.acts(Act.Press.class),
                      step -> !step.work(Work.OfSeam.class).isEmpty(),
                      "first",
                      book::movedFirst,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "a placement line marked when the patch is on",
              book ->
                  book.each(
                      book.handled(Act.Handling.MARK),
                      step -> Planting.marksPlace(book, step),
                      "last",
                      book::movedLast,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "a bar tack before what it holds",
              book ->
                  book.each(
                      book.acts(Act.Fasten.class),
                      step -> !step.work(Work.OfMark.class).isEmpty(),
                      "first",
                      book::movedFirst,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "interfacing fused when the piece is sewn",
              book ->
                  book.each(
                      book.acts(Act.Fuse.class),
                      s -> true,
                      "last",
                      book::movedLast,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "a button before its buttonhole",
              book ->
                  book.acts(Act.Fasten.class).anyMatch(Planting::isButton)
                      ? book.each(
                          book.acts(Act.Fasten.class),
                          Planting::isButton,
                          "first",
                          book::movedFirst,
                          Planting.ORDER,
                          Planting::itself)
                      : Stream.of(
                          book.spoilt(
                              "button first",
                              book.added(
                                  Planting.fastener(book, Act.Fastening.BUTTON, 3, "sew_buttons"),
                                  Planting.fastener(
                                      book, Act.Fastening.BUTTONHOLE, 3, "work_holes")),
                              Planting.ORDER,
                              Set.of("sew_buttons")))),
          new StepMistake(
              "a button too few",
              book ->
                  Stream.of(
                      book.spoilt(
                          "too few",
                          book.added(
                              Planting.fastener(book, Act.Fastening.BUTTONHOLE, 40, "work_holes"),
                              Planting.fastener(book, Act.Fastening.BUTTON, 39, "sew_buttons")),
                          Planting.ORDER,
                          Set.of("make")))),
          new StepMistake(
              "no test of the stitch on a knit",
              book ->
                  book.each(
                      book.handled(Act.Handling.TEST),
                      step -> book.sized().pieces().stream().anyMatch(p -> book.isKnit(p.name())),
                      "without",
                      book::without,
                      Planting.ORDER,
                      step -> Set.of("make"))),
          new StepMistake(
              "the stitch tested at the end",
              book ->
                  book.each(
                      book.handled(Act.Handling.TEST),
                      s -> true,
                      "last",
                      book::movedLast,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "seams sewn in one pass that share no edge", book -> Planting.strangers(book)),
          new StepMistake(
              "a seam set in while both its layers lie flat",
              book ->
                  book.each(
                      book.acts(Act.Sew.class),
                      step -> Planting.liesFlat(book, step),
                      "set in",
                      step -> book.with(step, Workbook.acting(step, new Act.SetIn())),
                      Planting.ORDER,
                      Planting::seams)),
          new StepMistake(
              "a round set in before it is closed",
              book ->
                  book.each(
                      book.acts(Act.SetIn.class),
                      s -> true,
                      "first",
                      book::movedFirst,
                      Planting.ORDER,
                      Planting::seams)),
          new StepMistake(
              "a zip put in when the edge at its end is faced",
              book ->
                  book.each(
                      book.acts(Act.InsertZip.class),
                      step -> book.lines(Act.Line.UNDERSTITCH).findAny().isPresent(),
                      "last",
                      book::movedLast,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "buttonholes worked before the piece is folded, fused or turned",
              book ->
                  book.each(
                      Planting.fastened(book, Act.Fastening.BUTTONHOLE),
                      step -> Planting.isLayered(book, step),
                      "first",
                      book::movedFirst,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "an eyelet worked through a finished casing",
              book ->
                  book.each(
                      Planting.fastened(book, Act.Fastening.EYELET),
                      s -> true,
                      "last",
                      book::movedLast,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "a bag with no opening to turn it through",
              book ->
                  Planting.turnings(book)
                      .map(
                          turning ->
                              book.spoilt(
                                  "shut " + turning.close().id(),
                                  Planting.without(book, turning),
                                  Planting.ORDER,
                                  Set.of(turning.turn().id())))),
          new StepMistake(
              "a folded piece turned inside out",
              book ->
                  book.each(
                      book.acts(Act.Fold.class),
                      step -> Planting.isTurnedLater(book, step),
                      "other way",
                      step ->
                          book.with(
                              step,
                              Workbook.acting(
                                  step, new Act.Fold(((Act.Fold) step.act()).along(), true))),
                      Planting.ORDER,
                      step -> Planting.turnsOf(book, step))),
          new StepMistake(
              "a piece turned out twice",
              book ->
                  book.each(
                      book.handled(Act.Handling.TURN_OUT),
                      s -> true,
                      "twice",
                      step -> book.followed(step, Workbook.again(step)),
                      Planting.ORDER,
                      Planting.Again::of)),
          new StepMistake(
              "interfacing fused twice",
              book ->
                  book.each(
                      book.acts(Act.Fuse.class),
                      s -> true,
                      "twice",
                      step -> book.followed(step, Workbook.again(step)),
                      Planting.ORDER,
                      Planting.Again::of)),
          new StepMistake(
              "a ring of elastic sewn to an edge that lies open",
              book ->
                  book.each(
                      book.acts(Act.Apply.class),
                      s -> true,
                      "first",
                      step -> Planting.ringFirst(book, step),
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "elastic sewn to a hemmed edge",
              book ->
                  book.each(
                      book.acts(Act.Apply.class),
                      step -> Planting.isHemmedLater(book, step),
                      "last",
                      book::movedLast,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "allowances cut down before their seam, edge by edge",
              book ->
                  book.each(
                      book.cutting(Act.Cutting.TRIM, Act.Cutting.GRADE),
                      s -> true,
                      "first, by edge",
                      step -> Planting.byEdgeFirst(book, step),
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "understitching when the facing is sewn down",
              book ->
                  book.each(
                      book.lines(Act.Line.UNDERSTITCH),
                      step -> Planting.isSewnDown(book, step),
                      "last",
                      book::movedLast,
                      Planting.ORDER,
                      Planting::itself)),
          new StepMistake(
              "a band basted to itself before it is folded",
              book ->
                  book.acts(Act.Fold.class)
                      .flatMap(
                          fold ->
                              book.lines(Act.Line.BASTE)
                                  .filter(
                                      baste ->
                                          Planting.pieceOf(book, baste)
                                              .equals(Planting.piece(fold)))
                                  .map(
                                      baste ->
                                          book.spoilt(
                                              fold.id() + " after " + baste.id(),
                                              book.movedAfter(fold, baste),
                                              Planting.ORDER,
                                              Set.of(baste.id()))))),
          new StepMistake(
              "edges bound before the seams that end there",
              book ->
                  book.each(
                      book.acts(Act.Bind.class),
                      step -> step.work(Work.OfEdge.class).size() > 1,
                      "first",
                      book::movedFirst,
                      Planting.ORDER,
                      Planting::itself)));
}
