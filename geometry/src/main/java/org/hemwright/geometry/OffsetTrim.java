package org.hemwright.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What is left of an offset when all that came too near the source is taken away.
 *
 * <ol>
 *   <li>The sketch is cut wherever it meets itself or the offset on the other side and where it
 *       enters the circle about an end or an outward corner: only there can it pass from right to
 *       wrong.
 *   <li>A stretch is wrong that is overrun, that lies too near the source, or that leads without a
 *       cut to an overrun one.
 *   <li>The right stretches are linked end to start, and {@link OffsetChains} gives the answer.
 * </ol>
 */
final class OffsetTrim {
  /** So much nearer than the distance a right stretch may lie (mm): fit and weld add up to less. */
  private static final double SLACK = Tolerance.OFFSET / 2;

  /** So much nearer than the distance a stretch by an overrun one is taken for wrong (mm). */
  private static final double CLEARLY = 1.5 * Tolerance.OFFSET_FIT;

  /** Loops this short (mm) are left by rounding. */
  private static final double SPECK = 2 * Tolerance.OFFSET;

  /** Cuts times curves of the source; a real one has some thousands. */
  private static final long MOST_WORK = 10_000_000;

  private static final int MOST_SPECKS = 50;
  private static final double SAME_CUT = Tolerance.SAME_POINT / 100;
  private static final double[] LOOKS = {0.5, 0.25, 0.75};

  /** A cut; firm where right may turn to wrong, else only the edge of an overrun curve. */
  private record Cut(double distance, boolean firm) {}

  private final Path source;
  private final double distance;
  private final OffsetSketch sketch;
  private final Path raw;

  /** Whether the source turns so far that its offset may come upon it from the other side. */
  private final boolean turns;

  private OffsetTrim(Path source, double distance, OffsetSketch sketch, boolean turns) {
    this.turns = turns;
    this.source = source;
    this.distance = distance;
    this.sketch = sketch;
    this.raw = sketch.path();
  }

  static Path trimmed(Path source, double distance, OffsetSketch sketch, boolean turns) {
    return new OffsetTrim(source, distance, sketch, turns).trimmed();
  }

  private Path trimmed() {
    List<Cut> cuts = cuts();
    if ((long) cuts.size() * source.curves().size() > MOST_WORK) {
      throw new GeometryProblem(
          "a path set off by " + Math.abs(distance) + " mm crosses itself too often to be trimmed");
    }
    List<OffsetStretch> stretches = stretches(cuts);
    spreadWrong(stretches);
    for (OffsetStretch stretch : stretches) {
      if (!stretch.wrong && liesTooNear(stretch)) {
        stretch.wrong = true;
      }
    }
    stretches.removeIf(stretch -> stretch.wrong);
    return withoutSpecks(OffsetChains.only(source, distance, raw.length(), stretches));
  }

  private List<Cut> cuts() {
    List<Cut> cuts = new ArrayList<>();
    for (Meeting meeting : MeetingFinder.within(raw)) {
      cuts.add(new Cut(meeting.distanceOnThis(), true));
      cuts.add(new Cut(meeting.distanceOnOther(), true));
    }
    if (turns) {
      for (Meeting meeting : raw.meetings(OffsetSketch.of(source, -distance).path())) {
        cuts.add(new Cut(meeting.distanceOnThis(), true));
      }
    }
    if (!source.isClosed()) {
      addCutsAbout(source.start(), cuts);
      addCutsAbout(source.end(), cuts);
    }
    for (int i = 1; i < source.curves().size(); i++) {
      Curve before = source.curves().get(i - 1);
      Curve after = source.curves().get(i);
      if (before.direction(1).cross(after.direction(0)) * distance < -Tolerance.SAME_DIRECTION) {
        addCutsAbout(after.start(), cuts);
      }
    }
    for (int i = 1; i < raw.curves().size(); i++) {
      if (sketch.isOverrun(i - 1) != sketch.isOverrun(i)) {
        cuts.add(new Cut(raw.lengthBefore(i), false));
      }
    }
    cuts.add(new Cut(0, false));
    cuts.add(new Cut(raw.length(), false));
    cuts.sort(Comparator.comparingDouble(Cut::distance));
    return merged(cuts);
  }

  private static List<Cut> merged(List<Cut> cuts) {
    List<Cut> merged = new ArrayList<>();
    for (Cut cut : cuts) {
      int last = merged.size() - 1;
      if (last >= 0 && cut.distance - merged.get(last).distance <= SAME_CUT) {
        merged.set(last, new Cut(merged.get(last).distance, merged.get(last).firm || cut.firm));
      } else {
        merged.add(cut);
      }
    }
    return merged;
  }

