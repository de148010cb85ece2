package org.hemwright.draft.syntax;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What a step is done to, as written: a seam, an elastic or a piece by one name, {@code
 * panel.side}, {@code panel.front.side}.
 *
 * @param parts one to three names
 */
public record WorkName(List<Name> parts, Span span) {
  public WorkName {
    parts = List.copyOf(parts);
  }

  /** As written, without blanks. */
  public String text() {
    return parts.stream().map(Name::text).collect(Collectors.joining("."));
  }
}
