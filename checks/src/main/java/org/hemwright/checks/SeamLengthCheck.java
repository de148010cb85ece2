package org.hemwright.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.measure.LayerWalk;
import org.hemwright.pattern.measure.SeamWalk;
import org.hemwright.pattern.seam.Seam;

/**
 * The layers of a seam, ease deducted, are as long as each other (handbook section 1, "Trueing and
 * walking"): what is out is told between the notches where it lies. Layers that are equal as a
 * whole and differ between notches have a notch out of place, which is another check's to tell.
 */
record SeamLengthCheck(CheckSettings settings) implements EachSizeCheck {
  /** A share this near to one half is taken for a half forgotten, which changes the words only. */
  private static final double ABOUT_HALF = 0.02;

  @Override
  public String id() {
    return "seam-length";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (Seam seam : sized.seams()) {
      for (Seam.Join join : seam.joins()) {
        for (int layer = 1; layer < join.layers().size(); layer++) {
          findings.addAll(new Walked(seam, join, layer, sized).findings());
        }
      }
    }
    return findings;
  }

  private Status judged(double beyond) {
    double by = Math.abs(beyond);
    return by > settings.sewing().seamFail()
        ? Status.FAIL
        : by > settings.sewing().seamWarn() ? Status.WARN : Status.OK;
  }

  /** One layer walked along the first. */
  private final class Walked {
    private final Seam seam;
    private final Seam.Join join;
    private final int layer;
    private final SizedPattern sized;
    private final SeamWalk walk;

    Walked(Seam seam, Seam.Join join, int layer, SizedPattern sized) {
      this.seam = seam;
      this.join = join;
      this.layer = layer;
      this.sized = sized;
      this.walk = SeamWalk.of(seam, join, layer, sized);
    }

    /** Whether the notches of equal layers tell themselves where they are out. */
    private boolean notchesTell(Status ofWhole) {
      return ofWhole == Status.OK && seam.even().isEmpty() && seam.ease().equals(Seam.Ease.NONE);
    }

    /** The stretches that are out where they tell the worst of it, else the whole. */
    List<Finding> findings() {
      SeamWalk.Interval whole =
          new SeamWalk.Interval(0, walk.first().length(), 0, walk.second().length());
      EaseRange ease = EaseRange.of(seam.ease(), whole.second());
      Status ofWhole = judged(ease.beyond(whole.first() - whole.second()));
      List<Finding> parts = new ArrayList<>();
      if (walk.intervals().size() > 1 && !notchesTell(ofWhole)) {
        for (int i = 0; i < walk.intervals().size(); i++) {
          SeamWalk.Interval part = walk.intervals().get(i);
          EaseRange own =
              seam.even().isPresent()
                  ? ease.share(part.second() / whole.second())
                  : EaseRange.of(seam.ease(), part.second()).orNone();
          double beyond = own.beyond(part.first() - part.second());
          if (judged(beyond) != Status.OK) {
            parts.add(finding(part, beyond, i));
          }
        }
      }
      Status ofParts =
          parts.stream().map(Finding::status).max(Comparator.naturalOrder()).orElse(Status.OK);
      boolean here = ofWhole == Status.OK || parts.size() == 1;
      if (here && ofParts.compareTo(ofWhole) >= 0) {
        return parts;
      }
      return List.of(finding(whole, ease.beyond(whole.first() - whole.second()), -1));
    }

    private Finding finding(SeamWalk.Interval part, double beyond, int index) {
      String first = join.layers().get(0).text();
      String second = join.layers().get(layer).text();
      boolean eased = !seam.ease().equals(Seam.Ease.NONE);
      String code = (eased ? "seam-ease" : "seam-length") + (index < 0 ? "" : "-part");
      String shorter = beyond > 0 ? second : first;
      Finding.Builder finding =
          Finding.fail(code, "seam " + seam.name())
              .with("seam", seam.name())
              .with("first", first)
              .with("second", second)
              .with("longer", beyond > 0 ? first : second)
              .with("shorter", shorter)
              .with("by", Argument.mm(Math.abs(beyond)))
              .with("first_length", Argument.mm(part.first()))
              .with("second_length", Argument.mm(part.second()))
              .values(part.first(), part.first() - beyond, "mm");
      if (index < 0 && !eased && isHalf(part) && !shorter.startsWith("every ")) {
        finding.with("half", shorter);
      }
      if (index >= 0) {
        finding.with("from", end(index)).with("to", end(index + 1));
      }
      double middle = (part.firstFrom() + part.firstTo()) / 2;
      LayerWalk.spot(join.layers().get(0), sized, middle)
          .ifPresentOrElse(
              spot -> finding.at(Place.on(seam.origin(), spot.place().piece(), spot.point())),
              () -> finding.at(seam.origin()));
      return finding.build().as(judged(beyond));
    }

    /** Whether one layer is half of the other, as where both halves of a folded piece are meant. */
    private boolean isHalf(SeamWalk.Interval part) {
      double share = Math.min(part.first(), part.second()) / Math.max(part.first(), part.second());
      return Math.abs(share - 0.5) <= ABOUT_HALF;
    }

    /** What stands at the start of an interval: the layer's start, a notch, its end. */
    private Argument end(int index) {
      if (index == 0 || index == walk.intervals().size()) {
        return new Argument.Term(index == 0 ? "seam-start" : "seam-end");
      }
      double at = walk.intervals().get(index).firstFrom();
      return walk.first().stops().stream()
          .filter(stop -> stop.isNotch() && stop.distance() == at)
          .flatMap(stop -> stop.name().stream())
          .findFirst()
          .<Argument>map(Argument.Text::new)
          .orElse(new Argument.Numbered("seam-mark", index));
    }
  }
}
