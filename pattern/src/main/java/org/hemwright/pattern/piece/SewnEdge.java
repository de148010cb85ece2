package org.hemwright.pattern.piece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * An edge as it is sewn: darts and pleats folded away, gathers drawn up. Lengths along the path and
 * lengths as sewn are told from one another here (both in mm, from the same end).
 *
 * @param drawn the length of the edge's path
 * @param intakes on that path, in its direction, apart from one another
 */
public record SewnEdge(double drawn, List<Stretch> intakes) {
  public SewnEdge {
    intakes = List.copyOf(intakes);
  }

  /**
   * A stretch of the path that is shorter when it is sewn.
   *
   * @param from where it begins along the path (mm)
   * @param to where it ends (mm), more than {@code from}
   * @param sewn how long it is then (mm): 0 or more, and less than the stretch
   */
  public record Stretch(double from, double to, double sewn) {}

  /** An edge of a piece, in the direction of its path. */
  public static SewnEdge of(Piece piece, Edge edge) {
    return of(
        edge.path().length(),
        piece.intakes().stream().filter(intake -> intake.edge().equals(edge.name())).toList());
  }

  /** A path of a length with intakes on it. */
  public static SewnEdge of(double drawn, List<? extends Intake> intakes) {
    List<Stretch> stretches = new ArrayList<>();
    for (Intake intake : intakes) {
      stretches.add(new Stretch(intake.from(), intake.to(), intake.sewn()));
    }
    stretches.sort(Comparator.comparingDouble(Stretch::from));
    return new SewnEdge(drawn, stretches);
  }

  /** The same edge told from its other end. */
  public SewnEdge reversed() {
    List<Stretch> back = new ArrayList<>();
    for (Stretch each : intakes) {
      back.add(0, new Stretch(drawn - each.to, drawn - each.from, each.sewn));
    }
    return new SewnEdge(drawn, back);
  }

  /** Its length as sewn (mm). */
  public double length() {
    return sewnAt(drawn);
  }

  /** How far a place of the path lies from the start as sewn (mm). */
  public double sewnAt(double place) {
    double sewn = place;
    for (Stretch each : intakes) {
      double within = Math.max(0, Math.min(each.to, place) - each.from);
      sewn -= within * (1 - each.sewn / (each.to - each.from));
    }
    return sewn;
  }

  /** The place of the path that lies so far from the start as sewn (mm); of a fold, its start. */
  public double placeOf(double sewn) {
    double before = 0;
    double place = 0;
    for (Stretch each : intakes) {
      double plain = each.from - place;
      if (sewn <= before + plain) {
        return place + (sewn - before);
      }
      before += plain;
      if (each.sewn > 0 && sewn <= before + each.sewn) {
        return each.from + (sewn - before) * (each.to - each.from) / each.sewn;
      }
      before += each.sewn;
      place = each.to;
    }
    return place + (sewn - before);
  }

  /** Whether a place of the path is folded away, the ends of a fold with it. */
  public boolean isFolded(double place, double tolerance) {
    return intakes.stream()
        .anyMatch(
            each ->
                each.sewn == 0 && place >= each.from - tolerance && place <= each.to + tolerance);
  }
}
