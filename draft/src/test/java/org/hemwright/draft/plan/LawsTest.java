package org.hemwright.draft.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Random;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.SizedPattern;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** What holds for every drawing, tried on many. */
class LawsTest {
  private static String cm(Random random, double from, double to) {
    return String.format(Locale.ROOT, "%.3f cm", from + (to - from) * random.nextDouble());
  }

  @RepeatedTest(40)
  void mirroredTwiceATurnedBackAndMovedBackIsWhereItWas(RepetitionInfo info) {
    Random random = new Random(info.getCurrentRepetition());
    Sketch sketch =
        Sketch.inPiece(
            """
            point a at %s, %s
            point b at %s, %s
            point p at %s, %s
            point twice is p mirrored across a to b mirrored across b to a
            point back is p turned 33.3 deg about a turned -33.3 deg about a
            point home is p moved from a to b moved from b to a
            curve c from a leaving up to p to b
            path c_twice is c mirrored across a to p mirrored across p to a
            let lengths = length of c_twice - length of c
            drill twice_mark at twice
            drill back_mark at back
            drill home_mark at home
            drill p_mark at p
            """
                .replace("to p to b", "through p to b")
                .formatted(
                    cm(random, 0, 20),
                    cm(random, 0, 20),
                    cm(random, 30, 50),
                    cm(random, 30, 50),
                    cm(random, 20, 30),
                    cm(random, 0, 60)));
    assertThat(sketch.codes()).isEmpty();
    Point p = sketch.drill("p_mark");
    for (String mark : new String[] {"twice_mark", "back_mark", "home_mark"}) {
      assertThat(sketch.drill(mark).distanceTo(p)).isLessThan(1e-9);
    }
    assertThat(sketch.number("lengths")).isCloseTo(0, within(1e-7));
  }

  /** A sleeve cap solved against an armhole, with drafts of many shapes. */
  @RepeatedTest(20)
  void aSolvedSeamIsEqualInEverySize(RepetitionInfo info) {
    Random random = new Random(info.getCurrentRepetition());
    Sketch sketch =
        Sketch.of(
            """
            let armhole = waist / 4 + %s
            solve cap_height so that length of sleeve.cap = armhole within 1 cm and 60 cm
            piece sleeve "Sleeve" number 1
              cut 2 of main, mirrored
              point top at 0 cm, 0 cm
              point left_arm  from top down cap_height then left %s
              point right_arm from top down cap_height then right %s
              curve cap_line from left_arm leaving right to top arriving right, then leaving right to right_arm arriving right
              outline cap is cap_line, under is straight
            """
                .formatted(cm(random, 10, 20), cm(random, 4, 9), cm(random, 4, 9)));
    assertThat(sketch.codes()).isEmpty();
    for (SizedPattern size : sketch.drafted().run().orElseThrow().sizes()) {
      String name = size.size().name();
      double cap = sketch.piece(name, "sleeve").edge("cap").orElseThrow().path().length();
      assertThat(cap).isCloseTo(sketch.number(name, "armhole"), within(1e-5));
    }
  }

  @Test
  void aSolveInsideASolveFindsBoth() {
    Sketch sketch =
        Sketch.of(
            """
            solve x so that x + y = waist within 0 cm and 200 cm
            solve y so that y = x / 2 + 3 cm within 0 cm and 200 cm
            """);
    assertThat(sketch.codes()).isEmpty();
    for (String size : new String[] {"8", "14", "26"}) {
      double x = sketch.number(size, "x");
      double y = sketch.number(size, "y");
      assertThat(y).isCloseTo(x / 2 + 30, within(1e-5));
      assertThat(x + y).isCloseTo(sketch.number(size, "waist"), within(1e-5));
    }
  }

  @Test
  void anglesAndGirthsAreSolvedToo() {
    Sketch sketch =
        Sketch.of(
            """
            solve slope so that girth of panel at hip = hip + 4 cm within -20 deg and 40 deg
            piece panel "Panel" number 1
              cut 2 of main, on the fold
              point top_centre at 0 cm, 0 cm
              point top_side from top_centre right waist / 4
              point low_side from top_side turned slope from down 70 cm
              point low_centre from top_centre down 60 cm
              line side_line from top_side to low_side
              outline top is top_centre to top_side, side is side_line, hem is low_side to low_centre, centre is straight
              fold centre
              point hip_height from top_centre down hip_depth
              level hip at hip_height
            """);
    assertThat(sketch.codes()).isEmpty();
    double tangent = Math.tan(sketch.number("14", "slope"));
    // A quarter of the girth at the hip, 20.2 cm below a waist of 78 cm, is a quarter of 108 cm.
    assertThat(780 / 4.0 + 202 * tangent).isCloseTo(1080 / 4.0, within(1e-5));
  }

  @Test
  void anExactPlaceIsFoundAtAnEndToo() {
    Sketch sketch =
        Sketch.of("solve x so that 2 * x = 20 cm within 10 cm and 30 cm\nlet twice = 2 * x\n");
    assertThat(sketch.codes()).isEmpty();
    assertThat(sketch.number("14", "x")).isEqualTo(100);
    assertThat(sketch.number("14", "twice")).isEqualTo(200);
  }
}
