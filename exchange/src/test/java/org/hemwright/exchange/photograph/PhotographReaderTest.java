package org.hemwright.exchange.photograph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.hemwright.exchange.drawing.DrawingReader;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.traced.OutlineRequest;
import org.hemwright.pattern.traced.OutlineTracing;
import org.hemwright.pattern.traced.TracedDrawing;
import org.junit.jupiter.api.Test;

/** Photographs made here, so that the truth is known: what is read off them is held against it. */
class PhotographReaderTest {
  /** Half the front of a top, 280 by 560 mm: straights, a neck, an armhole, a slightly bent hem. */
  static final Path FRONT =
      Path.of(
          List.of(
              new Line(new Point(0, 0), new Point(0, 480)),
              new Cubic(
                  new Point(0, 480), new Point(45, 482), new Point(76, 515), new Point(80, 560)),
              new Line(new Point(80, 560), new Point(205, 520)),
              new Cubic(
                  new Point(205, 520),
                  new Point(180, 440),
                  new Point(190, 350),
                  new Point(270, 335)),
              new Cubic(
                  new Point(270, 335),
                  new Point(255, 220),
                  new Point(258, 110),
                  new Point(280, 12)),
              new Cubic(
                  new Point(280, 12), new Point(190, -4), new Point(90, 0), new Point(0, 0))));

  private static final Path LAID = FRONT.moved(Motion.move(new Vector(-330, -260)));
  private static final Motion CARD = Motion.move(new Vector(40, -110));

  private static final Map<String, byte[]> TAKEN = new ConcurrentHashMap<>();

  private static final Camera LEVEL = new Camera(2000, 1500, 1150, 0, 0, 0, 0, 2);
  private static final Camera COARSE = new Camera(1200, 900, 1150, 0.05, 0, 0, 0, 2);

  @Test
  void fromAboveInEvenLight() {
    holds(0.3, LEVEL);
  }

  @Test
  void heldAtASlantInALampsLight() {
    holds(0.5, new Camera(2000, 1500, 1150, 0.2, 0.05, 0, 0.4, 2));
  }

  @Test
  void turnedOverHead() {
    holds(0.5, new Camera(2000, 1500, 1250, 0.12, 1.7, 0, 0.2, 4));
  }

  @Test
  void throughALensThatBends() {
    holds(1, new Camera(2000, 1500, 1250, 0.12, 0, 0.01, 0.2, 2));
  }

  @Test
  void withFewPixels() {
    holds(0.8, COARSE);
  }

  @Test
  void theCardPointedAtIsAsGoodAsThePointing() {
    ReadPhotograph found = read(COARSE, laid(), new Guide.Card());
    Straightening card = found.straightening().orElseThrow();
    List<Pixel> corners = new ArrayList<>();
    for (Point corner :
        List.of(new Point(0, 0), new Point(170, 0), new Point(170, 230), new Point(0, 230))) {
      Pixel seen = card.pixel(corner);
      corners.add(new Pixel(Math.round(seen.x()), Math.round(seen.y())));
    }
    ReadPhotograph pointed = read(COARSE, laid(), new Guide.CardCorners(corners));
    Path seen = pointed.pieces().get(0).outline().moved(CARD);
    double off = farthest(seen, LAID);
    assertThat(off).isBetween(0.3, pointed.pieces().get(0).doubt());
    assertThat(pointed.findings()).extracting(Finding::code).containsExactly("photograph-doubtful");
  }

  @Test
  void aScanNeedsOnlyARuler() {
    Camera scanner = new Camera(1600, 1200, 1150, 0, 0, 0, 0, 1);
    List<Camera.Laid> laid = List.of(new Camera.Laid(LAID, 0.8));
    // Looking straight down, a pixel is everywhere as large.
    double pixel = scanner.place(801, 600).x() - scanner.place(800, 600).x();
    Guide ruler = new Guide.Ruler(new Pixel(100, 1100), new Pixel(1500, 1100), 1400 * pixel);
    ReadPhotograph read = read(scanner, laid, ruler);
    assertThat(read.findings()).isEmpty();
    Path seen = read.pieces().get(0).outline();
    assertThat(seen.length()).isCloseTo(LAID.length(), within(LAID.length() * 0.001));
    assertThat(corners(seen)).isEqualTo(6);
  }

  @Test
  void aDarkPieceOnLightGroundAndTheCardUponIt() {
    Path large = FRONT.moved(Motion.move(new Vector(-130, -290)));
    List<Camera.Laid> laid = new ArrayList<>();
    laid.add(new Camera.Laid(large, 0.15));
    laid.addAll(Camera.card(Motion.move(new Vector(-104, -258)), 0.4));
    byte[] picture = LEVEL.jpeg(0.75, laid, 3);
    ReadPhotograph read = PhotographReader.read("front.jpg", picture, new Guide.Card());
    assertThat(read.pieces()).hasSize(1);
    Path seen = read.pieces().get(0).outline().moved(Motion.move(new Vector(-104, -258)));
    assertThat(farthest(seen, large)).isLessThan(0.4);
  }

