package org.hemwright.pattern;

import java.util.List;
import org.hemwright.pattern.finding.Origin;

/**
 * One garment of the pattern.
 *
 * @param name {@code A}
 * @param title "Knee length, elastic waist"
 * @param pieces the names of the pieces it takes, at least one
 * @param origin where the document states it
 */
public record View(String name, String title, List<String> pieces, Origin origin) {
  public View {
    pieces = List.copyOf(pieces);
  }
}
