package org.hemwright.checks;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.measure.LayerWalk;
import org.hemwright.pattern.measure.LayerWalk.Stop;
import org.hemwright.pattern.seam.Seam;

/**
 * The ease of a sleeve cap lies over the cap between its notches, none of it below them, and is no
 * more than its cloth takes up (handbook section 1, "Sleeve cap ease"). A cap is a curved edge,
 * closed to a loop and sewn to several edges with ease in millimetres.
 */
record CapEaseCheck(CheckSettings settings) implements EachSizeCheck {
  /** A notch further away than this (mm) is not the one for the shoulder. */
  private static final double ASTRAY = 30;

  @Override
  public String id() {
    return "cap-ease";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (Seam seam : sized.seams()) {
      for (Seam.Join join : seam.joins()) {
        Seam.Layer cap = join.layers().get(0);
        Seam.Layer armhole = join.layers().get(1);
        boolean eased = !seam.ease().share() && seam.ease().most() > 0;
        if (eased
            && SewnLoop.isOneEdge(cap, sized)
            && armhole.run().size() > 1
            && seam.even().isEmpty()) {
          below(seam, cap, armhole, sized, findings);
          above(seam, cap, armhole, sized, findings);
          amount(seam, cap, armhole, sized, pattern, findings);
        }
      }
    }
    return findings;
  }

  /** From either end to the first notch the two are equal. */
  private void below(
      Seam seam, Seam.Layer cap, Seam.Layer armhole, SizedPattern sized, List<Finding> findings) {
    LayerWalk here = LayerWalk.of(cap, sized);
    LayerWalk there = LayerWalk.of(armhole, sized);
    for (boolean fromEnd : new boolean[] {false, true}) {
      List<Stop> first = notches(here, fromEnd);
      List<Stop> second = notches(there, fromEnd);
      if (first.isEmpty() || second.isEmpty()) {
        continue;
      }
      Stop notch = first.get(0);
      double own = fromEnd ? here.length() - notch.distance() : notch.distance();
      double other = fromEnd ? there.length() - second.get(0).distance() : second.get(0).distance();
      double off = Math.abs(own - other);
      if (off > settings.sewing().seamWarn()) {
        findings.add(
            Finding.fail("cap-ease-below", "seam " + seam.name())
                .with("seam", seam.name())
                .with("cap", cap.text())
                .with("armhole", armhole.text())
                .with("end", new Argument.Term(fromEnd ? "seam-end" : "seam-start"))
                .with("here", Argument.mm(own))
                .with("there", Argument.mm(other))
                .values(own, other, "mm")
                .at(Place.on(seam.origin(), notch.place().piece(), notch.point()))
                .build()
                .as(off > settings.sewing().seamFail() ? Status.FAIL : Status.WARN));
      }
    }
  }

  /** The notch at the top meets the shoulder, and neither half of the cap is the shorter. */
  private void above(
      Seam seam, Seam.Layer cap, Seam.Layer armhole, SizedPattern sized, List<Finding> findings) {
    LayerWalk here = LayerWalk.of(cap, sized);
    LayerWalk there = LayerWalk.of(armhole, sized);
    double eased = here.length() - there.length();
    for (Stop joint : there.stops()) {
      Optional<Stop> top =
          here.stops().stream()
              .filter(Stop::isNotch)
              .min(
                  Comparator.comparingDouble(
                      notch -> Math.abs(notch.distance() - joint.distance() - eased / 2)));
      if (joint.kind() == LayerWalk.Kind.SEAM && top.isPresent()) {
        double before = top.get().distance() - joint.distance();
        double most = Math.max(0, eased);
        double off = before < 0 ? -before : before - most;
        if (off > settings.sewing().seamWarn() && off <= ASTRAY) {
          findings.add(
              Finding.fail("cap-ease-half", "seam " + seam.name())
                  .with("seam", seam.name())
                  .with("cap", cap.text())
                  .with("by", Argument.mm(off))
                  .values(before, before < 0 ? 0 : most, "mm")
                  .at(Place.on(seam.origin(), top.get().place().piece(), top.get().point()))
                  .build()
                  .as(off > settings.sewing().seamFail() ? Status.FAIL : Status.WARN));
        }
      }
    }
  }

  private static List<Stop> notches(LayerWalk walk, boolean fromEnd) {
    List<Stop> notches = new ArrayList<>(walk.stops().stream().filter(Stop::isNotch).toList());
    if (fromEnd) {
      Collections.reverse(notches);
    }
    return notches;
  }

  private void amount(
      Seam seam,
      Seam.Layer cap,
      Seam.Layer armhole,
      SizedPattern sized,
      Pattern pattern,
      List<Finding> findings) {
    LayerWalk here = LayerWalk.of(cap, sized);
    double ease = here.length() - LayerWalk.of(armhole, sized).length();
    boolean knit =
        sized
            .piece(cap.run().get(0).piece())
            .filter(piece -> Cloth.isKnit(piece, pattern))
            .isPresent();
    double most = knit ? settings.sewing().capEaseKnit() : settings.sewing().capEaseWoven();
    if (ease > most + settings.sewing().seamWarn()) {
      Finding.Builder finding =
          Finding.warn("cap-ease-much", "seam " + seam.name())
              .with("seam", seam.name())
              .with("cap", cap.text())
              .with("armhole", armhole.text())
              .with("ease", Argument.mm(ease))
              .with("most", Argument.mm(most))
              .values(ease, most, "mm");
      LayerWalk.spot(cap, sized, here.length() / 2)
          .ifPresent(
              spot -> finding.at(Place.on(seam.origin(), spot.place().piece(), spot.point())));
      findings.add(finding.build());
    }
  }
}
