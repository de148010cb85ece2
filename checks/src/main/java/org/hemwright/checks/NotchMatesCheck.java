package org.hemwright.checks;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.seam.Seam;

/**
 * The notches of two layers meet, single on single and double on double (handbook section 1,
 * "Notches"), and each sewn notch of every cut copy meets something in one seam at least, its own
 * image apart: a notch, or a seam or fold that the other layer passes. What one layer is longer
 * than the other may lie on either side of a notch; where it is spread evenly, so are the notches.
 */
record NotchMatesCheck(CheckSettings settings) implements EachSizeCheck {
  @Override
  public String id() {
    return "notch-mates";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<NotchPairing> pairings = new ArrayList<>();
    for (Seam seam : sized.seams()) {
      for (Seam.Join join : seam.joins()) {
        for (int layer = 1; layer < join.layers().size(); layer++) {
          NotchPairing.of(seam, join, layer, sized, settings).ifPresent(pairings::add);
        }
      }
    }
    Set<NotchPairing.Key> met = new LinkedHashSet<>();
    pairings.forEach(pairing -> met.addAll(pairing.met()));
    Set<String> told = new LinkedHashSet<>();
    List<Finding> findings = new ArrayList<>();
    for (boolean paired : new boolean[] {true, false}) {
      for (NotchPairing pairing : pairings) {
        for (NotchPairing.Problem problem : pairing.problems()) {
          Set<NotchPairing.Key> open = new LinkedHashSet<>(problem.notches());
          open.removeAll(met);
          open.removeIf(notch -> told.contains(notch.drawn()));
          if (problem.isPaired() == paired && !open.isEmpty()) {
            problem.notches().forEach(notch -> told.add(notch.drawn()));
            findings.add(problem.finding());
          }
        }
      }
    }
    return findings;
  }
}
