package org.hemwright.paper.nest;

import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Path;
import org.hemwright.paper.style.Pens;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;

/**
 * Stitch lines that run on or beside other sizes' cut lines, as they do where the grade from size
 * to size is about the allowance: on paper the two cannot be told apart.
 */
public final class CloseStitchLines {
  /** Lines this far apart, from middle to middle, still touch or nearly do (mm). */
  private static final double CLOSE = Pens.CUT.width() / 2 + Pens.STITCH.width() / 2 + 0.3;

  private static final double STEP = 4;

  /** Stretches that come to less than this are crossings and corners (mm). */
  private static final double LEAST = 150;

  private CloseStitchLines() {}

  /** What is found in a nest whose stitch lines are drawn. */
  public static Optional<Finding> in(Nest nest) {
    double close = 0;
    List<PieceShape> shapes = nest.shapes();
    for (PieceShape shape : shapes) {
      List<Path> others =
          shapes.stream()
              .filter(other -> !other.size().equals(shape.size()))
              .map(PieceShape::cutLine)
              .toList();
      NearLine cutLines = new NearLine(others);
      double length = shape.stitchLine().length();
      for (double at = 0; at < length; at += STEP) {
        if (cutLines.passes(shape.stitchLine().at(at).point(), CLOSE)) {
          close += STEP;
        }
      }
    }
    if (close < LEAST) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.warn("stitch-lines-close", nest.card().name())
            .sizes(nest.sizeNames())
            .with("length", Argument.mm(Math.rint(close / 10) * 10))
            .at(nest.card().origin())
            .build());
  }
}
