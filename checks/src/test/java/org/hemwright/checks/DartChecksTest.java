package org.hemwright.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.UnaryOperator;
import org.hemwright.draft.Drafted;
import org.hemwright.draft.Drafting;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.junit.jupiter.api.Test;

/** Darts that close and lie flat, and the marks by which a maker finds them. */
class DartChecksTest {
  private static final String CHART = "size,waist (cm)\n8,66\n10,70\n12,74\n";

  /** A rectangle with a dart of handbook row 11: legs of 10 cm, an opening of 3 cm. */
  private static SizeRun front(String lines) {
    SizeChart chart =
        ChartReader.read("sizes.csv", CHART.getBytes(StandardCharsets.UTF_8)).chart().orElseThrow();
    String text =
        """
        language 1
        pattern "Front"
        version 1.0
        dated 2026-11-27
        by "Tern Cove Patterns"
        sizes from "sizes.csv" base 10
        units centimetres
        fabric main woven "Cotton"
          widths 150 cm
        piece front "Front" number 1
          cut 1 of main
          point a at 0 cm, 0 cm
          point b at 40 cm, 0 cm
          point c at 40 cm, 50 cm
          point d at 0 cm, 50 cm
          point tip at 20 cm, 40 cm
          outline waist is d to c, side is c to b, hem is b to a, centre is a to d
          dart waist_dart on waist at 20 cm from start to tip, opening 3 cm
        """
            + lines;
    Drafted drafted = Drafting.draft("pattern.hem", text, chart);
    assertThat(drafted.findings()).isEmpty();
    return drafted.run().orElseThrow();
  }

  private static SizeRun with(SizeRun run, UnaryOperator<Piece> change) {
    List<SizedPattern> sizes =
        run.sizes().stream()
            .map(
                sized ->
                    new SizedPattern(
                        sized.size(),
                        sized.pieces().stream().map(change).toList(),
                        sized.seams(),
                        sized.elastics(),
                        sized.numbers()))
            .toList();
    return new SizeRun(run.pattern(), sizes);
  }

  /** The piece with the point of its dart elsewhere. */
  private static Piece with(Piece piece, Vector tip) {
    Intake.Dart own = piece.intakes(Intake.Dart.class).get(0);
    Intake.Dart other =
        new Intake.Dart(
            own.name(),
            own.edge(),
            own.from(),
            own.to(),
            own.apex().plus(tip),
            own.tip().plus(tip),
            own.angle(),
            own.towardStart(),
            own.origin());
    return piece.with(List.of(other), piece.bodyOpenings());
  }

  @Test
  void aSoundDartSaysNothing() {
    SizeRun run = front("");
    assertThat(Told.by("dart", run)).isEmpty();
    assertThat(Told.by("intake-marks", run)).isEmpty();
  }

  /** Legs of 10 cm, 3 cm apart (handbook row 11): its point 30 mm to the side. */
  @Test
  void legsThatDiffer() {
    SizeRun run = with(front(""), piece -> with(piece, new Vector(30, 0)));
    double longer = StrictMath.hypot(45, StrictMath.sqrt(10000 - 225));
    double shorter = StrictMath.hypot(15, StrictMath.sqrt(10000 - 225));
    assertThat(longer - shorter).isCloseTo(8.63, within(0.005));
    assertThat(Told.by("dart", run))
        .containsExactly(
            "FAIL: The legs of waist_dart on `waist` of front differ by 8.6 mm in every size. /"
                + " Let its point lie straight below the middle of its mouth, or draw the edge"
                + " so that both ends are equally far from it.");
  }

  /** A straight edge across a dart of 17.25° (handbook row 11) would dip by that angle. */
  @Test
  void anEdgeThatIsNotTruedDips() {
    SizeRun run =
        with(
            front(""),
            piece -> {
              Intake.Dart own = piece.intakes(Intake.Dart.class).get(0);
              Intake.Dart wider = own.at(own.from() - 60, own.to() + 60);
              return piece.with(List.of(wider), piece.bodyOpenings());
            });
    assertThat(Told.by("dart", run))
        .singleElement()
        .asString()
        .contains("With waist_dart closed, `waist` of front");
  }

  @Test
  void marksThatAreMissing() {
    SizeRun run = front("");
    SizeRun bare = with(run, piece -> marks(piece, List.of()));
    assertThat(Told.by("intake-marks", bare))
        .containsExactly(
            "WARN: A line of waist_dart on `waist` of front is not drawn in every size. / Draw"
                + " the legs of a dart to its point, and each fold of a pleat.",
            "WARN: The point of waist_dart on `waist` of front is not marked in every size. /"
                + " Mark where its stitching ends, with a line such as `drill dart_point at"
                + " dart_point`.");
  }

  private static Piece marks(Piece piece, List<Mark> marks) {
    return new Piece(
            piece.card(),
            piece.stitchLine(),
            piece.edges(),
            piece.corners(),
            piece.notches(),
            piece.grain(),
            marks,
            piece.openings(),
            piece.stackPoint())
        .sewnAs(piece);
  }

  @Test
  void aNotchBesideALeg() {
    assertThat(Told.by("intake-marks", front("  notch waist at 18.4 cm from start\n")))
        .containsExactly(
            "WARN: Another notch lies beside an end of waist_dart on `waist` of front in every"
                + " size, and a maker may take one for the other. / Move that notch a thumb's"
                + " breadth away, or leave it out.");
  }
}
