package org.hemwright.checks;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.piece.BodyOpening;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.QuantityKind;
import org.hemwright.pattern.seam.Elastic;

/** A run for tests with what goes round a body: a chart, cloth, openings, levels, elastics. */
final class Worn {
  private final SizeRun run;
  private final Map<String, double[]> columns = new LinkedHashMap<>();
  private final List<Fabric> fabrics = new ArrayList<>();
  private final List<Elastic> elastics = new ArrayList<>();
  private List<String> openings = List.of();
  private List<BodyOpening> passed = List.of();
  private final List<Mark> marks = new ArrayList<>();

  private Worn(SizeRun run) {
    this.run = run;
  }

  static Worn of(SizeRun run) {
    return new Worn(run);
  }

  /** One value for each size (mm). */
  Worn column(String name, double... values) {
    columns.put(name, values);
    return this;
  }

  Worn fabric(Fabric.Kind kind, OptionalDouble stretch, Double... widths) {
    fabrics.add(
        new Fabric(
            "main",
            "Cloth",
            kind,
            List.of(widths),
            stretch,
            OptionalDouble.empty(),
            Fabric.Nap.ONE_WAY,
            Pieces.ORIGIN));
    return this;
  }

  /** Edges of every piece that the body passes. */
  Worn openings(String... names) {
    openings = List.of(names);
    return this;
  }

  /** What those edges pass, and how far a zip opens beside them (mm). */
  Worn passing(String over, double zip) {
    passed =
        openings.stream()
            .map(
                edge ->
                    new BodyOpening(
                        edge,
                        Optional.of(over),
                        zip > 0
                            ? Optional.of(new BodyOpening.Closure(BodyOpening.Kind.ZIP, zip))
                            : Optional.empty(),
                        Pieces.ORIGIN))
            .toList();
    return this;
  }

  /** An elastic that says what it holds, what it passes and how far it stretches. */
  Worn elastic(String name, String piece, double finished, String holds, String over, double by) {
    elastics.add(
        new Elastic(
            name,
            piece,
            20,
            finished,
            25,
            Optional.empty(),
            Optional.of(holds),
            Optional.of(over),
            OptionalDouble.of(by),
            Pieces.ORIGIN));
    return this;
  }

  /** On every piece. */
  Worn mark(Mark mark) {
    marks.add(mark);
    return this;
  }

  Worn elastic(String piece, double width, double finished) {
    elastics.add(new Elastic("waist_elastic", piece, width, finished, 25, Pieces.ORIGIN));
    return this;
  }

  SizeRun run() {
    List<Size> sizes = run.pattern().chart().sizes();
    List<SizeChart.Column> chart = new ArrayList<>();
    for (String name : columns.keySet()) {
      List<SizeChart.Cell> cells = new ArrayList<>();
      double[] values = requireNonNull(columns.get(name));
      for (int i = 0; i < sizes.size(); i++) {
        cells.add(
            new SizeChart.Cell(
                OptionalDouble.of(values[i]), new Origin("sizes.csv", i + 2, 1 + columns.size())));
      }
      chart.add(
          new SizeChart.Column(
              name, name + " (cm)", QuantityKind.LENGTH, cells, new Origin("sizes.csv", 1, 1)));
    }
    Pattern old = run.pattern();
    List<String> names = run.sizes().get(0).pieces().stream().map(Piece::name).toList();
    Pattern pattern =
        new Pattern(
            old.details(),
            new SizeChart("sizes.csv", sizes, chart),
            old.base(),
            fabrics,
            old.dials(),
            List.of(new View("A", "All", names, Pieces.ORIGIN)),
            old.pieces(),
            old.paper());
    return new SizeRun(
        pattern,
        run.sizes().stream()
            .map(
                sized ->
                    new SizedPattern(
                        sized.size(),
                        sized.pieces().stream().map(this::worn).toList(),
                        sized.seams(),
                        elastics,
                        Map.of()))
            .toList());
  }

  private Piece worn(Piece piece) {
    return new Piece(
            piece.card(),
            piece.stitchLine(),
            piece.edges(),
            piece.corners(),
            piece.notches(),
            piece.grain(),
            marks,
            openings.stream().filter(name -> piece.edge(name).isPresent()).toList(),
            piece.stackPoint())
        .with(
            piece.intakes(),
            passed.stream().filter(each -> piece.edge(each.edge()).isPresent()).toList());
  }

  /** Told by one check of the handbook's settings. */
  List<String> told(String id) {
    return Told.by(id, run());
  }
}
