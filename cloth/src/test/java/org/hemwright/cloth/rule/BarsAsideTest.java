package org.hemwright.cloth.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.hemwright.cloth.CutPiece;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.fabric.Fabric;
import org.junit.jupiter.api.Test;

/** How far beside the middle a bar may run: plain sums of widths, margins of 15 mm a side. */
class BarsAsideTest {
  private static final double REPEAT = 70;
  private static final Fabric.Repeat CHECKS =
      new Fabric.Repeat(OptionalDouble.empty(), OptionalDouble.of(REPEAT), List.of("side"));
  private static final Offset<Double> EXACT = Offset.offset(1e-6);

  private static ClothPiece held(double wide) {
    ClothPiece piece = CutPiece.rectangle("held", wide, 400).notch("side", 2, 100).onCloth();
    return new Matching(List.of(piece), CHECKS, List.of()).matched(piece);
  }

  private static ClothPiece free(double wide) {
    return CutPiece.rectangle("free", wide, 400).onCloth();
  }

  private record At(ClothPiece piece, ClothItem.Layers layers, double across) {}

  private static ClothLaying laying(Fold fold, double width, At... places) {
    double depth = fold == Fold.LENGTHWISE ? width / 2 : 0;
    ClothSheet sheet = new ClothSheet(fold, width, depth, ClothSettings.HANDBOOK);
    List<LaidPiece> pieces = new ArrayList<>();
    for (At place : places) {
      ClothItem item = new ClothItem(place.piece, place.layers, false, 1);
      Motion motion = Motion.move(new Vector(0, place.across));
      pieces.add(new LaidPiece(item, 1, motion, fold == Fold.SINGLE));
    }
    return new ClothLaying(sheet, 400, fold == Fold.SINGLE ? 400 : 0, pieces);
  }

  private static double aside(ClothLaying laying) {
    return BarsAside.of(laying).orElseThrow();
  }

  private static At single(ClothPiece piece, double across) {
    return new At(piece, ClothItem.Layers.SINGLE, across);
  }

  @Test
  void onSingleClothAsFarAsTheNearerMarginAndNoFartherThanHalfTheRepeat() {
    assertThat(aside(laying(Fold.SINGLE, 1000, single(held(300), 500)))).isEqualTo(REPEAT / 2);
    assertThat(aside(laying(Fold.SINGLE, 350, single(held(300), 175)))).isCloseTo(10, EXACT);
    // a repeat of 70 before the middle, 185 - 150 - 15 mm from the margin
    assertThat(aside(laying(Fold.SINGLE, 510, single(held(300), 185)))).isCloseTo(20, EXACT);
    assertThat(aside(laying(Fold.SINGLE, 330, single(held(300), 165)))).isZero();
  }

  @Test
  void onFoldedClothAsFarAsTheNarrowerLayerLeaves() {
    At onFold = new At(held(310), ClothItem.Layers.ON_FOLD, 0);
    // 700 folded: 350 - 15 - 155 is more than half the repeat; 380 folded: 190 - 15 - 155
    assertThat(aside(laying(Fold.LENGTHWISE, 700, onFold))).isEqualTo(REPEAT / 2);
    assertThat(aside(laying(Fold.LENGTHWISE, 380, onFold))).isCloseTo(20, EXACT);
  }

  @Test
  void whatIsHeldToNoBarStaysWithinTheCloth() {
    // the free piece lies in the margin's corner, 35 mm below the held one
    At corner = single(free(150), 90);
    assertThat(aside(laying(Fold.SINGLE, 700, corner, single(held(300), 350)))).isEqualTo(35);
    // one that is 30 mm wider and touches the held one: no room to move toward it
    At touching = single(free(185), 107.5);
    assertThat(aside(laying(Fold.SINGLE, 700, touching, single(held(300), 350)))).isZero();
    // folded: by the selvedges, and moved toward the fold as far as is needed
    At onFold = new At(held(310), ClothItem.Layers.ON_FOLD, 0);
    At pair = new At(free(100), ClothItem.Layers.DOUBLE, 285);
    assertThat(aside(laying(Fold.LENGTHWISE, 700, onFold, pair))).isEqualTo(35);
    At close = new At(free(160), ClothItem.Layers.DOUBLE, 255);
    assertThat(aside(laying(Fold.LENGTHWISE, 700, onFold, close))).isZero();
  }

  @Test
  void whereNothingIsHeldToBarsAlongTheClothThereIsNothingToTell() {
    assertThat(BarsAside.of(laying(Fold.SINGLE, 700, single(free(150), 350)))).isEmpty();
  }
}
