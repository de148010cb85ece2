package org.hemwright.pattern.construction;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.construction.Corners.Corner;
import org.hemwright.pattern.construction.Trouble.Kind;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.PressDirection;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/** Sews seams. */
final class Sewer {
  /** An edge looks away from another where it lies less than 60 degrees off. */
  private static final double FACING = -0.5;

  private final Table table;
  private final Pressing pressing;
  private final Crossings crossings;

  Sewer(Table table, Pressing pressing, Crossings crossings) {
    this.table = table;
    this.pressing = pressing;
    this.crossings = crossings;
  }

  /** Sews passes; those of one step that lie on each other, as its act says. */
  void sew(List<Pass> passes, Step step) {
    boolean lapped = isLapped(step);
    for (Pass pass : passes) {
      Step before = table.state(pass).sewn;
      if (before != null) {
        table.tell(Trouble.seam(Kind.SEWN_TWICE, pass).in(step).after(before));
        continue;
      }
      isThere(pass, step);
      isFree(pass, step, lapped);
      isFlat(pass, step);
      crossings.cross(pass, step);
    }
    boolean overlocked = !step.sewing().choices().isEmpty() && always(step.sewing());
    boolean manyLayers = passes.size() > 1 && isOnePass(step);
    for (Pass pass : passes) {
      Table.PassState state = table.state(pass);
      if (state.sewn == null) {
        state.sewn = step;
        table.cloth.bring(pass, table.corners);
      }
      if (overlocked || manyLayers) {
        state.joinedAsOne = step;
      }
      pass.strips().forEach(strip -> finishedBy(strip, step));
      if (pass.isWithinOnePart()) {
        closeOnItself(pass, step);
      }
      if (lapped) {
        lap(pass, step);
      }
    }
  }

  static boolean isOnePass(Step step) {
    return step.act() instanceof Act.Attach || (step.act() instanceof Act.Sew sew && sew.onePass());
  }

  /** Whether the stitching lies on top, at the edge of what it holds down. */
  static boolean isLapped(Step step) {
    boolean atEdge =
        step.sewing()
            .distance()
            .map(Sewing.Distance::from)
            .filter(from -> from == Sewing.Distance.From.EDGE || from == Sewing.Distance.From.FOLD)
            .isPresent();
    return atEdge || step.act() instanceof Act.FormCasing || step.act() instanceof Act.HandSew;
  }

  /** Whether every choice of stitch finishes the edges that it sews. */
  static boolean always(Sewing sewing) {
    return sewing.raw().isEmpty()
        && sewing.choices().stream().allMatch(stitch -> stitch.kind().finishesEdges());
  }

  static boolean ever(Sewing sewing) {
    return sewing.choices().stream().anyMatch(stitch -> stitch.kind().finishesEdges());
  }

  private void finishedBy(Strip strip, Step step) {
    if (ever(step.sewing()) && table.cloth.allowance(strip) > 0) {
      Table.StripState state = table.state(strip);
      boolean surely = always(step.sewing());
      if (surely && state.surelyFinished && state.finish != null && !sewnTogether(strip, step)) {
        table.late(Kind.FINISHED_TWICE, strip, step, state.finish);
      }
      if (state.finish == null) {
        state.finish = step;
      }
      state.surelyFinished |= surely;
    }
  }

  /** Whether the step sews the strip in two seams at once. */
  private boolean sewnTogether(Strip strip, Step step) {
    return step.equals(table.state(strip).finish);
  }

  // --- what must be so before -------------------------------------------------------------------

  /** The edges of a layer hang together, and layers are all round or all flat. */
  private void isThere(Pass pass, Step step) {
    boolean whole = true;
    for (Seam.Layer layer : pass.join().layers()) {
      List<EdgePlace> run = layer.run();
      for (int i = 0; i + 1 < run.size(); i++) {
        Optional<Corner> here = table.cloth.end(run.get(i));
        Optional<Corner> there = table.cloth.start(run.get(i + 1));
        if (here.isPresent()
            && there.isPresent()
            && !table.corners.together(here.get(), there.get())) {
          whole = false;
          Trouble trouble = Trouble.seam(Kind.PART_MISSING, pass).in(step).at(Strip.of(run.get(i)));
          table.tell(trouble.with(missing(run.get(i))));
        }
      }
    }
    if (whole && !table.cloth.isPlaced(pass)) {
      Set<Boolean> rounds = new HashSet<>();
      pass.join()
          .layers()
          .forEach(layer -> table.cloth.round(layer, table.corners).ifPresent(rounds::add));
      if (rounds.size() > 1) {
        Seam.Layer flat =
            pass.join().layers().stream()
                .filter(layer -> !table.cloth.round(layer, table.corners).orElse(true))
                .findFirst()
                .orElseThrow();
        EdgePlace end = flat.run().get(flat.run().size() - 1);
        table.tell(
            Trouble.seam(Kind.ROUND_TO_FLAT, pass).in(step).at(Strip.of(end)).with(missing(end)));
      }
    }
  }

