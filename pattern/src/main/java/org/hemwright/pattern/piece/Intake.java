package org.hemwright.pattern.piece;

import java.util.List;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.finding.Origin;

/**
 * Cloth along an edge that is folded or drawn up before the edge is sewn, so that the edge as sewn
 * is shorter than its path (handbook section 1: a seam is walked with darts and pleats closed).
 */
public sealed interface Intake {
  /** The name that the designer gave it, {@code front_dart}. */
  String name();

  /** The name of the edge that it lies on. */
  String edge();

  /** Where it begins along the edge's path, counter-clockwise round the piece (mm). */
  double from();

  /** Where it ends; more than {@link #from}. */
  double to();

  /** How long the stretch between the two is when it is sewn (mm); 0 where it is folded away. */
  double sewn();

  /** Where the document states it. */
  Origin origin();

  /** The same on an edge of another name. */
  Intake onEdge(String otherName);

  /** The same at another place of its edge (mm). */
  Intake at(double newFrom, double newTo);

  /** How much of the edge's path it takes in (mm). */
  default double taken() {
    return to() - from() - sewn();
  }

  /**
   * A dart. Its legs run from the edge at {@link #from} and {@link #to} to the stitched point; both
   * ends lie equally far from the apex. Between them the edge's path is the cap: what is left
   * outside the legs when the closed dart has been trued and unfolded.
   *
   * @param apex the point of fit, at which the whole angle meets
   * @param tip the stitched point: the apex, or short of it on the way to the mouth
   * @param angle between the two ends as seen from the apex (radians), more than 0
   * @param towardStart whether it is pressed toward where the edge's path comes from
   */
  record Dart(
      String name,
      String edge,
      double from,
      double to,
      Point apex,
      Point tip,
      double angle,
      boolean towardStart,
      Origin origin)
      implements Intake {
    public Dart {
      refuseEmpty(name, from, to);
      if (!(angle > 0)) {
        throw new IllegalArgumentException("a dart has an angle: " + name);
      }
    }

    @Override
    public double sewn() {
      return 0;
    }

    @Override
    public Dart onEdge(String otherName) {
      return new Dart(name, otherName, from, to, apex, tip, angle, towardStart, origin);
    }

    @Override
    public Dart at(double newFrom, double newTo) {
      return new Dart(name, edge, newFrom, newTo, apex, tip, angle, towardStart, origin);
    }
  }

  /**
   * One fold of a pleat: an outer fold, which is laid on its line, and the fold beneath halfway
   * between. A box or an inverted pleat is two of them.
   *
   * @param lines the outer fold, the fold beneath and the line on which the outer fold is laid, in
   *     the order of the edge's path
   * @param towardStart whether the cloth beneath lies toward where the edge's path comes from
   */
  record Pleat(
      String name,
      String edge,
      double from,
      double to,
      List<Path> lines,
      boolean towardStart,
      Origin origin)
      implements Intake {
    public Pleat {
      lines = List.copyOf(lines);
      refuseEmpty(name, from, to);
    }

    @Override
    public double sewn() {
      return 0;
    }

    @Override
    public Pleat onEdge(String otherName) {
      return new Pleat(name, otherName, from, to, lines, towardStart, origin);
    }

    @Override
    public Pleat at(double newFrom, double newTo) {
      return new Pleat(name, edge, newFrom, newTo, lines, towardStart, origin);
    }
  }

  /** A stretch drawn up with gathering stitches. */
  record Gathers(String name, String edge, double from, double to, double sewn, Origin origin)
      implements Intake {
    public Gathers {
      refuseEmpty(name, from, to);
      if (!(sewn > 0 && sewn <= to - from)) {
        throw new IllegalArgumentException("gathers make a stretch shorter: " + name);
      }
    }

    @Override
    public Gathers onEdge(String otherName) {
      return new Gathers(name, otherName, from, to, sewn, origin);
    }

    @Override
    public Gathers at(double newFrom, double newTo) {
      return new Gathers(name, edge, newFrom, newTo, sewn, origin);
    }
  }

  private static void refuseEmpty(String name, double from, double to) {
    if (!(from >= 0 && from < to)) {
      throw new IllegalArgumentException(name + " begins before it ends: " + from + ", " + to);
    }
  }
}
