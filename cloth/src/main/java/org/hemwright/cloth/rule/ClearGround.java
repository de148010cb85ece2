package org.hemwright.cloth.rule;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * Where one piece of a laying may be pushed to, judged on the table in an instant: beside the
 * others, on its part of the cloth. It only guides a hand; whether a laying holds is for {@link
 * LayingRules} to say.
 */
public final class ClearGround {
  /** So much (mm) of two outlines that touch is not taken for lying on one another. */
  private static final double TOUCH = 2 * Tolerance.DRAWN_LENGTH;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final LaidPiece moved;
  private final Geometry body;
  private final List<PreparedGeometry> others = new ArrayList<>();
  private final List<ClothSheet.Reach> reaches;
  private final double from;

  /**
   * The ground for one piece among the others.
   *
   * @param moved the piece, wherever it lies and however it is turned
   * @param at its place in the laying's list
   */
  public ClearGround(ClothLaying laying, LaidPiece moved, int at) {
    this.moved = moved;
    body = polygon(moved.covered()).buffer(laying.sheet().settings().gap() - TOUCH);
    double folded = 0;
    for (int i = 0; i < laying.pieces().size(); i++) {
      LaidPiece other = laying.pieces().get(i);
      if (i != at) {
        others.add(PreparedGeometryFactory.prepare(polygon(other.covered())));
        folded = other.open() ? folded : Math.max(folded, other.covered().right());
      }
    }
    ClothSheet sheet = laying.sheet();
    from = moved.open() ? folded : 0;
    if (moved.open() || !sheet.foldsAlong()) {
      reaches = List.of(sheet.open());
    } else if (moved.item().layers() == ClothItem.Layers.DOUBLE) {
      reaches = sheet.doubled();
    } else {
      reaches =
          List.of(
              moved.item().layers() == ClothItem.Layers.SINGLE ? sheet.beside() : sheet.folded());
    }
  }

  private static Geometry polygon(Silhouette shape) {
    List<Coordinate> ring = new ArrayList<>();
    shape.corners().forEach(corner -> ring.add(new Coordinate(corner.x(), corner.y())));
    ring.add(ring.get(0));
    return FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
  }

  /** Whether the piece may lie there, turned as it is. */
  public boolean isClear(Motion motion) {
    Point origin = motion.apply(Point.ORIGIN);
    double along = origin.x() - moved.origin().x();
    double across = origin.y() - moved.origin().y();
    Silhouette shape = moved.covered();
    double low = shape.low() + across;
    double high = shape.high() + across;
    boolean inside =
        shape.left() + along >= from - Tolerance.DRAWN_LENGTH
            && reaches.stream()
                .anyMatch(
                    reach ->
                        low >= reach.low() - Tolerance.DRAWN_LENGTH
                            && high <= reach.high() + Tolerance.DRAWN_LENGTH);
    if (!inside) {
      return false;
    }
    Geometry there = AffineTransformation.translationInstance(along, across).transform(body);
    Envelope box = there.getEnvelopeInternal();
    return others.stream()
        .noneMatch(
            other ->
                other.getGeometry().getEnvelopeInternal().intersects(box)
                    && other.intersects(there));
  }
}
