package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.Quantity;

/**
 * Every long piece that is not a plain strip shows where to lengthen or shorten it, square to its
 * grain (handbook section 1, "Lengthen/shorten lines").
 */
record LengthenCheck(CheckSettings settings) implements EachSizeCheck {
  /** How closely a piece is measured for its length (mm). */
  private static final double ROUGHLY = 2;

  /** An edge that strays less from its chord (mm) is straight. */
  private static final double STRAIGHT = 0.1;

  @Override
  public String id() {
    return "lengthen";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (Piece piece : sized.pieces()) {
      List<Mark.Lengthen> lines = piece.marks(Mark.Lengthen.class);
      if (lines.isEmpty()) {
        missing(piece, findings);
      }
      lines.forEach(line -> square(piece, line, findings));
    }
    return findings;
  }

  private void missing(Piece piece, List<Finding> findings) {
    if (piece.grain().isEmpty() || isStrip(piece)) {
      return;
    }
    double along = extent(piece, piece.grain().get().direction());
    if (along > settings.making().lengthenFrom()) {
      findings.add(
          Finding.warn("lengthen", piece.name())
              .with("piece", piece.name())
              .with("along", Argument.mm(along))
              .found(along, "mm")
              .at(Place.on(piece.card().origin(), piece.name(), piece.grain().get().from()))
              .build());
    }
  }

  private void square(Piece piece, Mark.Lengthen line, List<Finding> findings) {
    piece
        .grain()
        .ifPresent(
            grain -> {
              Vector across = line.line().end().minus(line.line().start());
              if (across.length() == 0) {
                return;
              }
              double angle = Math.abs(across.angleTo(grain.direction()));
              if (Math.abs(angle - Math.PI / 2) > settings.sewing().angleWarn()) {
                findings.add(
                    Finding.warn("lengthen-square", piece.name())
                        .with("piece", piece.name())
                        .with("angle", Argument.of(Quantity.angle(angle)))
                        .values(Math.toDegrees(angle), 90, "deg")
                        .at(Place.on(line.origin(), piece.name(), line.line().start()))
                        .build());
              }
            });
  }

  /** Whether four straight edges at right angles bound it: a maker redraws a strip herself. */
  static boolean isStrip(Piece piece) {
    double area = Math.abs(piece.stitchLine().signedArea());
    Box box = piece.stitchLine().bounds();
    return piece.edges().size() == 4
        && area > 0.99 * box.width() * box.height()
        && piece.edges().stream().map(Edge::path).allMatch(LengthenCheck::isStraight);
  }

  private static boolean isStraight(Path path) {
    Path chord = Path.straight(path.start(), path.end());
    return path.flattened(STRAIGHT).stream()
        .allMatch(point -> chord.nearest(point).point().distanceTo(point) <= STRAIGHT);
  }

  private static double extent(Piece piece, Vector along) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Point point : piece.stitchLine().path().flattened(ROUGHLY)) {
      double at = point.x() * along.dx() + point.y() * along.dy();
      least = Math.min(least, at);
      most = Math.max(most, at);
    }
    return most - least;
  }
}
