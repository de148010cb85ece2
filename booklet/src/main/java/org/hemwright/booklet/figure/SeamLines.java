package org.hemwright.booklet.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Work;

/** The lines that a step sews or works along on the table, with the pins that hold them. */
record SeamLines(StepScene table) {
  /** One pin in so much of a line (mm of table). */
  private static final double PIN_EACH = 90;

  /**
   * Draws the lines of stitching and their pins, also of the step's other seams that lie on the
   * same piece.
   *
   * @param halves whether a piece that was cut on the fold is sewn on both halves
   * @param seen what of the table has not been cut away
   */
  void draw(LaidLayer layer, boolean halves, Predicate<Point> seen) {
    List<Path> lines = new ArrayList<>(layer.seam());
    if (halves) {
      for (Work.OfSeam work : table.step().work(Work.OfSeam.class)) {
        table.telling().seam(work.seam()).stream()
            .flatMap(seam -> seam.joins().stream())
            .flatMap(join -> join.layers().get(0).run().stream())
            .forEach(
                place ->
                    layer.flats().stream()
                        .filter(flat -> flat.holds(place))
                        .forEach(flat -> flat.path(place).ifPresent(lines::add)));
      }
    }
    if (halves) {
      Flat flat = layer.flats().get(0);
      flat.opened()
          .drawn()
          .foldEdge()
          .map(fold -> fold.path().moved(flat.motion()))
          .ifPresent(
              fold -> {
                Motion mirror = Motion.mirror(fold.start(), fold.end());
                List.copyOf(lines).forEach(path -> lines.add(path.moved(mirror)));
              });
    }
    List<Path> once = new ArrayList<>();
    for (Path path : lines) {
      Point middle = path.at(path.length() / 2).point();
      boolean shows = layer.seam().contains(path) || seen.test(middle);
      if (shows
          && once.stream()
              .noneMatch(known -> known.at(known.length() / 2).point().distanceTo(middle) < 1)) {
        once.add(path);
      }
    }
    once.forEach(path -> table.scene().line(path, sews() ? Draw.STITCH : Draw.ACTION));
    if (table.step().act() instanceof Act.Handle
        || (sews() && !(table.step().act() instanceof Act.Stitching))) {
      for (Path path : once) {
        table.scene().pins(path, Math.max(2, Math.min(6, (int) (path.length() / PIN_EACH) + 1)));
      }
    }
  }

  private boolean sews() {
    return table.step().act() instanceof Act.Sew
        || table.step().act() instanceof Act.Attach
        || table.step().act() instanceof Act.SetIn
        || table.step().act() instanceof Act.HandSew
        || table.step().act() instanceof Act.Stitching
        || table.step().act() instanceof Act.FormCasing;
  }
}
