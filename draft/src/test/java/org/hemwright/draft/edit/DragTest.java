package org.hemwright.draft.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.hemwright.draft.Charts;
import org.hemwright.draft.plan.DialSettings;
import org.hemwright.draft.plan.Evaluation;
import org.hemwright.draft.plan.Plan;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.junit.jupiter.api.Test;

/**
 * A drag changes the numbers that she wrote, rounded as she writes them, and nothing else of the
 * text (design, "Edits").
 */
class DragTest {
  static final SizeChart CHART =
      Charts.of(
          """
          size,waist (cm),hip (cm)
          8,66,92
          10,70,96
          12,74,100
          14,78,104
          """);

  private static final String METRIC =
      """
      language 1
      pattern "Trial"
      version 1.0
      dated 2026-11-25
      by "Tern Cove Patterns"
      sizes from "sizes.csv" base 12
      units centimetres
      fabric main woven "Linen"
        widths 140 cm
      dial ease = 4 cm from 0 cm to 12 cm "Ease"
      let rise = 1 cm, then 1.3 cm from size 12
      piece front "Front" number 1
        cut 1 of main
        let quarter = (hip + ease) / 4
        point a at 0 cm, 0 cm
        point b from a right 20 cm then up 5 cm   # hers
        point c from b up quarter
        point d from a up 30 cm then right rise
        point e from a at 30 deg 10 cm
        line low from a to b
        point f on low at 25% from end
        arc bow from c to d radius 40 cm, bulging left
        outline low is a to b, right is b to c, top is bow, left is d to a
        notch right at 12 cm from start
        allowance 1 cm
        grain up
      """;

  private static Plan plan(String text) {
    return Plan.of(DocumentReader.read("pattern.hem", text), CHART).plan();
  }

  private static Size size(String name) {
    return CHART.size(name).orElseThrow();
  }

  private static Point place(String text, Held held, String size) {
    Evaluation values = plan(text).evaluate(List.of(size(size)), DialSettings.NONE);
    return Grips.place(values, 0, held).orElseThrow();
  }

  private static Drag drag(String text, Held held, String size, Grip.Kind kind) {
    return drag(
        text,
        held,
        size,
        Grips.of(plan(text), held, size(size)).stream()
            .filter(grip -> grip.kind() == kind)
            .findFirst()
            .orElseThrow());
  }

  private static Drag drag(String text, Held held, String size, Grip grip) {
    return Drag.begin(plan(text), grip, held, size(size)).orElseThrow();
  }

  @Test
  void itsOwnNumbersChangeAndNoOtherByte() {
    Held b = new Held.OfPoint("front", "b");
    Dragged dragged = drag(METRIC, b, "12", Grip.Kind.OWN).to(new Point(213.4, 47.2));
    assertThat(dragged.text())
        .isEqualTo(METRIC.replace("right 20 cm then up 5 cm ", "right 21.3 cm then up 4.7 cm "));
    assertThat(dragged.place()).isEqualTo(new Point(213, 47));
    assertThat(place(dragged.text(), b, "12").distanceTo(dragged.place())).isLessThan(1e-9);
  }

  @Test
  void inchesAreWrittenAsFractions() {
    String inches =
        METRIC
            .replace("units centimetres", "units inches")
            .replace("right 20 cm then up 5 cm ", "right 7 7/8 in then up 2 in ");
    Dragged dragged =
        drag(inches, new Held.OfPoint("front", "b"), "14", Grip.Kind.OWN)
            .to(new Point(8.3 * 25.4, 2.26 * 25.4));
    assertThat(dragged.text())
        .isEqualTo(
            inches.replace("right 7 7/8 in then up 2 in ", "right 8 5/16 in then up 2 1/4 in "));
  }

  @Test
  void aDirectionAndALengthTurnTogether() {
    Held e = new Held.OfPoint("front", "e");
    Dragged dragged = drag(METRIC, e, "12", Grip.Kind.OWN).to(new Point(90, 90));
    // 45 degrees, sqrt(2) * 90 mm = 127.28 mm, in steps of 0.5 degrees and 0.1 cm.
    assertThat(dragged.text()).isEqualTo(METRIC.replace("at 30 deg 10 cm", "at 45 deg 12.7 cm"));
  }

  @Test
  void aShareOfALineSlidesAlongIt() {
    Held f = new Held.OfPoint("front", "f");
    Dragged dragged = drag(METRIC, f, "12", Grip.Kind.OWN).to(new Point(100, 25));
    assertThat(dragged.text()).isEqualTo(METRIC.replace("at 25% from end", "at 50% from end"));
  }

  @Test
  void aNotchSlidesAlongItsEdge() {
    Held notch = new Held.OfNotch("front", 0);
    Point before = place(METRIC, notch, "10");
    Dragged dragged =
        drag(METRIC, notch, "10", Grip.Kind.OWN).to(new Point(before.x() + 15, before.y() + 20.2));
    assertThat(dragged.text()).isEqualTo(METRIC.replace("right at 12 cm", "right at 14 cm"));
  }

