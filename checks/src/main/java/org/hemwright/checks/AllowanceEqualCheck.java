package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.seam.Seam;

/**
 * The layers of a seam have one allowance wherever they lie on each other (handbook section 3); an
 * edge that is turned back, and a placement line, are laid by their fold and line instead. It is
 * wide enough to be sewn.
 */
record AllowanceEqualCheck(CheckSettings settings) implements EachSizeCheck {
  @Override
  public String id() {
    return "allowance-equal";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (Seam seam : sized.seams()) {
      for (Seam.Join join : seam.joins()) {
        List<SewnStretch> first = SewnStretch.of(join.layers().get(0), sized);
        for (Seam.Layer layer : join.layers().subList(1, join.layers().size())) {
          compare(seam, first, SewnStretch.of(layer, sized), findings);
        }
      }
    }
    return findings;
  }

  private void compare(
      Seam seam, List<SewnStretch> first, List<SewnStretch> second, List<Finding> findings) {
    if (first.isEmpty() || second.isEmpty()) {
      return;
    }
    double scale = first.get(first.size() - 1).to() / second.get(second.size() - 1).to();
    for (SewnStretch here : first) {
      for (SewnStretch there : second) {
        double from = Math.max(here.from(), there.from() * scale);
        double to = Math.min(here.to(), there.to() * scale);
        double shorter = Math.min(here.length(), there.length() * scale);
        if (to - from > Math.min(shorter / 2, 5 * settings.sewing().seamFail())) {
          compare(seam, here, there, findings);
        }
      }
    }
  }

  private void compare(Seam seam, SewnStretch here, SewnStretch there, List<Finding> findings) {
    Allowance first = here.edge().allowance();
    Allowance second = there.edge().allowance();
    double apart = Math.abs(first.width() - second.width());
    if (first instanceof Allowance.TurnedBack || second instanceof Allowance.TurnedBack) {
      return;
    }
    double wider = Math.max(first.width(), second.width());
    if (wider < settings.sewing().allowanceLeast() - Tolerance.DRAWN_LENGTH) {
      findings.add(
          Finding.fail(wider == 0 ? "allowance-none" : "allowance-narrow", "seam " + seam.name())
              .with("seam", seam.name())
              .with("first", here.text())
              .with("second", there.text())
              .with("here", Argument.mm(wider))
              .with("least", Argument.mm(settings.sewing().allowanceLeast()))
              .values(wider, settings.sewing().allowanceLeast(), "mm")
              .at(middle(here))
              .at(middle(there))
              .build()
              .as(wider == 0 ? Status.FAIL : Status.WARN));
    }
    if (apart <= settings.sewing().allowanceWarn()) {
      return;
    }
    findings.add(
        Finding.fail("allowance-equal", "seam " + seam.name())
            .with("seam", seam.name())
            .with("first", here.text())
            .with("second", there.text())
            .with("here", Argument.mm(first.width()))
            .with("there", Argument.mm(second.width()))
            .values(first.width(), second.width(), "mm")
            .at(middle(here))
            .at(middle(there))
            .build()
            .as(apart > settings.sewing().allowanceFail() ? Status.FAIL : Status.WARN));
  }

  private static Place middle(SewnStretch stretch) {
    return Place.on(
        stretch.edge().origin(),
        stretch.piece().name(),
        stretch.edge().path().at(stretch.edge().path().length() / 2).point());
  }
}
