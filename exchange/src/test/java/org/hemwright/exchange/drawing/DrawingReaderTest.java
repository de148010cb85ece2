package org.hemwright.exchange.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import org.hemwright.geometry.CircularArc;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.traced.TracedDrawing;
import org.junit.jupiter.api.Test;

/** Single rules of SVG 2, each with a value that the standard or school geometry gives. */
class DrawingReaderTest {
  private static TracedDrawing read(String body) {
    String svg =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"500mm\" height=\"500mm\" viewBox=\"0 0"
            + " 500 500\">"
            + body
            + "</svg>";
    ReadDrawing read = DrawingReader.read("a.svg", svg.getBytes(StandardCharsets.UTF_8));
    assertThat(read.findings()).isEmpty();
    return read.drawing().orElseThrow();
  }

  private static Path only(String body) {
    assertThat(read(body).lines()).hasSize(1);
    return read(body).lines().get(0).path();
  }

  private static void same(Path path, Path truth) {
    for (int i = 0; i <= 50; i++) {
      Point here = truth.at(truth.length() * i / 50).point();
      assertThat(path.nearest(here).point().distanceTo(here)).isLessThan(0.001);
    }
    assertThat(path.length()).isCloseTo(truth.length(), within(0.001));
  }

  /** A quarter of a circle of radius 50, in each of the four ways in which flags draw it. */
  @Test
  void arcsAreTheArcsOfTheStandard() {
    Point from = new Point(150, -100);
    Point to = new Point(100, -50);
    same(
        only("<path d=\"M150 100A50 50 0 0 0 100 50\"/>"),
        CircularArc.between(from, to, 50, true, false));
    same(
        only("<path d=\"M150 100a50,50,0,0,1-50-50\"/>"),
        CircularArc.between(from, to, 50, false, false));
    same(
        only("<path d=\"M150 100a50 50 0 10-50-50\"/>"),
        CircularArc.between(from, to, 50, true, true));
    same(
        only("<path d=\"M150 100A50 50 0 1 1 100 50\"/>"),
        CircularArc.between(from, to, 50, false, true));
    Path grown = only("<path d=\"M0 0A1 1 0 0 0 40 0\"/>");
    assertThat(grown.length())
        .as("a radius too small is made 20")
        .isCloseTo(20 * Math.PI, within(0.001));
  }

  /**
   * The circumference of an ellipse of 30 and 20 is 158.654 (elliptic integral, published tables).
   */
  @Test
  void shapesAreOutlines() {
    assertThat(only("<circle cx=\"60\" cy=\"70\" r=\"50\"/>").length())
        .isCloseTo(100 * Math.PI, within(0.001));
    assertThat(only("<ellipse cx=\"60\" cy=\"70\" rx=\"30\" ry=\"20\"/>").length())
        .isCloseTo(158.654, within(0.001));
    Path rounded = only("<rect x=\"10\" y=\"10\" width=\"100\" height=\"50\" rx=\"10\"/>");
    assertThat(rounded.length()).isCloseTo(2 * 80 + 2 * 30 + 20 * Math.PI, within(0.001));
    assertThat(rounded.isClosed()).isTrue();
    assertThat(only("<rect width=\"10\" height=\"5\"/>").curves()).hasSize(4);
    assertThat(only("<polygon points=\"0,0 30,0 30,40\"/>").length()).isCloseTo(120, within(1e-9));
    assertThat(only("<polyline points=\"0,0 30,0 30,40\"/>").length()).isCloseTo(70, within(1e-9));
    assertThat(only("<line x2=\"3cm\" y2=\"40\"/>").length())
        .as("3 cm is 113.386 units of the drawing, as CSS has it")
        .isCloseTo(Math.hypot(30 * 96 / 25.4, 40), within(1e-9));
  }

  /** A quadratic curve is a cubic whose handles are two thirds of the way to its control point. */
  @Test
  void quadraticCurvesAreKeptExactly() {
    Path path = only("<path d=\"M0 0Q30 60 60 0T120 0\"/>");
    assertThat(path.curves().get(0))
        .isEqualTo(
            new Cubic(new Point(0, 0), new Point(20, -40), new Point(40, -40), new Point(60, 0)));
    Cubic second = (Cubic) path.curves().get(1);
    assertThat(second.control1().distanceTo(new Point(80, 40))).isLessThan(1e-9);
    assertThat(only("<path d=\"M1 2L3 4\"/>").curves().get(0)).isInstanceOf(Line.class);
  }

  @Test
  void linesAreCalledByWhatTheyAreAndLieIn() {
    TracedDrawing drawing =
        read(
            "<g id=\"Layer_x0020_1\"><g data-name=\"front piece\"><path id=\"p1\" class=\"cut"
                + " fine\" d=\"M0 0L9 9\"><title>Stitch line</title></path></g></g>");
    assertThat(drawing.lines().get(0).names())
        .containsExactly("p1", "Stitch line", "cut", "fine", "front piece", "Layer 1");
  }

  @Test
  void whatIsNoLineIsListed() {
    TracedDrawing drawing =
        read(
            "<text>Front <tspan>cut 2</tspan></text><image href=\"x.png\" id=\"photo\"/>"
                + "<path id=\"old\" style=\"display:none\" d=\"M0 0L1 1\"/>"
                + "<path id=\"a\" clip-path=\"url(#c)\" d=\"M0 0L5 5\"/><foreignObject/>");
    assertThat(drawing.lines()).hasSize(1);
    assertThat(drawing.unread())
        .containsExactly(
            "text \"Front cut 2\"",
            "image photo",
            "hidden path old",
            "the clipping of path a",
            "foreignObject");
  }
}
