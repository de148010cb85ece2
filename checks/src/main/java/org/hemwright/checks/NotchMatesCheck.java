package org.hemwright.checks;

import java.util.ArrayList;
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
 * The notches of two layers meet, single on single and double on double (handbook section 1,
 * "Notches"). What one layer is longer than the other may lie on either side of a notch. Even marks
 * are another check's.
 */
record NotchMatesCheck(CheckSettings settings) implements EachSizeCheck {
  @Override
  public String id() {
    return "notch-mates";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (Seam seam : sized.seams()) {
      for (Seam.Join join : seam.joins()) {
        for (int layer = 1; seam.even().isEmpty() && layer < join.layers().size(); layer++) {
          findings.addAll(new Matched(seam, join, layer, sized).findings());
        }
      }
    }
    return findings;
  }

  /** Two layers laid on each other. */
  private final class Matched {
    private final Seam seam;
    private final Seam.Layer[] layers;
    private final LayerWalk[] walks;
    private final List<Finding> findings = new ArrayList<>();

    Matched(Seam seam, Seam.Join join, int layer, SizedPattern sized) {
      this.seam = seam;
      layers = new Seam.Layer[] {join.layers().get(0), join.layers().get(layer)};
      walks = new LayerWalk[] {LayerWalk.of(layers[0], sized), LayerWalk.of(layers[1], sized)};
    }

    /** How far two places are from meeting (mm), all that may be eased in deducted. */
    private double apart(Stop first, Stop second) {
      double longer = walks[0].length() - walks[1].length();
      double by = first.distance() - second.distance();
      return Math.max(0, Math.max(by - Math.max(0, longer), Math.min(0, longer) - by));
    }

    private static List<Stop> notches(LayerWalk walk) {
      return new ArrayList<>(walk.stops().stream().filter(Stop::isNotch).toList());
    }

    List<Finding> findings() {
      List<Stop> here = notches(walks[0]);
      List<Stop> there = notches(walks[1]);
      if (here.isEmpty() || there.isEmpty()) {
        return List.of();
      }
      List<Stop> unmet = new ArrayList<>();
      for (Stop notch : here) {
        Optional<Stop> mate = nearest(notch, there, true);
        mate.ifPresentOrElse(there::remove, () -> unmet.add(notch));
      }
      List<Stop> alone = new ArrayList<>();
      for (Stop notch : unmet) {
        Optional<Stop> other = nearest(notch, there, false);
        other.ifPresentOrElse(
            mate -> {
              there.remove(mate);
              findings.add(problem("notch-kind", 0, notch).at(place(mate)).build());
            },
            () -> alone.add(notch));
      }
      alone.removeIf(notch -> meetsJoint(notch, 1));
      there.removeIf(notch -> meetsJoint(notch, 0));
      if (alone.size() == there.size()) {
        for (int i = 0; i < alone.size(); i++) {
          findings.add(apartFrom(alone.get(i), there.get(i)));
        }
      } else {
        alone.forEach(notch -> findings.add(mateless(0, notch)));
        there.forEach(notch -> findings.add(mateless(1, notch)));
      }
      return findings;
    }

    private Optional<Stop> nearest(Stop notch, List<Stop> others, boolean sameKind) {
      return others.stream()
          .filter(other -> apart(notch, other) <= settings.notchApart())
          .filter(other -> !sameKind || other.kind() == notch.kind())
          .min(Comparator.comparingDouble(other -> apart(notch, other)));
    }

    /** Whether a notch meets a seam or a fold that the other layer passes. */
    private boolean meetsJoint(Stop notch, int other) {
      return walks[other].stops().stream()
          .filter(s -> s.kind() == LayerWalk.Kind.SEAM || s.kind() == LayerWalk.Kind.FOLD)
          .anyMatch(
              joint ->
                  (other == 1 ? apart(notch, joint) : apart(joint, notch))
                      <= settings.notchApart());
    }

    private Finding apartFrom(Stop notch, Stop mate) {
      double apart = apart(notch, mate);
      return problem("notch-apart", 0, notch)
          .with("apart", Argument.mm(apart))
          .with("there", Argument.mm(mate.distance()))
          .values(notch.distance(), mate.distance(), "mm")
          .at(place(mate))
          .build()
          .as(apart > settings.seamFail() ? Status.FAIL : Status.WARN);
    }

    private Finding mateless(int own, Stop notch) {
      return problem("notch-mateless", own, notch)
          .found(notch.distance(), "mm")
          .build()
          .as(Status.WARN);
    }

    private Finding.Builder problem(String code, int own, Stop notch) {
      int index = walks[own].stops().stream().filter(Stop::isNotch).toList().indexOf(notch);
      return Finding.fail(code, "seam " + seam.name())
          .with("seam", seam.name())
          .with("first", layers[own].text())
          .with("second", layers[1 - own].text())
          .with("notch", new Argument.Numbered("notch-number", index + 1))
          .with("here", Argument.mm(notch.distance()))
          .at(place(notch));
    }

    private Place place(Stop notch) {
      return Place.on(seam.origin(), notch.place().piece(), notch.point());
    }
  }
}
