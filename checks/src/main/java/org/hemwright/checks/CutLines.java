package org.hemwright.checks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.AddedAllowance;

/** The cut lines of a run, drawn once for all the checks that look at them. */
final class CutLines {
  private final OncePerRun<Map<String, AddedAllowance>> drawn =
      new OncePerRun<>((pattern, sized) -> of(sized));

  /** The allowances of every piece, by its name, one map for each size of the run. */
  List<Map<String, AddedAllowance>> of(SizeRun run) {
    return drawn.of(run);
  }

  private static Map<String, AddedAllowance> of(SizedPattern sized) {
    Map<String, AddedAllowance> all = new LinkedHashMap<>();
    sized.pieces().forEach(piece -> all.put(piece.name(), AddedAllowance.to(piece)));
    return all;
  }
}
