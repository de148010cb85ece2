package org.hemwright.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hemwright.checks.Pieces.rectangle;
import static org.hemwright.checks.Pieces.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.junit.jupiter.api.Test;

/** What goes round a body, grades with it and is cut from cloth. */
class WornChecksTest {
  private static final OptionalDouble UNSAID = OptionalDouble.empty();

  /** A panel twice, a quarter of the waist wide where folded, in so many sizes. */
  private static SizeRun panels(double... widths) {
    List<List<Piece>> sizes = new ArrayList<>();
    for (double width : widths) {
      sizes.add(
          List.of(
              rectangle("panel", width, 600, "hem", "side", "waist", "centre")
                  .cut(2, false)
                  .onFold(true, "centre")
                  .draw()));
    }
    return Pieces.run(List.of(), sizes);
  }

  /** Handbook check values 5 and 6: waist opening 68 cm, hips 100 cm. */
  @Test
  void aWaistPassesTheHip() {
    assertThat(
            Worn.of(panels(170))
                .column("hip", 1000)
                .openings("waist")
                .fabric(Fabric.Kind.KNIT, OptionalDouble.of(0.5), 1500.0)
                .told("opening-passes"))
        .isEmpty();
    assertThat(
            Worn.of(panels(170))
                .column("hip", 1000)
                .openings("waist")
                .fabric(Fabric.Kind.KNIT, OptionalDouble.of(0.45), 1500.0)
                .told("opening-passes"))
        .containsExactly(
            "FAIL: The opening waist of panel measures 68 cm, and 98.6 cm at the 45% that its cloth"
                + " stretches; it is to pass the hip, 100 cm, in every size. / Make it longer, or"
                + " ask for a cloth that stretches 47.1% across.");
  }

  /**
   * A round of the opening and both sides of its slit goes over the hip; whatever its edge is
   * called.
   */
  @Test
  void aWaistOpensByAZip() {
    assertThat(
            Worn.of(panels(170))
                .column("hip", 1000)
                .openings("hem")
                .passing("hip", 180)
                .fabric(Fabric.Kind.WOVEN, UNSAID, 1500.0)
                .told("opening-passes"))
        .isEmpty();
    assertThat(
            Worn.of(panels(170))
                .column("hip", 1000)
                .openings("hem")
                .passing("hip", 150)
                .fabric(Fabric.Kind.WOVEN, UNSAID, 1500.0)
                .told("opening-passes"))
        .containsExactly(
            "FAIL: The opening hem of panel measures 68 cm, and 98 cm round with its slit of 15 cm"
                + " open; it is to pass the hip, 100 cm, in every size. / Let the slit be 17.25 cm"
                + " long, or make the opening longer.");
    assertThat(
            Worn.of(panels(150))
                .column("hip", 1000)
                .openings("hem")
                .passing("hip", 100)
                .fabric(Fabric.Kind.KNIT, OptionalDouble.of(0.2), 1500.0)
                .told("opening-passes"))
        .containsExactly(
            "FAIL: The opening hem of panel measures 60 cm, and 92 cm round at the 20% that its"
                + " cloth stretches and with its slit of 10 cm open; it is to pass the hip, 100 cm,"
                + " in every size. / Let the slit be 14 cm long, or make the opening longer.");
  }

  /** What an elastic holds and passes is what the document says, not what its name recalls. */
  @Test
  void anElasticIsHeldAgainstWhatItIsSaidToHold() {
    assertThat(
            Worn.of(panels(250))
                .column("wrist", 160)
                .column("hand", 200)
                .elastic("cuff_elastic", "panel", 165, "wrist", "hand", 0.1)
                .told("elastic-casing"))
        .containsExactly(
            "FAIL: cuff_elastic is 16.5 cm long when finished in every size, longer than the wrist"
                + " of 16 cm that it is to hold. / Make it no longer than 16 cm.",
            "FAIL: cuff_elastic is 16.5 cm long when finished in every size, and would stretch by"
                + " 21.2% to pass a hand of 20 cm; 10% can be counted on. / Make it longer.");
  }

  /** Handbook section 4: a woven waist is the hips and 2.5 cm. */
  @Test
  void aWaistThatDoesNotStretchIsLarger() {
    for (double quarter : new double[] {249, 250, 256.25}) {
      List<String> told =
          Worn.of(panels(quarter))
              .column("hip", 1000)
              .openings("waist")
              .fabric(Fabric.Kind.WOVEN, UNSAID, 1500.0)
              .told("opening-passes");
      if (quarter > 250) {
        assertThat(told).isEmpty();
      } else {
        assertThat(told).singleElement().asString().startsWith(quarter < 250 ? "FAIL" : "WARN");
      }
    }
    assertThat(
            Worn.of(panels(200))
                .openings("waist")
                .fabric(Fabric.Kind.WOVEN, UNSAID, 1500.0)
                .told("opening-passes"))
        .as("no hip in the chart")
        .isEmpty();
  }

