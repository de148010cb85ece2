package org.hemwright.checks;

import java.lang.ref.WeakReference;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.piece.AddedAllowance;
import org.hemwright.pattern.piece.Piece;

/**
 * The cut lines of a run, drawn once for all the checks that look at them. Only the last run that
 * was asked for is kept, and it is not kept alive.
 */
final class CutLines {
  private WeakReference<SizeRun> run = new WeakReference<>(null);
  private Map<Piece, AddedAllowance> drawn = Map.of();

  /** The allowances of every piece of a run, by the piece itself. */
  synchronized Map<Piece, AddedAllowance> of(SizeRun asked) {
    if (run.get() != asked) {
      List<Piece> pieces =
          asked.sizes().stream().flatMap(sized -> sized.pieces().stream()).toList();
      List<AddedAllowance> allowances = pieces.parallelStream().map(AddedAllowance::to).toList();
      Map<Piece, AddedAllowance> all = new IdentityHashMap<>();
      for (int i = 0; i < allowances.size(); i++) {
        all.put(pieces.get(i), allowances.get(i));
      }
      drawn = all;
      run = new WeakReference<>(asked);
    }
    return drawn;
  }
}
