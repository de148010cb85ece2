package org.hemwright.checks.steps;

import static org.hemwright.checks.steps.MeantFor.SETTINGS;
import static org.hemwright.checks.steps.MeantFor.STITCHES;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Amount;
import org.hemwright.pattern.make.Needle;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.make.Work;

/** Stitches, and what they are set to. */
final class StitchMistakes {
  private StitchMistakes() {}

  static final List<StepMistake> ALL =
      List.of(
          STITCHES.spoilt(
              "a stitch that does not stretch, on a knit",
              "straight",
              book -> mustStretch(book),
              (book, step) ->
                  book.with(
                      step, Altered.stitched(step, List.of(Stitch.of(Stitch.Kind.STRAIGHT, 2.5)))),
              About.ITSELF),
          STITCHES.spoilt(
              "such a stitch among the choices",
              "or straight",
              book -> mustStretch(book),
              (book, step) ->
                  book.with(
                      step,
                      Altered.stitched(
                          step,
                          Stream.concat(
                                  step.sewing().choices().stream(),
                                  Stream.of(Stitch.of(Stitch.Kind.STRAIGHT, 2.5)))
                              .toList())),
              About.ITSELF),
          STITCHES.otherwise(
              "a hem stitched beyond its depth",
              "beyond",
              book -> book.acts(Act.Hem.class).filter(step -> step.sewing().distance().isPresent()),
              step -> beyond(step),
              About.ITSELF),
          STITCHES.spoilt(
              "allowances trimmed to more than they are",
              "to 5 cm",
              book -> book.cutting(Act.Cutting.TRIM, Act.Cutting.GRADE),
              (book, step) ->
                  book.with(
                      step,
                      Altered.copy(
                          step,
                          step.id(),
                          new Act.CutInto(
                              ((Act.CutInto) step.act()).kind(), Optional.of(Amount.mm(50))),
                          step.work(),
                          step.sewing(),
                          step.press(),
                          step.leaves())),
              About.ITSELF),
          STITCHES.otherwise(
              "a seam sewn at another width than its allowance",
              "at 2 mm",
              book ->
                  book.acts(Act.Sew.class)
                      .filter(
                          step ->
                              step.sewing().distance().isEmpty()
                                  && !step.work(Work.OfSeam.class).isEmpty()),
              step -> Altered.at(step, 2, Sewing.Distance.From.RAW_EDGE),
              About.SEAMS),
          STITCHES.otherwise(
              "staystitching beyond the allowance",
              "at 9 cm",
              book ->
                  book.lines(Act.Line.STAYSTITCH)
                      .filter(
                          step ->
                              step.work(Work.OfEdge.class).stream()
                                  .allMatch(work -> allowance(book, work) > 0)),
              step -> Altered.at(step, 90, Sewing.Distance.From.RAW_EDGE),
              About.ITSELF),
          STITCHES.otherwise(
              "a patch stitched beyond what is turned under",
              "at 9 cm",
              book ->
                  book.sewing()
                      .filter(
                          step ->
                              step.sewing().distance().isPresent()
                                  && book.placed(step)
                                  && PatchMistakes.isTurnedUnder(book, step)),
              step -> Altered.at(step, 90, Sewing.Distance.From.EDGE),
              About.ITSELF),
          STITCHES.otherwise(
              "rows of a hem beyond its depth",
              "two rows",
              book -> book.acts(Act.Hem.class).filter(step -> step.sewing().distance().isPresent()),
              step -> rows(step, 90),
              About.ITSELF),
          STITCHES.otherwise(
              "a curve clipped that takes wedges, or the other way round",
              "other cut",
              book ->
                  book.cutting(Act.Cutting.CLIP, Act.Cutting.NOTCH)
                      .filter(step -> isPlainCurve(book, step)),
              step -> otherCut(step),
              About.ITSELF),
          STITCHES.spoilt(
              "an edge gathered that has nothing to gather",
              "gathered",
              book -> book.acts(Act.Hem.class),
              (book, step) ->
                  book.followed(
                      step,
                      Altered.copy(
                          step,
                          "gather_it",
                          new Act.Stitching(Act.Line.GATHER),
                          step.work(),
                          step.sewing(),
                          Optional.empty(),
                          List.of())),
              (book, step) -> Set.of("gather_it")),
          STITCHES.spoilt(
              "a buttonhole shorter than its button",
              "3 mm",
              book -> book.fastened(Act.Fastening.BUTTONHOLE).filter(step -> isCountedOut(book)),
              (book, step) ->
                  book.with(
                      step,
                      Altered.acting(
                          step,
                          new Act.Fasten(
                              Act.Fastening.BUTTONHOLE,
                              ((Act.Fasten) step.act()).count(),
                              Amount.mm(3)))),
              About.ITSELF),
          SETTINGS.spoilt(
              "a stitch of the hand on the machine",
              "slip stitch",
              book -> book.sewing(),
              (book, step) ->
                  book.with(
                      step, Altered.stitched(step, List.of(Stitch.of(Stitch.Kind.SLIP_STITCH)))),
              About.ITSELF),
          SETTINGS.spoilt(
              "a stitch of the machine by hand",
              "overlock",
              book -> book.acts(Act.HandSew.class),
              (book, step) ->
                  book.with(
                      step, Altered.stitched(step, List.of(Stitch.of(Stitch.Kind.OVERLOCK_THREE)))),
              About.ITSELF),
          SETTINGS.spoilt(
              "a stitch longer than a machine makes",
              "25 mm",
              book -> book.sewing(),
              (book, step) ->
                  book.with(
                      step, Altered.stitched(step, List.of(Stitch.of(Stitch.Kind.STRETCH, 25)))),
              About.ITSELF),
          SETTINGS.spoilt(
              "a zigzag wider than a machine makes",
              "25 mm",
              book -> book.acts(Act.Finish.class),
              (book, step) ->
                  book.with(step, Altered.stitched(step, List.of(Stitch.zigzag(25, 2)))),
              About.ITSELF),
          SETTINGS.otherwise(
              "a needle that cuts the cloth",
              "leather",
              book -> book.sewing(),
              step -> needle(step),
              About.ITSELF));

