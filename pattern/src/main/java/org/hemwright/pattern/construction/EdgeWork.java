package org.hemwright.pattern.construction;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.pattern.construction.Trouble.Kind;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.seam.EdgePlace;

/** Hems, finishes, binds and leaves edges. */
final class EdgeWork {
  /** A row of stitching may lie this far beyond a fold without missing it (mm). */
  static final double EDGE = 0.5;

  private final Table table;
  private final Crossings crossings;
  private final Sewer sewer;

  EdgeWork(Table table, Crossings crossings, Sewer sewer) {
    this.table = table;
    this.crossings = crossings;
    this.sewer = sewer;
  }

  /** Turns an edge and stitches it: a hem, or a casing that is turned back. */
  void hem(Strip strip, Step step) {
    if (isSewnWhole(strip)) {
      table.tell(
          Trouble.edge(Kind.HEMMED_AND_SEWN, strip)
              .in(step)
              .with(table.cloth.passesOf(strip).get(0).seam().name()));
      return;
    }
    if (treat(strip, step)) {
      seamsBefore(strip, step);
      depth(strip, step);
      crossings.cross(strip, step);
      if (table.cloth.folds(strip).size() > 1) {
        sewer.enclose(strip, step);
      }
      if (Sewer.always(step.sewing())) {
        table.state(strip).surelyFinished = true;
      }
    }
  }

  /** An edge turned under and sewn down by hand shuts its own allowance in. */
  void hemByHand(Strip strip, Step step) {
    hem(strip, step);
    if (table.cloth.folds(strip).isEmpty() || table.inside.contains(strip.part())) {
      sewer.enclose(strip, step);
    }
  }

  /** Notes that an edge is dealt with; whether nothing had been done to it. */
  private boolean treat(Strip strip, Step step) {
    Table.StripState state = table.state(strip);
    if (state.treated != null) {
      table.late(Kind.TREATED_TWICE, strip, step, state.treated);
      return false;
    }
    state.treated = step;
    return true;
  }

  /** Whether seams of this view take all of an edge. */
  boolean isSewnWhole(Strip strip) {
    List<EdgePlace> places =
        table.cloth.passesOf(strip).stream()
            .flatMap(pass -> pass.join().layers().stream())
            .flatMap(layer -> layer.run().stream())
            .filter(place -> Strip.of(place).equals(strip))
            .toList();
    List<Optional<String>> starts =
        places.stream().filter(p -> p.to().isEmpty()).map(EdgePlace::from).toList();
    return places.stream()
        .filter(place -> place.from().isEmpty())
        .anyMatch(place -> place.to().isEmpty() || starts.contains(place.to()));
  }

  /**
   * A hem that runs on over a seam is turned after that is sewn; a pocket's before it is sewn on.
   */
  private void seamsBefore(Strip strip, Step step) {
    for (boolean begins : new boolean[] {true, false}) {
      Optional<Strip> beside = table.cloth.beside(strip, begins);
      for (Pass pass : beside.map(table.cloth::passesOf).orElse(List.of())) {
        boolean sewn = table.isSewn(pass);
        boolean flat = table.cloth.isPlaced(pass);
        if (flat && sewn) {
          table.late(Kind.ENCLOSED, strip, step, table.state(pass).sewn);
          return;
        }
        if (!flat && !sewn && runsOn(strip, pass)) {
          table.tell(Trouble.edge(Kind.HEM_BEFORE_SEAM, strip).in(step).with(pass.seam().name()));
          return;
        }
      }
    }
  }

  /** Whether a hem goes on beyond a seam: an edge there is turned back too. */
  private boolean runsOn(Strip strip, Pass seam) {
    return seam.strips().stream()
        .filter(other -> !other.part().equals(strip.part()) || seam.isWithinOnePart())
        .anyMatch(
            other ->
                table.cloth.strips(other.part()).stream()
                    .anyMatch(each -> !table.cloth.folds(each).isEmpty()));
  }

  private void depth(Strip strip, Step step) {
    List<Double> folds = table.cloth.folds(strip);
    if (table.cloth.allowance(strip) <= 0) {
      table.tell(Trouble.edge(Kind.NO_HEM, strip).in(step));
      return;
    }
    Optional<Sewing.Distance> distance = step.sewing().distance();
    if (folds.isEmpty() || distance.isEmpty()) {
      return;
    }
    OptionalDouble at = table.mm(distance.get().amount());
    Sewing.Distance.From from = distance.get().from();
    boolean counts = from == Sewing.Distance.From.FOLD || from == Sewing.Distance.From.RAW_EDGE;
    double deep = folds.get(0);
    double rows =
        (step.sewing().rows() - 1)
            * step.sewing().apart().map(table::mm).orElse(OptionalDouble.empty()).orElse(0);
    if (counts && at.isPresent() && rows > 0 && at.getAsDouble() + rows > deep + EDGE) {
      table.tell(
          Trouble.edge(Kind.MISSES_HEM, strip).in(step).values(at.getAsDouble() + rows, deep));
    } else if (counts && at.isPresent() && at.getAsDouble() > deep + EDGE) {
      table.tell(Trouble.edge(Kind.MISSES_HEM, strip).in(step).values(at.getAsDouble(), deep));
    }
  }

