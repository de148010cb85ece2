package org.hemwright.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.measure.LayerWalk;
import org.hemwright.pattern.measure.LayerWalk.Stop;
import org.hemwright.pattern.measure.SeamWalk;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/** The notches of two layers of a seam laid on each other: which meet, and which do not. */
final class NotchPairing {
  /** Notches further apart than so many times the limit are no mates gone astray (times). */
  private static final double ASTRAY = 15;

  /** The even divisions that a loop may be marked in. */
  private static final int[] DIVISIONS = {2, 3, 4, 5, 6, 8};

  private final Seam seam;
  private final Seam.Layer[] layers;
  private final LayerWalk[] walks;
  private final SizedPattern sized;
  private final SewingLimits limits;
  private final List<SeamWalk.Interval> intervals;
  private final Set<Key> met = new LinkedHashSet<>();
  private final List<Problem> problems = new ArrayList<>();

  /** One notch of a cut copy and half. */
  record Key(String piece, String copy, EdgePlace.Half half, String edge, int index) {
    /** As it is drawn, whichever copy it is cut in. */
    String drawn() {
      return piece + "." + edge + " " + index;
    }
  }

  /**
   * What is wrong with a notch or two.
   *
   * @param notches the one, or the two that should meet
   */
  record Problem(Set<Key> notches, Finding finding) {
    /** Whether it is about a notch and its mate. */
    boolean isPaired() {
      return !finding.code().equals("notch-mateless");
    }
  }

  private NotchPairing(
      Seam seam, Seam.Join join, int layer, SizedPattern sized, CheckSettings settings) {
    this.seam = seam;
    this.sized = sized;
    this.limits = settings.sewing();
    layers = new Seam.Layer[] {join.layers().get(0), join.layers().get(layer)};
    SeamWalk walk = SeamWalk.of(seam, join, layer, sized);
    walks = new LayerWalk[] {walk.first(), walk.second()};
    boolean spread = seam.even().isPresent() || seam.ease().share();
    SeamWalk.Interval whole = new SeamWalk.Interval(0, walks[0].length(), 0, walks[1].length());
    intervals = !spread ? List.of() : seam.even().isPresent() ? walk.intervals() : List.of(whole);
    pair();
  }

  /** Two layers; absent where one of them is a placement line, which has no notches. */
  static Optional<NotchPairing> of(
      Seam seam, Seam.Join join, int layer, SizedPattern sized, CheckSettings settings) {
    boolean edges =
        SewnStretch.of(join.layers().get(0), sized).size() > 0
            && SewnStretch.of(join.layers().get(layer), sized).size() > 0;
    return edges
        ? Optional.of(new NotchPairing(seam, join, layer, sized, settings))
        : Optional.empty();
  }

  /** The notches that meet what they should. */
  Set<Key> met() {
    return met;
  }

  List<Problem> problems() {
    return problems;
  }

  /** How far two places are from meeting (mm), all that may be eased in deducted. */
  private double apart(Stop first, Stop second) {
    if (!intervals.isEmpty()) {
      return Math.abs(onSecond(first.distance()) - second.distance());
    }
    double longer = walks[0].length() - walks[1].length();
    double by = first.distance() - second.distance();
    return Math.max(0, Math.max(by - Math.max(0, longer), Math.min(0, longer) - by));
  }

  /** Where a place on the first layer comes to lie on the second, stretched or eased evenly. */
  private double onSecond(double distance) {
    for (SeamWalk.Interval part : intervals) {
      if (distance <= part.firstTo() + Tolerance.DRAWN_LENGTH && part.first() > 0) {
        double share = (distance - part.firstFrom()) / part.first();
        return part.secondFrom() + share * part.second();
      }
    }
    return walks[1].length();
  }

  private static List<Stop> notches(LayerWalk walk) {
    return new ArrayList<>(walk.stops().stream().filter(Stop::isNotch).toList());
  }

  private void pair() {
    List<Stop> here = notches(walks[0]);
    List<Stop> there = notches(walks[1]);
    meet(here, there, true);
    meet(here, there, false);
    settle(here, 0);
    settle(there, 1);
    for (Stop notch : List.copyOf(here)) {
      there.stream()
          .filter(mate -> apart(notch, mate) <= ASTRAY * limits.notchApart())
          .min(Comparator.comparingDouble(mate -> apart(notch, mate)))
          .ifPresent(
              mate -> {
                here.remove(notch);
                there.remove(mate);
                problems.add(apartFrom(notch, mate));
              });
    }
    here.forEach(notch -> problems.add(mateless(0, notch)));
    there.forEach(notch -> problems.add(mateless(1, notch)));
  }