  /** Steps on knits that sew what goes round the body, or join two pieces. */
  private static Stream<Step> mustStretch(Workbook book) {
    Stream<Step> seams =
        Stream.concat(book.sewing(), book.lines(Act.Line.TOPSTITCH))
            .filter(book::isKnit)
            .filter(
                step ->
                    step.work(Work.OfSeam.class).stream()
                        .flatMap(work -> book.seam(work.seam()).stream())
                        .anyMatch(seam -> !book.isPlaced(seam) && !book.isWithinOnePiece(seam)));
    Stream<Step> hems =
        book.acts(Act.Hem.class).filter(book::isKnit).filter(step -> !book.endsInPlaced(step));
    Stream<Step> closes =
        book.closing()
            .filter(step -> step.act() instanceof Act.Close && closesSeam(book, step))
            .filter(book::isKnit);
    return Stream.of(seams, hems, closes).flatMap(each -> each);
  }

  private static boolean closesSeam(Workbook book, Step close) {
    Set<String> leaving = book.leaving(close);
    return book.steps().stream()
        .filter(step -> leaving.contains(step.id()))
        .anyMatch(step -> !step.work(Work.OfSeam.class).isEmpty());
  }

  private static Step beyond(Step step) {
    Sewing own = step.sewing();
    return Altered.copy(
        step,
        step.id(),
        step.act(),
        step.work(),
        new Sewing(
            own.choices(),
            own.raw(),
            own.needle(),
            own.rows(),
            own.apart(),
            Optional.of(new Sewing.Distance(Amount.mm(90), own.distance().orElseThrow().from()))),
        step.press(),
        step.leaves());
  }

  /** Whether there are as many buttons as buttonholes. */
  private static boolean isCountedOut(Workbook book) {
    return count(book, Act.Fastening.BUTTON) == count(book, Act.Fastening.BUTTONHOLE);
  }

  private static int count(Workbook book, Act.Fastening kind) {
    return book.fastened(kind).mapToInt(step -> ((Act.Fasten) step.act()).count()).sum();
  }

  private static Step rows(Step step, double apart) {
    Sewing own = step.sewing();
    return Altered.sewn(
        step,
        new Sewing(
            own.choices(),
            own.raw(),
            own.needle(),
            2,
            Optional.of(Amount.mm(apart)),
            own.distance()));
  }

  private static Step needle(Step step) {
    Sewing own = step.sewing();
    Needle leather = new Needle(Needle.Point.LEATHER, 90, 90, false, Optional.empty());
    return Altered.sewn(
        step,
        new Sewing(
            own.choices(),
            own.raw(),
            Optional.of(leather),
            own.rows(),
            own.apart(),
            own.distance()));
  }

  private static double allowance(Workbook book, Work.OfEdge work) {
    return book.sized().piece(work.piece()).stream()
        .flatMap(piece -> piece.edge(work.edge()).stream())
        .mapToDouble(edge -> edge.allowance().width())
        .sum();
  }

  /** Whether what is cut into bends one way: it has no darts. */
  private static boolean isPlainCurve(Workbook book, Step cut) {
    return cut.work(Work.OfSeam.class).stream()
        .flatMap(work -> book.seam(work.seam()).stream())
        .flatMap(Workbook::places)
        .allMatch(
            place ->
                book.sized().piece(place.piece()).stream()
                    .flatMap(piece -> piece.intakes().stream())
                    .noneMatch(intake -> intake.edge().equals(place.edge())));
  }

  private static Step otherCut(Step step) {
    Act.CutInto cut = (Act.CutInto) step.act();
    Act.Cutting other = cut.kind() == Act.Cutting.CLIP ? Act.Cutting.NOTCH : Act.Cutting.CLIP;
    return Altered.acting(step, new Act.CutInto(other, cut.to()));
  }
}
