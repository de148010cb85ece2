package org.hemwright.cloth.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import org.hemwright.cloth.laying.Spot;

/**
 * A silhouette with fewer corners that covers the whole of it, for the search. Hollow corners are
 * bridged, and short bulging edges are replaced by the corner in which their neighbours meet, the
 * least gain in area first, until a thousandth of the area is gained. The box round it stays the
 * same, so that what just fits still does.
 */
final class OuterOutline {
  private static final double MOST_GAIN = 0.001;
  private static final double FARTHEST_OUT = 0.3;
  private static final int FEWEST = 4;

  private final double left;
  private final double right;
  private final double low;
  private final double high;
  private final Spot[] spots;
  private final int[] before;
  private final int[] after;
  private final int[] version;
  private final PriorityQueue<Change> changes =
      new PriorityQueue<>(
          Comparator.comparingDouble(Change::gain)
              .thenComparingInt(Change::at)
              .thenComparing(Change::bridge));
  private int count;

  private OuterOutline(Silhouette source) {
    left = source.left();
    right = source.right();
    low = source.low();
    high = source.high();
    count = source.corners().size();
    spots = source.corners().toArray(Spot[]::new);
    before = new int[count];
    after = new int[count];
    version = new int[count];
    for (int i = 0; i < count; i++) {
      before[i] = (i + count - 1) % count;
      after[i] = (i + 1) % count;
    }
  }

  /** The simpler silhouette. */
  static Silhouette of(Silhouette source) {
    return new OuterOutline(source).simplified(source.area() * MOST_GAIN);
  }

  /**
   * A change that takes one corner away.
   *
   * @param at the corner that goes; of a bulging edge its first corner, which moves
   * @param version of that corner, when the change was thought of
   */
  private record Change(int at, boolean bridge, Spot corner, double gain, int version) {}

  private Silhouette simplified(double mayGain) {
    double rest = mayGain;
    int last = 0;
    for (int i = 0; i < spots.length; i++) {
      propose(i);
    }
    while (count > FEWEST && !changes.isEmpty()) {
      Change change = changes.remove();
      if (change.gain > rest) {
        break;
      }
      if (change.version == version[change.at] && isFree(change)) {
        last = apply(change);
        rest -= change.gain;
      }
    }
    List<Spot> corners = new ArrayList<>();
    int at = last;
    do {
      corners.add(spots[at]);
      at = after[at];
    } while (at != last);
    return Silhouette.closed(corners);
  }

  private void propose(int i) {
    version[i]++;
    Spot here = spots[i];
    double turn = cross(spots[before[i]], here, spots[after[i]]);
    if (turn <= 0) {
      double height =
          -turn / Math.max(Double.MIN_NORMAL, distance(spots[before[i]], spots[after[i]]));
      if (height <= FARTHEST_OUT) {
        changes.add(new Change(i, true, here, -turn / 2, version[i]));
      }
    } else {
      bulge(i).ifPresent(changes::add);
    }
  }

  /** The edge from a corner to the next, replaced by the corner where its neighbours meet. */
  private Optional<Change> bulge(int i) {
    Spot first = spots[before[i]];
    Spot here = spots[i];
    Spot next = spots[after[i]];
    Spot beyond = spots[after[after[i]]];
    double ux = here.x() - first.x();
    double uy = here.y() - first.y();
    double vx = next.x() - beyond.x();
    double vy = next.y() - beyond.y();
    double cross = ux * vy - uy * vx;
    if (cross(here, next, beyond) <= 0 || cross >= 0) {
      return Optional.empty();
    }
    double along = ((next.x() - here.x()) * vy - (next.y() - here.y()) * vx) / cross;
    Spot meet = new Spot(here.x() + along * ux, here.y() + along * uy);
    double twice = Math.abs(cross(here, meet, next));
    double height = twice / Math.max(Double.MIN_NORMAL, distance(here, next));
    boolean inBox = meet.x() >= left && meet.x() <= right && meet.y() >= low && meet.y() <= high;
    return along >= 0 && inBox && height <= FARTHEST_OUT
        ? Optional.of(new Change(i, false, meet, twice / 2, version[i]))
        : Optional.empty();
  }

  /** Whether no other corner lies in or on the triangle that a change adds. */
  private boolean isFree(Change change) {
    int last = after[change.at];
    int first = change.bridge ? before[change.at] : change.at;
    Spot a = spots[first];
    Spot b = change.corner;
    Spot c = spots[last];
    double minX = Math.min(a.x(), Math.min(b.x(), c.x()));
    double maxX = Math.max(a.x(), Math.max(b.x(), c.x()));
    for (int k = after[last]; k != first; k = after[k]) {
      double x = spots[k].x();
      if (x >= minX && x <= maxX && isIn(spots[k], a, b, c)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isIn(Spot p, Spot a, Spot b, Spot c) {
    double ab = cross(a, b, p);
    double bc = cross(b, c, p);
    double ca = cross(c, a, p);
    return (ab >= 0 && bc >= 0 && ca >= 0) || (ab <= 0 && bc <= 0 && ca <= 0);
  }

  /** Makes a change and thinks anew about the corners beside it. */
  private int apply(Change change) {
    int at = change.at;
    int gone = change.bridge ? at : after[at];
    int kept = change.bridge ? before[at] : at;
    spots[kept] = change.bridge ? spots[kept] : change.corner;
    version[gone]++;
    after[kept] = after[gone];
    before[after[gone]] = kept;
    count--;
    int first = before[before[kept]];
    for (int step = 0, i = first; step < 5; step++, i = after[i]) {
      propose(i);
    }
    return kept;
  }

  private static double cross(Spot a, Spot b, Spot c) {
    return (b.x() - a.x()) * (c.y() - b.y()) - (b.y() - a.y()) * (c.x() - b.x());
  }

  private static double distance(Spot a, Spot b) {
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    return Math.sqrt(dx * dx + dy * dy);
  }
}
