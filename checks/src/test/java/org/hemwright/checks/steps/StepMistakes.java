package org.hemwright.checks.steps;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Amount;
import org.hemwright.pattern.make.PressDirection;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/** Every way to go wrong in the steps that the bench knows. */
final class StepMistakes {
  private static final String EDGES = "making-edges";
  private static final String ORDER = "making-order";
  private static final String OPENINGS = "making-openings";
  private static final String PRESSING = "making-pressing";
  private static final String STITCHES = "making-stitches";
  private static final String MARKS = "making-marks";
  private static final Stitch STRAIGHT = Stitch.of(Stitch.Kind.STRAIGHT, 2.5);

  private StepMistakes() {}

  static final List<StepMistake> ALL =
      List.of(
          // --- what is left out or done twice
          new StepMistake(
              "a seam left out",
              book ->
                  book.each(
                      book.sewing(),
                      s -> true,
                      "without",
                      book::without,
                      EDGES,
                      StepMistakes::seams)),
          new StepMistake(
              "a seam sewn twice",
              book -> book.each(book.sewing(), s -> true, "twice", twice(book), EDGES, Again::of)),
          new StepMistake(
              "a hem left out",
              book ->
                  book.each(
                      book.acts(Act.Hem.class),
                      s -> true,
                      "without",
                      book::without,
                      EDGES,
                      StepMistakes::edges)),
          new StepMistake(
              "a hem turned twice over",
              book ->
                  book.each(
                      book.acts(Act.Hem.class), s -> true, "twice", twice(book), EDGES, Again::of)),
          new StepMistake(
              "an edge hemmed that a seam takes",
              book ->
                  book.sized().seams().stream()
                      .filter(seam -> !book.isPlaced(seam))
                      .flatMap(seam -> hemmed(book, seam))),
          new StepMistake(
              "a finish left out on cloth that frays",
              book ->
                  book.each(
                      book.acts(Act.Finish.class),
                      step -> step.sewing().raw().isEmpty() && isNeeded(book, step),
                      "without",
                      book::without,
                      EDGES,
                      step -> finished(book, step))),
          new StepMistake(
              "edges finished twice",
              book ->
                  book.each(
                      book.acts(Act.Finish.class).filter(step -> step.sewing().raw().isEmpty()),
                      s -> true,
                      "twice",
                      step -> book.followed(step, Workbook.again(step)),
                      EDGES,
                      Again::of)),
          new StepMistake(
              "allowances trimmed after their finish",
              book ->
                  book.each(
                      book.cutting(Act.Cutting.TRIM, Act.Cutting.GRADE),
                      step -> finishOf(book, step).isPresent(),
                      "late",
                      step -> book.movedAfter(step, finishOf(book, step).orElseThrow()),
                      EDGES,
                      StepMistakes::itself)),
          new StepMistake(
              "a dart or pleat left open",
              book ->
                  book.each(
                      book.acts(Act.Close.class),
                      step -> !step.work(Work.OfIntake.class).isEmpty(),
                      "without",
                      book::without,
                      EDGES,
                      step -> texts(step.work(Work.OfIntake.class)))),

          // --- what is done too early or too late
          new StepMistake(
              "a dart or pleat closed when its edge is sewn",
              book ->
                  book.each(
                      book.acts(Act.Close.class),
                      step -> !step.work(Work.OfIntake.class).isEmpty(),
                      "late",
                      book::movedLast,
                      ORDER,
                      step -> intakeEdges(book, step))),
          new StepMistake(
              "a seam sewn before the one that it runs over",
              book ->
                  book.each(
                      book.sewing(),
                      step -> runsOver(book, step),
                      "first",
                      book::movedFirst,
                      ORDER,
                      StepMistakes::itself)),
          new StepMistake(
              "the ring of a band joined after the band is on",
              book ->
                  rings(book)
                      .flatMap(
                          ring ->
                              on(book, ring).stream()
                                  .map(
                                      band ->
                                          book.spoilt(
                                              ring.id() + " after " + band.id(),
                                              book.movedAfter(ring, band),
                                              ORDER,
                                              Set.of(band.id()))))),
          new StepMistake(
              "a band folded before its ends are joined",
              book ->
                  book.acts(Act.Fold.class)
                      .flatMap(
                          fold ->
                              rings(book)
                                  .filter(ring -> pieceOf(book, ring).equals(piece(fold)))
                                  .map(
                                      ring ->
                                          book.spoilt(
                                              fold.id() + " before " + ring.id(),
                                              book.movedBefore(fold, ring),
                                              ORDER,
                                              Set.of(ring.id()))))),
          new StepMistake(
              "a band not folded before it is sewn to itself",
              book ->
                  book.each(
                      book.acts(Act.Fold.class),
                      s -> true,
                      "without",
                      book::without,
                      ORDER,
                      step -> foldSeams(book, step))),
          new StepMistake(
              "a hem turned before the seams that end in it",
              book ->
                  book.each(
                      book.acts(Act.Hem.class),
                      step -> endsInSeams(book, step),
                      "first",
                      book::movedFirst,
                      ORDER,
                      StepMistakes::itself)),
          new StepMistake(
              "a pocket's top hemmed when the pocket is on",
              book ->
                  book.each(
                      book.acts(Act.Hem.class),
                      step -> endsInPlaced(book, step),
                      "last",
                      book::movedLast,
                      ORDER,
                      StepMistakes::itself)),
          new StepMistake(
              "a patch sewn on when the cloth is a tube",
              book ->
                  book.each(
                      book.sewing(),
                      step -> placed(book, step),
                      "last",
                      book::movedLast,
                      ORDER,
                      StepMistakes::itself)),
          new StepMistake(
              "a patch sewn on whose edges are not turned under",
              book ->
                  book.each(
                      book.acts(Act.Press.class),
                      step -> turnsUnder(book, step),
                      "without",
                      book::without,
                      ORDER,
                      StepMistakes::edges)),
          new StepMistake(
              "edges turned under when they are stitched down",
              book ->
                  book.each(
                      book.acts(Act.Press.class),
                      step -> turnsUnder(book, step),
                      "last",
                      book::movedLast,
                      ORDER,
                      StepMistakes::itself)),
          new StepMistake(
              "a seam finished when it is crossed or shut in",
              book ->
                  book.each(
                      book.acts(Act.Finish.class),
                      step ->
                          step.work(Work.OfSeam.class).stream()
                              .anyMatch(work -> isCrossed(book, work, step)),
                      "last",
                      book::movedLast,
                      ORDER,
                      StepMistakes::itself)),
          new StepMistake(
              "a cut edge finished when it is hemmed",
              book ->
                  book.each(
                      book.acts(Act.Finish.class),
                      step -> isHemmedLater(book, step),
                      "last",
                      book::movedLast,
                      ORDER,
                      StepMistakes::itself)),
          new StepMistake(
              "an edge staystitched when it is sewn",
              book ->
                  book.each(
                      book.lines(Act.Line.STAYSTITCH),
                      s -> true,
                      "last",
                      book::movedLast,
                      ORDER,
                      StepMistakes::itself)),
          new StepMistake(
              "a seam pinned or basted when it is sewn",
              book ->
                  book.each(
                      Stream.concat(book.handled(Act.Handling.PIN), book.lines(Act.Line.BASTE)),
                      step -> !step.work(Work.OfSeam.class).isEmpty(),
                      "last",
                      book::movedLast,
                      ORDER,
                      StepMistakes::itself)),
          new StepMistake(
              "topstitching before its seam",
              book ->
                  book.each(
                      book.lines(Act.Line.TOPSTITCH),
                      step -> !step.work(Work.OfSeam.class).isEmpty(),
                      "first",
                      book::movedFirst,
                      ORDER,
                      StepMistakes::itself)),
          new StepMistake(
              "understitching before its seam",
              book ->
                  book.each(
                      book.lines(Act.Line.UNDERSTITCH),
                      s -> true,
                      "first",
                      book::movedFirst,
                      ORDER,
                      StepMistakes::itself)),
          new StepMistake(
              "allowances trimmed, graded, clipped or notched before their seam",
              book ->
                  book.each(
                      book.acts(Act.CutInto.class),
                      step -> !step.work(Work.OfSeam.class).isEmpty(),
                      "first",
                      book::movedFirst,
                      ORDER,
                      StepMistakes::itself)),
          new StepMistake(
              "allowances trimmed, graded, clipped or notched when they are shut in",
              book ->
                  book.each(
                      book.acts(Act.CutInto.class),
                      step -> isShutIn(book, step),
                      "last",
                      book::movedLast,
                      ORDER,
                      StepMistakes::itself)),
          new StepMistake(
              "a seam pressed before it is sewn",
              book ->
                  book.each(
                      book.acts(Act.Press.class),
                      step -> !step.work(Work.OfSeam.class).isEmpty(),
                      "first",
                      book::movedFirst,
                      ORDER,
                      StepMistakes::itself)),
          new StepMistake(
              "a placement line marked when the patch is on",
              book ->
                  book.each(
                      book.handled(Act.Handling.MARK),
                      step -> marksPlace(book, step),
                      "last",
                      book::movedLast,
                      ORDER,
                      StepMistakes::itself)),
          new StepMistake(
              "a bar tack before what it holds",
              book ->
                  book.each(
                      book.acts(Act.Fasten.class),
                      step -> !step.work(Work.OfMark.class).isEmpty(),
                      "first",
                      book::movedFirst,
                      ORDER,
                      StepMistakes::itself)),
          new StepMistake(
              "interfacing fused when the piece is sewn",
              book ->
                  book.each(
                      book.acts(Act.Fuse.class),
                      s -> true,
                      "last",
                      book::movedLast,
                      ORDER,
                      StepMistakes::itself)),
          new StepMistake(
              "a button before its buttonhole",
              book ->
                  book.acts(Act.Fasten.class).anyMatch(StepMistakes::isButton)
                      ? book.each(
                          book.acts(Act.Fasten.class),
                          StepMistakes::isButton,
                          "first",
                          book::movedFirst,
                          ORDER,
                          StepMistakes::itself)
                      : Stream.of(
                          book.spoilt(
                              "button first",
                              book.added(
                                  fastener(book, Act.Fastening.BUTTON, 3, "sew_buttons"),
                                  fastener(book, Act.Fastening.BUTTONHOLE, 3, "work_holes")),
                              ORDER,
                              Set.of("sew_buttons")))),
          new StepMistake(
              "a button too few",
              book ->
                  Stream.of(
                      book.spoilt(
                          "too few",
                          book.added(
                              fastener(book, Act.Fastening.BUTTONHOLE, 40, "work_holes"),
                              fastener(book, Act.Fastening.BUTTON, 39, "sew_buttons")),
                          ORDER,
                          Set.of("make")))),
          new StepMistake(
              "no test of the stitch on a knit",
              book ->
                  book.each(
                      book.handled(Act.Handling.TEST),
                      step -> book.sized().pieces().stream().anyMatch(p -> book.isKnit(p.name())),
                      "without",
                      book::without,
                      ORDER,
                      step -> Set.of("make"))),
          new StepMistake(
              "the stitch tested at the end",
              book ->
                  book.each(
                      book.handled(Act.Handling.TEST),
                      s -> true,
                      "last",
                      book::movedLast,
                      ORDER,
                      StepMistakes::itself)),

          // --- openings, elastics, zips
          new StepMistake(
              "an opening never closed",
              book ->
                  book.each(
                      closing(book),
                      s -> true,
                      "without",
                      book::without,
                      OPENINGS,
                      step -> leaving(book, step))),
          new StepMistake(
              "an opening closed before it is left",
              book ->
                  book.each(
                      closing(book),
                      s -> true,
                      "first",
                      book::movedFirst,
                      OPENINGS,
                      StepMistakes::itself)),
          new StepMistake(
              "an opening closed twice",
              book ->
                  book.each(closing(book), s -> true, "twice", twice(book), OPENINGS, Again::of)),
          new StepMistake(
              "an opening closed before the elastic is in",
              book ->
                  book.acts(Act.ThreadThrough.class)
                      .flatMap(
                          thread ->
                              closing(book)
                                  .filter(close -> opens(close, thread))
                                  .map(
                                      close ->
                                          book.spoilt(
                                              close.id() + " before " + thread.id(),
                                              book.movedBefore(close, thread),
                                              OPENINGS,
                                              Set.of(close.id()))))),
          new StepMistake(
              "an opening too narrow for its elastic",
              book ->
                  book.acts(Act.ThreadThrough.class)
                      .flatMap(
                          thread ->
                              book.steps().stream()
                                  .filter(step -> leaves(step, thread))
                                  .map(
                                      step ->
                                          book.spoilt(
                                              "narrow " + step.id(),
                                              book.with(step, narrowed(step)),
                                              OPENINGS,
                                              Set.of(step.id()))))),
          new StepMistake(
              "elastic drawn in before there is a casing",
              book ->
                  book.each(
                      book.acts(Act.ThreadThrough.class),
                      s -> true,
                      "first",
                      book::movedFirst,
                      OPENINGS,
                      StepMistakes::itself)),
          new StepMistake(
              "elastic left out",
              book ->
                  book.each(
                      book.acts(Act.ThreadThrough.class),
                      s -> true,
                      "without",
                      book::without,
                      OPENINGS,
                      step -> held("elastic ", step))),
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
                                              OPENINGS,
                                              Set.of(thread.id()))))),
          new StepMistake(
              "elastic not joined before its casing is closed",
              book ->
                  book.each(
                      book.acts(Act.JoinEnds.class),
                      s -> true,
                      "last",
                      book::movedLast,
                      OPENINGS,
                      StepMistakes::itself)),
          new StepMistake(
              "elastic never joined",
              book ->
                  book.each(
                      book.acts(Act.JoinEnds.class),
                      s -> true,
                      "without",
                      book::without,
                      OPENINGS,
                      step -> held("elastic ", step))),
          new StepMistake(
              "elastic not tried on",
              book ->
                  book.each(
                      book.handled(Act.Handling.TRY_ON),
                      step -> triesElastic(book, step),
                      "without",
                      book::without,
                      OPENINGS,
                      step -> elastics(book))),
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
                      OPENINGS,
                      StepMistakes::itself)),

          // --- pressing
          new StepMistake(
              "a seam crossed that is not pressed",
              book ->
                  book.each(
                      book.sewing(),
                      step -> step.press().isPresent() && isCrossed(book, step),
                      "unpressed",
                      step -> book.with(step, Workbook.pressed(step, Optional.empty())),
                      PRESSING,
                      StepMistakes::seams)),
          new StepMistake(
              "allowances finished as one pressed open",
              book ->
                  book.each(
                      book.acts(Act.Finish.class),
                      step ->
                          step.act() instanceof Act.Finish finish
                              && finish.together()
                              && !step.work(Work.OfSeam.class).isEmpty(),
                      "open",
                      step ->
                          book.with(
                              step, Workbook.pressed(step, Optional.of(new PressDirection.Open()))),
                      PRESSING,
                      step -> all(itself(step), seams(step)))),
          new StepMistake(
              "a band's three layers pressed open",
              book ->
                  book.each(
                      book.acts(Act.Attach.class),
                      step -> step.work(Work.OfSeam.class).size() > 1,
                      "open",
                      step ->
                          book.with(
                              step, Workbook.pressed(step, Optional.of(new PressDirection.Open()))),
                      PRESSING,
                      StepMistakes::itself)),
          new StepMistake("two seams that meet pressed to one side", book -> stacked(book)),

          // --- stitches
          new StepMistake(
              "a stitch that does not stretch, on a knit",
              book ->
                  book.each(
                      mustStretch(book),
                      s -> true,
                      "straight",
                      step -> book.with(step, Workbook.stitched(step, List.of(STRAIGHT))),
                      STITCHES,
                      StepMistakes::itself)),
          new StepMistake(
              "such a stitch among the choices",
              book ->
                  book.each(
                      mustStretch(book),
                      s -> true,
                      "or straight",
                      step ->
                          book.with(
                              step,
                              Workbook.stitched(
                                  step,
                                  Stream.concat(
                                          step.sewing().choices().stream(), Stream.of(STRAIGHT))
                                      .toList())),
                      STITCHES,
                      StepMistakes::itself)),
          new StepMistake(
              "a hem stitched beyond its depth",
              book ->
                  book.each(
                      book.acts(Act.Hem.class),
                      step -> step.sewing().distance().isPresent(),
                      "beyond",
                      step -> book.with(step, beyond(step)),
                      STITCHES,
                      StepMistakes::itself)),
          new StepMistake(
              "allowances trimmed to more than they are",
              book ->
                  book.each(
                      book.cutting(Act.Cutting.TRIM, Act.Cutting.GRADE),
                      s -> true,
                      "to 5 cm",
                      step ->
                          book.with(
                              step,
                              Workbook.copy(
                                  step,
                                  step.id(),
                                  new Act.CutInto(
                                      ((Act.CutInto) step.act()).kind(),
                                      Optional.of(Amount.mm(50))),
                                  step.work(),
                                  step.sewing(),
                                  step.press(),
                                  step.leaves())),
                      STITCHES,
                      StepMistakes::itself)),

          // --- marks
          new StepMistake(
              "a placement line not marked",
              book ->
                  book.each(
                      book.handled(Act.Handling.MARK),
                      step -> marksPlace(book, step),
                      "without",
                      book::without,
                      MARKS,
                      step -> texts(step.work(Work.OfMark.class)))),
          new StepMistake(
              "a band sewn on by parts that bear no marks",
              book ->
                  book.each(
                      book.acts(Act.Attach.class),
                      step ->
                          step.work(Work.OfSeam.class).stream()
                              .flatMap(work -> book.seam(work.seam()).stream())
                              .anyMatch(
                                  seam -> seam.even().isEmpty() && !book.isWithinOnePiece(seam)),
                      "by sevenths",
                      step ->
                          book.with(
                              step,
                              Workbook.copy(
                                  step,
                                  step.id(),
                                  new Act.Attach(7),
                                  step.work(),
                                  step.sewing(),
                                  step.press(),
                                  step.leaves())),
                      MARKS,
                      StepMistakes::itself)));

  /** The name of a step that is done again. */
  private static final class Again {
    static Set<String> of(Step step) {
      return Set.of(step.id() + "_again");
    }
  }

  private static Function<Step, List<Step>> twice(Workbook book) {
    return step -> book.added(Workbook.again(step));
  }

  // --- what it is about -------------------------------------------------------------------------

  private static Set<String> itself(Step step) {
    return Set.of(step.id());
  }

  private static Set<String> seams(Step step) {
    return step.work(Work.OfSeam.class).stream()
        .map(work -> "seam " + work.seam())
        .collect(Collectors.toSet());
  }

  private static Set<String> edges(Step step) {
    return texts(step.work(Work.OfEdge.class));
  }

  private static Set<String> texts(List<? extends Work> works) {
    return works.stream().map(Work::text).collect(Collectors.toSet());
  }

  private static Set<String> all(Set<String> one, Set<String> other) {
    Set<String> all = new HashSet<>(one);
    all.addAll(other);
    return all;
  }

  private static Set<String> held(String word, Step step) {
    return Set.of(word + step.work().get(0).text(), step.work().get(0).text());
  }

  private static Set<String> elastics(Workbook book) {
    return book.sized().elastics().stream()
        .map(elastic -> "elastic " + elastic.name())
        .collect(Collectors.toSet());
  }

  // --- edges and finishes
  // -------------------------------------------------------------------------

  private static Stream<SpoiltSteps> hemmed(Workbook book, Seam seam) {
    EdgePlace place = seam.joins().get(0).layers().get(0).run().get(0);
    return book.sewn(seam.name()).stream()
        .filter(step -> place.from().isEmpty() && place.to().isEmpty())
        .map(
            step ->
                Workbook.copy(
                    step,
                    "hem_it",
                    new Act.Hem(),
                    List.of(new Work.OfEdge(place.piece(), Optional.empty(), place.edge())),
                    new Sewing(
                        List.of(Stitch.zigzag(2.5, 2.5)),
                        Optional.empty(),
                        Optional.empty(),
                        1,
                        Optional.empty(),
                        Optional.empty()),
                    Optional.empty(),
                    List.of()))
        .map(
            step ->
                book.spoilt(
                    "hem " + place.piece() + "." + place.edge(),
                    book.added(step),
                    EDGES,
                    Set.of("hem_it")));
  }

  /** Whether what a step finishes lies open to the end. */
  private static boolean isNeeded(Workbook book, Step step) {
    return step.work().stream()
        .noneMatch(
            work ->
                work instanceof Work.OfEdge edge
                    && book.seamsOf(edge.piece(), edge.edge()).stream()
                        .flatMap(name -> book.seam(name).stream())
                        .anyMatch(book::isPlaced));
  }

  private static Set<String> finished(Workbook book, Step step) {
    Set<String> names = new HashSet<>(seams(step));
    for (Work.OfEdge edge : step.work(Work.OfEdge.class)) {
      names.add(edge.text());
      book.seamsOf(edge.piece(), edge.edge()).forEach(seam -> names.add("seam " + seam));
    }
    return names;
  }

  private static Optional<Step> finishOf(Workbook book, Step step) {
    return book.acts(Act.Finish.class)
        .filter(
            finish ->
                finish.work(Work.OfSeam.class).stream().anyMatch(step.work()::contains)
                    && finish.sewing().raw().isEmpty())
        .findFirst();
  }

  private static Set<String> intakeEdges(Workbook book, Step step) {
    Set<String> names = new HashSet<>();
    for (Work.OfIntake work : step.work(Work.OfIntake.class)) {
      book.sized().piece(work.piece()).stream()
          .flatMap(piece -> piece.intakes().stream())
          .filter(intake -> intake.name().equals(work.intake()))
          .forEach(intake -> names.add(work.piece() + "." + intake.edge()));
    }
    return names;
  }

  private static boolean isHemmedLater(Workbook book, Step step) {
    return step.work(Work.OfEdge.class).stream()
        .anyMatch(
            work ->
                book.acts(Act.Hem.class)
                    .filter(hem -> book.place(hem) > book.place(step))
                    .anyMatch(hem -> hem.work().contains(work)));
  }

  // --- seams
  // ----------------------------------------------------------------------------------------

  private static boolean runsOver(Workbook book, Step step) {
    return step.work(Work.OfSeam.class).stream()
        .flatMap(work -> book.seam(work.seam()).stream())
        .filter(seam -> !book.isPlaced(seam))
        .flatMap(seam -> seam.joins().stream())
        .flatMap(join -> join.layers().stream())
        .anyMatch(
            layer ->
                layer.run().stream()
                        .map(place -> place.piece() + "." + place.copy())
                        .distinct()
                        .count()
                    > 1);
  }

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
  private static List<Step> on(Workbook book, Step ring) {
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

  private static boolean endsInSeams(Workbook book, Step hem) {
    return hem.work(Work.OfEdge.class).stream()
        .anyMatch(
            work ->
                beside(book, work)
                    .anyMatch(
                        seam ->
                            !book.isPlaced(seam)
                                && book.sewn(seam.name()).isPresent()
                                && runsOn(book, seam, work.piece())));
  }

  /** Whether the piece on a seam's other side has a hem too. */
  private static boolean runsOn(Workbook book, Seam seam, String piece) {
    boolean within = book.isWithinOnePiece(seam);
    return Workbook.places(seam)
        .filter(place -> within || !place.piece().equals(piece))
        .flatMap(place -> book.sized().piece(place.piece()).stream())
        .flatMap(other -> other.edges().stream())
        .anyMatch(edge -> edge.allowance() instanceof Allowance.TurnedBack);
  }

  private static boolean endsInPlaced(Workbook book, Step hem) {
    return hem.work(Work.OfEdge.class).stream()
        .anyMatch(work -> beside(book, work).anyMatch(book::isPlaced));
  }

  private static Stream<Seam> beside(Workbook book, Work.OfEdge work) {
    return book.beside(work.piece(), work.edge()).stream()
        .flatMap(edge -> book.seamsOf(work.piece(), edge).stream())
        .flatMap(name -> book.seam(name).stream());
  }

  private static boolean placed(Workbook book, Step step) {
    return step.work(Work.OfSeam.class).stream()
        .flatMap(work -> book.seam(work.seam()).stream())
        .anyMatch(book::isPlaced);
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

  private static boolean isCrossed(Workbook book, Work.OfSeam work, Step finish) {
    return book.seam(work.seam())
        .filter(seam -> !book.isPlaced(seam))
        .filter(seam -> !book.crossing(seam, finish).isEmpty())
        .isPresent();
  }

  private static boolean isCrossed(Workbook book, Step step) {
    return step.work(Work.OfSeam.class).stream().anyMatch(work -> isCrossed(book, work, step))
        && book.acts(Act.Press.class)
            .noneMatch(press -> press.work().stream().anyMatch(step.work()::contains))
        && book.acts(Act.Finish.class)
            .noneMatch(
                finish ->
                    finish.press().isPresent()
                        && finish.work().stream().anyMatch(step.work()::contains));
  }

  private static boolean isShutIn(Workbook book, Step cut) {
    boolean understitched =
        book.lines(Act.Line.UNDERSTITCH)
            .anyMatch(step -> step.work().stream().anyMatch(cut.work()::contains));
    boolean cased =
        book.acts(Act.FormCasing.class)
            .anyMatch(
                casing ->
                    on(book, casing).stream()
                        .anyMatch(step -> step.work().stream().anyMatch(cut.work()::contains)));
    return understitched || cased;
  }

  private static boolean marksPlace(Workbook book, Step mark) {
    return mark.work(Work.OfMark.class).stream()
        .anyMatch(
            work ->
                book.sized().seams().stream()
                    .flatMap(Workbook::places)
                    .anyMatch(
                        place ->
                            place.piece().equals(work.piece())
                                && place.edge().equals(work.mark())));
  }

  private static boolean isButton(Step step) {
    return step.act() instanceof Act.Fasten fasten && fasten.kind() == Act.Fastening.BUTTON;
  }

  private static Step fastener(Workbook book, Act.Fastening kind, int count, String id) {
    Step any = book.steps().get(0);
    String piece = book.pattern().views().get(0).pieces().get(0);
    return Workbook.copy(
        any,
        id,
        new Act.Fasten(kind, count, Amount.mm(12)),
        List.of(new Work.OfPiece(piece, Optional.empty())),
        Sewing.NONE,
        Optional.empty(),
        List.of());
  }

  // --- openings
  // --------------------------------------------------------------------------------------

  private static Stream<Step> closing(Workbook book) {
    return book.steps().stream()
        .filter(
            step ->
                step.act() instanceof Act.Close
                    || step.act() instanceof Act.InsertZip
                    || step.act() instanceof Act.HandSew)
        .filter(step -> !step.work(Work.OfOpening.class).isEmpty());
  }

  private static Set<String> leaving(Workbook book, Step close) {
    return close.work(Work.OfOpening.class).stream()
        .flatMap(
            work ->
                book.steps().stream()
                    .filter(
                        step ->
                            step.leaves().stream()
                                .anyMatch(left -> left.name().equals(work.opening()))))
        .map(Step::id)
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
    return Workbook.copy(
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
                    && closing(book)
                        .anyMatch(
                            close ->
                                opens(close, thread) && book.place(tryOn) < book.place(close)));
  }

  // --- pressing and stitches
  // -----------------------------------------------------------------------

  /**
   * Two legs whose inseams are pressed open, pressed to one side; and a turn of the allowances
   * beside each other, left out.
   */
  private static Stream<SpoiltSteps> stacked(Workbook book) {
    Stream<SpoiltSteps> turned =
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
                    book.spoilt(
                        "without " + press.id(),
                        book.without(press),
                        PRESSING,
                        book.steps().stream()
                            .filter(step -> book.place(step) > book.place(press))
                            .map(Step::id)
                            .collect(Collectors.toSet())));
    Stream<SpoiltSteps> legs =
        book.steps().stream()
            .filter(step -> step.press().filter(PressDirection.Open.class::isInstance).isPresent())
            .flatMap(
                step ->
                    step.work(Work.OfSeam.class).stream()
                        .flatMap(work -> book.seam(work.seam()).stream())
                        .filter(seam -> meetsItself(book, seam, step))
                        .map(
                            seam ->
                                book.spoilt(
                                    "to one side " + step.id(),
                                    book.with(
                                        step,
                                        Workbook.pressed(
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
                                    PRESSING,
                                    book.crossing(seam, step).stream()
                                        .map(Step::id)
                                        .collect(Collectors.toSet()))));
    return Stream.concat(turned, legs);
  }

  private static Set<String> pieces(Seam seam) {
    return Workbook.places(seam).map(EdgePlace::piece).collect(Collectors.toSet());
  }

  /** Whether a later seam joins a copy to its mirror where this seam ends on both. */
  private static boolean meetsItself(Workbook book, Seam seam, Step after) {
    Set<String> own = pieces(seam);
    return own.size() > 1
        && seam.joins().size() > 1
        && seam.joins().stream().allMatch(join -> join.layers().size() == 2)
        && book.crossing(seam, after).stream()
            .flatMap(step -> step.work(Work.OfSeam.class).stream())
            .flatMap(work -> book.seam(work.seam()).stream())
            .filter(over -> !pieces(over).equals(own))
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
        book.acts(Act.Hem.class).filter(book::isKnit).filter(step -> !endsInPlaced(book, step));
    Stream<Step> closes =
        closing(book).filter(step -> step.act() instanceof Act.Close).filter(book::isKnit);
    return Stream.of(seams, hems, closes).flatMap(each -> each);
  }

  private static Step beyond(Step step) {
    Sewing own = step.sewing();
    return Workbook.copy(
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
}