  /** The seam that is not sewn yet at the end of a place. */
  private String missing(EdgePlace place) {
    return table.cloth.beside(place, false).stream()
        .flatMap(strip -> table.cloth.passesOf(strip).stream())
        .filter(pass -> !table.isSewn(pass))
        .map(pass -> pass.seam().name())
        .findFirst()
        .orElseGet(() -> Strip.of(place).text());
  }

  /** No edge is out of reach, hemmed, or waiting for a dart. */
  private void isFree(Pass pass, Step step, boolean lapped) {
    for (Strip strip : new LinkedHashSet<>(pass.strips())) {
      Table.StripState state = table.state(strip);
      boolean turned = lapped && table.turnedOut.containsKey(strip.part());
      if (state.enclosed != null && !turned) {
        table.late(Kind.ENCLOSED, strip, step, state.enclosed);
      }
      intakes(strip, step);
    }
    if (pass.isWithinOnePart() && !table.cloth.isPlaced(pass)) {
      foldedFirst(pass, step);
    }
    if (lapped || table.cloth.isPlaced(pass)) {
      turnedUnder(pass, step);
    }
    if (table.cloth.isPlaced(pass)) {
      for (Strip strip : pass.strips()) {
        if (table.cloth.isLine(strip) && table.marked.stream().noneMatch(strip::equals)) {
          table.tell(Trouble.edge(Kind.UNMARKED, strip).in(step).with(pass.seam().name()));
        }
      }
    }
  }

  private void intakes(Strip strip, Step step) {
    Optional<Piece> piece = table.cloth.piece(strip.piece());
    for (Intake intake : piece.map(Piece::intakes).orElse(List.of())) {
      String name = strip.piece() + "." + intake.name();
      if (intake.edge().equals(strip.edge()) && !table.takenIn.containsKey(name)) {
        table.tell(Trouble.edge(Kind.INTAKE_LATE, strip).in(step).with(name));
      }
    }
  }

  /** A band is joined to a ring first, then folded, then sewn to itself. */
  private void foldedFirst(Pass pass, Step step) {
    Part part = pass.parts().get(0);
    if (isFoldedEnd(pass)) {
      if (!table.folded.containsKey(part)) {
        table.tell(Trouble.seam(Kind.NOT_FOLDED, pass).in(step).with(part.piece()));
      }
      return;
    }
    List<Pass> own =
        table.cloth.passes().stream()
            .filter(Pass::isWithinOnePart)
            .filter(each -> each.parts().contains(part) && !isFoldedEnd(each))
            .toList();
    if (own.size() < 2) {
      return;
    }
    boolean longest = own.stream().allMatch(each -> length(each) <= length(pass));
    if (longest && !table.folded.containsKey(part)) {
      table.tell(Trouble.seam(Kind.NOT_FOLDED, pass).in(step).with(part.piece()));
    } else if (!longest && table.folded.containsKey(part)) {
      Step fold = table.folded.get(part);
      Trouble trouble = Trouble.seam(Kind.FOLDED_ALREADY, pass).in(step).with(part.piece());
      table.tell(fold == null ? trouble : trouble.after(fold));
    }
  }

  /**
   * Whether a pass closes an edge that the fold itself halves, as the ends of a cuff or the neck
   * end of a placket: it is sewn when the part is folded, and makes no ring.
   */
  private boolean isFoldedEnd(Pass pass) {
    List<Strip> strips = pass.strips();
    Strip first = strips.get(0);
    boolean one = strips.stream().allMatch(strip -> strip.edge().equals(first.edge()));
    boolean whole = first.half() == EdgePlace.Half.WHOLE;
    return pass.isWithinOnePart() && one && (whole || isBesideFold(first));
  }

