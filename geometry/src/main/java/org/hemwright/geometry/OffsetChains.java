package org.hemwright.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Links the right stretches of an offset end to start, and gives the one chain that is asked for.
 * Where the way parts, the branch farthest to the side of the offset is taken: the others lead into
 * pockets.
 */
final class OffsetChains {
  /** Stretches whose ends lie this near one another (mm) are linked. */
  private static final double LINK = 2 * Tolerance.OFFSET_FIT;

  /** A chain shorter than this (mm) is a speck that rounding left. */
  private static final double SPECK = Tolerance.OFFSET;

  /** Stretches linked end to start, and their path; closed when they come back. */
  private record Chain(List<OffsetStretch> stretches, Path path) {
    double length() {
      return path.length();
    }

    /** Whether it is too short or, as a ring, too narrow to be more than rounding. */
    boolean isSpeck() {
      Box box = path.bounds();
      return length() <= SPECK || (path.isClosed() && Math.min(box.width(), box.height()) <= SPECK);
    }

    boolean touches(Chain other) {
      for (OffsetStretch own : stretches) {
        for (OffsetStretch its : other.stretches) {
          if (own.touches(its, LINK)) {
            return true;
          }
        }
      }
      return false;
    }
  }

  private final Path source;
  private final double distance;
  private final double rawLength;
  private final List<OffsetStretch> stretches;

  private OffsetChains(
      Path source, double distance, double rawLength, List<OffsetStretch> stretches) {
    this.source = source;
    this.distance = distance;
    this.rawLength = rawLength;
    this.stretches = stretches;
  }

  static Path only(Path source, double distance, double rawLength, List<OffsetStretch> stretches) {
    OffsetChains chains = new OffsetChains(source, distance, rawLength, stretches);
    return source.isClosed() ? chains.ring() : chains.chain();
  }

  /** Of an open source: the chain from end to end if there is one, else all that is left. */
  private Path chain() {
    List<Chain> chains = new ArrayList<>();
    for (OffsetStretch stretch : stretches) {
      if (!stretch.linked && !hasBefore(stretch)) {
        Chain chain = linkedFrom(stretch);
        if (reaches(chain) == 2) {
          return chain.path;
        }
        chains.add(chain);
      }
    }
    addRest(chains);
    chains.sort(
        Comparator.comparingInt((Chain chain) -> -reaches(chain))
            .thenComparingDouble(chain -> -chain.length()));
    return first(chains);
  }

  /** Of a closed source: the ring that goes round the same way; the others go round holes. */
  private Path ring() {
    List<Chain> chains = new ArrayList<>();
    addRest(chains);
    boolean side = Outline.of(source).isCounterClockwise();
    chains.removeIf(
        chain -> !chain.path.isClosed() || Outline.of(chain.path).isCounterClockwise() != side);
    chains.sort(Comparator.comparingDouble(chain -> -chain.length()));
    return first(chains);
  }

  private void addRest(List<Chain> chains) {
    for (OffsetStretch stretch : stretches) {
      if (!stretch.linked) {
        chains.add(linkedFrom(stretch));
      }
    }
  }

  /** How many ends of the sketch, of two, a chain reaches. */
  private int reaches(Chain chain) {
    int last = chain.stretches.size() - 1;
    return (chain.stretches.get(0).from == 0 ? 1 : 0)
        + (chain.stretches.get(last).to == rawLength ? 1 : 0);
  }

  /** The first chain, if all others are specks or pockets that branch off from it. */
  private Path first(List<Chain> chains) {
    chains.removeIf(Chain::isSpeck);
    if (chains.isEmpty()) {
      throw nothingLeft(distance);
    }
    List<Chain> linked = new ArrayList<>(chains.subList(0, 1));
    List<Chain> apart = new ArrayList<>(chains.subList(1, chains.size()));
    for (int i = 0; i < linked.size(); i++) {
      Chain known = linked.get(i);
      for (Chain chain : List.copyOf(apart)) {
        if (chain.touches(known)) {
          apart.remove(chain);
          linked.add(chain);
        }
      }
    }
    if (!apart.isEmpty()) {
      throw new GeometryProblem(
          "a path set off by %s mm falls apart into %d; it bends too tightly or runs too near itself"
              .formatted(Math.abs(distance), apart.size() + 1));
    }
    return chains.get(0).path;
  }

  static GeometryProblem nothingLeft(double distance) {
    return new GeometryProblem(
        "nothing is left of a path set off by " + Math.abs(distance) + " mm; it bends too tightly");
  }

  private Chain linkedFrom(OffsetStretch first) {
    List<OffsetStretch> chain = new ArrayList<>();
    int next = stretches.indexOf(first);
    while (next >= 0) {
      OffsetStretch stretch = stretches.get(next);
      stretch.linked = true;
      chain.add(stretch);
      next = after(next);
    }
    return new Chain(chain, joined(chain));
  }

  /** The stretch that goes on from one, farthest to the side of the offset; −1 for none. */
  private int after(int own) {
    OffsetStretch stretch = stretches.get(own);
    Point end = stretch.path.end();
    int best = -1;
    double farthest = 0;
    for (int step = 1; step <= stretches.size(); step++) {
      int i = (own + step) % stretches.size();
      OffsetStretch next = stretches.get(i);
      if (!next.linked && end.distanceTo(next.path.start()) <= LINK) {
        double turn = stretch.turnInto(next) * Math.signum(distance);
        if (best < 0 || turn > farthest + Tolerance.SAME_DIRECTION) {
          best = i;
          farthest = turn;
        }
      }
    }
    return best;
  }

  private boolean hasBefore(OffsetStretch stretch) {
    for (OffsetStretch other : stretches) {
      if (other.path.end().distanceTo(stretch.path.start()) <= LINK) {
        return true;
      }
    }
    return false;
  }

  private static Path joined(List<OffsetStretch> chain) {
    List<Curve> curves = new ArrayList<>();
    for (OffsetStretch stretch : chain) {
      bridge(curves, stretch.path.start());
      curves.addAll(stretch.path.curves());
    }
    Point head = curves.get(0).start();
    Point tail = curves.get(curves.size() - 1).end();
    if (head.distanceTo(tail) <= LINK && Path.of(curves).length() > SPECK) {
      bridge(curves, head);
    }
    return Path.of(curves);
  }

  /** Goes straight on to a point where the last curve ends a hair away from it. */
  private static void bridge(List<Curve> curves, Point to) {
    if (!curves.isEmpty()) {
      Point tail = curves.get(curves.size() - 1).end();
      if (!tail.isAt(to)) {
        curves.add(new Line(tail, to));
      }
    }
  }
}
