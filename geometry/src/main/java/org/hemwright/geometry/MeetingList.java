package org.hemwright.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Meetings of two paths as they are found, and from them each place once: shared stretches that go
 * on over a joint become one and are told by their ends; contacts inside them are left out;
 * contacts at one place become one; and of contacts between which the paths never come apart, the
 * closest stays.
 */
final class MeetingList {
  /** Contacts at one place lie within this of one another along both paths (mm). */
  private static final double SAME_PLACE = 2 * Tolerance.SAME_POINT;

  /** A path meets itself only where more than this of its length (mm) lies between. */
  private static final double SAME_JOINT = 10 * Tolerance.SAME_POINT;

  /** Rounding blurs the place of a touch by less than this (mm). */
  private static final double TOUCH = 200 * Tolerance.SAME_POINT;

  /** How many contacts ahead are held against one, and how many looks are taken between. */
  private static final int AHEAD = 4;

  private static final int LOOKS = 5;

  /** So many comparisons cost one step of work. */
  private static final int CHEAP = 10;

  /**
   * A place that the paths have in common.
   *
   * @param one length walked on the first path (mm)
   * @param other length walked on the other (mm)
   * @param point where
   * @param gap what still lies between the paths (mm)
   */
  record Place(double one, double other, Point point, double gap) {}

  /** A stretch that the paths share, {@code one} rising. */
  private record Stretch(Place first, Place last) {
    /** Whether both paths walk it the same way. */
    boolean isSameWay() {
      return first.other < last.other;
    }
  }

  private final Path one;
  private final Path other;
  private final boolean self;
  private final Work work;
  private final List<Place> places = new ArrayList<>();
  private final List<Stretch> stretches = new ArrayList<>();

  MeetingList(Path one, Path other, boolean self, Work work) {
    this.work = work;
    this.one = one;
    this.other = other;
    this.self = self;
  }

  void add(Place place) {
    places.add(place);
  }

  void addShared(Place first, Place last) {
    stretches.add(new Stretch(first, last));
  }

  /** The meetings, in the order of the first path. */
  List<Meeting> sorted() {
    work.steps((long) stretches.size() * (places.size() + stretches.size()) / CHEAP);
    List<Place> kept = new ArrayList<>();
    for (Place place : places) {
      if (!isInsideStretch(place) && !(self && isJoint(place))) {
        kept.add(atSeam(place));
      }
    }
    for (Stretch stretch : joinedStretches()) {
      kept.add(atSeam(stretch.first));
      kept.add(atSeam(stretch.last));
    }
    return withoutLesser(withoutDoubles(kept)).stream()
        .map(place -> new Meeting(place.point, place.one, place.other))
        .toList();
  }

  /** On a closed path the end is the start. */
  private Place atSeam(Place place) {
    double first = atSeam(one, place.one);
    double second = atSeam(other, place.other);
    return self && second < first
        ? new Place(second, first, place.point, place.gap)
        : new Place(first, second, place.point, place.gap);
  }

  private static double atSeam(Path path, double distance) {
    return path.isClosed() && distance > path.length() - SAME_PLACE ? 0 : distance;
  }

  private boolean isJoint(Place place) {
    double between = Math.abs(place.one - place.other);
    return between <= SAME_JOINT || (one.isClosed() && one.length() - between <= SAME_JOINT);
  }

