package org.hemwright.pattern.construction;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
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

/**
 * Sews seams: what must be so before, and what is so after. Each of its questions is asked of the
 * same pass in one order, and the order is what a maker is told.
 */
final class Sewer {
  /** A row of stitching may lie this far off the line that it is meant for (mm). */
  private static final double OFF = 1;

  private final Table table;
  private final Pressing pressing;
  private final Crossings crossings;
  private final Rounds rounds;

  Sewer(Table table, Pressing pressing, Crossings crossings, Rounds rounds) {
    this.table = table;
    this.pressing = pressing;
    this.crossings = crossings;
    this.rounds = rounds;
  }

  /** Sews passes; those of one step that lie on each other, as its act says. */
  void sew(List<Pass> passes, Step step) {
    boolean lapped = isLapped(step);
    liesTogether(passes, step);
    for (Pass pass : passes) {
      Step before = table.state(pass).sewn;
      if (before != null) {
        table.tell(Trouble.seam(Kind.SEWN_TWICE, pass).in(step).after(before));
        continue;
      }
      isThere(pass, step);
      isFree(pass, step, lapped);
      isFlat(pass, step);
      onLine(pass, step, lapped);
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
      if (pass.isOnItself()) {
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

  /** Whether it sews seams: on the machine, by hand, in a casing. */
  static boolean sews(Step step) {
    return step.act() instanceof Act.Sew
        || step.act() instanceof Act.Attach
        || step.act() instanceof Act.SetIn
        || step.act() instanceof Act.HandSew
        || step.act() instanceof Act.FormCasing;
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

  /** Seams that are sewn in one pass have a layer in common. */
  private void liesTogether(List<Pass> passes, Step step) {
    if (!isOnePass(step)) {
      return;
    }
    for (Pass pass : passes) {
      boolean others = passes.stream().anyMatch(other -> !other.seam().equals(pass.seam()));
      boolean together =
          passes.stream()
              .filter(other -> !other.seam().equals(pass.seam()))
              .anyMatch(other -> other.strips().stream().anyMatch(pass.strips()::contains));
      if (others && !together) {
        table.tell(Trouble.seam(Kind.NOT_TOGETHER, pass).in(step));
        return;
      }
    }
  }

  /** A distance that the step states is that of the seam line, or catches what is turned under. */
  private void onLine(Pass pass, Step step, boolean lapped) {
    Optional<Sewing.Distance> distance = step.sewing().distance();
    OptionalDouble at =
        distance.map(each -> table.mm(each.amount())).orElse(OptionalDouble.empty());
    if (at.isEmpty()) {
      return;
    }
    boolean raw = distance.orElseThrow().from() == Sewing.Distance.From.RAW_EDGE;
    for (Strip strip : pass.strips()) {
      double allowance = table.cloth.allowance(strip);
      if (allowance <= 0) {
        continue;
      }
      if (raw && StrictMath.abs(at.getAsDouble() - allowance) > OFF) {
        Trouble trouble = Trouble.seam(Kind.OFF_SEAM_LINE, pass).in(step).at(strip);
        table.tell(trouble.values(at.getAsDouble(), allowance));
        return;
      }
      boolean under = lapped && table.state(strip).turned != null;
      if (under && at.getAsDouble() > allowance - OFF) {
        Trouble trouble = Trouble.edge(Kind.MISSES_ALLOWANCE, strip).in(step);
        table.tell(trouble.values(at.getAsDouble(), allowance));
        return;
      }
    }
  }

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
      Set<Boolean> rounded = new HashSet<>();
      pass.join()
          .layers()
          .forEach(layer -> table.cloth.round(layer, table.corners).ifPresent(rounded::add));
      if (rounded.equals(Set.of(false)) && step.act() instanceof Act.SetIn) {
        EdgePlace end = pass.join().layers().get(0).run().get(0);
        table.tell(Trouble.seam(Kind.SET_IN_FLAT, pass).in(step).with(missing(end)));
      } else if (rounded.size() > 1) {
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
  void foldedFirst(Pass pass, Step step) {
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
        Optional<Pass> closes = rounds.closing(line.part());
        if (closes.isPresent()) {
          Step before = table.state(closes.get()).sewn;
          Trouble trouble =
              Trouble.seam(Kind.FLAT_AFTER_ROUND, pass).in(step).at(line).with(line.piece());
          table.tell(before == null ? trouble : trouble.after(before));
        }
      }
    }
  }

  // --- what is so after -------------------------------------------------------------------------

  /** A folded band sewn to itself holds its own seams inside, those of its parts too. */
  private void closeOnItself(Pass pass, Step step) {
    boolean folded = pass.parts().stream().allMatch(table.folded::containsKey);
    if (folded && !isFoldedEnd(pass)) {
      for (Part part : pass.parts()) {
        table.closed.put(part, step);
        table.cloth.strips(part).stream()
            .filter(strip -> !pass.strips().contains(strip))
            .filter(strip -> table.sewnAlong(strip).stream().anyMatch(own -> isInside(own, pass)))
            .forEach(strip -> enclose(strip, step));
      }
    }
  }

  /** Whether a seam joins no more than what a closed band is put together of. */
  private static boolean isInside(Pass own, Pass closing) {
    return closing.parts().containsAll(own.parts());
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
      for (Pass under : rounds.passesOn(part)) {
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

  void enclose(Strip strip, Step step) {
    Table.StripState state = table.state(strip);
    if (state.enclosed == null && !table.cloth.isLine(strip)) {
      state.enclosed = step;
    }
  }
}
