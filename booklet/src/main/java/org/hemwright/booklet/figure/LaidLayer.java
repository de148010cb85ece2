package org.hemwright.booklet.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.PathPlace;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * One layer of a seam, its pieces right side up, each laid on from where the one before ends, in
 * its direction, as they lie when they have been joined there.
 *
 * @param flats the cut copies, each once
 * @param seam the stitch lines in the order in which they are sewn
 */
record LaidLayer(List<Flat> flats, List<Path> seam) {
  LaidLayer {
    flats = List.copyOf(flats);
    seam = List.copyOf(seam);
  }

  /** The layer; absent where nothing of it is drawn. */
  static Optional<LaidLayer> of(Seam.Layer layer, SizedPattern sized) {
    List<Flat> flats = new ArrayList<>();
    List<Path> seam = new ArrayList<>();
    for (EdgePlace place : layer.run()) {
      Optional<Flat> known = flats.stream().filter(flat -> flat.holds(place)).findFirst();
      Optional<Flat> flat = known.or(() -> Flat.of(sized, place.piece(), place.copy()));
      Optional<Path> path = flat.flatMap(each -> each.path(place));
      if (flat.isEmpty() || path.isEmpty()) {
        continue;
      }
      if (known.isPresent()) {
        seam.add(path.get());
      } else if (seam.isEmpty()) {
        flats.add(flat.get());
        seam.add(path.get());
      } else {
        Path before = seam.get(seam.size() - 1);
        Motion on = joined(path.get(), before);
        flats.add(flat.get().then(on));
        seam.add(path.get().moved(on));
      }
    }
    return seam.isEmpty() ? Optional.empty() : Optional.of(new LaidLayer(flats, seam));
  }

  /** So that a path goes on where another ends, in its direction. */
  private static Motion joined(Path path, Path before) {
    double turn = path.startDirection().angleTo(before.endDirection());
    Motion turned = Motion.turn(path.start(), turn);
    return turned.then(Motion.move(before.end().minus(path.start())));
  }

  /** The name of its first piece. */
  String piece() {
    return flats.get(0).piece();
  }

  Box bounds() {
    Box all = flats.get(0).outline().bounds();
    for (Flat flat : flats) {
      all = all.union(flat.outline().bounds());
    }
    return all;
  }

  Point start() {
    return seam.get(0).start();
  }

  Point end() {
    return seam.get(seam.size() - 1).end();
  }

  double length() {
    return seam.stream().mapToDouble(Path::length).sum();
  }

  /** A place along the whole seam (mm from its start). */
  PathPlace at(double distance) {
    double left = distance;
    for (Path path : seam) {
      if (left <= path.length()) {
        return path.at(Math.max(0, left));
      }
      left -= path.length();
    }
    Path last = seam.get(seam.size() - 1);
    return last.at(last.length());
  }

  /** From its start to its end, or along its middle where they meet. */
  Vector chord() {
    Vector chord = end().minus(start());
    return chord.length() > 1 ? chord : at(length() / 2).tangent();
  }

  /** Turned so that its seam runs level, the pieces below it. */
  LaidLayer levelled() {
    LaidLayer turned = then(Motion.turn(start(), -chord().angle()));
    double inside = turned.flats().get(0).outline().bounds().centre().y() - turned.start().y();
    return inside > 0 ? turned.then(Motion.turn(turned.start(), Math.PI)) : turned;
  }

  LaidLayer then(Motion motion) {
    return new LaidLayer(
        flats.stream().map(flat -> flat.then(motion)).toList(),
        seam.stream().map(path -> path.moved(motion)).toList());
  }

  /**
   * This layer laid on another along the seam by a rigid motion: by the ends where both are alike,
   * else by the middles.
   *
   * @param turnedOver whether it is laid right sides together, and so its wrong side up
   */
  LaidLayer on(LaidLayer other, boolean turnedOver) {
    LaidLayer shown =
        turnedOver ? then(Motion.mirror(Point.ORIGIN, Point.ORIGIN.plus(new Vector(1, 0)))) : this;
    Vector chord = shown.end().minus(shown.start());
    Vector goal = other.end().minus(other.start());
    boolean alike =
        Math.abs(chord.length() - goal.length()) < 0.02 * other.length()
            && goal.length() > 0.2 * other.length();
    if (alike) {
      Motion turn = Motion.turn(shown.start(), chord.angleTo(goal));
      LaidLayer turned = shown.then(turn);
      Point middle = turned.start().toward(turned.end(), 0.5);
      LaidLayer byEnds =
          turned.then(Motion.move(other.start().toward(other.end(), 0.5).minus(middle)));
      double apart =
          byEnds.at(byEnds.length() / 2).point().distanceTo(other.at(other.length() / 2).point());
      if (apart < 0.06 * other.length()) {
        return byEnds;
      }
    }
    var own = shown.at(shown.length() / 2);
    var there = other.at(other.length() / 2);
    Motion turn = Motion.turn(own.point(), own.tangent().angleTo(there.tangent()));
    return shown.then(turn.then(Motion.move(there.point().minus(own.point()))));
  }
}
