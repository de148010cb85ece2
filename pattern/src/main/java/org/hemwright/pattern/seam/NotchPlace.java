package org.hemwright.pattern.seam;

import java.util.OptionalDouble;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;

/** Where notches lie as the designer counts: from the start of the edge as she drew it. */
public final class NotchPlace {
  private NotchPlace() {}

  /** How far a notch lies from the designer's start of its edge (mm). */
  public static double along(Edge edge, Notch notch) {
    double distance = Math.min(notch.distance(), edge.path().length());
    return edge.reversed() ? edge.path().length() - distance : distance;
  }

  /** How far the notch of that name lies from the designer's start of an edge (mm). */
  public static OptionalDouble along(Piece piece, Edge edge, String name) {
    return piece.notches().stream()
        .filter(notch -> notch.edge().equals(edge.name()))
        .filter(notch -> notch.name().filter(name::equals).isPresent())
        .mapToDouble(notch -> along(edge, notch))
        .findFirst();
  }
}
