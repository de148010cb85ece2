package org.hemwright.checks;

import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;

/**
 * Whether a size has all its pieces. Where one could not be drawn its seams are missing too, and
 * what follows from that is not to be told again.
 */
final class AllDrawn {
  private AllDrawn() {}

  static boolean in(SizedPattern sized, Pattern pattern) {
    return pattern.pieces().stream()
        .filter(card -> card.sizes().stream().allMatch(range -> range.contains(sized.size())))
        .allMatch(card -> sized.piece(card.name()).isPresent());
  }
}