  /** A binding that runs on over a seam is sewn on after that. */
  private void boundBefore(Strip strip, Step step) {
    for (boolean begins : new boolean[] {true, false}) {
      for (Pass pass :
          table.cloth.beside(strip, begins).map(table.cloth::passesOf).orElse(List.of())) {
        boolean runsOn =
            pass.parts().stream()
                .filter(part -> !part.equals(strip.part()))
                .flatMap(part -> table.cloth.strips(part).stream())
                .anyMatch(other -> step.work().stream().anyMatch(work -> names(work, other)));
        if (!table.cloth.isPlaced(pass) && !table.isSewn(pass) && runsOn) {
          table.tell(Trouble.edge(Kind.BOUND_BEFORE_SEAM, strip).in(step).with(pass.seam().name()));
          return;
        }
      }
    }
  }

  private static boolean names(Work work, Strip strip) {
    return work instanceof Work.OfEdge edge
        && edge.piece().equals(strip.piece())
        && edge.edge().equals(strip.edge());
  }

  void bind(Strip strip, Step step) {
    if (treat(strip, step)) {
      boundBefore(strip, step);
      table.state(strip).surelyFinished = true;
      crossings.cross(strip, step);
    }
  }

  void leaveRaw(Strip strip, Step step) {
    Table.StripState state = table.state(strip);
    if (state.surelyFinished && state.finish != null) {
      table.late(Kind.FINISHED_TWICE, strip, step, state.finish);
    } else if (table.cloth.passesOf(strip).isEmpty()) {
      treat(strip, step);
    }
    state.raw = true;
    if (step.act() instanceof Act.LeaveRaw raw && raw.why().isEmpty()) {
      state.rawUnsaid = step;
    }
  }

  /** A line that keeps an edge from stretching lies in its allowance, where it does not show. */
  void insideAllowance(Strip strip, Step step) {
    Optional<Sewing.Distance> distance = step.sewing().distance();
    boolean raw = distance.filter(each -> each.from() == Sewing.Distance.From.RAW_EDGE).isPresent();
    OptionalDouble at =
        distance.map(each -> table.mm(each.amount())).orElse(OptionalDouble.empty());
    double allowance = table.cloth.allowance(strip);
    if (raw && allowance > 0 && at.isPresent() && at.getAsDouble() > allowance + EDGE) {
      table.tell(
          Trouble.edge(Kind.OUTSIDE_ALLOWANCE, strip).in(step).values(at.getAsDouble(), allowance));
    }
  }

  /** Finishes a strip's cut edge, alone or as one with those that it is sewn to. */
  void finish(Strip strip, Step step) {
    Table.StripState state = table.state(strip);
    if (state.enclosed != null) {
      table.late(Kind.ENCLOSED, strip, step, state.enclosed);
    } else if (state.treated != null && !table.cloth.folds(strip).isEmpty()) {
      table.late(Kind.ENCLOSED, strip, step, state.treated);
    } else if (state.finish != null && step.sewing().raw().isEmpty()) {
      table.late(Kind.FINISHED_TWICE, strip, step, state.finish);
    } else if (state.raw) {
      table.late(Kind.FINISHED_TWICE, strip, step, state.treated);
    }
    if (state.finish == null) {
      state.finish = step;
    }
    state.surelyFinished = true;
  }

  void finish(Pass pass, Step step, boolean together) {
    Table.PassState state = table.state(pass);
    if (together && state.sewn == null) {
      table.tell(Trouble.seam(Kind.NOT_SEWN_YET, pass).in(step));
    }
    if (state.crossed != null && !step.equals(state.crossed)) {
      table.tell(Trouble.seam(Kind.CROSSED, pass).in(step).after(state.crossed));
    }
    if (together && state.direction.filter(Crossings::isOpen).isPresent()) {
      Trouble trouble = Trouble.seam(Kind.CANNOT_OPEN, pass).in(step);
      table.tell(state.pressed == null ? trouble : trouble.after(state.pressed));
    }
    if (together && state.joinedAsOne == null) {
      state.joinedAsOne = step;
    }
    bundle(pass, together).stream()
        .filter(strip -> table.cloth.allowance(strip) > 0)
        .filter(strip -> !step.equals(table.state(strip).finish))
        .forEach(strip -> finish(strip, step));
  }