  private static Worn band(double depth, double width, double finished) {
    Pieces band = rectangle("band", 700, depth, "lower", "right", "upper", "left");
    return Worn.of(
            Pieces.run(
                List.of(seam("fold", "band.lower", "band.upper")), List.of(List.of(band.draw()))))
        .column("waist", 711.2)
        .column("hip", 960)
        .elastic("band", width, finished);
  }

  /** Handbook check value 24: elastic 30, clearance 3, so a folded band of 66 mm. */
  @Test
  void anElasticFitsItsCasing() {
    assertThat(band(66, 30, 640).told("elastic-casing")).isEmpty();
    assertThat(band(80, 30, 640).told("elastic-casing")).isEmpty();
    assertThat(band(64, 30, 640).told("elastic-casing"))
        .containsExactly(
            "WARN: The casing for waist_elastic in band is 32 mm deep in every size, and its"
                + " elastic is 30 mm wide. / Make the casing at least 33 mm deep, or take a"
                + " narrower elastic.");
    assertThat(band(58, 30, 640).told("elastic-casing"))
        .singleElement()
        .asString()
        .startsWith("FAIL");
    assertThat(band(90, 30, 640).told("elastic-casing"))
        .singleElement()
        .asString()
        .startsWith("WARN: The casing for waist_elastic in band is 45 mm deep");
  }

  /** Handbook check values 22 and 23: 25 mm with 10 mm and 6 mm turn-under; 1 in with 1/8. */
  @Test
  void aTurnedCasingIsAsDeepAsItsFirstFold() {
    for (List<Double> folds : List.of(List.of(35.0, 6.0), List.of(28.6), List.of(26.0))) {
      Pieces skirt =
          rectangle("skirt", 700, 600, "hem", "right", "waist", "left")
              .allowance("waist", new Allowance.TurnedBack(folds));
      List<String> told =
          Worn.of(Pieces.run(skirt)).elastic("skirt", 25.4, 600).told("elastic-casing");
      assertThat(told).hasSize(folds.contains(26.0) ? 1 : 0);
    }
  }

  /** Handbook check value 21: waist 28 in (711.2 mm) cut, lapped 1 in: a loop of 27 in. */
  @Test
  void anElasticHoldsTheWaistAndPassesTheHip() {
    assertThat(band(66, 30, 27 * 25.4).told("elastic-casing")).isEmpty();
    assertThat(band(66, 30, 730).told("elastic-casing"))
        .containsExactly(
            "FAIL: waist_elastic is 73 cm long when finished in every size, longer than the waist"
                + " of 71.12 cm that it is to hold. / Make it no longer than 71.12 cm.");
    assertThat(band(66, 30, 470).told("elastic-casing"))
        .hasSize(2)
        .anyMatch(told -> told.startsWith("WARN: waist_elastic is 47 cm"))
        .anyMatch(told -> told.startsWith("FAIL: waist_elastic is 47 cm"));
  }

  @Test
  void aChartRises() {
    SizeRun run = panels(200, 210, 220, 230);
    assertThat(
            Worn.of(run)
                .column("waist", 700, 740, 740, 820)
                .column("hip", 960, 1000, 1040, 1080)
                .told("size-chart"))
        .isEmpty();
    assertThat(
            Worn.of(run)
                .column("waist", 700, 780, 740, 820)
                .column("hip", 960, 1000, 1040, 1080)
                .told("size-chart"))
        .containsExactly(
            "WARN: waist (cm) goes back by 40 mm in size 12, from 78 cm to 74 cm. / Look at both"
                + " cells; sizes stand with the smallest first.");
  }