  private boolean isInsideStretch(Place place) {
    for (Stretch stretch : stretches) {
      if (isBetween(one, place.one, stretch.first.one, stretch.last.one)
          && isBetween(other, place.other, stretch.first.other, stretch.last.other)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isBetween(Path path, double distance, double from, double to) {
    double low = Math.min(from, to) - SAME_PLACE;
    double high = Math.max(from, to) + SAME_PLACE;
    double round = path.isClosed() ? path.length() : 0;
    return (distance >= low && distance <= high)
        || (distance + round >= low && distance + round <= high)
        || (distance - round >= low && distance - round <= high);
  }

  private List<Stretch> joinedStretches() {
    List<Stretch> sorted = new ArrayList<>(stretches);
    sorted.sort(Comparator.comparingDouble((Stretch s) -> s.first.one));
    List<Stretch> joined = new ArrayList<>();
    for (Stretch stretch : sorted) {
      int before = goesOnFrom(joined, stretch);
      if (before >= 0) {
        joined.set(before, new Stretch(joined.get(before).first, stretch.last));
      } else {
        joined.add(stretch);
      }
    }
    for (int i = 0; i < joined.size() && joined.size() > 1; i++) {
      int before = goesOnFrom(joined, joined.get(i));
      if (before >= 0 && before != i) {
        joined.set(i, new Stretch(joined.get(before).first, joined.get(i).last));
        joined.remove(before);
        i = -1;
      }
    }
    return joined;
  }

  /** Which stretch goes on in another, without turning back on itself; −1 for none. */
  private int goesOnFrom(List<Stretch> joined, Stretch next) {
    for (int i = 0; i < joined.size(); i++) {
      Stretch stretch = joined.get(i);
      if (stretch.isSameWay() == next.isSameWay()
          && isSamePlace(atSeam(stretch.last), atSeam(next.first))) {
        return i;
      }
    }
    return -1;
  }

  private static boolean isSamePlace(Place a, Place b) {
    return Math.abs(a.one - b.one) <= SAME_PLACE && Math.abs(a.other - b.other) <= SAME_PLACE;
  }

  private static List<Place> withoutDoubles(List<Place> places) {
    places.sort(Comparator.comparingDouble(Place::one).thenComparingDouble(Place::other));
    List<Place> kept = new ArrayList<>();
    for (Place place : places) {
      int twin = twin(kept, place);
      if (twin < 0) {
        kept.add(place);
      } else if (place.gap < kept.get(twin).gap) {
        kept.set(twin, place);
      }
    }
    kept.sort(Comparator.comparingDouble(Place::one).thenComparingDouble(Place::other));
    return kept;
  }

  private static int twin(List<Place> kept, Place place) {
    for (int i = kept.size() - 1; i >= 0 && kept.get(i).one >= place.one - 2 * SAME_PLACE; i--) {
      if (isSamePlace(kept.get(i), place)) {
        return i;
      }
    }
    return -1;
  }

  /** Of two contacts between which the paths stay together, the one with the wider gap goes. */
  private List<Place> withoutLesser(List<Place> places) {
    List<Place> kept = new ArrayList<>();
    for (Place place : places) {
      boolean stays = true;
      for (int i = kept.size() - 1; stays && i >= 0 && i >= kept.size() - AHEAD; i--) {
        Place before = kept.get(i);
        if (isOneWith(before, place)) {
          stays = place.gap < before.gap;
          if (stays) {
            kept.remove(i);
          }
        }
      }
      if (stays) {
        kept.add(place);
      }
    }
    return kept;
  }

  private boolean isOneWith(Place a, Place b) {
    boolean exact = Math.max(a.gap, b.gap) <= Tolerance.EXACT;
    return exact ? isByTouch(a, b) : stayTogether(a, b, SAME_PLACE);
  }

  /** Whether two contacts, each exact but for rounding, are one touch. */
  private boolean isByTouch(Place a, Place b) {
    return Math.abs(a.one - b.one) <= TOUCH
        && Math.abs(a.other - b.other) <= TOUCH
        && stayTogether(a, b, Tolerance.EXACT);
  }

  private boolean stayTogether(Place a, Place b, double tolerance) {
    for (int i = 1; i < LOOKS; i++) {
      double share = (double) i / LOOKS;
      Point p = one.at(a.one + share * (b.one - a.one)).point();
      Point q = other.at(a.other + share * (b.other - a.other)).point();
      if (p.distanceTo(q) > tolerance) {
        return false;
      }
    }
    return true;
  }
}