  /** Takes out the pairs that meet, of one kind first, then of two. */
  private void meet(List<Stop> here, List<Stop> there, boolean sameKind) {
    for (Stop notch : List.copyOf(here)) {
      Optional<Stop> nearest =
          there.stream()
              .filter(other -> apart(notch, other) <= limits.notchApart())
              .filter(other -> !sameKind || other.kind() == notch.kind())
              .min(Comparator.comparingDouble(other -> apart(notch, other)));
      if (nearest.isPresent()) {
        Stop mate = nearest.get();
        here.remove(notch);
        there.remove(mate);
        if (sameKind) {
          meets(key(notch), key(mate));
        } else {
          problems.add(
              new Problem(
                  Set.of(key(notch), key(mate)),
                  problem("notch-kind", 0, notch).at(place(mate)).build()));
        }
      }
    }
  }

  /** Notes a pair that meets; a notch that meets its own image may still miss another. */
  private void meets(Key notch, Key mate) {
    if (!notch.drawn().equals(mate.drawn())) {
      met.add(notch);
      met.add(mate);
    }
  }

  /** Takes out the notches of a layer that meet a seam or a fold, or mark even parts. */
  private void settle(List<Stop> left, int own) {
    for (Stop notch : List.copyOf(left)) {
      if (meetsJoint(notch, 1 - own) || marksEvenParts(notch, own)) {
        left.remove(notch);
        met.add(key(notch));
      }
    }
  }

  /** Whether a notch meets a seam or a fold that the other layer passes. */
  private boolean meetsJoint(Stop notch, int other) {
    return walks[other].stops().stream()
        .filter(s -> s.kind() == LayerWalk.Kind.SEAM || s.kind() == LayerWalk.Kind.FOLD)
        .anyMatch(
            joint ->
                (other == 1 ? apart(notch, joint) : apart(joint, notch)) <= limits.notchApart());
  }

  /** Whether a notch divides an evenly stretched layer evenly; the maker divides the other. */
  private boolean marksEvenParts(Stop notch, int own) {
    double length = walks[own].length();
    if (intervals.size() != 1) {
      return false;
    }
    for (int parts : DIVISIONS) {
      double part = length / parts;
      double off = Math.abs(notch.distance() - Math.round(notch.distance() / part) * part);
      if (off <= limits.seamWarn()) {
        return true;
      }
    }
    return false;
  }

  private Problem apartFrom(Stop notch, Stop mate) {
    double apart = apart(notch, mate);
    return new Problem(
        Set.of(key(notch), key(mate)),
        problem("notch-apart", 0, notch)
            .with("apart", Argument.mm(apart))
            .with("there", Argument.mm(mate.distance()))
            .values(notch.distance(), mate.distance(), "mm")
            .at(place(mate))
            .build()
            .as(apart > limits.seamFail() ? Status.FAIL : Status.WARN));
  }

  private Problem mateless(int own, Stop notch) {
    return new Problem(
        Set.of(key(notch)),
        problem("notch-mateless", own, notch)
            .found(notch.distance(), "mm")
            .build()
            .as(Status.WARN));
  }

  private Finding.Builder problem(String code, int own, Stop notch) {
    int index = walks[own].stops().stream().filter(Stop::isNotch).toList().indexOf(notch);
    return Finding.fail(code, "seam " + seam.name())
        .with("seam", seam.name())
        .with("first", layers[own].text())
        .with("second", layers[1 - own].text())
        .with("notch", new Argument.Numbered("notch-number", index + 1))
        .with("here", Argument.mm(notch.distance()))
        .at(place(notch));
  }

  private Place place(Stop notch) {
    return Place.on(seam.origin(), notch.place().piece(), notch.point());
  }

  /** The notch that lies nearest on the drawing. */
  private Key key(Stop notch) {
    String name = notch.place().piece();
    String edge = notch.place().edge();
    Piece piece = sized.piece(name).orElseThrow();
    int nearest = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < piece.notches().size(); i++) {
      if (piece.notches().get(i).edge().equals(edge)) {
        Path path = piece.edge(edge).orElseThrow().path();
        double along = Math.min(path.length(), piece.notches().get(i).distance());
        double distance = path.at(along).point().distanceTo(notch.point());
        if (distance < least) {
          nearest = i;
          least = distance;
        }
      }
    }
    return new Key(name, notch.place().copy(), notch.place().half(), edge, nearest);
  }
}
