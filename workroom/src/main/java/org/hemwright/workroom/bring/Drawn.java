package org.hemwright.workroom.bring;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.piece.AddedAllowance;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;

/**
 * Lines as the page's pictures take them: path data in millimetres of the drawing, y upward, whole
 * micrometres.
 *
 * @param scale by how much the piece is larger than its drawing
 */
record Drawn(double scale) {
  /** A path's data. */
  String path(Path path) {
    StringBuilder data = new StringBuilder("M");
    point(data, path.start());
    for (Curve curve : path.curves()) {
      if (curve instanceof Cubic cubic) {
        data.append('C');
        point(data, cubic.control1());
        data.append(' ');
        point(data, cubic.control2());
        data.append(' ');
      } else {
        data.append('L');
      }
      point(data, curve.end());
    }
    return path.isClosed() ? data.append('Z').toString() : data.toString();
  }

  private void point(StringBuilder data, Point point) {
    data.append(number(point.x())).append(' ').append(number(point.y()));
  }

  private String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value / scale).setScale(3, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** A place. */
  void at(ObjectNode node, Point point) {
    node.put("x", point.x() / scale).put("y", point.y() / scale);
  }

  /** A piece as it was recognised. */
  void piece(Piece piece, ObjectNode to) {
    ArrayNode edges = to.putArray("edges");
    for (Edge edge : piece.edges()) {
      ObjectNode one = edges.addObject().put("name", edge.name()).put("d", path(edge.path()));
      at(one, edge.path().at(edge.path().length() / 2).point());
    }
    AddedAllowance.to(piece)
        .cutLine()
        .ifPresent(line -> to.put("cut", path(line.outline().path())));
    ArrayNode notches = to.putArray("notches");
    for (Notch notch : piece.notches()) {
      piece
          .edge(notch.edge())
          .ifPresent(
              edge -> {
                ObjectNode one = notches.addObject().put("edge", notch.edge());
                at(one, edge.path().at(Math.min(edge.path().length(), notch.distance())).point());
              });
    }
    piece
        .grain()
        .ifPresent(arrow -> to.put("grain", path(Path.straight(arrow.from(), arrow.to()))));
    ArrayNode marks = to.putArray("marks");
    for (Mark mark : piece.marks()) {
      if (mark instanceof Mark.Inner inner) {
        marks.addObject().put("name", inner.name()).put("d", path(inner.path()));
      } else if (mark instanceof Mark.Placement placement) {
        marks.addObject().put("name", placement.name()).put("d", path(placement.path()));
      } else if (mark instanceof Mark.Drill drill) {
        at(marks.addObject().put("name", drill.name()), drill.at());
      }
    }
  }
}
