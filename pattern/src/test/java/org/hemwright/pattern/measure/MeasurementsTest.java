package org.hemwright.pattern.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hemwright.pattern.Garments.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.hemwright.pattern.Garments;
import org.hemwright.pattern.Runs;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.Sketch;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;
import org.hemwright.pattern.seam.SeamRequest;
import org.junit.jupiter.api.Test;

class MeasurementsTest {
  private static final Offset<Double> EXACT = within(1e-6);

  /** A straight skirt on two fold panels whose hip girth is given (mm). */
  private static Garments straightSkirt(double hip) {
    Piece panel =
        Sketch.rectangle("panel", hip / 4, 600, "hem", "side", "waist", "centre")
            .fold("centre")
            .cut(2, false)
            .level("hip", 0, 400)
            .draw();
    Piece band =
        Sketch.rectangle("band", hip, 66, "lower", "end_right", "upper", "end_left").draw();
    return new Garments(
        List.of(panel, band),
        List.of(
            seam("side_seams", "panel.side with panel.side"),
            seam("waist_seam", "band.lower with every panel.waist")));
  }

  /** Handbook check 4: body 96 cm, finished 88 cm: ease −8 cm, wear stretch 9.09 %. */
  @Test
  void easeOfAFinishedGirth() {
    double finished = Girth.of(straightSkirt(880).pieces().get(0), 400);
    BodyEase ease = new BodyEase(960, finished);
    assertThat(ease.amount()).isCloseTo(-80, EXACT);
    assertThat(ease.stretchToWear() * 100).isCloseTo(9.09, within(0.005));
    assertThat(new BodyEase(880, 960).stretchToWear()).isZero();
  }

  /** Handbook check 19: girth grades of 1 in, 2 in, 4 cm and 5 cm land on a quarter as a fourth. */
  @Test
  void aGirthGradeLandsOnTheQuarter() {
    double[][] grades = {{25.4, 6.35}, {50.8, 12.7}, {40, 10}, {50, 12.5}};
    for (double[] grade : grades) {
      Piece small = straightSkirt(1000).pieces().get(0);
      Piece large = straightSkirt(1000 + grade[0]).pieces().get(0);
      assertThat(Girth.across(large, 400) - Girth.across(small, 400)).isCloseTo(grade[1], EXACT);
      assertThat(Girth.of(large, 400) - Girth.of(small, 400)).isCloseTo(grade[0], EXACT);
    }
  }

  /** Handbook check 18: armhole 46.0 cm, cap 48.5 cm: ease 2.5 cm, 5.43 %. */
  @Test
  void capEase() {
    Piece sleeve =
        Sketch.piece("sleeve")
            .point("a", 0, 0)
            .point("b", 485, 0)
            .point("c", 400, 300)
            .point("d", 85, 300)
            .against("cap", "a", "b")
            .along("underarm_back", "b", "c")
            .along("hem", "c", "d")
            .against("underarm_front", "d", "a")
            .cut(2, true)
            .draw();
    Piece front = side("front", 220);
    Piece back = side("back", 240);
    Garments tee =
        new Garments(
            List.of(front, back, sleeve),
            List.of(
                seam("shoulders", "front.shoulder with back.shoulder"),
                seam("caps", "sleeve.cap with front.armhole then back.armhole reversed")));
    SizedPattern sized = Runs.sized(tee);
    Seam caps = sized.seams().get(1);
    assertThat(caps.joins()).hasSize(2);
    SeamWalk walk = SeamWalk.of(caps, caps.joins().get(0), 1, sized);
    assertThat(walk.second().length()).isCloseTo(460, EXACT);
    assertThat(walk.first().length() - walk.second().length()).isCloseTo(25, EXACT);
    assertThat((walk.first().length() / walk.second().length() - 1) * 100)
        .isCloseTo(5.43, within(0.005));
    assertThat(walk.second().stops())
        .singleElement()
        .satisfies(stop -> assertThat(stop.kind()).isEqualTo(LayerWalk.Kind.SEAM));
  }

  private static Piece side(String name, double armhole) {
    return Sketch.piece(name)
        .point("a", 0, 0)
        .point("b", 250, 0)
        .point("c", 250, armhole)
        .point("d", 0, armhole)
        .along("hem", "a", "b")
        .along("armhole", "b", "c")
        .along("shoulder", "c", "d")
        .along("centre", "d", "a")
        .fold("centre")
        .draw();
  }

