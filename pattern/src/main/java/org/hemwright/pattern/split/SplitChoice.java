package org.hemwright.pattern.split;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;

/**
 * One of the ways that a document declares for cutting a piece apart.
 *
 * @param piece the piece's name
 * @param split the split's name
 */
public record SplitChoice(String piece, String split) {
  /** Every split that a pattern declares, in the order of its document. */
  public static List<SplitChoice> declared(SizeRun run) {
    Set<SplitChoice> declared = new LinkedHashSet<>();
    for (SizedPattern sized : run.sizes()) {
      for (Piece piece : sized.pieces()) {
        declared.addAll(of(piece));
      }
    }
    return List.copyOf(declared);
  }

  /** Those of one piece, in the order of the document. */
  public static List<SplitChoice> of(Piece piece) {
    List<SplitChoice> own = new ArrayList<>();
    for (Mark.Split split : piece.marks(Mark.Split.class)) {
      own.add(new SplitChoice(piece.name(), split.name()));
    }
    return own;
  }

  /** As tables and files write it: {@code band.halves}. */
  public String text() {
    return piece + "." + split;
  }
}
