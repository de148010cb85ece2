package org.hemwright.booklet.figure;

import static org.hemwright.booklet.figure.CloseUp.BEYOND;
import static org.hemwright.booklet.figure.CloseUp.HIGH;
import static org.hemwright.booklet.figure.CloseUp.WIDE;

import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.style.Inks;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Stitch;

/** What is done to cloth as it lies: fused, tried on a scrap, drawn together by hand. */
final class FlatCloseUps {
  private final ShownStep shown;
  private final NearBy near = new NearBy();

  FlatCloseUps(ShownStep shown) {
    this.shown = shown;
  }

  /** Interfacing fused to the wrong side. */
  Optional<CloseUp> fused() {
    near.whole(true);
    near.cloth(14, -BEYOND, WIDE + BEYOND, 38, false);
    near.line(14, -BEYOND, 14, 38, Draw.EDGE).line(14, 38, WIDE + BEYOND, 38, Draw.EDGE);
    for (int i = 0; i < 11; i++) {
      for (int k = 0; k < 8; k++) {
        near.ring(18 + i * 4.4, 2 + k * 4.6, 0.35);
      }
    }
    near.arrow(38, 45, 38, 33);
    return shown.closeUp(near, "fuse");
  }

  /** A scrap sewn and stretched. */
  Optional<CloseUp> tested() {
    near.cloth(6, 10, 56, 34, false);
    near.cloth(16, 10, 56, 34, true);
    near.put(Draw.box(6, 10, 56, 34).path(), Draw.EDGE);
    near.cutShort(16, 10, 34);
    near.stitch(usual(), 16, 56, 26, 1.8);
    near.arrow(24, 40, 8, 40).arrow(38, 40, 54, 40);
    return shown.closeUp(near, "test");
  }

  /** Two folds drawn together by hand, the thread within them. */
  Optional<CloseUp> handSewn() {
    double low = 21;
    double high = 25;
    near.band(-BEYOND, low, false).edge(low);
    near.band(high, HIGH + BEYOND, false).edge(high);
    boolean up = false;
    for (double x = 4; x < 40; x += 6) {
      double from = up ? high : low;
      double to = up ? low : high;
      near.line(x, from, x, to, Pen.solid(0.45, Inks.CHALK));
      double within = up ? low - 1 : high + 1;
      near.line(x, within, x + 6, within, Draw.STITCH);
      up = !up;
    }
    near.put(
        Path.polyline(
            List.of(new Point(40, low - 1), new Point(57, low + 2), new Point(40, low - 2.2))),
        Pen.solid(0.35, Inks.BLACK));
    near.arrow(44, 12, 56, 12);
    return shown.closeUp(near, "hand");
  }

  /** The stitch in which the garment's first seam is sewn. */
  private Stitch.Kind usual() {
    return shown.telling().run().pattern().making().steps().stream()
        .filter(each -> each.act() instanceof Act.Sew)
        .flatMap(each -> each.sewing().stitch().stream())
        .map(Stitch::kind)
        .findFirst()
        .orElse(Stitch.Kind.STRAIGHT);
  }
}