  /** Handbook check 25: a loop of 64 cm has its quarter marks at 0, 16, 32 and 48 cm. */
  @Test
  void quarterMarks() {
    Garments skirt = straightSkirt(640);
    SeamRequest waist = skirt.seams().get(1);
    List<SeamRequest> seams = new ArrayList<>(skirt.seams());
    seams.set(
        1,
        new SeamRequest(
            waist.name(),
            waist.layers(),
            waist.ease(),
            Optional.of(new SeamRequest.Even(4, List.of("sides", "centres"))),
            waist.origin()));
    SizedPattern sized = Runs.sized(new Garments(skirt.pieces(), seams));
    Seam seam = sized.seams().get(1);
    SeamWalk walk = SeamWalk.of(seam, seam.joins().get(0), 1, sized);
    assertThat(walk.intervals())
        .containsExactly(
            new SeamWalk.Interval(0, 160, 0, 160),
            new SeamWalk.Interval(160, 320, 160, 320),
            new SeamWalk.Interval(320, 480, 320, 480),
            new SeamWalk.Interval(480, 640, 480, 640));
    assertThat(walk.second().stops().stream().map(LayerWalk.Stop::kind))
        .containsExactly(LayerWalk.Kind.SEAM, LayerWalk.Kind.FOLD, LayerWalk.Kind.SEAM);
  }

  @Test
  void measuresEverySize() {
    SizeRun run = Runs.of(straightSkirt(800), straightSkirt(840), straightSkirt(900));
    Measurements measured = Measurements.of(run);
    assertThat(measured.sizes()).containsExactly("8", "10", "12");
    Measurements.OfPiece panel = measured.pieces().get(0);
    assertThat(panel.name()).isEqualTo("panel");
    assertThat(panel.area().get("10")).isCloseTo(2 * 210 * 600, EXACT);
    assertThat(panel.edges().stream().map(Measurements.OfEdge::name))
        .containsExactly("hem", "side", "waist", "centre");
    assertThat(panel.edges().get(2).length().get("12")).isCloseTo(225, EXACT);
    Measurements.OfSeam waist = measured.seams().get(1);
    assertThat(waist.joins()).isEqualTo(1);
    assertThat(waist.layers().get(1).name()).isEqualTo("panel.waist");
    assertThat(waist.layers().get(1).length().get("12")).isCloseTo(900, EXACT);
    assertThat(waist.layers().get(1).difference().get("12")).isCloseTo(0, EXACT);
    assertThat(measured.seams().get(0).joins()).isEqualTo(2);
    assertThat(measured.girths())
        .singleElement()
        .satisfies(
            level -> {
              assertThat(level.view()).isEqualTo("A");
              assertThat(level.level()).isEqualTo("hip");
              assertThat(level.pieces()).containsExactly("panel");
              assertThat(level.loops()).containsEntry("10", 1.0);
              assertThat(level.girth().get("10")).isCloseTo(840, EXACT);
            });
    Measurements.OfElastic elastic = measured.elastics().get(0);
    assertThat(elastic.finished()).containsEntry("12", 680.0);
    assertThat(elastic.cut()).containsEntry("12", 705.0);
  }

  /**
   * Trousers, each leg 230 mm wide in front and back at the hip: round the hip all four are one
   * loop; half way down, at the inseam, each leg is a loop of its own; where a front is left open
   * there is one loop only.
   */
  @Test
  void loopsFollowTheSeams() {
    Garments trousers = Garments.trousers();
    List<Piece> pieces =
        List.of(
            Garments.leg("front", 40).level("hip", 0, 900).level("thigh", 0, 400).draw(),
            Garments.leg("back", 80).level("hip", 0, 900).level("thigh", 0, 400).draw(),
            trousers.pieces().get(2));
    SizedPattern sewn = Runs.sized(new Garments(pieces, trousers.seams()));
    Set<String> legs = Set.of("front", "back");
    LevelGirth hip = LevelGirth.of(sewn, "hip", legs).orElseThrow();
    assertThat(hip.loops()).isEqualTo(1);
    assertThat(hip.girth())
        .isCloseTo(
            2 * Girth.across(pieces.get(0), 900) + 2 * Girth.across(pieces.get(1), 900), EXACT);
    LevelGirth thigh = LevelGirth.of(sewn, "thigh", legs).orElseThrow();
    assertThat(thigh.loops()).isEqualTo(2);
    assertThat(thigh.girth())
        .isCloseTo(Girth.across(pieces.get(0), 400) + Girth.across(pieces.get(1), 400), EXACT);
    SizedPattern open = Runs.sized(new Garments(pieces, trousers.seams().subList(1, 4)));
    assertThat(LevelGirth.of(open, "thigh", legs).orElseThrow())
        .isEqualTo(new LevelGirth(1, 2 * thigh.girth()));
    assertThat(LevelGirth.of(sewn, "knee", legs)).isEmpty();
  }