  private boolean isBesideFold(Strip strip) {
    Piece piece = table.cloth.piece(strip.piece()).orElseThrow();
    int count = piece.edges().size();
    for (int i = 0; i < count; i++) {
      boolean here = piece.edges().get(i).name().equals(strip.edge());
      Edge before = piece.edges().get((i + count - 1) % count);
      Edge after = piece.edges().get((i + 1) % count);
      if (here && (before.onFold() || after.onFold())) {
        return true;
      }
    }
    return false;
  }

  private double length(Pass pass) {
    return table.cloth.edge(pass.strips().get(0)).map(edge -> edge.path().length()).orElse(0.0);
  }

  /** What is stitched down from on top has its allowance turned under. */
  private void turnedUnder(Pass pass, Step step) {
    List<Strip> edges =
        pass.strips().stream()
            .filter(strip -> table.cloth.allowance(strip) > 0)
            .filter(strip -> !table.cloth.isLine(strip))
            .toList();
    boolean placed = table.cloth.isPlaced(pass);
    boolean any = edges.stream().anyMatch(this::isTurned);
    for (Strip strip : edges) {
      if (placed ? !isTurned(strip) : !any) {
        table.tell(Trouble.edge(Kind.NOT_TURNED_UNDER, strip).in(step).with(pass.seam().name()));
        if (!placed) {
          return;
        }
      }
    }
  }

  private boolean isTurned(Strip strip) {
    Table.StripState state = table.state(strip);
    return state.turned != null
        || state.treated != null
        || table.turnedOut.containsKey(strip.part());
  }

  /** A patch is sewn on while the cloth under it still lies flat. */
  private void isFlat(Pass pass, Step step) {
    for (Strip line : pass.strips()) {
      if (table.cloth.isLine(line)) {
        Optional<Pass> closes = closing(line.part());
        if (closes.isPresent()) {
          Step before = table.state(closes.get()).sewn;
          Trouble trouble =
              Trouble.seam(Kind.FLAT_AFTER_ROUND, pass).in(step).at(line).with(line.piece());
          table.tell(before == null ? trouble : trouble.after(before));
        }
      }
    }
  }

  /** The later of two seams that bring opposite edges of a part together to a round. */
  private Optional<Pass> closing(Part part) {
    for (Pass pass : passesOn(part)) {
      List<Strip> ends = pass.strips();
      boolean tube = pass.isWithinOnePart() && ends.size() == 2 && joinsParts(pass);
      if (tube && !table.folded.containsKey(part) && face(ends.get(0), ends.get(1))) {
        return Optional.of(pass);
      }
    }
    List<Strip> strips =
        table.cloth.strips(part).stream()
            .filter(strip -> table.sewnAlong(strip).stream().anyMatch(this::joinsParts))
            .toList();
    for (Strip one : strips) {
      for (Strip other : strips) {
        if (face(one, other)) {
          Set<Part> met = new HashSet<>(partners(one, part));
          met.retainAll(partners(other, part));
          if (!met.isEmpty()) {
            return table.sewnAlong(other).stream().filter(this::joinsParts).findFirst();
          }
        }
      }
    }
    return Optional.empty();
  }

  private boolean joinsParts(Pass pass) {
    return !table.cloth.isPlaced(pass);
  }

  private Set<Part> partners(Strip strip, Part part) {
    Set<Part> met = new HashSet<>();
    for (Pass pass : table.sewnAlong(strip)) {
      if (joinsParts(pass)) {
        pass.parts().stream().filter(other -> !other.equals(part)).forEach(met::add);
      }
    }
    return met;
  }

  // --- what is so after -------------------------------------------------------------------------

  /** A folded band sewn to itself holds its own seams inside. */
  private void closeOnItself(Pass pass, Step step) {
    Part part = pass.parts().get(0);
    if (table.folded.containsKey(part) && !isFoldedEnd(pass)) {
      table.closed.put(part, step);
      table.cloth.strips(part).stream()
          .filter(strip -> !pass.strips().contains(strip))
          .filter(strip -> table.sewnAlong(strip).stream().anyMatch(Pass::isWithinOnePart))
          .forEach(strip -> enclose(strip, step));
    }
  }