  /** 37 in written among centimetres, a whole column of inches, and two columns exchanged. */
  @Test
  void slipsOfThePen() {
    SizeRun run = panels(200, 210, 220, 230);
    assertThat(Worn.of(run).column("hip", 960, 1000, 410, 1080).told("size-chart"))
        .containsExactly(
            "WARN: hip (cm) is 41 cm in size 12, and 100 cm in the size beside; it reads like the"
                + " other unit. / Write it in the unit that the heading gives.");
    assertThat(Worn.of(run).column("waist", 280, 290, 310, 320).told("size-chart"))
        .singleElement()
        .asString()
        .startsWith("FAIL: waist (cm) has values such as 31 cm, smaller than any body");
    assertThat(
            Worn.of(run)
                .column("waist", 960, 1000, 1040, 1080)
                .column("hip", 700, 740, 780, 1000)
                .told("size-chart"))
        .hasSize(3)
        .allMatch(
            told ->
                told.startsWith("WARN: waist (cm) is ")
                    && told.contains("much larger than the hip"));
  }

  /** Handbook check value 20: bust of ASTM D5585-11e1, sizes 8 to 20, rises in every step. */
  @Test
  void aPublishedChartIsSilent() {
    double[] bust = {36.25, 37.25, 38.75, 40.375, 42.125, 44, 46};
    double[] mm = new double[bust.length];
    for (int i = 0; i < bust.length; i++) {
      mm[i] = bust[i] * 25.4;
    }
    SizeRun run = panels(200, 210, 220, 230, 240, 250, 260);
    assertThat(Worn.of(run).column("bust", mm).told("size-chart")).isEmpty();
  }

  @Test
  void edgesAndGirthsGrowWithTheChart() {
    Mark level = new Mark.Level("hip", new Point(10, 300), Pieces.ORIGIN);
    assertThat(
            Worn.of(panels(200, 210, 220, 230))
                .column("hip", 960, 1000, 1040, 1080)
                .mark(level)
                .told("grade-order"))
        .isEmpty();
    assertThat(
            Worn.of(panels(200, 220, 210, 230))
                .column("hip", 960, 1000, 1040, 1080)
                .mark(level)
                .told("grade-order"))
        .containsExactlyInAnyOrder(
            "WARN: `hem` of panel is 10 mm shorter in size 12 than in size 10; over all sizes it"
                + " grows, and no measurement of the chart shrinks there. / Look at the points at"
                + " its ends: which of them moves against the grade?",
            "WARN: `waist` of panel is 10 mm shorter in size 12 than in size 10; over all sizes it"
                + " grows, and no measurement of the chart shrinks there. / Look at the points at"
                + " its ends: which of them moves against the grade?",
            "WARN: The girth at hip of panel is 40 mm smaller in size 12 than in size 10, and no"
                + " measurement of the chart shrinks there. / Look at the edges that the level"
                + " crosses: which of them moves against the grade?");
    assertThat(
            Worn.of(panels(200, 220, 210, 230))
                .column("hip", 960, 1040, 1000, 1080)
                .told("grade-order"))
        .as("the chart shrinks there too")
        .isEmpty();
    assertThat(
            Worn.of(panels(230, 220, 210, 200))
                .column("hip", 960, 1000, 1040, 1080)
                .mark(level)
                .told("grade-order"))
        .as("an edge that shortens from size to size")
        .isEmpty();
  }

  @Test
  void aKnitShowsItsStretch() {
    Worn knit = Worn.of(panels(200)).fabric(Fabric.Kind.KNIT, UNSAID, 1500.0);
    assertThat(knit.told("stretch-arrow"))
        .containsExactly(
            "WARN: panel is cut from main, a knit, and does not show which way it stretches. /"
                + " Write a line such as `stretch across` in it.");
    assertThat(knit.mark(new Mark.Stretch(new Vector(1, 0), Pieces.ORIGIN)).told("stretch-arrow"))
        .isEmpty();
    assertThat(Worn.of(panels(200)).fabric(Fabric.Kind.WOVEN, UNSAID, 1500.0).told("stretch-arrow"))
        .isEmpty();
  }

  /** Handbook section 5: of 115 cm, 112 cm can be used; opened, with 1 cm at each side. */
  @Test
  void aPieceLiesWithinSomeWidthOfItsCloth() {
    assertThat(
            Worn.of(panels(400, 550))
                .fabric(Fabric.Kind.WOVEN, UNSAID, 900.0, 1150.0)
                .told("cloth-width"))
        .isEmpty();
    assertThat(
            Worn.of(panels(550, 551))
                .fabric(Fabric.Kind.WOVEN, UNSAID, 900.0, 1150.0)
                .told("cloth-width"))
        .containsExactly(
            "FAIL: panel is 112.2 cm wide across the grain in size 10, and the widest main of 115"
                + " cm has 112 cm between its selvedges. / Name a wider cloth, divide the piece"
                + " with a `split` line, or turn its grain.");
  }
}
