package org.hemwright.booklet.figure;

import static org.hemwright.booklet.figure.CloseUp.BEYOND;
import static org.hemwright.booklet.figure.CloseUp.CLOSE_TO;
import static org.hemwright.booklet.figure.CloseUp.HIGH;
import static org.hemwright.booklet.figure.CloseUp.WIDE;

import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.make.PressDirection;
import org.hemwright.pattern.quantity.LengthKind;
import org.hemwright.pattern.seam.Seam;

/** What is sewn where layers lie on each other, and how it is pressed. */
final class SeamCloseUps {
  private final ShownStep shown;
  private final NearBy near = new NearBy();

  SeamCloseUps(ShownStep shown) {
    this.shown = shown;
  }

  /** The layers of a seam as they are sewn: two, or one between two of another. */
  Optional<CloseUp> seamed() {
    if (shown.join().isEmpty()) {
      return Optional.empty();
    }
    Seam.Join join = shown.join().get();
    if (join.layers().stream().anyMatch(shown.telling()::isMark)) {
      return placed();
    }
    double wide = shown.allowance(join);
    double scale = ShownStep.scale(wide, 20);
    double from = shown.distance(wide);
    double edge = 35;
    double line = edge - from * scale;
    String upper = shown.number(join.layers().get(0).run().get(0).piece());
    String lower = shown.number(join.layers().get(join.layers().size() - 1).run().get(0).piece());
    near.band(-BEYOND, edge, false);
    Optional<Seam.Layer> between = between(join);
    if (between.isPresent()) {
      near.cloth(11, -BEYOND, WIDE + BEYOND, edge, true).cutShort(11, -BEYOND, edge);
      near.cloth(27, -BEYOND, WIDE + BEYOND, edge, true).cutShort(27, -BEYOND, edge);
      near.edge(edge);
      shown.rows(near, line, scale, 11, WIDE + BEYOND);
      near.pin(44, line);
      near.measure(34, line, edge, shown.text(from, LengthKind.ALLOWANCE));
      String outside = lower;
      near.tag(outside, 5, 8).tag(shown.number(piece(between.get())), 19, 8).tag(outside, 46, 8);
      return shown.closeUp(near, "between");
    }
    boolean out =
        upper.equals(lower)
            && Turned.isOut(
                shown.telling(), shown.step(), join.layers().get(0).run().get(0).piece());
    near.cloth(17, -BEYOND, WIDE + BEYOND, edge, !out);
    near.edge(edge).cutShort(17, -BEYOND, edge);
    near.line(52, edge, 52, edge - 3, Draw.EDGE);
    shown.rows(near, line, scale, 17, WIDE + BEYOND);
    near.pin(34, line);
    near.measure(24, line, edge, shown.text(from, LengthKind.ALLOWANCE));
    near.tag(lower, 8, 8).tag(upper, 42, 8);
    return shown.closeUp(near, "seam");
  }

  /** A pocket or the like on its line. */
  private Optional<CloseUp> placed() {
    Seam.Join join = shown.join().orElseThrow();
    double from = shown.distance(CLOSE_TO);
    double scale = 3;
    near.whole(false);
    near.cloth(18, 14, WIDE + BEYOND, HIGH + BEYOND, false);
    near.line(18, 14, 18, HIGH + BEYOND, Draw.EDGE).line(18, 14, WIDE + BEYOND, 14, Draw.EDGE);
    double in = from * scale;
    near.stitch(shown.stitch(), 18 + in, WIDE + BEYOND, 14 + in, 2);
    near.put(
        Path.straight(new Point(18 + in, 14 + in), new Point(18 + in, HIGH + BEYOND)), Draw.STITCH);
    near.measure(40, 14, 14 + in, shown.text(from, LengthKind.ALLOWANCE));
    Seam.Layer first = join.layers().get(0);
    Seam.Layer last = join.layers().get(join.layers().size() - 1);
    near.tag(
        shown.number((shown.telling().isMark(last) ? last : first).run().get(0).piece()), 8, 7);
    near.tag(
        shown.number((shown.telling().isMark(last) ? first : last).run().get(0).piece()), 52, 36);
    return shown.closeUp(near, "placed");
  }

  /** The two pieces opened out, wrong sides up, and their allowances. */
  Optional<CloseUp> press() {
    if (shown.join().isEmpty() || shown.step().press().isEmpty()) {
      return Optional.empty();
    }
    Seam.Join join = shown.join().get();
    PressDirection press = shown.step().press().get();
    if (press instanceof PressDirection.Flat
        || join.layers().stream().anyMatch(shown.telling()::isMark)) {
      return Optional.empty();
    }
    String first = shown.number(join.layers().get(0).run().get(0).piece());
    String second = shown.number(join.layers().get(join.layers().size() - 1).run().get(0).piece());
    double wide = shown.allowance(join) * ShownStep.scale(shown.allowance(join), 14);
    double seam = 23;
    boolean open = press instanceof PressDirection.Open;
    boolean up = press instanceof PressDirection.Up;
    String upper = first;
    String lower = second;
    if (press instanceof PressDirection.Toward toward) {
      String goal = shown.number(toward.piece());
      lower = goal;
      upper = first.equals(goal) ? second : first;
    }
    near.whole(true);
    if (open || up) {
      near.band(seam, seam + wide, !open);
      near.edge(seam + wide);
    }
    if (open || !up) {
      near.band(seam - wide, seam, !open);
      near.edge(seam - wide);
    }
    near.edge(seam);
    double over = Math.min(wide + 5, 16);
    for (double x : new double[] {14, 46}) {
      if (open) {
        near.arrow(x, seam + 1, x, seam + over).arrow(x, seam - 1, x, seam - over);
      } else {
        near.arrow(x, up ? seam - 7 : seam + 7, x, up ? seam + over - 2 : seam - over + 2);
      }
    }
    near.tag(upper, 30, HIGH - 5).tag(lower, 30, 5);
    return shown.closeUp(near, open ? "press-open" : "press-side");
  }

  /** The layer that lies between two copies of another piece, where there is one. */
  static Optional<Seam.Layer> between(Seam.Join join) {
    List<Seam.Layer> layers = join.layers();
    String outside = piece(layers.get(layers.size() - 1));
    long copies = layers.stream().filter(layer -> piece(layer).equals(outside)).count();
    return layers.size() > 2 && copies == 2
        ? layers.stream().filter(layer -> !piece(layer).equals(outside)).findFirst()
        : Optional.empty();
  }

  private static String piece(Seam.Layer layer) {
    return layer.run().get(0).piece();
  }
}
