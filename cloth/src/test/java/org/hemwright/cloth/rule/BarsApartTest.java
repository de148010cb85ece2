package org.hemwright.cloth.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.hemwright.cloth.CutPiece;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;
import org.junit.jupiter.api.Test;

/** Bars beside a matched notch: right-angled triangles. */
class BarsApartTest {
  private static final Origin ORIGIN = new Origin("pattern.hem", 5, 1);

  private static Seam.Layer layer(String piece, String edge) {
    return new Seam.Layer(
        List.of(
            new EdgePlace(
                piece,
                "1",
                EdgePlace.Half.WHOLE,
                edge,
                Optional.empty(),
                Optional.empty(),
                false)));
  }

  private static List<BarsApart> apart(Piece front, Piece back) {
    Seam.Join join = new Seam.Join(List.of(layer("front", "e1"), layer("back", "e1")));
    Seam side = new Seam("side", List.of(join, join), Seam.Ease.NONE, ORIGIN);
    SizedPattern sized =
        new SizedPattern(
            new Size(0, "S"), List.of(front, back), List.of(side), List.of(), Map.of());
    return BarsApart.of(sized, List.of("hip", "other"));
  }

  /** Its side leans in by so much over 400 mm. */
  private static Piece leaning(String name, double in) {
    return CutPiece.polygon(name, 0, 0, 300, 0, 300 - in, 400, 0, 400).notch("hip", 1, 120).draw();
  }

  @Test
  void edgesThatSlantAlikeKeepTheBarsTogether() {
    List<BarsApart> apart = apart(leaning("front", 80), leaning("back", 80));
    assertThat(apart).hasSize(1);
    assertThat(apart.get(0).most()).isZero();
  }

  @Test
  void whereOneSlantsMoreTheBarsPartByWhatItIsLongerForItsHeight() {
    List<BarsApart> apart = apart(leaning("front", 0), leaning("back", 80));
    assertThat(apart).hasSize(1);
    BarsApart side = apart.get(0);
    assertThat(List.of(side.seam(), side.notch(), side.piece(), side.mate()))
        .containsExactly("side", "hip", "front", "back");
    // 280 mm from the notch up, along the grain and along a side that leans in by 80 over 400
    double slanted = 280 * 400 / Math.hypot(400, 80);
    assertThat(side.most()).isCloseTo(280 - slanted, Offset.offset(1e-9));
  }
}
