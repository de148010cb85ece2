package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.measure.LayerWalk;
import org.hemwright.pattern.measure.SeamWalk;
import org.hemwright.pattern.seam.Seam;
import org.hemwright.pattern.seam.SeamRequest;

/**
 * Where even marks are declared, the first layer has them and the other has seams to meet them, and
 * a seam across the first layer shows its place as a notch would; a long seam that is no strip's
 * has some notch, fold or seam on its way by which it is matched.
 */
record SeamMarksCheck(CheckSettings settings) implements EachSizeCheck {
  @Override
  public String id() {
    return "seam-marks";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (Seam seam : sized.seams()) {
      if (seam.even().isPresent()) {
        SeamRequest.Even even = seam.even().get();
        Seam.Join join = seam.joins().get(0);
        notched(seam, even, join, sized, findings);
        for (int layer = 1; layer < join.layers().size(); layer++) {
          met(seam, even, join.layers().get(layer), sized, findings);
        }
      } else {
        unmarked(seam, sized).ifPresent(findings::add);
      }
    }
    return findings;
  }

  private Optional<Finding> unmarked(Seam seam, SizedPattern sized) {
    Seam.Layer first = seam.joins().get(0).layers().get(0);
    LayerWalk walk = LayerWalk.of(first, sized);
    boolean marked =
        seam.joins().get(0).layers().stream()
            .anyMatch(layer -> !LayerWalk.of(layer, sized).stops().isEmpty());
    boolean strip =
        SewnLoop.places(seam).stream()
            .flatMap(place -> sized.piece(place.piece()).stream())
            .anyMatch(LengthenCheck::isStrip);
    if (marked || strip || walk.length() < settings.sewing().notchFrom()) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.warn("seam-unmarked", "seam " + seam.name())
            .with("seam", seam.name())
            .with("first", first.text())
            .with("length", Argument.mm(walk.length()))
            .found(walk.length(), "mm")
            .at(seam.origin())
            .build());
  }

  private void notched(
      Seam seam,
      SeamRequest.Even even,
      Seam.Join join,
      SizedPattern sized,
      List<Finding> findings) {
    LayerWalk walk = LayerWalk.of(join.layers().get(0), sized);
    int missing = 0;
    for (int i = 1; i < even.parts(); i++) {
      double mark = walk.length() * i / even.parts();
      boolean there =
          walk.stops().stream()
              .anyMatch(
                  stop ->
                      (stop.isNotch() || stop.kind() == LayerWalk.Kind.SEAM)
                          && Math.abs(stop.distance() - mark) <= settings.sewing().seamWarn());
      missing += there ? 0 : 1;
    }
    if (missing > 0) {
      findings.add(
          problem("seam-marks-notches", seam, even)
              .with("first", join.layers().get(0).text())
              .with("missing", Argument.of(missing))
              .build());
    }
  }

  private static void met(
      Seam seam,
      SeamRequest.Even even,
      Seam.Layer layer,
      SizedPattern sized,
      List<Finding> findings) {
    int joints = SeamWalk.joints(LayerWalk.of(layer, sized)).size();
    if (joints != even.parts() - 1) {
      findings.add(
          problem("seam-marks-joints", seam, even)
              .with("second", layer.text())
              .with("joints", Argument.of(joints))
              .with("wanted", Argument.of(even.parts() - 1))
              .values(joints, even.parts() - 1, "")
              .build());
    }
  }

  private static Finding.Builder problem(String code, Seam seam, SeamRequest.Even even) {
    return Finding.warn(code, "seam " + seam.name())
        .with("seam", seam.name())
        .with("parts", Argument.of(even.parts()))
        .with("marks", Argument.of(even.marks()))
        .at(seam.origin());
  }
}