  /** The strips of a pass and, where more lie on it in one pass, of those too. */
  private List<Strip> bundle(Pass pass, boolean together) {
    Step sewn = table.state(pass).sewn;
    if (!together || sewn == null || !Sewer.isOnePass(sewn)) {
      return pass.strips();
    }
    return table.cloth.passes().stream()
        .filter(other -> sewn.equals(table.state(other).sewn))
        .filter(other -> other.parts().stream().anyMatch(pass.parts()::contains))
        .flatMap(other -> other.strips().stream())
        .distinct()
        .toList();
  }

  // --- what is left at the end ------------------------------------------------------------------

  /** Every strip that nothing has been done to, and every cut edge that will fray. */
  void atTheEnd() {
    for (Pass pass : table.cloth.passes()) {
      if (!table.isSewn(pass)) {
        table.tell(Trouble.seam(Kind.UNSEWN, pass));
      }
    }
    table.cloth.passes().forEach(this::heldForGood);
    for (Strip strip : table.cloth.strips()) {
      Table.StripState state = table.state(strip);
      heldForGood(strip, state);
      leftToFray(strip, state);
      boolean dealt =
          isSewnWhole(strip)
              || state.treated != null
              || (state.applied && table.cloth.folds(strip).isEmpty())
              || (state.finish != null && table.cloth.folds(strip).isEmpty())
              || state.raw;
      if (!dealt) {
        table.tell(Trouble.edge(Kind.UNTREATED, strip));
      } else if (frays(strip, state)) {
        Trouble trouble =
            isSewnWhole(strip)
                ? Trouble.seam(Kind.UNFINISHED, seamOf(strip)).at(strip).with(strip.text())
                : Trouble.edge(Kind.UNFINISHED, strip);
        Optional<Step> step = Optional.ofNullable(by(strip, state));
        table.tell(step.map(trouble::in).orElse(trouble));
      }
    }
  }

  /** Basting comes out again: what it holds is sewn over, or sewn as well. */
  private void heldForGood(Pass pass) {
    Step sewn = table.state(pass).sewn;
    if (sewn == null || !isBasted(sewn)) {
      return;
    }
    boolean held =
        pass.strips().stream()
            .anyMatch(
                strip ->
                    table.state(strip).treated != null
                        || table.sewnAlong(strip).stream()
                            .map(other -> table.state(other).sewn)
                            .anyMatch(other -> other != null && !isBasted(other)));
    if (!held) {
      table.tell(Trouble.seam(Kind.ONLY_BASTED, pass).in(sewn));
    }
  }

  private void heldForGood(Strip strip, Table.StripState state) {
    if (state.treated != null && isBasted(state.treated)) {
      table.tell(Trouble.edge(Kind.ONLY_BASTED, strip).in(state.treated));
    }
  }

  private static boolean isBasted(Step step) {
    List<Stitch> choices = step.sewing().choices();
    return !choices.isEmpty()
        && choices.stream().allMatch(stitch -> stitch.kind() == Stitch.Kind.BASTING);
  }

  /** A woven edge that is left raw in the open, and nobody says why. */
  private void leftToFray(Strip strip, Table.StripState state) {
    boolean woven = table.cloth.cloth(strip.piece()).filter(Fabric.Kind.WOVEN::equals).isPresent();
    if (state.rawUnsaid != null && woven && state.enclosed == null && !state.surelyFinished) {
      table.tell(Trouble.edge(Kind.RAW_FRAYS, strip).in(state.rawUnsaid));
    }
  }

  private Pass seamOf(Strip strip) {
    return table.cloth.passesOf(strip).stream()
        .filter(pass -> !table.cloth.isPlaced(pass))
        .findFirst()
        .orElseGet(() -> table.cloth.passesOf(strip).get(0));
  }

  private boolean frays(Strip strip, Table.StripState state) {
    boolean sewn =
        !isSewnWhole(strip) || table.cloth.passesOf(strip).stream().anyMatch(table::isSewn);
    return sewn
        && table.cloth.cloth(strip.piece()).filter(Fabric.Kind.WOVEN::equals).isPresent()
        && table.cloth.allowance(strip) > 0
        && !state.surelyFinished
        && state.enclosed == null
        && !state.raw;
  }

  private @org.jspecify.annotations.Nullable Step by(Strip strip, Table.StripState state) {
    return state.treated != null
        ? state.treated
        : table.cloth.passesOf(strip).isEmpty() ? null : table.state(seamOf(strip)).sewn;
  }
}
