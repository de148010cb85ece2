package org.hemwright.booklet.figure;

import static org.hemwright.booklet.figure.CloseUp.BEYOND;
import static org.hemwright.booklet.figure.CloseUp.CLOSE_TO;
import static org.hemwright.booklet.figure.CloseUp.HIGH;
import static org.hemwright.booklet.figure.CloseUp.WIDE;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.quantity.LengthKind;

/** What is done along one edge: turned and pressed, hemmed, finished, stitched, bound, cut into. */
final class EdgeCloseUps {
  private final ShownStep shown;
  private final NearBy near = new NearBy();

  EdgeCloseUps(ShownStep shown) {
    this.shown = shown;
  }

  /** An edge's allowance turned to the wrong side and pressed. */
  Optional<CloseUp> pressedEdge() {
    Optional<Edge> edge = shown.worked();
    if (edge.isEmpty() || edge.get().allowance().width() <= 0) {
      return Optional.empty();
    }
    double wide = edge.get().allowance().width();
    double scale = ShownStep.scale(wide, 20);
    double fold = 12;
    near.band(fold, HIGH + BEYOND, true);
    near.band(fold, fold + wide * scale, false);
    near.edge(fold).edge(fold + wide * scale);
    near.arrow(31, 4, 31, fold + wide * scale * 0.6);
    near.measure(14, fold, fold + wide * scale, shown.text(wide, LengthKind.ALLOWANCE));
    return shown.closeUp(near, "pressed-edge");
  }

  /** A hem turned up, with its depth and the line of its stitching. */
  Optional<CloseUp> hemmed() {
    Optional<Edge> edge = shown.worked();
    if (edge.isEmpty()) {
      return Optional.empty();
    }
    Allowance allowance = edge.get().allowance();
    double depth =
        allowance instanceof Allowance.TurnedBack back ? back.folds().get(0) : allowance.width();
    if (depth <= 0) {
      return Optional.empty();
    }
    boolean twice = allowance instanceof Allowance.TurnedBack back && back.folds().size() > 1;
    double scale = ShownStep.scale(depth, 24);
    double fold = 8;
    double top = fold + depth * scale;
    near.band(fold, HIGH + BEYOND, true);
    near.band(fold, top, false);
    near.edge(fold).edge(top);
    if (twice && allowance instanceof Allowance.TurnedBack back) {
      double under = top - back.folds().get(1) * scale;
      near.across(under, Draw.HIDDEN);
    }
    Optional<Sewing.Distance> said = shown.step().sewing().distance();
    double from = shown.distance(CLOSE_TO);
    boolean fromFold =
        said.map(Sewing.Distance::from).filter(f -> f == Sewing.Distance.From.FOLD).isPresent();
    double line = fromFold ? fold + from * scale : top - Math.max(1.2, from * scale);
    shown.rows(near, line, scale, -BEYOND, WIDE + BEYOND);
    near.measure(11, fold, top, shown.text(depth, LengthKind.ALLOWANCE));
    double low = fromFold ? fold : line;
    double high = fromFold ? line : top;
    near.measure(46, low, high, shown.text(from, LengthKind.ALLOWANCE));
    return shown.closeUp(near, twice ? "hem-twice" : "hem");
  }

  /** A cut edge finished, by itself or with the other of its seam. */
  Optional<CloseUp> finished(boolean together) {
    double edge = 31;
    near.band(-BEYOND, edge, true);
    near.edge(edge);
    if (together) {
      near.cloth(-BEYOND, -BEYOND, 17, edge, false);
      near.cutShort(17, -BEYOND, edge).edge(edge);
      near.across(14, Draw.STITCH);
    }
    Stitch.Kind kind = shown.stitch();
    double left = together ? 17 : -BEYOND;
    if (kind == Stitch.Kind.ZIGZAG) {
      near.stitch(kind, left, WIDE + BEYOND, edge - 1.6, shown.amplitude(1));
    } else {
      near.stitch(kind, left, WIDE + BEYOND, edge - 1.6, 3);
    }
    return shown.closeUp(near, together ? "finish-together" : "finish");
  }

  /** A line of stitching along an edge or a seam. */
  Optional<CloseUp> line(Act.Line line) {
    double from = shown.distance(CLOSE_TO + 1);
    double scale = ShownStep.scale(from, 16) * (from < 5 ? 2 : 1);
    boolean seam = !shown.step().work(Work.OfSeam.class).isEmpty() && line == Act.Line.TOPSTITCH;
    double at = seam ? 25 : 36;
    near.band(-BEYOND, seam ? HIGH + BEYOND : at, false);
    near.edge(at);
    double y = at - from * scale;
    if (line == Act.Line.GATHER || line == Act.Line.EASE) {
      for (int i = 0; i < 9; i++) {
        double x = 4 + i * 7;
        near.put(
            Path.of(
                new Cubic(
                    new Point(x, at),
                    new Point(x + 2, at - 5),
                    new Point(x - 2, at - 9),
                    new Point(x, at - 16))),
            Draw.FINE);
      }
    }
    if (line == Act.Line.GATHER) {
      // Rows that will be drawn up lie side by side within the cloth.
      double apart = Math.max(1.2, shown.mm(shown.step().sewing().apart()).orElse(2) * scale);
      for (int i = 0; i < shown.step().sewing().rows(); i++) {
        near.stitch(shown.stitch(), -BEYOND, WIDE + BEYOND, y - i * apart, shown.amplitude(scale));
      }
    } else {
      shown.rows(near, y, scale, -BEYOND, WIDE + BEYOND);
    }
    near.measure(14, y, at, shown.text(from, LengthKind.ALLOWANCE));
    return shown.closeUp(near, "line");
  }

  /** Allowances trimmed to a width, or clipped and notched to the stitching. */
  Optional<CloseUp> cutInto(Act.CutInto cut) {
    double wide = shown.join().map(shown::allowance).orElse(ShownStep.USUAL_ALLOWANCE);
    double scale = ShownStep.scale(wide, 20);
    double edge = 34;
    double seam = edge - wide * scale;
    near.band(-BEYOND, edge, true);
    near.across(seam, Draw.STITCH);
    OptionalDouble to = shown.mm(cut.to());
    if (to.isPresent()) {
      double left = seam + to.getAsDouble() * scale;
      near.across(left, Draw.ACTION);
      near.across(edge, Draw.HIDDEN);
      near.measure(20, seam, left, shown.text(to.getAsDouble(), LengthKind.ALLOWANCE));
      return shown.closeUp(near, "trim");
    }
    near.edge(edge);
    for (int i = 0; i < 6; i++) {
      double x = 6 + i * 10;
      double tip = seam + 1.5;
      if (cut.kind() == Act.Cutting.NOTCH) {
        near.put(
            Path.polyline(
                List.of(new Point(x - 2, edge), new Point(x, tip), new Point(x + 2, edge))),
            Draw.ACTION);
      } else {
        near.line(x, edge, x, tip, Draw.ACTION);
      }
    }
    return shown.closeUp(near, "clip");
  }

  /** An edge within its binding. */
  Optional<CloseUp> bound() {
    near.band(-BEYOND, 30, false);
    near.band(20, 32, false);
    near.edge(32).edge(20);
    near.across(30, Draw.HIDDEN);
    near.stitch(shown.stitch(), -BEYOND, WIDE + BEYOND, 21.5, 1.6);
    return shown.closeUp(near, "bind");
  }
}
