package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import org.hemwright.pattern.piece.AddedAllowance;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.CutLine;
import org.hemwright.pattern.piece.Grain;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.OpenedPiece;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.split.Divided;
import org.hemwright.pattern.split.PieceParts;

/**
 * Each piece, opened and with its allowances, lies within the usable width of some width that its
 * cloth is sold in, its grain along the selvedge (handbook section 5). On folded cloth half of it
 * lies on half the width, which is the same question. Where it does not, a split that the document
 * declares is the way out, and it is told on which width and in which sizes.
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
    Optional<Double> across = across(piece, drawn.cutLine(piece));
    if (across.isEmpty()) {
      return;
    }
    double widest = fabric.widths().get(fabric.widths().size() - 1);
    for (double width : fabric.widths()) {
      double usable = width - 2 * settings.making().selvedge();
      if (across.get() > usable + Tolerance.DRAWN_LENGTH) {
        Optional<PieceParts> parts = wayOut(piece, usable);
        if (parts.isPresent()) {
          findings.add(cutApart(piece, fabric, width, parts.get()));
        } else if (width == widest) {
          findings.add(tooWide(piece, fabric, across.get(), widest, usable));
        }
      }
    }
  }

  /** The first split that the piece declares whose parts all find room. */
  private static Optional<PieceParts> wayOut(Piece piece, double usable) {
    return piece.marks(Mark.Split.class).stream()
        .flatMap(split -> Divided.of(piece, split).parts().stream())
        .filter(
            parts ->
                parts.parts().stream()
                    .allMatch(
                        part ->
                            across(part, AddedAllowance.to(part).cutLine())
                                .filter(width -> width <= usable + Tolerance.DRAWN_LENGTH)
                                .isPresent()))
        .findFirst();
  }

  private static Finding cutApart(Piece piece, Fabric fabric, double width, PieceParts parts) {
    return Finding.ok("cloth-split", piece.name())
        .with("piece", piece.name())
        .with("split", parts.split().name())
        .with("fabric", fabric.name())
        .with("width", Argument.sold(width))
        .with("each", Double.toString(width))
        .at(Place.on(parts.split().origin(), piece.name(), piece.stackPoint()))
        .build();
  }

  private Finding tooWide(Piece piece, Fabric fabric, double across, double widest, double usable) {
    Point at = piece.grain().map(Grain::from).orElse(piece.stackPoint());
    return Finding.fail(id(), piece.name())
        .with("piece", piece.name())
        .with("fabric", fabric.name())
        .with("across", Argument.mm(across))
        .with("widest", Argument.sold(widest))
        .with("usable", Argument.mm(usable))
        .values(across, usable, "mm")
        .at(Place.on(piece.card().origin(), piece.name(), at))
        .build();
  }

  private static Optional<Double> across(Piece piece, Optional<CutLine> cutLine) {
    Optional<Vector> across = piece.grain().map(grain -> grain.direction().left());
    return across.map(way -> across(piece, cutLine, way));
  }

  /** How wide the opened piece is; where its cut line cannot be drawn, its stitch line. */
  private static double across(Piece piece, Optional<CutLine> cutLine, Vector across) {
    OpenedPiece opened = OpenedPiece.of(piece);
    Outline whole =
        cutLine.map(half -> opened.cutLine(half).outline()).orElseGet(opened::stitchLine);
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
