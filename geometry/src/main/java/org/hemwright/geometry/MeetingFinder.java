package org.hemwright.geometry;

import java.util.List;
import org.hemwright.geometry.CurveContacts.Contact;
import org.hemwright.geometry.CurveContacts.Shared;

/**
 * The points that two paths, or two stretches of one path, have in common, each once.
 *
 * <p>Every curve is held against every curve; the contacts, told as lengths along the paths, go to
 * {@link MeetingList}, which leaves each place once.
 */
final class MeetingFinder {
  private static final long MOST_WORK = 2_000_000;

  /** What it costs to hold two curves against one another, in steps. */
  private static final int PAIR = 5;

  private final Path one;
  private final Path other;
  private final Work work = new Work(MOST_WORK);
  private final MeetingList meetings;

  private MeetingFinder(Path one, Path other, boolean self) {
    this.one = one;
    this.other = other;
    this.meetings = new MeetingList(one, other, self, work);
  }

  /** Every meeting of two paths, in the order of the first. */
  static List<Meeting> between(Path one, Path other) {
    if (!one.bounds().grown(Tolerance.SAME_POINT).overlaps(other.bounds())) {
      return List.of();
    }
    MeetingFinder finder = new MeetingFinder(one, other, false);
    for (int i = 0; i < one.curves().size(); i++) {
      Box near = one.hull(i).grown(Tolerance.SAME_POINT);
      for (int j = 0; j < other.curves().size(); j++) {
        if (near.overlaps(other.hull(j))) {
          finder.addContacts(i, j);
        }
      }
    }
    return finder.meetings.sorted();
  }

  /** Every place where a path meets itself, in the order of walking; joints are none. */
  static List<Meeting> within(Path path) {
    MeetingFinder finder = new MeetingFinder(path, path, true);
    int count = path.curves().size();
    for (int i = 0; i < count; i++) {
      if (path.curves().get(i) instanceof Cubic cubic) {
        finder.addLoop(i, cubic);
      }
      Box near = path.hull(i).grown(Tolerance.SAME_POINT);
      for (int j = i + 1; j < count; j++) {
        if (near.overlaps(path.hull(j)) && !finder.isPlainJoint(i, j)) {
          finder.addContacts(i, j);
        }
      }
    }
    return finder.meetings.sorted();
  }

  private void addContacts(int i, int j) {
    work.steps(PAIR);
    CurveContacts contacts =
        CurveContacts.between(one.curves().get(i), other.curves().get(j), work);
    for (Contact contact : contacts.contacts) {
      meetings.add(place(i, j, contact));
    }
    for (Shared shared : contacts.shared) {
      meetings.addShared(place(i, j, shared.from()), place(i, j, shared.to()));
    }
  }

  private MeetingList.Place place(int i, int j, Contact contact) {
    return new MeetingList.Place(
        one.distanceAt(i, contact.t()),
        other.distanceAt(j, contact.u()),
        one.curves().get(i).at(contact.t()),
        contact.gap());
  }

  /**
   * Whether two neighbours both go forward along some one direction, so that they have nothing but
   * their joint in common.
   */
  private boolean isPlainJoint(int i, int j) {
    int count = one.curves().size();
    boolean next = j == i + 1;
    boolean round = one.isClosed() && i == 0 && j == count - 1;
    if (next == round) {
      return false;
    }
    Curve before = one.curves().get(next ? i : j);
    Curve after = one.curves().get(next ? j : i);
    Vector forward = before.direction(1).plus(after.direction(0));
    return goesForward(before, forward) && goesForward(after, forward);
  }

  private static boolean goesForward(Curve curve, Vector forward) {
    double sure = Tolerance.SAME_DIRECTION * forward.length();
    if (curve instanceof Cubic cubic) {
      double least = sure * cubic.size();
      return cubic.control1().minus(cubic.start()).dot(forward) > least
          && cubic.control2().minus(cubic.control1()).dot(forward) > least
          && cubic.end().minus(cubic.control2()).dot(forward) > least;
    }
    return curve.derivative(0).dot(forward) > sure * curve.length();
  }

  /**
   * The loop of a single cubic B(t) = at³ + bt² + ct + d. Where B(t) = B(s), with p = t + s and q =
   * ts, a(p² − q) + bp + c is nothing: p comes from the cross product with a, q from the dot
   * product.
   */
  private void addLoop(int index, Cubic cubic) {
    Vector c = cubic.control1().minus(cubic.start()).times(3);
    Vector b = cubic.control2().minus(cubic.control1()).times(3).minus(c);
    Vector a = cubic.end().minus(cubic.start()).minus(b).minus(c);
    double cross = b.cross(a);
    double square = a.dot(a);
    if (cross == 0 || square == 0) {
      return;
    }
    double p = -c.cross(a) / cross;
    double q = p * p + (p * a.dot(b) + a.dot(c)) / square;
    double apart = p * p - 4 * q;
    if (!(apart > 0)) {
      return;
    }
    double half = Math.sqrt(apart) / 2;
    double t = p / 2 - half;
    double s = p / 2 + half;
    if (t >= -Tolerance.PARAMETER && s <= 1 + Tolerance.PARAMETER) {
      t = Math.max(0, t);
      s = Math.min(1, s);
      meetings.add(place(index, index, new Contact(t, s, cubic.at(t).distanceTo(cubic.at(s)))));
    }
  }
}
