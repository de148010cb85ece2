package org.hemwright.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.hemwright.draft.Drafted;
import org.hemwright.draft.Drafting;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The garments of the examples folder: no false alarm in any size, and a planted fault is told. */
class ExamplesTest {
  private static SizeRun run(String example) throws IOException {
    Path folder = Path.of("..", "examples", example);
    SizeChart chart =
        ChartReader.read("sizes.csv", Files.readAllBytes(folder.resolve("sizes.csv")))
            .chart()
            .orElseThrow();
    Drafted drafted =
        Drafting.draft("pattern.hem", Files.readString(folder.resolve("pattern.hem")), chart);
    assertThat(drafted.findings()).isEmpty();
    return drafted.run().orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"eddy-skirt", "marram-trousers", "inlet-tee", "brackish-skirt", "shingle-shirt"})
  void nothingIsFoundInAnySize(String example) throws IOException {
    SizeRun run = run(example);
    for (Check check : StandardChecks.with(CheckSettings.HANDBOOK)) {
      assertThat(Told.by(check, run))
          .as(check.id())
          .allMatch(words -> words.startsWith(Status.OK.toString()));
    }
  }

  /** The run with one piece of one size exchanged. */
  private static SizeRun with(SizeRun run, SizedPattern sized, Piece piece) {
    List<SizedPattern> sizes = new ArrayList<>();
    for (SizedPattern each : run.sizes()) {
      sizes.add(
          !each.size().equals(sized.size())
              ? each
              : new SizedPattern(
                  each.size(),
                  each.pieces().stream()
                      .map(own -> own.name().equals(piece.name()) ? piece : own)
                      .toList(),
                  each.seams(),
                  each.elastics(),
                  each.numbers()));
    }
    return new SizeRun(run.pattern(), sizes);
  }

  private static Piece with(Piece piece, List<Edge> edges, List<Notch> notches) {
    return new Piece(
            piece.card(),
            piece.stitchLine(),
            edges,
            piece.corners(),
            notches,
            piece.grain(),
            piece.marks(),
            piece.openings(),
            piece.stackPoint())
        .sewnAs(piece);
  }

  private static void toldOnlyIn(String size, String id, SizeRun run) {
    assertThat(
            StandardChecks.with(CheckSettings.HANDBOOK).stream()
                .filter(check -> check.id().equals(id))
                .flatMap(check -> check.check(run).stream()))
        .isNotEmpty()
        .allSatisfy(finding -> assertThat(finding.sizes()).containsExactly(size));
  }

  /** Every edge of the shirt in the base size that a seam joins to another edge. */
  @Test
  void anAllowanceChangedOnOneSideIsToldWhereverItIs() throws IOException {
    SizeRun run = run("inlet-tee");
    SizedPattern sized = run.size("10").orElseThrow();
    for (String place :
        List.of(
            "front.shoulder",
            "back.side",
            "sleeve.cap",
            "front.armhole",
            "back.neck",
            "neckband.lower",
            "neckband.upper",
            "neckband.end_left",
            "sleeve.front_seam")) {
      List<String> names = List.of(place.split("\\.", -1));
      Piece piece = sized.piece(names.get(0)).orElseThrow();
      List<Edge> edges =
          piece.edges().stream()
              .map(
                  edge ->
                      edge.name().equals(names.get(1))
                          ? new Edge(
                              edge.name(),
                              edge.path(),
                              false,
                              new Allowance.Plain(6),
                              edge.reversed(),
                              edge.origin())
                          : edge)
              .toList();
      toldOnlyIn("10", "allowance-equal", with(run, sized, with(piece, edges, piece.notches())));
    }
  }

  /** Every notch of the shirt that has a mate, moved by 8 mm in one size. */
  @Test
  void aNotchMovedIsToldWhereverItIs() throws IOException {
    SizeRun run = run("inlet-tee");
    SizedPattern sized = run.size("24").orElseThrow();
    int planted = 0;
    for (Piece piece : sized.pieces()) {
      for (Notch notch : piece.notches()) {
        double length = piece.edge(notch.edge()).orElseThrow().path().length();
        boolean inside = notch.distance() > 10 && notch.distance() < length - 10;
        if (inside && !piece.name().equals("neckband")) {
          List<Notch> moved = new ArrayList<>(piece.notches());
          moved.set(
              moved.indexOf(notch),
              new Notch(
                  notch.edge(), notch.distance() - 8, notch.kind(), notch.name(), notch.origin()));
          toldOnlyIn("24", "notch-mates", with(run, sized, with(piece, piece.edges(), moved)));
          planted++;
        }
      }
    }
    assertThat(planted).isEqualTo(8);
  }
}
