package org.hemwright.draft.syntax;

import java.util.Optional;

/**
 * A name that stands for something defined elsewhere: {@code side_hip}, or {@code panel.side_hip}
 * for a thing of another piece.
 */
public record Reference(Optional<Name> piece, Name name, Span span) {
  /** A bare name. */
  public static Reference to(Name name) {
    return new Reference(Optional.empty(), name, name.span());
  }

  /** As the designer writes it. */
  public String text() {
    return piece.map(owner -> owner.text() + "." + name.text()).orElse(name.text());
  }
}
