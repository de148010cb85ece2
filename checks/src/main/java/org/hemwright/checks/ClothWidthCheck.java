package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.OpenedPiece;
import org.hemwright.pattern.piece.Piece;

/**
 * Each piece, opened and with its allowances, lies within the usable width of some width that its
 * cloth is sold in, its grain along the selvedge (handbook section 5). On folded cloth half of it
 * lies on half the width, which is the same question.
 */
record ClothWidthCheck(CutLines cutLines, CheckSettings settings) implements CutLineCheck {
  @Override
  public String id() {
    return "cloth-width";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern, Drawn drawn) {
    List<Finding> findings = new ArrayList<>();
    for (Piece piece : sized.pieces()) {
      for (Cut cut : piece.card().cuts()) {
        pattern.fabric(cut.fabric()).ifPresent(fabric -> judge(piece, fabric, drawn, findings));
      }
    }
    return findings;
  }

  private void judge(Piece piece, Fabric fabric, Drawn drawn, List<Finding> findings) {
    if (piece.grain().isEmpty() || fabric.widths().isEmpty()) {
      return;
    }
    double widest = fabric.widths().get(fabric.widths().size() - 1);
    double usable = widest - 2 * settings.making().selvedge();
    double across = across(piece, piece.grain().get().direction().left(), drawn);
    if (across > usable + Tolerance.DRAWN_LENGTH) {
      findings.add(
          Finding.fail(id(), piece.name())
              .with("piece", piece.name())
              .with("fabric", fabric.name())
              .with("across", Argument.mm(across))
              .with("widest", Argument.mm(widest))
              .with("usable", Argument.mm(usable))
              .values(across, usable, "mm")
              .at(Place.on(piece.card().origin(), piece.name(), piece.grain().get().from()))
              .build());
    }
  }

  /** How wide the opened piece is; where its cut line cannot be drawn, its stitch line. */
  private static double across(Piece piece, Vector across, Drawn drawn) {
    OpenedPiece opened = OpenedPiece.of(piece);
    Outline whole =
        drawn
            .cutLine(piece)
            .map(half -> opened.cutLine(half).outline())
            .orElseGet(opened::stitchLine);
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Point point : whole.path().flattened(Tolerance.OFFSET)) {
      double at = point.x() * across.dx() + point.y() * across.dy();
      least = Math.min(least, at);
      most = Math.max(most, at);
    }
    return most - least;
  }
}
