package org.hemwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Smooth curves against MetaPost, whose author is J. D. Hobby: every control point within 1e-6 of
 * the chord. The recorded figures name their version; where MetaPost is installed it is asked anew.
 */
class SmoothCurveTest {
  private static final Path CURVES = Path.of("src/test/metapost/curves.txt");
  private static final Path SCRIPT = Path.of("src/test/metapost/record.sh");

  /** As a share of the chord. */
  private static final double FINE = 1e-6;

  /** MetaPost's own numbers are multiples of 1/65536. */
  private static final double COARSE = 1e-3;

  private static final String NUMBER = "(-?[0-9]+(?:[.][0-9]+)?)";
  private static final Pattern TOKEN =
      Pattern.compile(
          "\\(%1$s,%1$s\\)|\\{curl %1$s\\}|\\{%1$s,%1$s\\}|\\.\\.tension %1$s and %1$s|\\.\\.|cycle"
              .formatted(NUMBER));

  @Test
  void controlPointsAreThoseMetaPostRecorded() throws IOException {
    Path recorded = Path.of("src/test/resources/org/hemwright/geometry/metapost.txt");
    assertThat(Files.readAllLines(recorded).get(0)).contains("MetaPost 2.02");
    assertSame(read(recorded));
  }

  @Test
  void controlPointsAreThoseOfTheInstalledMetaPost(@TempDir Path folder) throws Exception {
    assumeTrue(isInstalled("mpost"), "mpost is not installed (Debian: texlive-metapost)");
    Path told = folder.resolve("told.txt");
    Process record =
        new ProcessBuilder("sh", SCRIPT.toString(), told.toString()).inheritIO().start();
    assertThat(record.waitFor()).isZero();
    assertSame(read(told));
  }

  private static boolean isInstalled(String program) throws InterruptedException {
    try {
      Process process =
          new ProcessBuilder(program, "--version")
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      return process.waitFor() == 0;
    } catch (IOException absent) {
      return false;
    }
  }

  private static void assertSame(Map<String, List<Cubic>> expected) throws IOException {
    List<String> names = new ArrayList<>();
    for (String line : Files.readAllLines(CURVES)) {
      if (line.startsWith("#")) {
        continue;
      }
      String name = line.substring(0, line.indexOf(':'));
      names.add(name);
      double share = name.startsWith("coarse_") ? COARSE : FINE;
      assertThat(expected).containsKey(name);
      List<Curve> drawn = drawn(line.substring(line.indexOf(':') + 1)).curves();
      List<Cubic> told = expected.getOrDefault(name, List.of());
      assertThat(drawn).as(name).hasSameSizeAs(told);
      for (int i = 0; i < drawn.size(); i++) {
        Cubic ours = (Cubic) drawn.get(i);
        Cubic theirs = told.get(i);
        double close = share * theirs.start().distanceTo(theirs.end());
        assertThat(ours.start().distanceTo(theirs.start())).as(name).isLessThan(close);
        assertThat(ours.control1().distanceTo(theirs.control1())).as(name).isLessThan(close);
        assertThat(ours.control2().distanceTo(theirs.control2())).as(name).isLessThan(close);
        assertThat(ours.end().distanceTo(theirs.end())).as(name).isLessThan(close);
      }
    }
    assertThat(names).hasSize(80).hasSize(expected.size());
  }

  private static Map<String, List<Cubic>> read(Path told) throws IOException {
    Map<String, List<Cubic>> curves = new LinkedHashMap<>();
    List<Cubic> cubics = new ArrayList<>();
    for (String line : Files.readAllLines(told)) {
      if (line.startsWith("curve ")) {
        cubics = new ArrayList<>();
        curves.put(line.substring("curve ".length()), cubics);
      } else if (!line.startsWith("#")) {
        double[] n =
            Pattern.compile(" ").splitAsStream(line).mapToDouble(Double::valueOf).toArray();
        cubics.add(
            new Cubic(
                new Point(n[0], n[1]),
                new Point(n[2], n[3]),
                new Point(n[4], n[5]),
                new Point(n[6], n[7])));
      }
    }
    return curves;
  }

