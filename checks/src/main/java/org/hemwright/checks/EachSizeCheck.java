package org.hemwright.checks;

import java.util.List;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Finding;

/** A check that looks at one size after the other and tells each cause once. */
interface EachSizeCheck extends Check {
  /** What it found in one size; the sizes are filled in. */
  List<Finding> check(SizedPattern sized, Pattern pattern);

  @Override
  default List<Finding> check(SizeRun run) {
    return BySize.findings(run, index -> check(run.sizes().get(index), run.pattern()));
  }
}
