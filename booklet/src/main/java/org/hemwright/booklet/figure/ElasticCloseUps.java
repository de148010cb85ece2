package org.hemwright.booklet.figure;

import static org.hemwright.booklet.figure.CloseUp.BEYOND;
import static org.hemwright.booklet.figure.CloseUp.WIDE;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.quantity.LengthKind;
import org.hemwright.pattern.seam.Elastic;

/** Elastics and cords: their casing, how they are drawn in, joined and sewn on. */
final class ElasticCloseUps {
  private final ShownStep shown;
  private final NearBy near = new NearBy();

  ElasticCloseUps(ShownStep shown) {
    this.shown = shown;
  }

  /** A casing with what is in it, and the opening in its stitching. */
  Optional<CloseUp> casing(boolean threading, boolean closing) {
    double width = elastic().map(Elastic::width).orElse(10.0);
    double scale = ShownStep.scale(width, 17);
    double seam = 12;
    double fold = seam + width * scale + 5;
    near.band(-BEYOND, fold, true);
    near.edge(fold);
    near.across(seam - 4, Draw.FINE);
    double low = seam + 2.5;
    double high = low + width * scale;
    double tip = threading ? 40 : WIDE + BEYOND;
    near.line(-BEYOND, low, tip, low, Draw.HIDDEN);
    near.line(-BEYOND, high, tip, high, Draw.HIDDEN);
    double left = 22;
    double right = 44;
    near.stitch(shown.stitch(), -BEYOND, left, seam, 1.6);
    near.stitch(shown.stitch(), right, WIDE + BEYOND, seam, 1.6);
    if (closing) {
      near.line(left, seam, right, seam, Draw.ACTION);
    }
    if (threading) {
      near.line(tip, low, tip, high, Draw.EDGE);
      near.put(
          Path.of(
              new Cubic(
                  new Point(tip - 3, (low + high) / 2),
                  new Point(tip + 10, (low + high) / 2 + 3),
                  new Point(tip + 10, (low + high) / 2 - 3),
                  new Point(tip - 3, (low + high) / 2 - 1.2))),
          Draw.EDGE);
      near.arrow(tip - 22, (low + high) / 2, tip - 8, (low + high) / 2);
    }
    opening()
        .map(Step.Opening::length)
        .map(length -> length.in(shown.telling().drawn().numbers()))
        .filter(OptionalDouble::isPresent)
        .ifPresent(
            mm ->
                near.measureAcross(
                    left, right, seam - 9.5, shown.text(mm.getAsDouble(), LengthKind.FINISHED)));
    near.measure(10, low, high, shown.text(width, LengthKind.NOTION));
    return shown.closeUp(near, threading ? "thread" : closing ? "close" : "casing");
  }

  /** The ends of an elastic joined to a ring, overlapped or edge to edge. */
  Optional<CloseUp> joined(Act.JoinEnds join) {
    Optional<Elastic> elastic = elastic();
    if (elastic.isEmpty()) {
      return Optional.empty();
    }
    double width = elastic.get().width();
    double lap = elastic.get().overlap();
    double scale = ShownStep.scale(Math.max(width, lap), 24);
    double low = 23 - width * scale / 2;
    double high = 23 + width * scale / 2;
    double half = join.overlapped() ? lap * scale / 2 : 0;
    double left = WIDE / 2 - half;
    double right = WIDE / 2 + half;
    near.cloth(-BEYOND, low, right, high, false);
    near.put(Draw.box(-BEYOND, low, right, high).path(), Draw.EDGE);
    near.cloth(left, low, WIDE + BEYOND, high, false);
    near.put(Draw.box(left, low, WIDE + BEYOND, high).path(), Draw.EDGE);
    if (join.overlapped()) {
      near.line(right, low, right, high, Draw.HIDDEN);
      double in = 1.4;
      near.put(Draw.box(left + in, low + in, right - in, high - in).path(), Draw.STITCH);
      near.line(left + in, low + in, right - in, high - in, Draw.STITCH);
      near.line(left + in, high - in, right - in, low + in, Draw.STITCH);
      near.measureAcross(left, right, high + 3, shown.text(lap, LengthKind.NOTION));
    } else {
      near.stitch(Stitch.Kind.ZIGZAG, left, left + 0.1, 23, width * scale);
    }
    return shown.closeUp(near, "join");
  }

  /** An elastic stretched along an edge and sewn to it. */
  Optional<CloseUp> applied() {
    near.band(-BEYOND, 36, true).edge(36);
    near.band(26, 36, false).edge(26);
    near.stitch(shown.stitch(), -BEYOND, WIDE + BEYOND, 31, 2.4);
    near.arrow(24, 20, 8, 20).arrow(38, 20, 54, 20);
    near.pin(12, 31).pin(50, 31);
    return shown.closeUp(near, "apply");
  }

  private Optional<Elastic> elastic() {
    String name =
        shown.step().act() instanceof Act.FormCasing casing
            ? casing.holds()
            : shown.step().work(Work.OfElastic.class).stream()
                .findFirst()
                .map(Work.OfElastic::elastic)
                .orElse("");
    List<Elastic> all = shown.telling().drawn().elastics();
    return all.stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .or(() -> all.stream().findFirst());
  }

  private Optional<Step.Opening> opening() {
    return shown.telling().run().pattern().making().steps().stream()
        .flatMap(each -> each.leaves().stream())
        .filter(
            left ->
                shown.step().leaves().contains(left)
                    || (shown.step().act() instanceof Act.ThreadThrough through
                        && through.opening().equals(left.name()))
                    || shown.step().work(Work.OfOpening.class).stream()
                        .anyMatch(work -> work.opening().equals(left.name())))
        .findFirst();
  }
}
