package org.hemwright.paper.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.paper.SandlingSkirt;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.style.Pens;
import org.hemwright.pattern.PaperChoices;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PieceDrawingTest {
  private static List<PieceDrawing> drawings(boolean whole) {
    SizeRun run = SandlingSkirt.run(9, new PaperChoices(List.of(), false, whole, false));
    List<Size> sizes = run.pattern().chart().sizes();
    List<PieceDrawing> drawings = new ArrayList<>();
    for (List<Size> group : List.of(sizes, sizes.subList(0, 2), sizes.subList(8, 9))) {
      for (Nest nest : Nest.of(run, group, whole, true)) {
        for (int turn = 0; turn < 4; turn++) {
          drawings.add(PieceDrawing.of(run, nest.turned(turn), false));
        }
      }
    }
    return drawings;
  }

  static Stream<PieceDrawing> halvesAndWholes() {
    return Stream.concat(drawings(false).stream(), drawings(true).stream());
  }

  private static List<Words> words(PieceDrawing drawing) {
    return drawing.items().stream().filter(Words.class::isInstance).map(Words.class::cast).toList();
  }

  private static Area area(Words words) {
    Path2D path = new Path2D.Double();
    List<Point> corners = words.corners();
    path.moveTo(corners.get(0).x(), corners.get(0).y());
    corners.subList(1, 4).forEach(corner -> path.lineTo(corner.x(), corner.y()));
    path.closePath();
    return new Area(path);
  }

  @ParameterizedTest
  @MethodSource("halvesAndWholes")
  void noWordsLieOnOtherWords(PieceDrawing drawing) {
    List<Words> all = words(drawing);
    List<Area> areas = all.stream().map(PieceDrawingTest::area).toList();
    for (int i = 0; i < areas.size(); i++) {
      for (int k = 0; k < i; k++) {
        Area common = new Area(areas.get(i));
        common.intersect(areas.get(k));
        assertThat(common.isEmpty())
            .as(
                "“%s” and “%s” on %s",
                all.get(i).line().text(), all.get(k).line().text(), drawing.nest().card().name())
            .isTrue();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("halvesAndWholes")
  void commonWordsKeepClearOfEveryLineThatIsNotTheirOwn(PieceDrawing drawing) {
    List<Path> lines = new ArrayList<>();
    for (Inked item : drawing.items()) {
      if (item instanceof Stroke stroke && !isRule(stroke)) {
        lines.add(stroke.path());
      }
    }
    NearLine near = new NearLine(lines);
    for (Words words : words(drawing)) {
      if (words.layer().equals(Layer.COMMON)) {
        for (Point corner : words.corners()) {
          assertThat(near.distance(corner))
              .as("“%s” on %s", words.line().text(), drawing.nest().card().name())
              .isGreaterThan(0.4);
        }
      }
    }
  }

  private static boolean isRule(Stroke stroke) {
    return stroke.pen().equals(Pens.SIGN) && stroke.path().curves().size() == 1;
  }

  @ParameterizedTest
  @MethodSource("halvesAndWholes")
  void commonWordsLieInsideTheSmallestSize(PieceDrawing drawing) {
    assertThat(drawing.beside()).isEmpty();
    assertThat(drawing.findings()).isEmpty();
    for (Words words : words(drawing)) {
      if (words.layer().equals(Layer.COMMON)) {
        for (Point corner : words.corners()) {
          assertThat(drawing.nest().smallest().cut().contains(corner)).isTrue();
        }
      }
    }
  }

  // House style (look.md): text no smaller than 9 pt.
  @ParameterizedTest
  @MethodSource("halvesAndWholes")
  void noWordsAreSmall(PieceDrawing drawing) {
    assertThat(words(drawing)).allMatch(words -> words.line().points() >= 9);
  }

  // Handbook section 6: what each piece carries.
  @Test
  void aPieceSaysAllThatTheMakerNeeds() {
    PieceDrawing panel = drawings(false).get(0);
    assertThat(words(panel).stream().map(words -> words.line().text()))
        .contains(
            "1",
            "Skirt front and back",
            "Sandling skirt, version\u00a01.0",
            "Piece 1 of 2",
            "Cut\u00a02 on the fold: Cotton or viscose jersey",
            "Sizes 8 to 24",
            "Seam allowance included: 1\u00a0cm\u00a0·\u00a03⁄8\u00a0in",
            "Hem: 2.5\u00a0cm\u00a0·\u00a01\u00a0in turned back",
            "Tern Cove Patterns, 25\u00a0November\u00a02026",
            "Grain",
            "Greatest stretch, at least\u00a050%",
            "Place on the fold of the cloth",
            "Fold line of the hem",
            "Lengthen or shorten here",
            "Hip line",
            "Pocket",
            "Pocket corner",
            "Topstitch");
  }

  @Test
  void eachSizeIsNamedOnItsCutLine() {
    PieceDrawing panel = drawings(false).get(0);
    Map<String, Boolean> named = new LinkedHashMap<>();
    for (Words words : words(panel)) {
      if (words.layer().sizes().size() == 1) {
        named.put(words.line().text(), true);
      }
    }
    assertThat(named.keySet()).contains("8", "10", "12", "14", "16", "18", "20", "22", "24");
  }

  @Test
  void aFoldPieceMayBeDrawnWhole() {
    PieceDrawing half = drawings(false).get(0);
    PieceDrawing whole = drawings(true).get(0);
    double area = half.nest().smallest().cut().signedArea();
    assertThat(whole.nest().smallest().cut().signedArea())
        .isCloseTo(2 * area, withPercentage(0.01));
    assertThat(words(whole).stream().map(words -> words.line().text()))
        .contains("Cut\u00a02: Cotton or viscose jersey")
        .doesNotContain("Place on the fold of the cloth");
    assertThat(whole.nest().smallest().fold()).isEmpty();
  }

  // Handbook section 3: notch depth at most half the allowance; section 1: typically 3 to 4 mm.
  @Test
  void notchesStartOnTheCutLineAndReachHalfwayToTheStitchLine() {
    for (PieceDrawing drawing : drawings(false)) {
      for (PieceShape shape : drawing.nest().shapes()) {
        for (PieceShape.NotchShape notch : shape.notches()) {
          for (PieceShape.Tick tick : notch.ticks()) {
            assertThat(shape.cutLine().nearest(tick.from()).point().distanceTo(tick.from()))
                .isLessThan(0.01);
            assertThat(tick.from().distanceTo(tick.to())).isBetween(3.0, 5.0);
            assertThat(shape.stitchLine().nearest(tick.to()).point().distanceTo(tick.to()))
                .isGreaterThan(4.9);
          }
        }
      }
    }
  }

  @Test
  void wordsThatDoNotFitStandBesideThePieceAndAreFound() {
    SizeRun run = SandlingSkirt.tiny();
    Nest nest = Nest.of(run, run.pattern().chart().sizes(), false, true).get(0);
    PieceDrawing drawing = PieceDrawing.of(run, nest, false);
    assertThat(drawing.beside()).isPresent();
    assertThat(drawing.findings()).isNotEmpty();
    assertThat(drawing.findings().get(0).code()).isEqualTo("label-fit");
    assertThat(drawing.findings().get(0).subject()).isEqualTo("tab");
    List<String> texts = words(drawing).stream().map(words -> words.line().text()).toList();
    assertThat(texts).contains("Belt tab", "Piece 1 of 1");
    for (Words words : words(drawing)) {
      if (words.line().text().equals("Piece 1 of 1")) {
        assertThat(nest.smallest().cut().contains(words.at())).isFalse();
      }
    }
  }

  @Test
  void wordsBesideThePieceStandClearOfThePagesEdges() {
    SizeRun run = SandlingSkirt.tiny();
    Nest nest = Nest.of(run, run.pattern().chart().sizes(), false, true).get(0);
    PieceDrawing.Beside alone = PieceDrawing.of(run, nest, false).beside().orElseThrow();
    double y = alone.box().centre().y();
    Path edge = Path.straight(new Point(-200, y), new Point(400, y));
    PieceDrawing.Beside onPages =
        PieceDrawing.of(run, nest, false, List.of(edge)).beside().orElseThrow();
    assertThat(onPages.kept()).isEqualTo(alone.kept());
    Box box = Box.of(onPages.box().corners());
    assertThat(box.minY() > y || box.maxY() < y).isTrue();
    Box kept = Box.of(onPages.kept().corners());
    assertThat(kept.minY() - 1e-9 <= box.minY() && box.maxY() <= kept.maxY() + 1e-9).isTrue();
  }
}
