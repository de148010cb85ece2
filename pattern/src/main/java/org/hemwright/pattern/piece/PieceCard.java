package org.hemwright.pattern.piece;

import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.body.SizeRange;
import org.hemwright.pattern.finding.Origin;

/**
 * What a piece says of itself, the same in every size of its range.
 *
 * @param name in the document: {@code front}
 * @param title for the maker: "Skirt front"
 * @param number on the printed pattern, from 1
 * @param cuts how many from which fabric
 * @param copies the cut copies of the first fabric, in order; as many as its cut count
 * @param rightSideUp whether it must be cut with the printed side up on the cloth's right side
 * @param sizes the sizes it is drawn for; all when absent
 * @param origin where the document starts it
 */
public record PieceCard(
    String name,
    String title,
    int number,
    List<Cut> cuts,
    List<Copy> copies,
    boolean rightSideUp,
    Optional<SizeRange> sizes,
    Origin origin) {
  public PieceCard {
    cuts = List.copyOf(cuts);
    copies = List.copyOf(copies);
    if (number < 1) {
      throw new IllegalArgumentException("pieces are numbered from 1, not " + number);
    }
  }

  /** Whether any of its cuts lies on the fold of the cloth. */
  public boolean onFold() {
    return cuts.stream().anyMatch(Cut::onFold);
  }
}
