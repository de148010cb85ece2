package org.hemwright.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Finds the points that two paths have in common, by halving both where their boxes overlap. */
final class MeetingFinder {
  private static final double SMALL = 1e-10;
  private final Path one;
  private final Path other;
  private final List<Meeting> found = new ArrayList<>();

  private MeetingFinder(Path one, Path other) {
    this.one = one;
    this.other = other;
  }

  static List<Meeting> between(Path one, Path other) {
    MeetingFinder finder = new MeetingFinder(one, other);
    for (int i = 0; i < one.curves().size(); i++) {
      for (int j = 0; j < other.curves().size(); j++) {
        finder.search(i, one.curves().get(i), 0, 1, j, other.curves().get(j), 0, 1);
      }
    }
    finder.found.sort(Comparator.comparingDouble(Meeting::distanceOnThis));
    return List.copyOf(finder.found);
  }

  private void search(int i, Curve a, double a0, double a1, int j, Curve b, double b0, double b1) {
    if (!a.bounds().grown(Tolerance.PLACE).overlaps(b.bounds())) {
      return;
    }
    if (a1 - a0 < SMALL && b1 - b0 < SMALL) {
      add(
          new Meeting(
              a.at(0.5), one.distanceAt(i, (a0 + a1) / 2), other.distanceAt(j, (b0 + b1) / 2)));
      return;
    }
    if (a1 - a0 >= b1 - b0) {
      double middle = (a0 + a1) / 2;
      search(i, a.part(0, 0.5), a0, middle, j, b, b0, b1);
      search(i, a.part(0.5, 1), middle, a1, j, b, b0, b1);
    } else {
      double middle = (b0 + b1) / 2;
      search(i, a, a0, a1, j, b.part(0, 0.5), b0, middle);
      search(i, a, a0, a1, j, b.part(0.5, 1), middle, b1);
    }
  }

  private void add(Meeting meeting) {
    for (Meeting known : found) {
      if (known.point().isAt(meeting.point())
          && Math.abs(known.distanceOnThis() - meeting.distanceOnThis()) < Tolerance.SAME_POINT) {
        return;
      }
    }
    found.add(meeting);
  }
}