  /** What is stitched down from on top holds the allowances that lie under it. */
  private void lap(Pass pass, Step step) {
    Set<Part> over = new LinkedHashSet<>();
    for (Strip strip : pass.strips()) {
      if (isTurned(strip)) {
        enclose(strip, step);
        over.add(strip.part());
      }
    }
    for (Part part : over) {
      for (Pass under : passesOn(part)) {
        Optional<Boolean> open =
            table.state(under).direction.map(PressDirection.Open.class::isInstance);
        boolean toward =
            table
                .state(under)
                .direction
                .filter(way -> pressing.side(under, way).contains(part))
                .isPresent();
        if (!under.equals(pass) && (toward || (under.isWithinOnePart() && open.orElse(false)))) {
          under.strips().forEach(strip -> enclose(strip, step));
        }
      }
      table.closed.putIfAbsent(part, step);
    }
  }

  private List<Pass> passesOn(Part part) {
    return table.cloth.passesOn(part).stream().filter(table::isSewn).toList();
  }

  void enclose(Strip strip, Step step) {
    Table.StripState state = table.state(strip);
    if (state.enclosed == null && !table.cloth.isLine(strip)) {
      state.enclosed = step;
    }
  }

  /**
   * Stitching a facing to the allowances turns it to the inside: its seam, and the seams of all
   * that hangs on it, come to lie between it and the outer cloth.
   */
  void turnInside(Pass pass, Step step) {
    Set<Part> toward =
        table.state(pass).direction.map(way -> pressing.side(pass, way)).orElse(Set.of());
    Set<Part> inner = new LinkedHashSet<>();
    Set<Part> outer = new HashSet<>();
    for (Seam.Layer layer : pass.join().layers()) {
      List<Part> parts = layer.run().stream().map(Part::of).toList();
      (parts.stream().anyMatch(toward::contains) ? inner : outer).addAll(parts);
    }
    if (inner.isEmpty() || inner.stream().anyMatch(outer::contains)) {
      return;
    }
    List<Part> left = new ArrayList<>(inner);
    while (!left.isEmpty()) {
      for (Pass other : passesOn(left.remove(left.size() - 1))) {
        if (other.parts().stream().noneMatch(outer::contains)) {
          other.strips().forEach(strip -> enclose(strip, step));
          other.parts().stream().filter(inner::add).forEach(left::add);
        }
      }
    }
    pass.strips().forEach(strip -> enclose(strip, step));
    table.inside.addAll(inner);
  }

  /**
   * Turns a part right side out: the seams round it come to lie inside, but for those of a tube
   * that is open at both its ends, as a leg is. What two like copies hold between them lies inside.
   */
  void turnOut(Part part, Step step) {
    List<Pass> round = passesOn(part);
    if (round.isEmpty()) {
      table.tell(Trouble.about(Kind.NOT_SEWN_YET, "piece", part.piece()).in(step));
    }
    boolean tube = isTube(part);
    round.stream()
        .filter(pass -> !tube || isBetweenLikes(pass, part))
        .flatMap(pass -> pass.strips().stream())
        .forEach(strip -> enclose(strip, step));
    table.turnedOut.putIfAbsent(part, step);
  }

  /**
   * Whether a pass holds something between two copies of a piece, as the back between two yokes.
   */
  private static boolean isBetweenLikes(Pass pass, Part part) {
    return pass.join().layers().size() > 2
        && pass.parts().stream().filter(other -> other.piece().equals(part.piece())).count() > 1;
  }

  private boolean isTube(Part part) {
    List<Strip> open =
        table.cloth.strips(part).stream()
            .filter(strip -> table.sewnAlong(strip).isEmpty())
            .toList();
    return closing(part).isPresent()
        && open.stream().anyMatch(one -> open.stream().anyMatch(other -> face(one, other)));
  }

  /** Whether who leaves an edge squarely into the cloth comes to the other, and back. */
  private boolean face(Strip one, Strip other) {
    Vector across = table.cloth.middle(other).minus(table.cloth.middle(one));
    double wide = across.length();
    return wide > 0
        && table.cloth.outward(one).dot(across) < FACING * wide
        && table.cloth.outward(other).dot(across) > -FACING * wide;
  }
}