  @Test
  void whatRunsOutOfThePictureIsLeftOut() {
    List<Camera.Laid> laid =
        new ArrayList<>(
            List.of(new Camera.Laid(LAID.moved(Motion.move(new Vector(-180, 0))), 0.8)));
    laid.addAll(Camera.card(CARD));
    ReadPhotograph read = read(COARSE, laid, new Guide.Card());
    assertThat(read.pieces()).isEmpty();
    assertThat(read.findings()).extracting(Finding::code).containsExactly("photograph-cut-off");
  }

  @Test
  void withoutACardNothingIsGuessed() {
    ReadPhotograph read = read(COARSE, List.of(new Camera.Laid(LAID, 0.8)), new Guide.Card());
    assertThat(read.pieces()).isEmpty();
    assertThat(read.findings()).extracting(Finding::code).containsExactly("photograph-no-card");
    Guide row =
        new Guide.CardCorners(
            List.of(new Pixel(1, 1), new Pixel(2, 2), new Pixel(3, 3), new Pixel(4, 4)));
    assertThat(read(COARSE, laid(), row).findings())
        .extracting(Finding::code)
        .containsExactly("photograph-guide");
  }

  @Test
  void theSamePictureGivesTheSameBytes() {
    byte[] picture = picture(COARSE, laid());
    assertThat(drawing(picture)).isEqualTo(drawing(picture));
  }

  @Test
  void theDrawingReadsBackAsItWasDrawn() {
    ReadPhotograph read = read(COARSE, laid(), new Guide.Card());
    Path outline = read.pieces().get(0).outline();
    byte[] svg = OutlineDrawing.svg(List.of(new OutlineDrawing.Named("outline", outline)));
    TracedDrawing back = DrawingReader.read("front.svg", svg).drawing().orElseThrow();
    assertThat(back.inTrueSize()).isTrue();
    Path again = back.called("outline").get(0).path();
    assertThat(again.length()).isCloseTo(outline.length(), within(0.01));
    assertThat(again.curves()).hasSameSizeAs(outline.curves());
  }

  private static byte[] drawing(byte[] picture) {
    ReadPhotograph read = PhotographReader.read("front.jpg", picture, new Guide.Card());
    return OutlineDrawing.svg(
        List.of(new OutlineDrawing.Named("outline", read.pieces().get(0).outline())));
  }

  /** Reads the piece off a photograph and holds it against the truth, and what is told as well. */
  private static void holds(double most, Camera camera) {
    ReadPhotograph read = read(camera, laid(), new Guide.Card());
    assertThat(read.pieces()).hasSize(1);
    Path seen = read.pieces().get(0).outline().moved(CARD);
    double off = Math.max(farthest(seen, LAID), farthest(LAID, seen));
    double told = read.pieces().get(0).doubt();
    assertThat(off).isLessThan(most).isLessThan(told);
    // What may be off by more than a millimetre is told, and nothing else is amiss.
    assertThat(read.findings())
        .extracting(Finding::code)
        .isEqualTo(told > 1 ? List.of("photograph-doubtful") : List.of());
    assertThat(seen.curves()).hasSizeLessThanOrEqualTo(8);
    assertThat(corners(seen)).isEqualTo(6);
  }

  private static ReadPhotograph read(Camera camera, List<Camera.Laid> laid, Guide guide) {
    return PhotographReader.read("front.jpg", picture(camera, laid), guide);
  }

  /** Each picture is taken once: that takes longer than to read it. */
  private static byte[] picture(Camera camera, List<Camera.Laid> laid) {
    return TAKEN.computeIfAbsent(camera + " " + laid, scene -> camera.jpeg(0.12, laid, 7));
  }

  private static int corners(Path path) {
    return OutlineTracing.corners(path, OutlineRequest.USUAL_CORNER).size();
  }

  private static List<Camera.Laid> laid() {
    List<Camera.Laid> laid = new ArrayList<>();
    laid.add(new Camera.Laid(LAID, 0.8));
    laid.addAll(Camera.card(CARD));
    return laid;
  }

  private static double farthest(Path from, Path to) {
    double farthest = 0;
    for (double at = 0; at < from.length(); at += 1) {
      Point point = from.at(at).point();
      farthest = Math.max(farthest, to.nearest(point).point().distanceTo(point));
    }
    return farthest;
  }
}
