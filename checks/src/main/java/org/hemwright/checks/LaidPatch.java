package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Grain;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * A piece sewn onto a placement line of another.
 *
 * @param grain of the patch
 * @param off the angle between the grains as they lie on each other
 */
record LaidPatch(Piece patch, Piece under, Grain grain, double off) {
  /** Ends closer than this do not tell which way it lies (mm). */
  private static final double TELLING = 20;

  static Optional<LaidPatch> of(Seam.Join join, SizedPattern sized) {
    for (Seam.Layer layer : join.layers()) {
      EdgePlace place = layer.run().get(0);
      Optional<Piece> under = sized.piece(place.piece());
      Optional<Mark.Placement> line =
          under.stream()
              .flatMap(piece -> piece.marks(Mark.Placement.class).stream())
              .filter(mark -> mark.name().equals(place.edge()))
              .findFirst();
      Optional<Seam.Layer> other =
          join.layers().stream().filter(each -> !each.equals(layer)).findFirst();
      if (layer.run().size() == 1 && line.isPresent() && other.isPresent()) {
        return onto(under.get(), line.get(), other.get(), sized);
      }
    }
    return Optional.empty();
  }

  private static Optional<LaidPatch> onto(
      Piece under, Mark.Placement line, Seam.Layer laid, SizedPattern sized) {
    Optional<Piece> patch = sized.piece(laid.run().get(0).piece());
    Optional<Grain> grain = patch.flatMap(Piece::grain);
    Vector there = line.path().end().minus(line.path().start());
    if (grain.isEmpty() || under.grain().isEmpty() || there.length() < TELLING) {
      return Optional.empty();
    }
    List<Path> run =
        laid.run().stream()
            .flatMap(place -> patch.get().edge(place.edge()).stream())
            .map(Edge::path)
            .toList();
    Optional<Vector> here = ends(run);
    return here.map(
        own ->
            new LaidPatch(
                patch.get(),
                under,
                grain.get(),
                Math.abs(
                    Cloth.between(own, grain.get().direction())
                        - Cloth.between(there, under.grain().get().direction()))));
  }

  /** From one end of some edges that follow on each other to the other end. */
  private static Optional<Vector> ends(List<Path> run) {
    List<Point> free = new ArrayList<>();
    for (Path path : run) {
      for (Point end : List.of(path.start(), path.end())) {
        if (!free.removeIf(known -> known.distanceTo(end) <= Tolerance.DRAWN_LENGTH)) {
          free.add(end);
        }
      }
    }
    return free.size() == 2 && free.get(0).distanceTo(free.get(1)) >= TELLING
        ? Optional.of(free.get(1).minus(free.get(0)))
        : Optional.empty();
  }
}
