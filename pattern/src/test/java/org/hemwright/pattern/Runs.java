package org.hemwright.pattern;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.Elastic;
import org.hemwright.pattern.seam.SeamResolution;

/** Size runs of small garments, for tests: sizes are named 8, 10, 12 and so on. */
public final class Runs {
  private Runs() {}

  /** A run with one garment for each size. */
  public static SizeRun of(Garments... garments) {
    List<Size> sizes = new ArrayList<>();
    List<SizedPattern> sized = new ArrayList<>();
    for (int i = 0; i < garments.length; i++) {
      Size size = new Size(i, Integer.toString(8 + 2 * i));
      sizes.add(size);
      List<Piece> pieces = garments[i].pieces();
      sized.add(
          new SizedPattern(
              size,
              pieces,
              SeamResolution.resolve(garments[i].seams(), pieces).seams(),
              List.of(new Elastic("waist_elastic", "band", 30, 600 + 40 * i, 25, Sketch.ORIGIN)),
              Map.of()));
    }
    List<Piece> pieces = garments[0].pieces();
    Pattern pattern =
        new Pattern(
            new Details(
                "Sandling skirt",
                "1.0",
                LocalDate.of(2026, 11, 25),
                "Tern Cove Patterns",
                Details.Units.CENTIMETRES,
                Details.Spelling.BRITISH),
            new SizeChart("sizes.csv", sizes, List.of()),
            sizes.get(0),
            List.of(),
            List.of(),
            List.of(
                new View(
                    "A", "Everything", pieces.stream().map(Piece::name).toList(), Sketch.ORIGIN)),
            pieces.stream().map(Piece::card).toList(),
            new PaperChoices(List.of(), false, false, false));
    return new SizeRun(pattern, sized);
  }

  /** The garment in one size. */
  public static SizedPattern sized(Garments garment) {
    return of(garment).sizes().get(0);
  }
}
