package org.hemwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.CircularArc;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.SmoothCurve;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.sheet.DocumentFacts;
import org.hemwright.paper.sheet.Ink;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.svg.SvgWriter;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.workbench.folder.PackedFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Our lengths against a browser's: {@code SVGGeometryElement.getTotalLength} (SVG 2, 9.6.2) on the
 * pictures that we write.
 */
class BrowserLengthsTest {
  /** Promised of every length that is drawn (mm). */
  private static final double PROMISED = 0.002;

  @Test
  void curvesThatWeDrawAreAsLongInABrowser() {
    assertSameLengths(paths());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"eddy-skirt", "inlet-tee", "marram-trousers", "brackish-skirt", "shingle-shirt"})
  void everyEdgeOfTheExamplesIsAsLongInABrowserInEverySize(String example) {
    SizeRun run = Workbench.evaluate(new PackedFolder(example)).run().orElseThrow();
    List<Path> edges =
        run.sizes().stream()
            .flatMap(sized -> sized.pieces().stream())
            .flatMap(piece -> piece.edges().stream())
            .map(Edge::path)
            .toList();
    assertThat(edges).hasSizeGreaterThan(20 * 10);
    assertSameLengths(edges);
  }

  private static void assertSameLengths(List<Path> paths) {
    try (Browser browser = Browser.open()) {
      Object measured =
          browser
              .show(svg(paths))
              .evaluate("[...document.querySelectorAll('path')].map(p => p.getTotalLength())");
      List<?> lengths = (List<?>) measured;
      assertThat(lengths).hasSameSizeAs(paths);
      for (int i = 0; i < paths.size(); i++) {
        double length = ((Number) lengths.get(i)).doubleValue();
        assertThat(length)
            .as(paths.get(i).toString())
            .isCloseTo(paths.get(i).length(), within(PROMISED));
      }
    }
  }

  /**
   * Straight lines, arcs and smooth curves as long as a garment's edges, seeded. Chromium adds in
   * single precision and is 0.003 mm off at three metres, whatever the scale of the picture.
   */
  private static List<Path> paths() {
    SplittableRandom random = new SplittableRandom(1986);
    List<Path> paths = new ArrayList<>();
    paths.add(Path.straight(new Point(0, 0), new Point(300, 400)));
    for (int i = 0; i < 60; i++) {
      Point centre = point(random);
      paths.add(
          CircularArc.about(
              centre,
              centre.plus(new Vector(random.nextDouble(20, 400), 0)),
              random.nextDouble(0.2, 3)));
      SmoothCurve curve = SmoothCurve.from(point(random));
      for (int more = random.nextInt(1, 4); more > 0; more--) {
        curve = curve.to(point(random));
      }
      paths.add(curve.path());
    }
    return paths;
  }

  private static Point point(SplittableRandom random) {
    return new Point(random.nextDouble(0, 400), random.nextDouble(0, 400));
  }

  private static String svg(List<Path> paths) {
    Pen pen = Pen.solid(0.6, new Ink(0, 0, 0));
    List<Item> strokes = new ArrayList<>();
    paths.forEach(path -> strokes.add(new Stroke(path, pen, Layer.COMMON, Subject.NONE)));
    DocumentFacts facts =
        new DocumentFacts("Lengths", "", "", "en", LocalDate.of(2026, 11, 25), List.of());
    return new String(
        SvgWriter.write(facts, new Sheet(new Box(0, 0, 600, 600), strokes)),
        StandardCharsets.UTF_8);
  }
}
