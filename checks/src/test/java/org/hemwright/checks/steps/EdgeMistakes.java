package org.hemwright.checks.steps;

import static org.hemwright.checks.steps.MeantFor.EDGES;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/** What is left out, or done twice. */
final class EdgeMistakes {
  private EdgeMistakes() {}

  static final List<StepMistake> ALL =
      List.of(
          EDGES.leftOut("a seam left out", book -> book.sewing(), About.SEAMS),
          EDGES.againAtTheEnd("a seam sewn twice", book -> book.sewing()),
          EDGES.leftOut("a hem left out", book -> book.acts(Act.Hem.class), About.EDGES),
          EDGES.againAtTheEnd("a hem turned twice over", book -> book.acts(Act.Hem.class)),
          EDGES.planted(
              "an edge hemmed that a seam takes",
              book ->
                  book.sized().seams().stream()
                      .filter(seam -> !book.isPlaced(seam))
                      .flatMap(seam -> hemmed(book, seam))),
          EDGES.leftOut(
              "a finish left out on cloth that frays",
              book ->
                  book.acts(Act.Finish.class)
                      .filter(step -> step.sewing().raw().isEmpty() && isNeeded(book, step)),
              (book, step) -> finished(book, step)),
          EDGES.again(
              "edges finished twice",
              book -> book.acts(Act.Finish.class).filter(step -> step.sewing().raw().isEmpty())),
          EDGES.spoilt(
              "allowances trimmed after their finish",
              "late",
              book ->
                  book.cutting(Act.Cutting.TRIM, Act.Cutting.GRADE)
                      .filter(step -> finishOf(book, step).isPresent()),
              (book, step) -> book.movedAfter(step, finishOf(book, step).orElseThrow()),
              About.ITSELF),
          EDGES.leftOut(
              "a dart or pleat left open",
              book ->
                  book.acts(Act.Close.class)
                      .filter(step -> !step.work(Work.OfIntake.class).isEmpty()),
              About.works(Work.OfIntake.class)),
          EDGES.spoilt(
              "a seam only basted",
              "basted",
              book -> book.acts(Act.Sew.class).filter(step -> sewsForGood(book, step)),
              (book, step) ->
                  book.with(
                      step, Altered.stitched(step, List.of(Stitch.of(Stitch.Kind.BASTING, 4.5)))),
              About.SEAMS),
          EDGES.spoilt(
              "a hem only basted",
              "basted",
              book -> book.acts(Act.Hem.class),
              (book, step) ->
                  book.with(
                      step, Altered.stitched(step, List.of(Stitch.of(Stitch.Kind.BASTING, 4.5)))),
              About.EDGES),
          EDGES.spoilt(
              "a woven hem left raw without a word",
              "raw",
              book ->
                  book.acts(Act.Hem.class)
                      .filter(
                          step ->
                              !book.isKnit(step)
                                  && !book.endsInPlaced(step)
                                  && liesOpen(book, step)),
              (book, step) -> leftRaw(book, step),
              About.EDGES));

  private static Stream<Spoil> hemmed(Workbook book, Seam seam) {
    EdgePlace place = seam.joins().get(0).layers().get(0).run().get(0);
    return book.sewn(seam.name()).stream()
        .filter(step -> place.from().isEmpty() && place.to().isEmpty())
        .map(
            step ->
                Altered.copy(
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
                new Spoil(
                    "hem " + place.piece() + "." + place.edge(),
                    book.added(step),
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
    Set<String> names = new HashSet<>(About.seams(step));
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

  /** Whether nothing else is sewn along the edges of a step's seams. */
  private static boolean sewsForGood(Workbook book, Step step) {
    return !step.work(Work.OfSeam.class).isEmpty()
        && step.work(Work.OfSeam.class).stream()
            .flatMap(work -> book.seam(work.seam()).stream())
            .allMatch(
                seam ->
                    Workbook.places(seam)
                        .allMatch(place -> book.seamsOf(place.piece(), place.edge()).size() == 1));
  }

  /** Whether nothing shuts in what a hem turns. */
  private static boolean liesOpen(Workbook book, Step hem) {
    return hem.work(Work.OfEdge.class).stream()
        .allMatch(work -> book.seamsOf(work.piece(), work.edge()).isEmpty());
  }

  /** Without any step that finishes the edges of a hem, which are left raw in its place. */
  private static List<Step> leftRaw(Workbook book, Step hem) {
    Step raw =
        Altered.copy(
            hem,
            "leave_it",
            new Act.LeaveRaw(Optional.empty()),
            hem.work(),
            Sewing.NONE,
            Optional.empty(),
            List.of());
    return book.with(hem, raw).stream()
        .filter(
            step ->
                !(step.act() instanceof Act.Finish)
                    || step.work().stream().noneMatch(hem.work()::contains))
        .toList();
  }
}