  /** Where the sketch enters or leaves the circle about an end of the source. */
  private void addCutsAbout(Point end, List<Cut> cuts) {
    double radius = Math.abs(distance) - SLACK / 2;
    for (int i = 0; i < raw.curves().size(); i++) {
      if (radius > 0 && raw.hull(i).distanceTo(end) < radius) {
        for (double t : Bernstein.roots(squareDistance(raw.curves().get(i), end, radius))) {
          cuts.add(new Cut(raw.distanceAt(i, t), true));
        }
      }
    }
  }

  private static double[] squareDistance(Curve curve, Point from, double radius) {
    double[] x;
    double[] y;
    if (curve instanceof Cubic c) {
      x = new double[] {c.start().x(), c.control1().x(), c.control2().x(), c.end().x()};
      y = new double[] {c.start().y(), c.control1().y(), c.control2().y(), c.end().y()};
    } else {
      x = new double[] {curve.start().x(), curve.end().x()};
      y = new double[] {curve.start().y(), curve.end().y()};
    }
    for (int i = 0; i < x.length; i++) {
      x[i] -= from.x();
      y[i] -= from.y();
    }
    double[] square = Bernstein.product(x, x);
    double[] ySquare = Bernstein.product(y, y);
    for (int i = 0; i < square.length; i++) {
      square[i] += ySquare[i] - radius * radius;
    }
    return square;
  }

  private List<OffsetStretch> stretches(List<Cut> cuts) {
    List<OffsetStretch> stretches = new ArrayList<>();
    for (int i = 1; i < cuts.size(); i++) {
      OffsetStretch stretch =
          new OffsetStretch(raw, cuts.get(i - 1).distance, cuts.get(i).distance);
      stretch.firmStart = cuts.get(i - 1).firm;
      stretch.firmEnd = cuts.get(i).firm;
      stretch.overrun = sketch.isOverrun(raw.curveAt((stretch.from + stretch.to) / 2));
      stretch.wrong = stretch.overrun;
      stretches.add(stretch);
    }
    if (raw.isClosed()) {
      OffsetStretch first = stretches.get(0);
      OffsetStretch last = stretches.get(stretches.size() - 1);
      boolean firm = first.firmStart || last.firmEnd;
      first.firmStart = firm;
      last.firmEnd = firm;
    }
    return stretches;
  }

  private void spreadWrong(List<OffsetStretch> stretches) {
    int count = stretches.size();
    for (int i = 0; i < count; i++) {
      if (stretches.get(i).overrun) {
        for (int step : new int[] {-1, 1}) {
          int k = i;
          while (!(step > 0 ? stretches.get(k).firmEnd : stretches.get(k).firmStart)) {
            k += step;
            if (raw.isClosed()) {
              k = Math.floorMod(k, count);
            }
            if (k < 0 || k >= count || stretches.get(k).overrun) {
              break;
            }
            OffsetStretch next = stretches.get(k);
            boolean bounded = step > 0 ? next.firmEnd : next.firmStart;
            if (bounded && (isShort(next) || liesNearer(next, CLEARLY))) {
              next.wrong = true;
            }
          }
        }
      }
    }
  }

  /** Whether a stretch is too short for its distance from the source to tell right from wrong. */
  private boolean isShort(OffsetStretch stretch) {
    return stretch.length() <= Math.sqrt(25 * Tolerance.OFFSET_FIT * Math.abs(distance));
  }

  private boolean liesTooNear(OffsetStretch stretch) {
    return liesNearer(stretch, SLACK);
  }

  private boolean liesNearer(OffsetStretch stretch, double slack) {
    for (double share : LOOKS) {
      Point point = raw.at(stretch.from + share * stretch.length()).point();
      if (NearestPlace.isNearer(source, point, Math.abs(distance) - slack)) {
        return true;
      }
    }
    return false;
  }

  /** Cuts away loops that are too short to be found right or wrong. */
  private static Path withoutSpecks(Path path) {
    Path clean = path;
    Optional<Meeting> speck = speck(clean);
    for (int round = 0; speck.isPresent() && round < MOST_SPECKS; round++) {
      Path before = clean.part(0, speck.get().distanceOnThis());
      clean = before.then(clean.part(speck.get().distanceOnOther(), clean.length()));
      speck = speck(clean);
    }
    return clean;
  }

  private static Optional<Meeting> speck(Path path) {
    return MeetingFinder.within(path).stream()
        .filter(meeting -> meeting.distanceOnThis() > SAME_CUT)
        .filter(meeting -> meeting.distanceOnOther() < path.length() - SAME_CUT)
        .filter(meeting -> meeting.distanceOnOther() - meeting.distanceOnThis() <= SPECK)
        .findFirst();
  }
}
