package org.hemwright.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Where two curves come within {@link Tolerance#SAME_POINT} of one another: crossings, touches,
 * ends that lie on the other curve, and stretches that both share.
 */
final class CurveContacts {
  /** Looks at so many places within a stretch before believing that it is shared. */
  private static final int LOOKS = 7;

  /**
   * A place that two curves have in common.
   *
   * @param t parameter on the one
   * @param u parameter on the other
   * @param gap what still lies between them (mm)
   */
  record Contact(double t, double u, double gap) {}

  /** A stretch that two curves share, from one contact to another, t rising. */
  record Shared(Contact from, Contact to) {}

  final List<Contact> contacts = new ArrayList<>();
  final List<Shared> shared = new ArrayList<>();
  private final Curve a;
  private final Curve b;

  private CurveContacts(Curve a, Curve b) {
    this.a = a;
    this.b = b;
  }

  /** All contacts of two curves, in no order; one place may come up more than once. */
  static CurveContacts between(Curve a, Curve b, Work work) {
    CurveContacts found = new CurveContacts(a, b);
    found.addEnds();
    found.addShared();
    if (found.shared.isEmpty()) {
      found.addInner(work);
    }
    return found;
  }

  private void addEnds() {
    addEndOfA(0, a.start());
    addEndOfA(1, a.end());
    addEndOfB(0, b.start());
    addEndOfB(1, b.end());
  }

  private void addEndOfA(double t, Point end) {
    if (hull(b).distanceTo(end) <= Tolerance.SAME_POINT) {
      add(t, NearestPlace.parameter(b, end));
    }
  }

  private void addEndOfB(double u, Point end) {
    if (hull(a).distanceTo(end) <= Tolerance.SAME_POINT) {
      add(NearestPlace.parameter(a, end), u);
    }
  }

  private static Box hull(Curve curve) {
    return curve instanceof Cubic cubic ? cubic.hull() : curve.bounds();
  }

  private void add(double t, double u) {
    double gap = a.at(t).distanceTo(b.at(u));
    if (gap <= Tolerance.SAME_POINT) {
      contacts.add(new Contact(t, u, gap));
    }
  }

  /** Two curves that share a stretch share it up to an end of one of them. */
  private void addShared() {
    if (contacts.size() < 2) {
      return;
    }
    List<Contact> ends = new ArrayList<>(contacts);
    ends.sort((one, other) -> Double.compare(one.t(), other.t()));
    for (int i = 1; i < ends.size(); i++) {
      Contact from = ends.get(i - 1);
      Contact to = ends.get(i);
      if (a.at(from.t()).distanceTo(a.at(to.t())) > Tolerance.SAME_POINT && isShared(from, to)) {
        shared.add(new Shared(from, to));
      }
    }
  }

  private boolean isShared(Contact from, Contact to) {
    for (int i = 1; i <= LOOKS; i++) {
      // The middle first: curves that only share their ends are seen through at once.
      double share = ((i * 5) % (LOOKS + 1)) / (double) (LOOKS + 1);
      Point point = a.at(from.t() + share * (to.t() - from.t()));
      if (b.at(NearestPlace.parameter(b, point)).distanceTo(point) > Tolerance.SAME_POINT) {
        return false;
      }
    }
    return true;
  }

  private void addInner(Work work) {
    if (a instanceof Line one) {
      if (b instanceof Line other) {
        addCrossing(one, other);
      } else {
        addAlong(one, (Cubic) b, true);
      }
    } else if (b instanceof Line other) {
      addAlong(other, (Cubic) a, false);
    } else {
      CubicContacts.addBetween((Cubic) a, (Cubic) b, work, contacts);
    }
  }

  private void addCrossing(Line one, Line other) {
    Vector along = one.derivative(0);
    Vector across = other.derivative(0);
    Vector apart = other.start().minus(one.start());
    double cross = along.cross(across);
    double t = apart.cross(across) / cross;
    double u = apart.cross(along) / cross;
    if (cross != 0 && t >= 0 && t <= 1 && u >= 0 && u <= 1) {
      add(t, u);
    }
  }

  /** A cubic against a line: where its height over the line is nothing, or least. */
  private void addAlong(Line line, Cubic cubic, boolean lineFirst) {
    Vector up = line.direction(0).left();
    double[] heights = {
      cubic.start().minus(line.start()).dot(up),
      cubic.control1().minus(line.start()).dot(up),
      cubic.control2().minus(line.start()).dot(up),
      cubic.end().minus(line.start()).dot(up)
    };
    double[] slopes = {heights[1] - heights[0], heights[2] - heights[1], heights[3] - heights[2]};
    for (double t : Bernstein.roots(heights)) {
      addOnLine(line, cubic, t, lineFirst);
    }
    for (double t : Bernstein.roots(slopes)) {
      addOnLine(line, cubic, t, lineFirst);
    }
  }

  private void addOnLine(Line line, Cubic cubic, double t, boolean lineFirst) {
    double u = NearestPlace.parameter(line, cubic.at(t));
    if (lineFirst) {
      add(u, t);
    } else {
      add(t, u);
    }
  }
}
