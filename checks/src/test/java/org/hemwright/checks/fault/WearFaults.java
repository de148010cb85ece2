package org.hemwright.checks.fault;

import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.hemwright.geometry.Box;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.Elastic;
import org.hemwright.pattern.seam.Seam;

/** What goes round the body and is cut from cloth gone wrong in one size. */
final class WearFaults {
  private WearFaults() {}

  private static Stream<Planted> inElastics(
      Garment garment, BiFunction<SizedPattern, Elastic, Elastic> faulty) {
    return garment.threeSizes().stream()
        .flatMap(
            sized ->
                sized.elastics().stream()
                    .map(
                        elastic ->
                            garment.planted(
                                "elastic " + elastic.name(),
                                Reworked.elastic(sized, faulty.apply(sized, elastic)),
                                "elastic-casing",
                                Set.of("elastic " + elastic.name()))));
  }

  private static Elastic with(Elastic elastic, double width, double finished) {
    return new Elastic(
        elastic.name(), elastic.piece(), width, finished, elastic.overlap(), elastic.origin());
  }

  static final Fault ELASTIC_WIDE =
      Fault.inOneSize(
          "an elastic 8 mm wider than its casing was made for",
          garment ->
              inElastics(garment, (sized, own) -> with(own, own.width() + 8, own.finished())));

  static final Fault ELASTIC_NARROW =
      Fault.inOneSize(
          "an elastic 12 mm narrower than its casing was made for",
          garment ->
              inElastics(garment, (sized, own) -> with(own, own.width() - 12, own.finished())));

  static final Fault ELASTIC_LOOSE =
      Fault.inOneSize(
          "an elastic longer than the waist",
          garment ->
              inElastics(garment, (sized, own) -> with(own, own.width(), 1.2 * own.finished())));

  static final Fault ELASTIC_SHORT =
      Fault.inOneSize(
          "an elastic of little more than half the waist",
          garment ->
              inElastics(garment, (sized, own) -> with(own, own.width(), 0.6 * own.finished())));

  static final Fault BAND_SHORT =
      Fault.inOneSize(
          "a band at 0.6 of its length",
          garment ->
              garment.threeSizes().stream()
                  .flatMap(
                      sized ->
                          sized.pieces().stream()
                              .filter(piece -> isBand(sized, piece))
                              .map(
                                  piece ->
                                      garment.planted(
                                          piece.name(),
                                          Reworked.size(sized, shorter(piece)),
                                          "band-ratio",
                                          Garment.subjects(
                                              sized, piece.name(), piece.edges().get(0).name())))));

  private static Piece shorter(Piece piece) {
    Box box = piece.stitchLine().bounds();
    boolean lies = box.width() > box.height();
    return Reworked.scaled(piece, lies ? 0.6 : 1, lies ? 1 : 0.6);
  }

  /** Whether a piece is a strip whose ends are sewn to each other. */
  private static boolean isBand(SizedPattern sized, Piece piece) {
    Box box = piece.stitchLine().bounds();
    boolean strip =
        piece.edges().size() == 4
            && piece.stitchLine().signedArea() > 0.99 * box.width() * box.height();
    return strip
        && sized.seams().stream()
            .map(seam -> seam.joins().get(0).layers())
            .anyMatch(
                layers ->
                    layers.stream().map(Seam.Layer::run).allMatch(run -> run.size() == 1)
                        && layers.stream()
                            .allMatch(
                                l ->
                                    l.run().get(0).piece().equals(piece.name())
                                        && l.run().get(0).from().isEmpty()
                                        && l.run().get(0).to().isEmpty())
                        && layers.stream().map(l -> l.run().get(0).edge()).distinct().count() == 2
                        && areOpposite(piece, layers));
  }

  /** Whether a seam brings the two ends of a strip together, and not its long edges. */
  private static boolean areOpposite(Piece piece, List<Seam.Layer> layers) {
    double shortest =
        piece.edges().stream().mapToDouble(edge -> edge.path().length()).min().orElse(0);
    return layers.stream()
        .map(layer -> piece.edge(layer.run().get(0).edge()).orElseThrow())
        .allMatch(edge -> edge.path().length() < shortest + 1);
  }

