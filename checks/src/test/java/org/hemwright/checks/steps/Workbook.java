package org.hemwright.checks.steps;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hemwright.draft.Drafting;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Making;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * The steps of one example, in one size, to be spoilt.
 *
 * @param name of the example
 * @param pattern the whole document
 * @param sized a size in the middle of its chart
 * @param steps in order
 */
record Workbook(String name, Pattern pattern, SizedPattern sized, List<Step> steps) {
  static List<Workbook> all() {
    try (Stream<Path> folders = Files.list(Path.of("..", "examples"))) {
      return folders
          .filter(folder -> Files.exists(folder.resolve("pattern.hem")))
          .sorted()
          .map(Workbook::in)
          .filter(book -> !book.steps().isEmpty())
          .toList();
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  /** The garments of the language guide that are made step by step. */
  static List<Workbook> guide() {
    List<SizeRun> runs = GuideGarments.runs();
    return IntStream.range(0, runs.size())
        .mapToObj(i -> of("guide " + (i + 1), runs.get(i)))
        .toList();
  }

  private static Workbook of(String name, SizeRun run) {
    return new Workbook(
        name,
        run.pattern(),
        run.sizes().get((run.sizes().size() - 1) / 2),
        run.pattern().making().steps());
  }

  private static Workbook in(Path folder) {
    try {
      SizeRun run =
          Drafting.draft(
                  "pattern.hem",
                  Files.readString(folder.resolve("pattern.hem")),
                  ChartReader.read("sizes.csv", Files.readAllBytes(folder.resolve("sizes.csv")))
                      .chart()
                      .orElseThrow())
              .run()
              .orElseThrow();
      return of(folder.getFileName().toString(), run);
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  /** The run of that one size, made by other steps. */
  SizeRun run(List<Step> other) {
    Making making = pattern.making();
    return new SizeRun(
        new Pattern(
            pattern.details(),
            pattern.chart(),
            pattern.base(),
            pattern.fabrics(),
            pattern.dials(),
            pattern.views(),
            pattern.pieces(),
            pattern.paper(),
            pattern.acceptances(),
            new Making(
                List.of(new Making.Stage("", other)),
                making.cords(),
                making.sleepwear(),
                making.usualNeedle())),
        List.of(sized));
  }

  // --- ways to spoil --------------------------------------------------------------------------

  SpoiltSteps spoilt(String how, List<Step> other, String check, Set<String> names) {
    return new SpoiltSteps(name + ": " + how, run(other), check, names);
  }

  List<Step> without(Step step) {
    return steps.stream().filter(each -> !each.equals(step)).toList();
  }

  List<Step> with(Step step, Step other) {
    return steps.stream().map(each -> each.equals(step) ? other : each).toList();
  }

  List<Step> movedFirst(Step step) {
    List<Step> all = new ArrayList<>(without(step));
    all.add(0, step);
    return all;
  }

  List<Step> movedLast(Step step) {
    List<Step> all = new ArrayList<>(without(step));
    all.add(step);
    return all;
  }

  List<Step> movedBefore(Step step, Step other) {
    List<Step> all = new ArrayList<>(without(step));
    all.add(all.indexOf(other), step);
    return all;
  }

  List<Step> movedAfter(Step step, Step other) {
    List<Step> all = new ArrayList<>(without(step));
    all.add(all.indexOf(other) + 1, step);
    return all;
  }

  List<Step> added(Step... more) {
    List<Step> all = new ArrayList<>(steps);
    all.addAll(List.of(more));
    return all;
  }

  /** With another step right after one. */
  List<Step> followed(Step step, Step other) {
    List<Step> all = new ArrayList<>(steps);
    all.add(all.indexOf(step) + 1, other);
    return all;
  }

  // --- what there is to spoil --------------------------------------------------------------------

  Stream<Step> acts(Class<? extends Act> act) {
    return steps.stream().filter(step -> act.isInstance(step.act()));
  }

  /** Every step that sews seams, and each of the seams. */
  Stream<Step> sewing() {
    return steps.stream()
        .filter(
            step ->
                step.act() instanceof Act.Sew
                    || step.act() instanceof Act.Attach
                    || step.act() instanceof Act.SetIn
                    || step.act() instanceof Act.FormCasing)
        .filter(step -> !step.work(Work.OfSeam.class).isEmpty());
  }

  Stream<Step> lines(Act.Line line) {
    return steps.stream()
        .filter(step -> step.act() instanceof Act.Stitching stitching && stitching.line() == line);
  }

  Stream<Step> handled(Act.Handling kind) {
    return steps.stream()
        .filter(step -> step.act() instanceof Act.Handle handle && handle.kind() == kind);
  }

  Stream<Step> cutting(Act.Cutting... kinds) {
    return steps.stream()
        .filter(
            step -> step.act() instanceof Act.CutInto cut && Set.of(kinds).contains(cut.kind()));
  }

  int place(Step step) {
    return steps.indexOf(step);
  }

  Optional<Seam> seam(String seam) {
    return sized.seams().stream().filter(each -> each.name().equals(seam)).findFirst();
  }

  static Stream<EdgePlace> places(Seam seam) {
    return seam.joins().stream()
        .flatMap(join -> join.layers().stream())
        .flatMap(layer -> layer.run().stream());
  }

  /** Whether a seam sews something on along a placement line. */
  boolean isPlaced(Seam seam) {
    return places(seam)
        .anyMatch(place -> sized.piece(place.piece()).flatMap(p -> p.edge(place.edge())).isEmpty());
  }

  boolean isWithinOnePiece(Seam seam) {
    return places(seam).map(EdgePlace::piece).distinct().count() == 1
        && seam.joins().get(0).layers().stream().allMatch(layer -> layer.run().size() == 1)
        && seam.joins().stream()
            .allMatch(
                join ->
                    join.layers().stream()
                            .flatMap(layer -> layer.run().stream())
                            .map(EdgePlace::copy)
                            .distinct()
                            .count()
                        == 1);
  }

  /** The step that sews a seam. */
  Optional<Step> sewn(String seam) {
    return sewing()
        .filter(step -> step.work(Work.OfSeam.class).contains(new Work.OfSeam(seam)))
        .findFirst();
  }

  /** The seams that take an edge. */
  List<String> seamsOf(String piece, String edge) {
    return sized.seams().stream()
        .filter(
            seam ->
                places(seam)
                    .anyMatch(each -> each.piece().equals(piece) && each.edge().equals(edge)))
        .map(Seam::name)
        .toList();
  }

  /** The edges beside an edge. */
  List<String> beside(String piece, String edge) {
    Optional<Piece> found = sized.piece(piece);
    if (found.isEmpty() || found.get().edge(edge).isEmpty()) {
      return List.of();
    }
    List<Edge> edges = found.get().edges();
    int index = edges.indexOf(found.get().edge(edge).get());
    int count = edges.size();
    return IntStream.of(index + count - 1, index + 1)
        .mapToObj(i -> edges.get(i % count))
        .filter(each -> !each.onFold())
        .map(Edge::name)
        .toList();
  }

  /** The steps that sew across the end of a seam, or turn a hem over it, after it is sewn. */
  List<Step> crossing(Seam seam, Step after) {
    List<Step> crossing = new ArrayList<>();
    for (Step step : steps.subList(place(after) + 1, steps.size())) {
      boolean over =
          places(seam)
              .anyMatch(
                  place ->
                      beside(place.piece(), place.edge()).stream()
                          .anyMatch(edge -> deals(step, place.piece(), edge)));
      if (over && step.views().stream().anyMatch(after.views()::contains)) {
        crossing.add(step);
      }
    }
    return crossing;
  }

  private boolean deals(Step step, String piece, String edge) {
    boolean sews =
        sewing().toList().contains(step)
            && step.work(Work.OfSeam.class).stream()
                .flatMap(work -> seam(work.seam()).stream())
                .filter(seam -> !isPlaced(seam))
                .flatMap(Workbook::places)
                .anyMatch(place -> place.piece().equals(piece) && place.edge().equals(edge));
    boolean hems =
        (step.act() instanceof Act.Hem || step.act() instanceof Act.Bind)
            && step.work(Work.OfEdge.class).stream()
                .anyMatch(work -> work.piece().equals(piece) && work.edge().equals(edge));
    return sews || hems;
  }

  boolean isKnit(String piece) {
    return sized
        .piece(piece)
        .flatMap(each -> each.card().cuts().stream().findFirst())
        .flatMap(cut -> pattern.fabric(cut.fabric()))
        .filter(fabric -> fabric.kind() == Fabric.Kind.KNIT)
        .isPresent();
  }

  boolean isKnit(Step step) {
    return step.work().stream().allMatch(work -> pieces(work).allMatch(this::isKnit));
  }

  private Stream<String> pieces(Work work) {
    if (work instanceof Work.OfSeam seam) {
      return seam(seam.seam()).stream().flatMap(Workbook::places).map(EdgePlace::piece);
    } else if (work instanceof Work.OfEdge edge) {
      return Stream.of(edge.piece());
    } else if (work instanceof Work.OfOpening opening) {
      return steps.stream()
          .filter(step -> step.leaves().stream().anyMatch(l -> l.name().equals(opening.opening())))
          .flatMap(step -> step.work().stream())
          .flatMap(this::pieces);
    }
    return Stream.of();
  }

  /** The steps that close an opening. */
  Stream<Step> closing() {
    return steps.stream()
        .filter(
            step ->
                step.act() instanceof Act.Close
                    || step.act() instanceof Act.InsertZip
                    || step.act() instanceof Act.HandSew)
        .filter(step -> !step.work(Work.OfOpening.class).isEmpty());
  }

  /** The steps that leave open what a step closes. */
  Set<String> leaving(Step close) {
    return close.work(Work.OfOpening.class).stream()
        .flatMap(
            work ->
                steps.stream()
                    .filter(
                        step ->
                            step.leaves().stream()
                                .anyMatch(left -> left.name().equals(work.opening()))))
        .map(Step::id)
        .collect(Collectors.toSet());
  }

  /** Whether a step sews something on along a placement line. */
  boolean placed(Step step) {
    return step.work(Work.OfSeam.class).stream()
        .flatMap(work -> seam(work.seam()).stream())
        .anyMatch(this::isPlaced);
  }

  /** Whether a hem ends where something is sewn on. */
  boolean endsInPlaced(Step hem) {
    return hem.work(Work.OfEdge.class).stream()
        .anyMatch(work -> beside(work).anyMatch(this::isPlaced));
  }

  /** The seams that take the edges beside an edge. */
  Stream<Seam> beside(Work.OfEdge work) {
    return beside(work.piece(), work.edge()).stream()
        .flatMap(edge -> seamsOf(work.piece(), edge).stream())
        .flatMap(name -> seam(name).stream());
  }

  /** Whether a step marks where something is sewn on. */
  boolean marksPlace(Step mark) {
    return mark.work(Work.OfMark.class).stream()
        .anyMatch(
            work ->
                sized.seams().stream()
                    .flatMap(Workbook::places)
                    .anyMatch(
                        place ->
                            place.piece().equals(work.piece())
                                && place.edge().equals(work.mark())));
  }

  /** Whether something sews across the end of a seam after a step. */
  boolean isCrossed(Work.OfSeam work, Step finish) {
    return seam(work.seam())
        .filter(seam -> !isPlaced(seam))
        .filter(seam -> !crossing(seam, finish).isEmpty())
        .isPresent();
  }

  Stream<Step> fastened(Act.Fastening kind) {
    return acts(Act.Fasten.class).filter(step -> ((Act.Fasten) step.act()).kind() == kind);
  }

  /** The pieces that a seam joins. */
  static Set<String> pieces(Seam seam) {
    return places(seam).map(EdgePlace::piece).collect(Collectors.toSet());
  }

  /** The pieces whose seams a step sews. */
  Set<String> piecesOf(Step step) {
    return step.work(Work.OfSeam.class).stream()
        .flatMap(work -> seam(work.seam()).stream())
        .flatMap(seam -> pieces(seam).stream())
        .collect(Collectors.toSet());
  }
}
