package org.hemwright.pattern.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;

/**
 * The notches of each edge. Named ones are found again by name; of the others as many of both, in
 * their order, are one, and where their numbers differ those that lie nearest to each other.
 */
record NotchComparing(String name, Map<String, PieceMatch.Both> sizes, List<Change> changes) {
  /** A notch with its number on its edge and where it stands on the old piece. */
  private record Stood(Notch notch, int number, int of, double fromStart, Point at, Point own) {
    String subject(String piece) {
      String which = notch.name().orElse(of == 1 ? "" : Integer.toString(number));
      return (piece + "." + notch.edge() + " notch " + which).strip();
    }
  }

  void compare() {
    BySize found = new BySize(sizes.size());
    sizes.forEach(
        (size, both) -> {
          for (Edge edge : both.now().edges()) {
            if (both.old().edge(edge.name()).isPresent()) {
              edge(
                  size,
                  stood(both.old(), edge.name(), Motion.identity()),
                  stood(both.now(), edge.name(), both.onto()),
                  found);
            }
          }
        });
    changes.addAll(found.changes());
  }

  private static List<Stood> stood(Piece piece, String name, Motion onto) {
    Edge edge = piece.edge(name).orElseThrow();
    List<Notch> own =
        piece.notches().stream()
            .filter(notch -> notch.edge().equals(name))
            .sorted(Comparator.comparingDouble(notch -> fromStart(edge, notch)))
            .toList();
    List<Stood> stood = new ArrayList<>();
    for (Notch notch : own) {
      Point at = edge.path().at(Math.min(edge.path().length(), notch.distance())).point();
      stood.add(
          new Stood(
              notch, stood.size() + 1, own.size(), fromStart(edge, notch), onto.apply(at), at));
    }
    return stood;
  }

  /** Along the edge from where the designer starts it (mm). */
  private static double fromStart(Edge edge, Notch notch) {
    return edge.reversed() ? edge.path().length() - notch.distance() : notch.distance();
  }

  private void edge(String size, List<Stood> before, List<Stood> after, BySize found) {
    List<Stood> was = new ArrayList<>(before);
    List<Stood> is = new ArrayList<>(after);
    for (Stood now : after) {
      named(was, now)
          .ifPresent(
              old -> {
                pair(size, old, now, found);
                was.remove(old);
                is.remove(now);
              });
    }
    if (was.size() == is.size()) {
      for (int i = 0; i < was.size(); i++) {
        pair(size, was.get(i), is.get(i), found);
      }
      return;
    }
    while (!was.isEmpty() && !is.isEmpty()) {
      Stood old = was.get(0);
      Stood now = is.get(0);
      for (Stood one : was) {
        for (Stood other : is) {
          if (one.at.distanceTo(other.at) < old.at.distanceTo(now.at)) {
            old = one;
            now = other;
          }
        }
      }
      pair(size, old, now, found);
      was.remove(old);
      is.remove(now);
    }
    was.forEach(old -> found.add(size, Changed.NOTCH_REMOVED, old.subject(name)));
    is.forEach(now -> found.add(size, Changed.NOTCH_ADDED, now.subject(name)));
  }

  private static Optional<Stood> named(List<Stood> among, Stood notch) {
    return notch.notch.name().isEmpty()
        ? Optional.empty()
        : among.stream().filter(s -> s.notch.name().equals(notch.notch.name())).findFirst();
  }

  private void pair(String size, Stood old, Stood now, BySize found) {
    String subject = now.subject(name);
    double apart = old.at.distanceTo(now.at);
    if (apart > Tolerance.PRINTED_AS_ONE) {
      found.add(
          size,
          Changed.NOTCH_MOVED,
          subject,
          new Change.Values(old.fromStart, now.fromStart, apart, Optional.of(now.own)));
    }
    found.add(
        size,
        Changed.NOTCH_KIND,
        subject,
        Optional.of(kind(old.notch)),
        Optional.of(kind(now.notch)));
    found.add(
        size,
        Changed.NOTCH_RENAMED,
        subject,
        Optional.of(called(old.notch)),
        Optional.of(called(now.notch)));
  }

  private static Argument kind(Notch notch) {
    return new Argument.Term(notch.kind() == Notch.Kind.SINGLE ? "single-notch" : "double-notch");
  }

  private static Argument called(Notch notch) {
    return notch.name().map(Argument::of).orElse(new Argument.Term("no-name"));
  }
}
