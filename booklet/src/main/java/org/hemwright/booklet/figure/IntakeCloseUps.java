package org.hemwright.booklet.figure;

import static org.hemwright.booklet.figure.CloseUp.BEYOND;
import static org.hemwright.booklet.figure.CloseUp.WIDE;

import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.style.Inks;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.piece.Intake;

/** Darts and pleats: as they are closed, and as they then lie. */
final class IntakeCloseUps {
  private final ShownStep shown;
  private final NearBy near = new NearBy();

  IntakeCloseUps(ShownStep shown) {
    this.shown = shown;
  }

  /** How it is closed. */
  Optional<CloseUp> closing() {
    return shown.intake().flatMap(intake -> intake instanceof Intake.Pleat ? pleat() : dart());
  }

  /** A dart folded along its middle and sewn from the edge to its point. */
  private Optional<CloseUp> dart() {
    double fold = 32;
    double edge = 8;
    double tip = 50;
    double deep = 16;
    near.cloth(edge, -BEYOND, WIDE + BEYOND, fold, true);
    near.line(edge, -BEYOND, edge, fold, Draw.EDGE);
    near.line(edge, fold, WIDE + BEYOND, fold, Draw.FOLD);
    near.line(edge, fold - deep, tip, fold, Draw.STITCH);
    // The threads are left long at the point and tied.
    near.line(tip, fold, tip + 5, fold + 3, Pen.solid(0.4, Inks.CHALK));
    near.line(tip, fold, tip + 5, fold + 1, Pen.solid(0.4, Inks.CHALK));
    near.ring(tip, fold, 0.8);
    near.pin(20, fold - deep + (20 - edge) / (tip - edge) * deep);
    near.pin(34, fold - deep + (34 - edge) / (tip - edge) * deep);
    near.arrow(edge + 3, fold - deep - 5, tip - 14, fold - 11);
    return shown.closeUp(near, "dart");
  }

  /** A pleat's three lines and where its outer fold goes. */
  private Optional<CloseUp> pleat() {
    double edge = 32;
    near.band(-BEYOND, edge, false).edge(edge);
    near.line(14, -BEYOND, 14, edge, Draw.FOLD);
    near.line(31, -BEYOND, 31, edge, Draw.HIDDEN);
    near.line(48, -BEYOND, 48, edge, Draw.STITCH);
    near.arrow(
        Path.of(
            new Cubic(
                new Point(14, edge + 2),
                new Point(20, edge + 13),
                new Point(40, edge + 13),
                new Point(47.5, edge + 2))));
    return shown.closeUp(near, "pleat");
  }

  /** What is closed as it then lies: a pleat held at the top, a dart pressed to one side. */
  Optional<CloseUp> closed() {
    Optional<Intake> intake = shown.intake();
    double edge = 36;
    if (intake.isEmpty()) {
      return Optional.empty();
    }
    if (intake.get() instanceof Intake.Pleat) {
      near.band(-BEYOND, edge, false).edge(edge);
      near.line(40, -BEYOND, 40, edge, Draw.EDGE);
      near.line(23, -BEYOND, 23, edge, Draw.HIDDEN);
      near.stitch(Stitch.Kind.BASTING, 14, 49, edge - 5, 1);
      return shown.closeUp(near, "pleat-closed");
    }
    near.band(-BEYOND, edge, true).edge(edge);
    near.put(
        Path.polyline(
            List.of(
                new Point(31, edge), new Point(31, 8), new Point(45, edge), new Point(31, edge))),
        Draw.EDGE);
    near.line(31, edge, 31, 8, Draw.STITCH);
    near.arrow(22, 22, 36, 22);
    return shown.closeUp(near, "dart-pressed");
  }
}
