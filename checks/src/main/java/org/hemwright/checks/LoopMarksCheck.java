package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.measure.LayerWalk;
import org.hemwright.pattern.measure.LayerWalk.Stop;
import org.hemwright.pattern.seam.Seam;

/**
 * A band, cuff or sleeve cap that is sewn on as a loop shows where it goes: it is notched at each
 * seam that the other layer passes, or at its quarter points where it is stretched evenly (handbook
 * section 1, "Notches").
 */
record LoopMarksCheck(CheckSettings settings) implements EachSizeCheck {
  /** A loop with marks a third of its length apart can be laid out evenly by hand. */
  private static final double WIDEST_PART = 0.34;

  @Override
  public String id() {
    return "loop-marks";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (Seam seam : sized.seams()) {
      Seam.Join join = seam.joins().get(0);
      for (int i = 0; seam.even().isEmpty() && i < join.layers().size(); i++) {
        Seam.Layer loop = join.layers().get(i);
        Seam.Layer other = join.layers().get(i == 0 ? 1 : 0);
        if (SewnLoop.isOneEdge(loop, sized) && !SewnLoop.isOneEdge(other, sized)) {
          judge(seam, loop, other, sized, findings);
        }
      }
    }
    return findings;
  }

  private void judge(
      Seam seam, Seam.Layer loop, Seam.Layer other, SizedPattern sized, List<Finding> findings) {
    LayerWalk here = LayerWalk.of(loop, sized);
    LayerWalk there = LayerWalk.of(other, sized);
    List<Double> marks =
        here.stops().stream().filter(Stop::isNotch).map(Stop::distance).sorted().toList();
    if (seam.ease().share() && !seam.ease().equals(Seam.Ease.NONE)) {
      if (widest(marks, here.length()) > WIDEST_PART * here.length()) {
        findings.add(
            problem("loop-quarters", seam, loop, other, sized, here.length() / 2)
                .with("marks", Argument.of(marks.size()))
                .values(marks.size(), 3, "")
                .build());
      }
      return;
    }
    double eased = Math.abs(here.length() - there.length());
    for (Stop joint : there.stops()) {
      boolean marked =
          marks.stream()
              .anyMatch(
                  mark ->
                      Math.abs(mark - joint.distance()) <= eased + settings.sewing().notchApart());
      if (joint.kind() == LayerWalk.Kind.SEAM && !marked) {
        double at = joint.distance() * here.length() / there.length();
        findings.add(
            problem("loop-joint", seam, loop, other, sized, at)
                .with("at", Argument.mm(at))
                .found(at, "mm")
                .build());
      }
    }
  }

  private static double widest(List<Double> marks, double length) {
    double widest = 0;
    double before = 0;
    for (double mark : marks) {
      widest = Math.max(widest, mark - before);
      before = mark;
    }
    return Math.max(widest, length - before);
  }

  private static Finding.Builder problem(
      String code, Seam seam, Seam.Layer loop, Seam.Layer other, SizedPattern sized, double at) {
    Finding.Builder finding =
        Finding.warn(code, "seam " + seam.name())
            .with("seam", seam.name())
            .with("loop", loop.text())
            .with("edge", loop.run().get(0).edge())
            .with("other", other.text());
    LayerWalk.spot(loop, sized, at)
        .ifPresentOrElse(
            spot -> finding.at(Place.on(seam.origin(), spot.place().piece(), spot.point())),
            () -> finding.at(seam.origin()));
    return finding;
  }
}
