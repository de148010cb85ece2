package org.hemwright.pattern.construction;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.pattern.construction.Trouble.Kind;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.Seam;

/** Turns pieces right side out, and facings to the inside. */
final class TurnWork {
  private final Table table;
  private final Pressing pressing;
  private final Rounds rounds;
  private final Sewer sewer;

  TurnWork(Table table, Pressing pressing, Rounds rounds, Sewer sewer) {
    this.table = table;
    this.pressing = pressing;
    this.rounds = rounds;
    this.sewer = sewer;
  }

  /**
   * Stitching a facing to the allowances turns it to the inside: its seam, and the seams of all
   * that hangs on it, come to lie between it and the outer cloth. The allowances lie toward the
   * facing, which is the smaller of the two.
   */
  void turnInside(Pass pass, Step step) {
    Set<Part> toward =
        table.state(pass).direction.map(way -> pressing.side(pass, way)).orElse(Set.of());
    Set<Part> facing = smaller(pass).orElse(toward);
    if (table.isSewn(pass) && (toward.isEmpty() || !facing.containsAll(toward))) {
      Trouble trouble = Trouble.seam(Kind.UNDERSTITCH_WAY, pass).in(step);
      Step pressed = table.state(pass).pressed;
      table.tell(pressed == null ? trouble : trouble.after(pressed));
    }
    Set<Part> inner = new LinkedHashSet<>();
    Set<Part> outer = new HashSet<>();
    for (Seam.Layer layer : pass.join().layers()) {
      List<Part> parts = layer.run().stream().map(Part::of).toList();
      (parts.stream().anyMatch(facing::contains) ? inner : outer).addAll(parts);
    }
    if (inner.isEmpty() || inner.stream().anyMatch(outer::contains)) {
      return;
    }
    inReach(inner, step);
    List<Part> left = new ArrayList<>(inner);
    while (!left.isEmpty()) {
      for (Pass other : rounds.passesOn(left.remove(left.size() - 1))) {
        if (other.parts().stream().noneMatch(outer::contains)) {
          other.strips().forEach(strip -> sewer.enclose(strip, step));
          other.parts().stream().filter(inner::add).forEach(left::add);
        }
      }
    }
    pass.strips().forEach(strip -> sewer.enclose(strip, step));
    table.inside.addAll(inner);
  }

  /** The parts of the smaller of two layers; nothing where both are of one size. */
  private Optional<Set<Part>> smaller(Pass pass) {
    List<Seam.Layer> layers = pass.join().layers();
    if (layers.size() != 2) {
      return Optional.empty();
    }
    double one = area(layers.get(0));
    double other = area(layers.get(1));
    if (StrictMath.abs(one - other) < 0.1 * StrictMath.max(one, other)) {
      return Optional.empty();
    }
    Set<Part> parts = new LinkedHashSet<>();
    layers.get(one < other ? 0 : 1).run().forEach(place -> parts.add(Part.of(place)));
    return Optional.of(parts);
  }

  private double area(Seam.Layer layer) {
    return layer.run().stream()
        .map(Part::of)
        .distinct()
        .flatMap(part -> table.cloth.piece(part.piece()).stream())
        .mapToDouble(TurnWork::area)
        .sum();
  }

  private static double area(Piece piece) {
    double drawn = StrictMath.abs(piece.stitchLine().signedArea());
    return piece.foldEdge().isPresent() ? 2 * drawn : drawn;
  }

  /** A facing whose edges are sewn down by hand lies inside already. */
  private void inReach(Set<Part> facing, Step step) {
    for (Part part : facing) {
      for (Strip strip : table.cloth.strips(part)) {
        Step treated = table.state(strip).treated;
        if (treated != null && treated.act() instanceof Act.HandSew) {
          table.late(Kind.ENCLOSED, strip, step, treated);
          return;
        }
      }
    }
  }

  /**
   * Turns a part right side out: the seams round it come to lie inside, but for those of a tube
   * that is open at both its ends, as a leg is. What two like copies hold between them lies inside.
   */
  void turnOut(Part part, Step step) {
    List<Pass> round = rounds.passesOn(part);
    if (round.isEmpty()) {
      table.tell(Trouble.about(Kind.NOT_SEWN_YET, "piece", part.piece()).in(step));
    } else {
      canBeTurned(part, step);
    }
    boolean tube = rounds.isTube(part);
    round.stream()
        .filter(pass -> !tube || isBetweenLikes(pass, part))
        .flatMap(pass -> pass.strips().stream())
        .forEach(strip -> sewer.enclose(strip, step));
    table.turnedOut.putIfAbsent(part, step);
  }

  private void canBeTurned(Part part, Step step) {
    Step before = table.turnedOut.get(part);
    Step fold = table.folded.get(part);
    if (before != null && !before.equals(step)) {
      table.tell(Trouble.about(Kind.SEWN_ALREADY, "piece", part.piece()).in(step).after(before));
    } else if (fold != null && fold.act() instanceof Act.Fold way && way.wrongSidesTogether()) {
      table.tell(Trouble.about(Kind.INSIDE_OUT, "piece", part.piece()).in(step).after(fold));
    }
    Set<Part> all = rounds.hanging(part);
    if (!rounds.isBag(all)) {
      return;
    }
    boolean open = false;
    Step closed = null;
    String name = "";
    for (var each : table.openings.entrySet()) {
      Table.Opening opening = each.getValue();
      if (opening.passes.stream().anyMatch(pass -> pass.parts().stream().anyMatch(all::contains))) {
        open |= opening.closed == null;
        if (opening.closed != null) {
          closed = opening.closed;
          name = each.getKey();
        }
      }
    }
    if (!open && closed != null) {
      table.tell(
          Trouble.about(Kind.CLOSED_BEFORE_TURNED, "opening", name)
              .in(step)
              .after(closed)
              .with(part.piece()));
    } else if (!open) {
      table.tell(Trouble.about(Kind.NOWHERE_TO_TURN, "piece", part.piece()).in(step));
    }
  }

  /**
   * Whether a pass holds something between two copies of a piece, as the back between two yokes.
   */
  private static boolean isBetweenLikes(Pass pass, Part part) {
    return pass.join().layers().size() > 2
        && pass.parts().stream().filter(other -> other.piece().equals(part.piece())).count() > 1;
  }
}
