package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Meeting;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;

/** The stitch line of a piece neither crosses nor touches itself. */
final class OutlineCheck implements EachSizeCheck {
  @Override
  public String id() {
    return "outline-simple";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (Piece piece : sized.pieces()) {
      List<Meeting> crossings = piece.stitchLine().crossings();
      if (crossings.isEmpty()) {
        continue;
      }
      Meeting first = crossings.get(0);
      Finding.Builder finding =
          Finding.fail("outline-not-simple", piece.name())
              .with("piece", piece.name())
              .with("first", edgeAt(piece, first.distanceOnThis()))
              .with("second", edgeAt(piece, first.distanceOnOther()))
              .with("count", Argument.of(crossings.size()))
              .found(crossings.size(), "");
      for (Meeting crossing : crossings) {
        finding.at(Place.on(piece.card().origin(), piece.name(), crossing.point()));
      }
      findings.add(finding.build());
    }
    return findings;
  }

  private static String edgeAt(Piece piece, double distance) {
    double walked = 0;
    String name = "";
    for (Edge edge : piece.edges()) {
      name = edge.name();
      walked += edge.path().length();
      if (distance <= walked) {
        break;
      }
    }
    return name;
  }
}
