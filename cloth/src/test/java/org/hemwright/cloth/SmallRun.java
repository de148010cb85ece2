package org.hemwright.cloth;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.PaperChoices;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.piece.Piece;

/** A garment in six sizes: a body on the fold, sleeves, a band; view B leaves the sleeves out. */
public final class SmallRun {
  private static final Origin ORIGIN = new Origin("pattern.hem", 1, 1);
  private static final int SIZES = 6;

  private SmallRun() {}

  /** The run, on a cloth with this nap, in these widths (mm). */
  public static SizeRun of(Fabric.Nap nap, Double... widths) {
    return wider(nap, 0, widths);
  }

  /** The same on stripes or checks, of which body and sleeve have the notch {@code hem}. */
  public static SizeRun striped(Fabric.Repeat repeat, Double... widths) {
    SizeRun plain = of(Fabric.Nap.EITHER_WAY, widths);
    Pattern pattern = plain.pattern();
    return new SizeRun(
        new Pattern(
            pattern.details(),
            pattern.chart(),
            pattern.base(),
            pattern.fabrics().stream().map(fabric -> fabric.with(repeat)).toList(),
            pattern.dials(),
            pattern.views(),
            pattern.pieces(),
            pattern.paper()),
        plain.sizes());
  }

  /** The same with the body of the fourth size so much wider (mm). */
  public static SizeRun wider(Fabric.Nap nap, double more, Double... widths) {
    List<Size> sizes = new ArrayList<>();
    List<SizedPattern> sized = new ArrayList<>();
    for (int i = 0; i < SIZES; i++) {
      Size size = new Size(i, Integer.toString(8 + 2 * i));
      sizes.add(size);
      List<Piece> pieces = pieces(i, i == 3 ? more : 0);
      sized.add(new SizedPattern(size, pieces, List.of(), List.of(), Map.of()));
    }
    Fabric main =
        new Fabric(
            "main",
            "Cotton",
            Fabric.Kind.WOVEN,
            List.of(widths),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            nap,
            ORIGIN);
    return new SizeRun(
        new Pattern(
            new Details(
                "Small run",
                "1.0",
                LocalDate.of(2026, 11, 25),
                "Tern Cove Patterns",
                Details.Units.CENTIMETRES,
                Details.Spelling.BRITISH),
            new SizeChart("sizes.csv", sizes, List.of()),
            sizes.get(1),
            List.of(main),
            List.of(),
            List.of(
                new View("A", "With sleeves", List.of("body", "sleeve", "band"), ORIGIN),
                new View("B", "Without", List.of("body", "band"), ORIGIN)),
            sized.get(0).pieces().stream().map(Piece::card).toList(),
            new PaperChoices(List.of(), true, true, false)),
        sized);
  }

  private static List<Piece> pieces(int size, double more) {
    double wide = 230 + 15 * size + more;
    double high = 620 + 6 * size;
    double arm = 300 + 14 * size;
    return List.of(
        CutPiece.polygon(
                "body", 0, high, 0, 0, wide, 0, wide, high * 0.7, wide * 0.6, high, 60, high)
            .onFold()
            .times(2)
            .notch("hem", 1, 120)
            .draw(),
        CutPiece.polygon("sleeve", 0, 0, arm, 0, arm + 30, 250, arm * 0.55, 420, -20, 260)
            .pairs(2)
            .notch("hem", 0, 90)
            .draw(),
        CutPiece.polygon("band", 0, 0, wide * 2.2, 0, wide * 2.2, 70, 20, 70).draw());
  }
}