  /** Trapezoid: the width at a height follows by proportion; outside it there is none. */
  @Test
  void girthFollowsTheShape() {
    Piece piece =
        Sketch.piece("p")
            .point("a", 0, 0)
            .point("b", 300, 0)
            .point("c", 200, 400)
            .point("d", 100, 400)
            .along("hem", "a", "b")
            .along("right", "b", "c")
            .along("top", "c", "d")
            .along("left", "d", "a")
            .draw();
    Random random = new Random(3);
    for (int i = 0; i < 200; i++) {
      double y = random.nextDouble() * 400;
      assertThat(Girth.across(piece, y)).isCloseTo(300 - y / 2, within(1e-3));
    }
    assertThat(Girth.across(piece, 0)).isCloseTo(300, within(1e-3));
    assertThat(Girth.across(piece, 400)).isCloseTo(100, within(1e-3));
    assertThat(Girth.across(piece, 401)).isZero();
    assertThat(Girth.across(piece, -1)).isZero();
  }

  /** A piece with a deep neck: only what lies within the stitch line counts. */
  @Test
  void girthLeavesGapsOut() {
    Piece piece =
        Sketch.piece("p")
            .point("a", 0, 0)
            .point("b", 300, 0)
            .point("c", 300, 400)
            .point("d", 200, 400)
            .point("e", 150, 200)
            .point("f", 100, 400)
            .point("g", 0, 400)
            .along("hem", "a", "b")
            .along("right", "b", "c")
            .along("shoulder", "c", "d")
            .along("neck_right", "d", "e")
            .along("neck_left", "e", "f")
            .along("other_shoulder", "f", "g")
            .along("left", "g", "a")
            .draw();
    assertThat(Girth.across(piece, 300)).isCloseTo(250, within(1e-3));
    assertThat(Girth.across(piece, 200)).isCloseTo(300, within(1e-3));
  }

  /** Walking a layer from its other end passes the same stops at the mirrored lengths. */
  @Test
  void aWalkFromTheOtherEndMirrorsItsStops() {
    Garments skirt = Garments.skirt();
    SizedPattern sized = Runs.sized(skirt);
    for (Seam seam : sized.seams()) {
      for (Seam.Join join : seam.joins()) {
        for (Seam.Layer layer : join.layers()) {
          LayerWalk there = LayerWalk.of(layer, sized);
          LayerWalk back = LayerWalk.of(turned(layer), sized);
          assertThat(back.length()).isCloseTo(there.length(), EXACT);
          assertThat(back.stops()).hasSameSizeAs(there.stops());
          for (int i = 0; i < there.stops().size(); i++) {
            LayerWalk.Stop stop = there.stops().get(i);
            LayerWalk.Stop same = back.stops().get(there.stops().size() - 1 - i);
            assertThat(same.distance()).isCloseTo(there.length() - stop.distance(), EXACT);
            assertThat(same.kind()).isEqualTo(stop.kind());
            assertThat(LayerWalk.spot(layer, sized, stop.distance()).orElseThrow().point())
                .satisfies(p -> assertThat(p.distanceTo(stop.point())).isLessThan(1e-6));
          }
        }
      }
    }
  }

  private static Seam.Layer turned(Seam.Layer layer) {
    List<EdgePlace> back = new ArrayList<>();
    layer
        .run()
        .forEach(
            p ->
                back.add(
                    0,
                    new EdgePlace(
                        p.piece(), p.copy(), p.half(), p.edge(), p.from(), p.to(), !p.reversed())));
    return new Seam.Layer(back);
  }

  /** A seam from notch to notch has the length between them; the rest is left out. */
  @Test
  void partsBetweenNotches() {
    Piece front =
        Sketch.rectangle("front", 200, 600, "hem", "side", "waist", "centre")
            .cut(2, true)
            .notch("side", 150, "vent")
            .notch("side", 400, "pocket")
            .notch("side", 300, "")
            .draw();
    Piece back =
        Sketch.rectangle("back", 200, 600, "hem", "centre", "waist", "side")
            .cut(2, true)
            .notch("side", 150, "vent")
            .draw();
    SizedPattern sized =
        Runs.sized(
            new Garments(
                List.of(front, back),
                List.of(seam("lower", "front.side from vent to pocket with back.side from vent"))));
    Seam seam = sized.seams().get(0);
    LayerWalk walk = LayerWalk.of(seam.joins().get(0).layers().get(0), sized);
    assertThat(walk.length()).isCloseTo(250, EXACT);
    assertThat(walk.stops())
        .singleElement()
        .satisfies(stop -> assertThat(stop.distance()).isCloseTo(150, EXACT));
    assertThat(LayerWalk.of(seam.joins().get(0).layers().get(1), sized).length())
        .isCloseTo(450, EXACT);
  }
}
