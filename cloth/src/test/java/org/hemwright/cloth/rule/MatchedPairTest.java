package org.hemwright.cloth.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hemwright.cloth.CutPiece;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which places come together when seams are sewn: lengths along lines, school geometry. */
class MatchedPairTest {
  private static final Origin ORIGIN = new Origin("pattern.hem", 5, 1);

  /** A pocket 120 mm wide and 140 mm deep, its sewn line 70 mm right of the front's and 200 up. */
  private static Path line(boolean drawnBackward) {
    List<Point> round = new ArrayList<>();
    round.add(new Point(70, 340));
    round.add(new Point(70, 200));
    round.add(new Point(190, 200));
    round.add(new Point(190, 340));
    if (drawnBackward) {
      Collections.reverse(round);
    }
    return Path.polyline(round);
  }

  private static EdgePlace place(String piece, String copy, String edge, boolean reversed) {
    return new EdgePlace(
        piece, copy, EdgePlace.Half.WHOLE, edge, Optional.empty(), Optional.empty(), reversed);
  }

  private static Seam.Layer pocket(String copy) {
    return new Seam.Layer(
        Stream.of("e0", "e1", "e2").map(edge -> place("pocket", copy, edge, false)).toList());
  }

  /**
   * A pocket has its notch; the line that it is sewn to has none, and the place as far along it is
   * the mate, whichever layer comes first and whichever way the line is drawn.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 100, 70, 240",
    "1, 35, 105, 200",
    "2, 60, 190, 260",
  })
  void aPocketIsMatchedToItsPlacementLine(int edge, double distance, double x, double y) {
    Piece pocket =
        CutPiece.rectangle("pocket", 120, 140).pairs(2).notch("pocket", edge, distance).draw();
    for (boolean backward : List.of(false, true)) {
      Piece front =
          CutPiece.rectangle("front", 300, 500)
              .pairs(2)
              .mark(new Mark.Placement("place", line(backward), Optional.empty(), ORIGIN))
              .draw();
      for (boolean lineFirst : List.of(false, true)) {
        List<Seam.Join> joins = new ArrayList<>();
        for (String copy : List.of("1", "2")) {
          List<Seam.Layer> layers = new ArrayList<>();
          layers.add(pocket(copy));
          layers.add(new Seam.Layer(List.of(place("front", copy, "place", backward))));
          if (lineFirst) {
            Collections.reverse(layers);
          }
          joins.add(new Seam.Join(layers));
        }
        SizedPattern sized =
            new SizedPattern(
                new Size(0, "S"),
                List.of(front, pocket),
                List.of(new Seam("pocket_seam", joins, Seam.Ease.NONE, ORIGIN)),
                List.of(),
                Map.of());
        List<MatchedPair> pairs = MatchedPair.of(sized, List.of("pocket", "other"));
        assertThat(pairs).hasSize(2);
        for (int i = 0; i < 2; i++) {
          boolean mirrored = i == 1;
          MatchedPair pair = pairs.get(i);
          MatchedPair.End onFront = lineFirst ? pair.one() : pair.other();
          MatchedPair.End onPocket = lineFirst ? pair.other() : pair.one();
          assertThat(onFront.piece()).isEqualTo("front");
          assertThat(onFront.mirrored()).isEqualTo(mirrored);
          assertThat(onFront.at().distanceTo(new Point(x, y))).isLessThan(1e-6);
          assertThat(onPocket.piece()).isEqualTo("pocket");
          assertThat(onPocket.mirrored()).isEqualTo(mirrored);
          assertThat(onPocket.at().distanceTo(new Point(x - 70, y - 200))).isLessThan(1e-6);
        }
      }
    }
  }
}
