package org.hemwright.geometry;

import java.util.List;
import org.hemwright.geometry.CubicContacts.Zone;
import org.hemwright.geometry.CurveContacts.Contact;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * A stretch over which two cubics run within {@link Tolerance#SAME_POINT} of one another. Where the
 * one changes sides of the other it crosses; without a change they touch where they lie closest.
 */
final class ContactZone {
  private static final int FEWEST_LOOKS = 12;
  private static final int MOST_LOOKS = 96;
  private static final int MOST_EVALUATIONS = 1000;

  private static final double FINEST = Tolerance.PARAMETER / 100;

  private final Cubic one;
  private final Cubic stretch;
  private final Zone zone;
  private final List<Contact> contacts;

  private ContactZone(Cubic one, Cubic other, Zone zone, List<Contact> contacts) {
    this.one = one;
    this.stretch = other.part(zone.u0(), zone.u1());
    this.zone = zone;
    this.contacts = contacts;
  }

  /** Adds the crossings in a zone to a list or, where there is none, the touch. */
  static void addBest(Cubic one, Cubic other, Zone zone, List<Contact> contacts) {
    new ContactZone(one, other, zone, contacts).search();
  }

  private void search() {
    int looks = Math.max(FEWEST_LOOKS, Math.min(MOST_LOOKS, zone.pieces()));
    double step = (zone.t1() - zone.t0()) / looks;
    double sideT = zone.t0();
    double side = 0;
    double closestT = zone.t0();
    double closest = Double.POSITIVE_INFINITY;
    boolean crossed = false;
    for (int i = 0; i <= looks; i++) {
      double t = i == looks ? zone.t1() : zone.t0() + i * step;
      double height = height(t);
      if (Math.abs(height) < closest) {
        closest = Math.abs(height);
        closestT = t;
      }
      if (Math.abs(height) > Tolerance.ON_CURVE) {
        if (side != 0 && side > 0 != height > 0) {
          crossed |= add(changeBetween(sideT, t));
        }
        side = height;
        sideT = t;
      }
    }
    if (!crossed) {
      add(
          closestBetween(
              Math.max(zone.t0(), closestT - step), Math.min(zone.t1(), closestT + step)));
    }
  }

  private boolean add(double t) {
    double u = NearestPlace.parameter(stretch, one.at(t));
    double gap = one.at(t).distanceTo(stretch.at(u));
    if (gap > Tolerance.SAME_POINT) {
      return false;
    }
    contacts.add(new Contact(t, zone.u0() + u * (zone.u1() - zone.u0()), gap));
    return true;
  }

  /** How far the one curve lies from the other (mm), positive to its left. */
  private double height(double t) {
    Point point = one.at(t);
    double u = NearestPlace.parameter(stretch, point);
    Vector apart = point.minus(stretch.at(u));
    return Math.copySign(apart.length(), stretch.direction(u).cross(apart));
  }

  /** The place between two, on either side of the other curve, where this one changes sides. */
  private double changeBetween(double from, double to) {
    return root(this::height, from, to);
  }

  /** Where two curves lie closest they run the same way. */
  private double closestBetween(double from, double to) {
    double atFrom = lean(from);
    double atTo = lean(to);
    if (atFrom > 0 != atTo > 0 && atFrom != 0 && atTo != 0) {
      return root(this::lean, from, to);
    }
    return Math.abs(height(from)) <= Math.abs(height(to)) ? from : to;
  }

  private double lean(double t) {
    double u = NearestPlace.parameter(stretch, one.at(t));
    return one.direction(t).cross(stretch.direction(u));
  }

  private static double root(UnivariateFunction function, double from, double to) {
    return new BrentSolver(FINEST, Tolerance.PARAMETER, FINEST)
        .solve(MOST_EVALUATIONS, function, from, to);
  }
}
