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
 * @param part which part it is of a piece that is cut apart, from 1; 0 for a whole piece
 */
public record PieceCard(
    String name,
    String title,
    int number,
    List<Cut> cuts,
    List<Copy> copies,
    boolean rightSideUp,
    Optional<SizeRange> sizes,
    Origin origin,
    int part) {
  public PieceCard {
    cuts = List.copyOf(cuts);
    copies = List.copyOf(copies);
    if (number < 1) {
      throw new IllegalArgumentException("pieces are numbered from 1, not " + number);
    }
    if (part < 0) {
      throw new IllegalArgumentException("parts are numbered from 1, not " + part);
    }
  }

  /** The card of a whole piece. */
  public PieceCard(
      String name,
      String title,
      int number,
      List<Cut> cuts,
      List<Copy> copies,
      boolean rightSideUp,
      Optional<SizeRange> sizes,
      Origin origin) {
    this(name, title, number, cuts, copies, rightSideUp, sizes, origin, 0);
  }

  /** Its number as printed: {@code 4}; of a part with a letter, {@code 4a}. */
  public String mark() {
    return part == 0 ? Integer.toString(number) : number + Character.toString('a' + part - 1);
  }

  /** Whether any of its cuts lies on the fold of the cloth. */
  public boolean onFold() {
    return cuts.stream().anyMatch(Cut::onFold);
  }
}
