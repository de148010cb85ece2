package org.hemwright.checks.steps;

import static org.hemwright.checks.steps.MeantFor.ORDER;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.seam.Seam;

/** What is sewn, finished, cut into or pressed too early or too late. */
final class OrderMistakes {
  private OrderMistakes() {}

  static final List<StepMistake> ALL =
      List.of(
          ORDER.tooLate(
              "a dart or pleat closed when its edge is sewn",
              book ->
                  book.acts(Act.Close.class)
                      .filter(step -> !step.work(Work.OfIntake.class).isEmpty()),
              (book, step) -> intakeEdges(book, step)),
          ORDER.tooEarly(
              "a seam sewn before the one that it runs over",
              book -> book.sewing().filter(step -> runsOver(book, step))),
          ORDER.tooEarly(
              "a hem turned before the seams that end in it",
              book -> book.acts(Act.Hem.class).filter(step -> endsInSeams(book, step))),
          ORDER.tooLate(
              "a seam finished when it is crossed or shut in",
              book ->
                  book.acts(Act.Finish.class)
                      .filter(
                          step ->
                              step.work(Work.OfSeam.class).stream()
                                  .anyMatch(work -> book.isCrossed(work, step)))),
          ORDER.tooLate(
              "a cut edge finished when it is hemmed",
              book -> book.acts(Act.Finish.class).filter(step -> isHemmedLater(book, step))),
          ORDER.tooLate(
              "an edge staystitched when it is sewn", book -> book.lines(Act.Line.STAYSTITCH)),
          ORDER.tooLate(
              "a seam pinned or basted when it is sewn",
              book ->
                  Stream.concat(book.handled(Act.Handling.PIN), book.lines(Act.Line.BASTE))
                      .filter(step -> !step.work(Work.OfSeam.class).isEmpty())),
          ORDER.tooEarly(
              "topstitching before its seam",
              book ->
                  book.lines(Act.Line.TOPSTITCH)
                      .filter(step -> !step.work(Work.OfSeam.class).isEmpty())),
          ORDER.tooEarly(
              "understitching before its seam", book -> book.lines(Act.Line.UNDERSTITCH)),
          ORDER.tooEarly(
              "allowances trimmed, graded, clipped or notched before their seam",
              book ->
                  book.acts(Act.CutInto.class)
                      .filter(step -> !step.work(Work.OfSeam.class).isEmpty())),
          ORDER.tooLate(
              "allowances trimmed, graded, clipped or notched when they are shut in",
              book -> book.acts(Act.CutInto.class).filter(step -> isShutIn(book, step))),
          ORDER.tooEarly(
              "a seam pressed before it is sewn",
              book ->
                  book.acts(Act.Press.class)
                      .filter(step -> !step.work(Work.OfSeam.class).isEmpty())),
          ORDER.tooLate(
              "interfacing fused when the piece is sewn", book -> book.acts(Act.Fuse.class)),
          ORDER.leftOut(
              "no test of the stitch on a knit",
              book ->
                  book.handled(Act.Handling.TEST)
                      .filter(
                          step ->
                              book.sized().pieces().stream().anyMatch(p -> book.isKnit(p.name()))),
              (book, step) -> Set.of("make")),
          ORDER.tooLate("the stitch tested at the end", book -> book.handled(Act.Handling.TEST)),
          ORDER.planted("seams sewn in one pass that share no edge", book -> strangers(book)),
          ORDER.spoilt(
              "a seam set in while both its layers lie flat",
              "set in",
              book -> book.acts(Act.Sew.class).filter(step -> liesFlat(book, step)),
              (book, step) -> book.with(step, Altered.acting(step, new Act.SetIn())),
              About.SEAMS),
          ORDER.tooEarly(
              "a round set in before it is closed",
              book -> book.acts(Act.SetIn.class),
              About.SEAMS),
          ORDER.tooLate(
              "a zip put in when the edge at its end is faced",
              book ->
                  book.acts(Act.InsertZip.class)
                      .filter(step -> book.lines(Act.Line.UNDERSTITCH).findAny().isPresent())),
          ORDER.again("interfacing fused twice", book -> book.acts(Act.Fuse.class)),
          ORDER.spoilt(
              "a ring of elastic sewn to an edge that lies open",
              "first",
              book -> book.acts(Act.Apply.class),
              (book, step) -> ringFirst(book, step),
              About.ITSELF),
          ORDER.tooLate(
              "elastic sewn to a hemmed edge",
              book -> book.acts(Act.Apply.class).filter(step -> isHemmedLater(book, step))),
          ORDER.spoilt(
              "allowances cut down before their seam, edge by edge",
              "first, by edge",
              book -> book.cutting(Act.Cutting.TRIM, Act.Cutting.GRADE),
              (book, step) -> byEdgeFirst(book, step),
              About.ITSELF),
          ORDER.tooLate(
              "understitching when the facing is sewn down",
              book -> book.lines(Act.Line.UNDERSTITCH).filter(step -> isSewnDown(book, step))),
          ORDER.tooEarly(
              "edges bound before the seams that end there",
              book ->
                  book.acts(Act.Bind.class)
                      .filter(step -> step.work(Work.OfEdge.class).size() > 1)));

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

