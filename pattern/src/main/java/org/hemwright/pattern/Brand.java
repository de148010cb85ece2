package org.hemwright.pattern;

import java.util.Optional;

/**
 * What of the pattern house stands on every paper that a maker sees.
 *
 * @param logo the name of a file among the designer's pictures
 * @param footer a line at the foot of each page
 */
public record Brand(Optional<String> logo, Optional<String> footer) {
  /** A house that shows nothing but its name. */
  public static final Brand NONE = new Brand(Optional.empty(), Optional.empty());
}
