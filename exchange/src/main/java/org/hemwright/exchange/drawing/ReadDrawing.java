package org.hemwright.exchange.drawing;

import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.traced.TracedDrawing;

/**
 * What came of reading a drawing.
 *
 * @param drawing absent where it was refused
 * @param findings why, and what in it could not be read
 */
public record ReadDrawing(Optional<TracedDrawing> drawing, List<Finding> findings) {
  public ReadDrawing {
    findings = List.copyOf(findings);
  }
}