  /** Every piece of a size drawn narrower, for what a predicate finds in that size. */
  private static Stream<Planted> narrowed(
      Garment garment, double factor, String check, ToDoubleFunction<SizedPattern> applies) {
    return garment.threeSizes().stream()
        .filter(sized -> applies.applyAsDouble(sized) > 0)
        .map(
            sized ->
                garment.planted(
                    "all pieces",
                    Reworked.scaled(sized, factor),
                    check,
                    Set.of(
                        "opening waist",
                        "level hip",
                        "level bust",
                        "level chest",
                        "level upper_arm")));
  }

  static final Fault OPENING_NARROW =
      Fault.inOneSize(
          "an opening too narrow for what it must pass",
          garment ->
              garment.chart().column("hip").isEmpty()
                  ? Stream.empty()
                  : narrowed(
                      garment,
                      0.7,
                      "opening-passes",
                      sized ->
                          sized.pieces().stream()
                              .filter(piece -> piece.openings().contains("waist"))
                              .count()));

  static final Fault GIRTH_SMALL =
      Fault.inOneSize(
          "pieces at three quarters of their width",
          garment ->
              narrowed(
                  garment,
                  garment.name().equals("eddy-skirt") ? 0.5 : 0.75,
                  "girth-ease",
                  sized ->
                      sized.pieces().stream()
                          .filter(piece -> !piece.marks(Mark.Level.class).isEmpty())
                          .count()));

  static final Fault GIRTH_DOUBLE =
      Fault.inOneSize(
          "pieces at two and a half times their width, as where a half is counted as a quarter",
          garment ->
              narrowed(
                  garment,
                  2.5,
                  "girth-ease",
                  sized ->
                      sized.pieces().stream()
                          .filter(piece -> !piece.marks(Mark.Level.class).isEmpty())
                          .count()));

  static final Fault TOO_WIDE =
      Fault.inOneSize(
          "a piece wider than every cloth",
          garment ->
              garment.threeSizes().stream()
                  .flatMap(
                      sized ->
                          sized.pieces().stream()
                              .filter(piece -> widest(garment, piece) > 0)
                              .map(
                                  piece ->
                                      garment.planted(
                                          piece.name(),
                                          Reworked.size(sized, wider(garment, piece)),
                                          "cloth-width",
                                          Set.of(piece.name())))));

  private static double widest(Garment garment, Piece piece) {
    return garment
        .run()
        .pattern()
        .fabric(piece.card().cuts().get(0).fabric())
        .map(Fabric::widths)
        .map(widths -> widths.get(widths.size() - 1))
        .orElse(0.0);
  }

  private static Piece wider(Garment garment, Piece piece) {
    Box box = piece.stitchLine().bounds();
    boolean upright = Math.abs(piece.grain().orElseThrow().direction().dy()) > 0.7;
    int halves = piece.foldEdge().isPresent() ? 2 : 1;
    double across = (upright ? box.width() : box.height()) * halves;
    // So wide that no part of a piece that may be cut apart fits either.
    double beyond = piece.marks(Mark.Split.class).isEmpty() ? 1.3 : 3.3;
    double factor = beyond * widest(garment, piece) / across;
    return Reworked.scaled(piece, upright ? factor : 1, upright ? 1 : factor);
  }

  static final Fault RISE_SHORT =
      Fault.inOneSize(
          "a rise 60 mm shorter than drafted",
          garment ->
              garment.threeSizes().stream()
                  .filter(sized -> garment.chart().column("body_rise").isPresent())
                  .flatMap(
                      sized ->
                          sized.pieces().stream()
                              .filter(piece -> piece.edge("crotch").isPresent())
                              .map(
                                  piece -> {
                                    double top = piece.stitchLine().bounds().maxY();
                                    return garment.planted(
                                        piece.name(),
                                        Reworked.size(
                                            sized, Reworked.scaled(piece, 1, 1 - 60 / top)),
                                        "rise",
                                        Set.of(piece.name() + ".crotch"));
                                  })));
}
