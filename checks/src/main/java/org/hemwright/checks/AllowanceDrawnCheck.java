package org.hemwright.checks;

import java.util.List;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Finding;

/**
 * The allowances of every piece can be drawn: none is deeper than its curve allows, and no cut line
 * crosses itself (handbook section 3).
 */
record AllowanceDrawnCheck(CutLines cutLines) implements CutLineCheck {
  @Override
  public String id() {
    return "allowance-drawn";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern, Drawn drawn) {
    return sized.pieces().stream().flatMap(piece -> drawn.of(piece).findings().stream()).toList();
  }
}