  private static boolean endsInSeams(Workbook book, Step hem) {
    return hem.work(Work.OfEdge.class).stream()
        .anyMatch(
            work ->
                book.beside(work)
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

  private static boolean isShutIn(Workbook book, Step cut) {
    boolean understitched =
        book.lines(Act.Line.UNDERSTITCH)
            .anyMatch(step -> step.work().stream().anyMatch(cut.work()::contains));
    boolean cased =
        book.acts(Act.FormCasing.class)
            .anyMatch(
                casing ->
                    BandMistakes.on(book, casing).stream()
                        .anyMatch(step -> step.work().stream().anyMatch(cut.work()::contains)));
    return understitched || cased;
  }

  /** Two seams sewn by two steps that have no piece in common, sewn in one pass. */
  private static Stream<Spoil> strangers(Workbook book) {
    List<Step> single =
        book.acts(Act.Sew.class)
            .filter(step -> step.work().size() == 1 && step.work(Work.OfSeam.class).size() == 1)
            .filter(step -> step.leaves().isEmpty() && !book.placed(step))
            .toList();
    return single.stream()
        .flatMap(
            one ->
                single.stream()
                    .filter(other -> book.place(other) > book.place(one))
                    .filter(
                        other -> other.views().equals(one.views()) && isStranger(book, one, other))
                    .limit(1)
                    .map(
                        other ->
                            new Spoil(
                                one.id() + " with " + other.id(),
                                together(book, one, other),
                                Stream.concat(
                                        About.seams(one).stream(), About.seams(other).stream())
                                    .collect(Collectors.toSet()))));
  }

  private static boolean isStranger(Workbook book, Step one, Step other) {
    Set<String> own = new HashSet<>(book.piecesOf(one));
    return book.piecesOf(other).stream().noneMatch(own::contains);
  }

  private static List<Step> together(Workbook book, Step one, Step other) {
    Step both =
        Altered.copy(
            one,
            one.id(),
            new Act.Sew(true),
            Stream.concat(one.work().stream(), other.work().stream()).toList(),
            one.sewing(),
            one.press(),
            List.of());
    return book.with(one, both).stream().filter(step -> !step.equals(other)).toList();
  }

  /** Whether a later seam runs over an end of a step's seam, so that it is sewn flat. */
  private static boolean liesFlat(Workbook book, Step step) {
    List<Step> sewing = book.sewing().toList();
    return step.work(Work.OfSeam.class).size() == 1
        && step.work(Work.OfSeam.class).stream()
            .flatMap(work -> book.seam(work.seam()).stream())
            .filter(seam -> !book.isPlaced(seam) && !book.isWithinOnePiece(seam))
            .filter(
                seam ->
                    Workbook.places(seam)
                        .allMatch(place -> place.from().isEmpty() && place.to().isEmpty()))
            .anyMatch(seam -> book.crossing(seam, step).stream().anyMatch(sewing::contains));
  }

  /** With an elastic joined and sewn on before anything else. */
  private static List<Step> ringFirst(Workbook book, Step apply) {
    List<Step> joins =
        book.acts(Act.JoinEnds.class)
            .filter(join -> apply.work().contains(join.work().get(0)))
            .toList();
    List<Step> all = new ArrayList<>(joins);
    all.add(apply);
    book.steps().stream().filter(step -> !all.contains(step)).forEach(all::add);
    return all;
  }

  private static List<Step> byEdgeFirst(Workbook book, Step cut) {
    List<Work> edges =
        cut.work(Work.OfSeam.class).stream()
            .flatMap(work -> book.seam(work.seam()).stream())
            .flatMap(Workbook::places)
            .map(place -> new Work.OfEdge(place.piece(), Optional.empty(), place.edge()))
            .distinct()
            .map(Work.class::cast)
            .toList();
    List<Step> all = new ArrayList<>(book.without(cut));
    all.add(0, Altered.dealing(cut, edges));
    return all;
  }

  /** Whether a facing that a step understitches is sewn down by hand. */
  private static boolean isSewnDown(Workbook book, Step understitch) {
    Set<String> pieces = book.piecesOf(understitch);
    return book.acts(Act.HandSew.class)
        .flatMap(step -> step.work(Work.OfEdge.class).stream())
        .anyMatch(work -> pieces.contains(work.piece()));
  }
}
