package org.hemwright.checks;

import java.lang.ref.WeakReference;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.AddedAllowance;

/**
 * The cut lines of a run, drawn once for all the checks that look at them. Only the last run that
 * was asked for is kept, and it is not kept alive.
 */
final class CutLines {
  private WeakReference<SizeRun> run = new WeakReference<>(null);
  private List<Map<String, AddedAllowance>> drawn = List.of();

  /** The allowances of every piece, by its name, one map for each size of the run. */
  synchronized List<Map<String, AddedAllowance>> of(SizeRun asked) {
    if (!run.refersTo(asked)) {
      drawn = asked.sizes().parallelStream().map(CutLines::of).toList();
      run = new WeakReference<>(asked);
    }
    return drawn;
  }

  private static Map<String, AddedAllowance> of(SizedPattern sized) {
    Map<String, AddedAllowance> all = new LinkedHashMap<>();
    sized.pieces().forEach(piece -> all.put(piece.name(), AddedAllowance.to(piece)));
    return all;
  }
}
