package org.hemwright.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hemwright.geometry.CurveContacts.Contact;

/**
 * Where two cubics cross or touch.
 *
 * <p>Both are halved, the longer first, and pairs are dropped whose boxes, or whose strips along
 * the chord of either, lie apart. A pair of which no direction of the one is a direction of the
 * other can cross once at most, and Newton's steps find that crossing. What is left at the end are
 * short flat pieces that run along one another: neighbours are gathered into one zone, which is
 * searched for changes of side and, where there is none, for the place of least distance.
 */
final class CubicContacts {
  /** What it costs to search a zone, in steps. */
  private static final int ZONE = 200;

  /** So many comparisons cost one step. */
  private static final int CHEAP = 10;

  private static final int NEWTON_STEPS = 12;

  /** Pieces of the two curves that lie within the tolerance. */
  record Zone(double t0, double t1, double u0, double u1, int pieces) {
    boolean touches(Zone other) {
      return t0 <= other.t1 + Tolerance.PARAMETER
          && other.t0 <= t1 + Tolerance.PARAMETER
          && u0 <= other.u1 + Tolerance.PARAMETER
          && other.u0 <= u1 + Tolerance.PARAMETER;
    }

    Zone with(Zone other) {
      return new Zone(
          Math.min(t0, other.t0),
          Math.max(t1, other.t1),
          Math.min(u0, other.u0),
          Math.max(u1, other.u1),
          pieces + other.pieces);
    }
  }

  private final Work work;
  private final Cubic one;
  private final Cubic other;
  private final List<Contact> contacts;
  private final List<Zone> zones = new ArrayList<>();

  private CubicContacts(Cubic one, Cubic other, Work work, List<Contact> contacts) {
    this.one = one;
    this.other = other;
    this.work = work;
    this.contacts = contacts;
  }

  /** Adds the contacts to a list, in no order. */
  static void addBetween(Cubic one, Cubic other, Work work, List<Contact> contacts) {
    CubicContacts finder = new CubicContacts(one, other, work, contacts);
    finder.search(CubicPiece.whole(one), CubicPiece.whole(other));
    work.steps((long) finder.zones.size() * finder.zones.size() / CHEAP);
    for (Zone zone : finder.gathered()) {
      work.steps(ZONE);
      ContactZone.addBest(one, other, zone, contacts);
    }
  }

  private void search(CubicPiece a, CubicPiece b) {
    work.step();
    if (a.liesApartFrom(b)) {
      return;
    }
    if (a.crossesOnceAtMost(b) && crossingFound(a, b)) {
      return;
    }
    boolean aDone = a.isDone();
    boolean bDone = b.isDone();
    if (aDone && bDone) {
      zones.add(new Zone(a.from, a.to, b.from, b.to, 1));
    } else if (bDone || (!aDone && a.size >= b.size)) {
      search(a.half(true), b);
      search(a.half(false), b);
    } else {
      search(a, b.half(true));
      search(a, b.half(false));
    }
  }

  /** Newton's steps from the middle of both; gives up when they leave the pieces. */
  private boolean crossingFound(CubicPiece a, CubicPiece b) {
    double t = (a.from + a.to) / 2;
    double u = (b.from + b.to) / 2;
    for (int step = 0; step < NEWTON_STEPS; step++) {
      Point p = one.at(t);
      Point q = other.at(u);
      double gapX = q.x() - p.x();
      double gapY = q.y() - p.y();
      Vector along = one.derivative(t);
      Vector across = other.derivative(u);
      double cross = along.cross(across);
      double dt = (gapX * across.dy() - gapY * across.dx()) / cross;
      double du = (gapX * along.dy() - gapY * along.dx()) / cross;
      t += dt;
      u += du;
      if (!(a.holds(t) && b.holds(u))) {
        return false;
      }
      if (Math.abs(dt) + Math.abs(du) <= Tolerance.PARAMETER) {
        t = Math.max(0, Math.min(1, t));
        u = Math.max(0, Math.min(1, u));
        contacts.add(new Contact(t, u, one.at(t).distanceTo(other.at(u))));
        return true;
      }
    }
    return false;
  }

  private List<Zone> gathered() {
    zones.sort(Comparator.comparingDouble(Zone::t0).thenComparingDouble(Zone::u0));
    List<Zone> gathered = new ArrayList<>();
    for (Zone zone : zones) {
      Zone grown = zone;
      for (int i = gathered.size() - 1; i >= 0; i--) {
        if (gathered.get(i).touches(grown)) {
          grown = grown.with(gathered.remove(i));
        }
      }
      gathered.add(grown);
    }
    return gathered;
  }
}