  /** Draws a path written as MetaPost would have it. */
  private static org.hemwright.geometry.Path drawn(String notation) {
    Matcher token = TOKEN.matcher(notation);
    assertThat(token.find()).isTrue();
    SmoothCurve curve = SmoothCurve.from(new Point(number(token, 1), number(token, 2)));
    Optional<Vector> waiting = Optional.empty();
    boolean cycle = false;
    boolean afterPoint = true;
    while (token.find()) {
      if (token.group(1) != null) {
        curve.to(new Point(number(token, 1), number(token, 2)));
        waiting.ifPresent(curve::arriving);
        waiting = Optional.empty();
        afterPoint = true;
      } else if (token.group(3) != null) {
        curve.curl(number(token, 3));
      } else if (token.group(4) != null && afterPoint) {
        curve.leaving(new Vector(number(token, 4), number(token, 5)));
      } else if (token.group(4) != null) {
        waiting = Optional.of(new Vector(number(token, 4), number(token, 5)));
      } else if (token.group(6) != null) {
        curve.tension(number(token, 6), number(token, 7));
        afterPoint = false;
      } else {
        cycle |= token.group().equals("cycle");
        afterPoint = false;
      }
    }
    return cycle ? curve.closedPath() : curve.path();
  }

  private static double number(Matcher token, int group) {
    return Double.parseDouble(token.group(group));
  }

  /**
   * At 45° either side Hobby's velocity gives the handles of the usual quarter circle, 4/3·(√2 − 1)
   * radii, which strays by 4/27·sin⁶(22.5°)/cos²(22.5°) = 0.0273 percent [G].
   */
  @Test
  void aRingThroughFourPointsOfACircleIsNearlyThatCircle() {
    org.hemwright.geometry.Path ring =
        SmoothCurve.from(new Point(100, 0))
            .to(new Point(0, 100))
            .to(new Point(-100, 0))
            .to(new Point(0, -100))
            .closedPath();
    assertThat(ring.isClosed()).isTrue();
    for (int i = 0; i < 100; i++) {
      double radius = ring.at(ring.length() * i / 100).point().distanceTo(Point.ORIGIN);
      assertThat(radius).isCloseTo(100, within(0.028));
    }
  }

  @Test
  void theCurveGoesThroughItsPointsWithTheGivenHeadings() {
    Drawn drawn = new Drawn(41);
    for (int i = 0; i < 100; i++) {
      Vector out = drawn.heading();
      Vector midway = drawn.heading();
      Vector in = drawn.heading();
      Point middle = drawn.point(100);
      org.hemwright.geometry.Path path =
          SmoothCurve.from(drawn.point(100))
              .leaving(out.times(7))
              .to(middle)
              .arriving(midway)
              .to(drawn.point(100))
              .arriving(in)
              .path();
      assertThat(path.startDirection().minus(out).length()).isLessThan(1e-9);
      assertThat(path.endDirection().minus(in).length()).isLessThan(1e-9);
      assertThat(path.curves().get(0).end()).isEqualTo(middle);
      assertThat(path.curves().get(0).direction(1).minus(midway).length()).isLessThan(1e-9);
      assertThat(path.curves().get(1).direction(0).minus(midway).length()).isLessThan(1e-9);
    }
  }

  @Test
  void withoutHeadingsTheCurveHasNoCorner() {
    Drawn drawn = new Drawn(42);
    for (int i = 0; i < 100; i++) {
      SmoothCurve curve = SmoothCurve.from(drawn.point(100));
      for (int k = drawn.count(2, 6); k > 0; k--) {
        curve.to(drawn.point(100));
      }
      List<Curve> curves = curve.path().curves();
      for (int k = 1; k < curves.size(); k++) {
        assertThat(curves.get(k - 1).direction(1).minus(curves.get(k).direction(0)).length())
            .isLessThan(1e-9);
      }
    }
  }

  @Test
  void whatCannotBeDrawnIsRefused() {
    SmoothCurve curve = SmoothCurve.from(new Point(3, 4));
    assertThatThrownBy(() -> curve.to(new Point(3, 4)))
        .isInstanceOf(GeometryProblem.class)
        .hasMessage("two points in a row of a smooth curve lie on one another at (3.0, 4.0) mm");
    assertThatThrownBy(curve::path).hasMessage("a smooth curve needs two points or more");
    assertThatThrownBy(() -> curve.curl(-1)).hasMessage("a curl is 0 or more, not -1.0");
    assertThatThrownBy(() -> curve.tension(1, 0.5))
        .hasMessage("a tension is 0.75 or more, not 0.5");
    assertThatThrownBy(() -> curve.leaving(Vector.ZERO))
        .hasMessage("a step of no length has no direction");
    curve.to(new Point(5, 5)).to(new Point(3, 4));
    assertThatThrownBy(curve::closedPath).isInstanceOf(GeometryProblem.class);
  }
}
