package org.hemwright.checks;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Needle;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.Quantity;

/**
 * Each stitch is one that hand or machine makes, within what a home machine sews, and each needle
 * suits its cloth (handbook section 7: ballpoint or stretch for knits; the rest common practice, no
 * source).
 */
record StitchSettingsCheck(StitchLimits limits) implements EachSizeCheck {
  @Override
  public String id() {
    return "stitch-settings";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    List<Step> steps =
        pattern.making().steps().stream()
            .filter(step -> step.sizes().filter(range -> !range.contains(sized.size())).isEmpty())
            .toList();
    for (Step step : steps) {
      Set<Stitch> stitches = new LinkedHashSet<>(step.sewing().choices());
      stitches.forEach(stitch -> made(step, stitch, findings));
      stitches.forEach(stitch -> within(step, stitch, findings));
    }
    needles(steps, sized, pattern, findings);
    return findings;
  }

  // --- stitches ---------------------------------------------------------------------------------

  /** By hand where the step is sewn by hand, else on the machine. */
  private static void made(Step step, Stitch stitch, List<Finding> findings) {
    boolean machine =
        step.act() instanceof Act.Sew
            || step.act() instanceof Act.Attach
            || step.act() instanceof Act.SetIn
            || step.act() instanceof Act.FormCasing;
    if (machine && stitch.kind().byHand()) {
      findings.add(told("stitch-by-hand", step, stitch).build());
    } else if (step.act() instanceof Act.HandSew && isMachineOnly(stitch.kind())) {
      findings.add(told("stitch-by-machine", step, stitch).build());
    }
  }

  private static boolean isMachineOnly(Stitch.Kind kind) {
    return switch (kind) {
      case STRETCH, ZIGZAG, TWIN_NEEDLE, OVERLOCK_THREE, OVERLOCK_FOUR, COVER, BOX -> true;
      case STRAIGHT, CHAIN, BASTING, BLIND_HEM, BUTTONHOLE -> false;
      case BACKSTITCH, SLIP_STITCH, CATCH_STITCH -> false;
    };
  }

  private void within(Step step, Stitch stitch, List<Finding> findings) {
    if (stitch.kind().byHand()) {
      return;
    }
    double length = stitch.lengthOrUsual();
    if (length < limits.shortest() || length > limits.longest()) {
      findings.add(
          told("stitch-length", step, stitch)
              .with("found", length(length))
              .with("least", length(limits.shortest()))
              .with("most", length(limits.longest()))
              .values(
                  length,
                  StrictMath.min(StrictMath.max(length, limits.shortest()), limits.longest()),
                  "mm")
              .build());
    }
    if (stitch.widthOrUsual() > limits.widest()) {
      findings.add(
          told("stitch-width", step, stitch)
              .with("found", length(stitch.widthOrUsual()))
              .with("most", length(limits.widest()))
              .values(stitch.widthOrUsual(), limits.widest(), "mm")
              .build());
    }
  }

  private static Argument length(double mm) {
    return Argument.of(Quantity.length(mm));
  }

  private static Finding.Builder told(String code, Step step, Stitch stitch) {
    return Finding.warn(code, "step " + step.id())
        .with("step", step.id())
        .with("stitch", new Argument.Term("with-" + stitch.kind().key()))
        .at(step.origin());
  }

  // --- needles ----------------------------------------------------------------------------------

  private static void needles(
      List<Step> steps, SizedPattern sized, Pattern pattern, List<Finding> findings) {
    boolean knit = isAll(sized, pattern, Fabric.Kind.KNIT);
    Optional<Needle> usual = pattern.making().usualNeedle();
    Optional<Step> first =
        steps.stream().filter(step -> step.sewing().stitch().isPresent()).findFirst();
    if (usual.isPresent() && first.isPresent()) {
      needle(usual.get(), knit)
          .map(code -> Finding.warn(code, "make").with("needle", usual.get().point().word()))
          .ifPresent(finding -> findings.add(finding.at(first.get().origin()).build()));
    }
    for (Step step : steps) {
      Optional<Needle> own = step.sewing().needle();
      own.flatMap(needle -> needle(needle, knit))
          .map(
              code ->
                  Finding.warn(code, "step " + step.id())
                      .with("step", step.id())
                      .with("needle", own.orElseThrow().point().word()))
          .ifPresent(finding -> findings.add(finding.at(step.origin()).build()));
    }
  }

  private static Optional<String> needle(Needle needle, boolean knit) {
    boolean kind =
        needle.point() == Needle.Point.BALLPOINT || needle.point() == Needle.Point.STRETCH;
    if (knit && !kind) {
      return Optional.of("needle-knit");
    }
    return needle.point() == Needle.Point.LEATHER ? Optional.of("needle-cloth") : Optional.empty();
  }

  /** Whether every piece is cut from cloth of one kind. */
  private static boolean isAll(SizedPattern sized, Pattern pattern, Fabric.Kind kind) {
    List<Optional<Fabric.Kind>> kinds =
        sized.pieces().stream()
            .map(Piece::card)
            .map(
                card ->
                    card.cuts().stream()
                        .findFirst()
                        .map(Cut::fabric)
                        .flatMap(pattern::fabric)
                        .map(Fabric::kind))
            .toList();
    return !kinds.isEmpty() && kinds.stream().allMatch(each -> each.equals(Optional.of(kind)));
  }
}