  @Test
  void anEdgeIsPulledByTheNumberOfItsArc() {
    Held bow = new Held.OfLine("front", "top", 0.5);
    Drag drag = drag(METRIC, bow, "12", Grip.Kind.OWN);
    Dragged dragged = drag.to(drag.start().plus(new org.hemwright.geometry.Vector(-3, 8)));
    assertThat(dragged.literals()).hasSize(1);
    assertThat(dragged.place().y() - drag.start().y()).isCloseTo(8, within(1.0));
    assertThat(dragged.text().replaceAll("radius \\d+ cm", "radius 40 cm")).isEqualTo(METRIC);
  }

  @Test
  void whereThereIsNoNumberADialIsTurnedOrALegAdded() {
    Held c = new Held.OfPoint("front", "c");
    assertThat(Grips.of(plan(METRIC), c, size("12")))
        .extracting(Grip::kind)
        .containsExactly(Grip.Kind.LEG);
    Point before = place(METRIC, c, "12");
    Dragged dragged =
        drag(METRIC, c, "12", Grip.Kind.LEG).to(new Point(before.x() - 3.1, before.y() + 0.1));
    assertThat(dragged.text())
        .isEqualTo(
            METRIC.replace(
                "point c from b up quarter", "point c from b up quarter then left 3 mm"));
    assertThat(place(dragged.text(), c, "12").x()).isCloseTo(before.x() - 3, within(1e-9));
    String straight = METRIC.replace("up quarter", "up ease");
    Dragged turned = drag(straight, c, "12", Grip.Kind.DIAL).to(new Point(200, 50 + 62));
    assertThat(turned.text()).isEqualTo(straight.replace("dial ease = 4 cm", "dial ease = 6.2 cm"));
  }

  @Test
  void aSteppedNumberIsAskedAbout() {
    Held d = new Held.OfPoint("front", "d");
    List<Grip> grips = Grips.of(plan(METRIC), d, size("10"));
    assertThat(grips.stream().flatMap(grip -> grip.reach().stream()))
        .containsExactly(Grip.Reach.FROM_HERE, Grip.Reach.THIS, Grip.Reach.ALL);
    Point goal = new Point(14, 300);
    assertThat(rise(grips, Grip.Reach.ALL, d, goal)).isEqualTo("1.4 cm, then 1.7 cm from size 12");
    assertThat(rise(grips, Grip.Reach.FROM_HERE, d, goal))
        .isEqualTo("1 cm, then 1.4 cm from size 10, then 1.7 cm from size 12");
    assertThat(rise(grips, Grip.Reach.THIS, d, goal))
        .isEqualTo("1 cm, then 1.4 cm from size 10, then 1.3 cm from size 12");
  }

  private static String rise(List<Grip> grips, Grip.Reach reach, Held held, Point goal) {
    Grip grip =
        grips.stream().filter(g -> g.reach().filter(reach::equals).isPresent()).findFirst().get();
    String text = drag(METRIC, held, "10", grip).to(goal).text();
    int from = text.indexOf("let rise = ") + "let rise = ".length();
    return text.substring(from, text.indexOf('\n', from));
  }

  @Test
  void aNumberBelowNothingIsSaidTheOtherWay() {
    Held b = new Held.OfPoint("front", "b");
    assertThat(drag(METRIC, b, "12", Grip.Kind.OWN).to(new Point(-31, -12)).text())
        .isEqualTo(METRIC.replace("right 20 cm then up 5 cm ", "left 3.1 cm then down 1.2 cm "));
    String sum = METRIC.replace("up quarter", "up quarter - 5 mm then right 1 cm");
    Held c = new Held.OfPoint("front", "c");
    Point before = place(sum, c, "12");
    assertThat(
            drag(sum, c, "12", Grip.Kind.OWN).to(new Point(before.x() - 15, before.y() + 8)).text())
        .isEqualTo(METRIC.replace("up quarter", "up quarter + 3 mm then left 0.5 cm"));
    String turned = METRIC.replace("at 30 deg", "at -30 deg");
    Held e = new Held.OfPoint("front", "e");
    assertThat(drag(turned, e, "12", Grip.Kind.OWN).to(new Point(90, 90)).text())
        .isEqualTo(METRIC.replace("at 30 deg 10 cm", "at 45 deg 12.7 cm"));
  }

  /** A law: what a drag shows is what the written text then says, wherever the pointer goes. */
  @Test
  void whatIsShownIsWhatIsWritten() {
    SplittableRandom random = new SplittableRandom(7);
    List<Held> things =
        List.of(
            new Held.OfPoint("front", "b"),
            new Held.OfPoint("front", "c"),
            new Held.OfPoint("front", "d"),
            new Held.OfPoint("front", "e"),
            new Held.OfPoint("front", "f"),
            new Held.OfNotch("front", 0));
    for (int i = 0; i < 120; i++) {
      Held held = things.get(random.nextInt(things.size()));
      String size = CHART.sizes().get(random.nextInt(4)).name();
      List<Grip> grips = Grips.of(plan(METRIC), held, size(size));
      Drag drag = drag(METRIC, held, size, grips.get(random.nextInt(grips.size())));
      Dragged dragged = drag.to(new Point(random.nextDouble(-60, 260), random.nextDouble(10, 330)));
      Point written = place(dragged.text(), held, size);
      assertThat(written.distanceTo(dragged.place())).as(dragged.text()).isLessThan(1e-6);
      assertThat(DocumentReader.read("p", dragged.text()).findings()).as(dragged.text()).isEmpty();
    }
  }
}
