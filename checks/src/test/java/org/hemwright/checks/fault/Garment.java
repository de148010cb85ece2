package org.hemwright.checks.fault;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.hemwright.draft.Drafted;
import org.hemwright.draft.Drafting;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * One of the examples, drafted in every size.
 *
 * @param name of its folder
 * @param text the document
 * @param csv its chart as text
 * @param chart its sizes
 * @param run all sizes
 */
record Garment(String name, String text, String csv, SizeChart chart, SizeRun run) {
  /** Every example, in the order of their names. */
  static List<Garment> all() {
    try (Stream<Path> folders = Files.list(Path.of("..", "examples"))) {
      return folders
          .filter(folder -> Files.exists(folder.resolve("pattern.hem")))
          .sorted()
          .map(Garment::in)
          .toList();
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  private static Garment in(Path folder) {
    try {
      String text = Files.readString(folder.resolve("pattern.hem"));
      SizeChart chart =
          ChartReader.read("sizes.csv", Files.readAllBytes(folder.resolve("sizes.csv")))
              .chart()
              .orElseThrow();
      Drafted drafted = Drafting.draft("pattern.hem", text, chart);
      if (!drafted.findings().isEmpty()) {
        throw new AssertionError(folder + ": " + drafted.findings());
      }
      return new Garment(
          folder.getFileName().toString(),
          text,
          Files.readString(folder.resolve("sizes.csv")),
          chart,
          drafted.run().orElseThrow());
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  /** The smallest size, a middle one and the largest. */
  List<SizedPattern> threeSizes() {
    List<SizedPattern> sizes = run.sizes();
    return List.of(sizes.get(0), sizes.get((sizes.size() - 1) / 2), sizes.get(sizes.size() - 1));
  }

  /** The name of the size in the middle of the chart. */
  String middleSize() {
    return threeSizes().get(1).size().name();
  }

  /** The run with one size exchanged for another like it. */
  SizeRun with(SizedPattern changed) {
    return new SizeRun(
        run.pattern(),
        run.sizes().stream()
            .map(sized -> sized.size().equals(changed.size()) ? changed : sized)
            .toList());
  }

  /**
   * A fault in one draft of a piece, in every size that it is drawn in.
   *
   * @param sizes in which it must be told
   */
  Planted inEverySize(
      PieceCard card,
      BiFunction<SizedPattern, Piece, Piece> faulty,
      List<String> sizes,
      String check,
      Set<String> subjects) {
    List<SizedPattern> changed = new ArrayList<>();
    for (SizedPattern sized : run.sizes()) {
      SizedPattern own = sized;
      for (Piece piece : sized.pieces()) {
        if (piece.card().origin().equals(card.origin())) {
          own = Reworked.size(sized, faulty.apply(sized, piece));
        }
      }
      changed.add(own);
    }
    return new Planted(
        name + " " + card.name() + " in every size",
        new SizeRun(run.pattern(), changed),
        sizes,
        check,
        subjects);
  }

  /** The sizes in which a draft of a piece is drawn. */
  List<String> sizesOf(PieceCard card) {
    return run.sizes().stream()
        .filter(
            sized -> sized.pieces().stream().anyMatch(p -> p.card().origin().equals(card.origin())))
        .map(sized -> sized.size().name())
        .toList();
  }

  /** A fault in one size. */
  Planted planted(String what, SizedPattern changed, String check, Set<String> subjects) {
    String size = changed.size().name();
    return new Planted(
        name + " " + what + " in " + size, with(changed), List.of(size), check, subjects);
  }

  /** What tells of an edge: itself, its piece, the edges beside it, the seams that sew them. */
  static Set<String> subjects(SizedPattern sized, String piece, String edge) {
    Set<String> subjects = new LinkedHashSet<>(List.of(piece));
    List<String> round =
        sized.piece(piece).orElseThrow().edges().stream().map(each -> each.name()).toList();
    int index = round.indexOf(edge);
    for (int step : new int[] {0, 1, round.size() - 1}) {
      String beside = round.get((index + step) % round.size());
      subjects.add(piece + "." + beside);
      seamsOf(sized, piece, beside).forEach(seam -> subjects.add("seam " + seam.name()));
    }
    return subjects;
  }

  /** The seams that sew an edge of any copy. */
  static List<Seam> seamsOf(SizedPattern sized, String piece, String edge) {
    List<Seam> seams = new ArrayList<>();
    for (Seam seam : sized.seams()) {
      boolean sews = places(seam).anyMatch(p -> p.piece().equals(piece) && p.edge().equals(edge));
      if (sews) {
        seams.add(seam);
      }
    }
    return seams;
  }

  static Stream<EdgePlace> places(Seam seam) {
    return seam.joins().stream()
        .flatMap(join -> join.layers().stream())
        .flatMap(layer -> layer.run().stream());
  }
}
