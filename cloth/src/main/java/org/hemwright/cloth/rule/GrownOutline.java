package org.hemwright.cloth.rule;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.cloth.laying.Spot;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * A silhouette with a margin round it. Where the margin is round its corners lie on or outside the
 * true arc, so that it is nowhere less; the box round it is exact.
 */
final class GrownOutline {
  private static final int QUARTER = 8;
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private GrownOutline() {}

  static Silhouette of(Silhouette source, double margin) {
    if (margin == 0) {
      return source;
    }
    List<Coordinate> ring = new ArrayList<>();
    source.corners().forEach(corner -> ring.add(new Coordinate(corner.x(), corner.y())));
    ring.add(ring.get(0));
    Polygon polygon = FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
    double outside = margin / StrictMath.cos(Math.PI / (4 * QUARTER));
    Geometry grown = BufferOp.bufferOp(polygon, outside, new BufferParameters(QUARTER));
    Envelope box =
        new Envelope(
            source.left() - margin,
            source.right() + margin,
            source.low() - margin,
            source.high() + margin);
    Polygon whole = (Polygon) grown.intersection(FACTORY.toGeometry(box));
    List<Spot> corners = new ArrayList<>();
    for (Coordinate at : whole.getExteriorRing().getCoordinates()) {
      corners.add(new Spot(at.x, at.y));
    }
    return Silhouette.closed(corners);
  }
}
