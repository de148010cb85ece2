package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.FindingOrder;

/** A check that looks at one size after the other and tells each cause once. */
interface EachSizeCheck extends Check {
  /** What it found in one size; the sizes are filled in. */
  List<Finding> check(SizedPattern sized, Pattern pattern);

  @Override
  default List<Finding> check(SizeRun run) {
    List<Finding> all = new ArrayList<>();
    for (SizedPattern sized : run.sizes()) {
      List<String> size = List.of(sized.size().name());
      check(sized, run.pattern()).forEach(finding -> all.add(finding.in(size)));
    }
    List<String> chart = run.pattern().chart().sizes().stream().map(Size::name).toList();
    return new FindingOrder(chart).of(all);
  }
}
