package org.hemwright.pattern.construction;

import java.util.List;
import org.hemwright.pattern.construction.Trouble.Kind;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;

/** Lines of stitching: what must be so before each of them, and what it holds. */
record LineWork(
    Table table,
    StitchWork stitches,
    TurnWork turns,
    EdgeWork edges,
    Sewer sewer,
    IntakeWork intakes) {
  /**
   * What a line runs along.
   *
   * @param work all that the step is done to
   * @param passes the seams among it
   * @param edges the edges that are named by themselves
   * @param all the sides of edges of both
   */
  record Along(List<Work> work, List<Pass> passes, List<Strip> edges, List<Strip> all) {}

  /** A line is stitched. */
  void line(Act.Line line, Step step, Along along) {
    List<Pass> passes = along.passes();
    List<Strip> edgeStrips = along.edges();
    List<Strip> all = along.all();
    switch (line) {
      case TOPSTITCH, UNDERSTITCH -> {
        passes.forEach(each -> needsSewn(each, step));
        if (line == Act.Line.UNDERSTITCH) {
          passes.forEach(pass -> turns.turnInside(pass, step));
        } else {
          passes.forEach(pass -> stitches.sewn(pass, step));
          passes.forEach(each -> needsPressed(each, step));
          edgeStrips.forEach(strip -> stitches.stitched(strip, step));
          edgeStrips.forEach(each -> needsDone(each, step));
        }
      }
      case STAYSTITCH -> {
        all.forEach(each -> needsFree(each, step));
        all.forEach(strip -> stitches.stitched(strip, step));
        all.forEach(strip -> edges.insideAllowance(strip, step));
      }
      case BASTE, EASE, GATHER -> {
        passes.forEach(each -> needsUnsewn(each, step));
        passes.stream()
            .filter(pass -> pass.isWithinOnePart() && !table.cloth.isPlaced(pass))
            .forEach(pass -> sewer.foldedFirst(pass, step));
        edgeStrips.forEach(each -> needsFree(each, step));
        intakes.takeIn(along.work(), step);
        if (line == Act.Line.GATHER) {
          all.forEach(strip -> intakes.gathered(strip, step));
          edgeStrips.forEach(strip -> intakes.hasMore(strip, step));
        }
      }
    }
  }

  /** Topstitching holds allowances as they were pressed. */
  private void needsPressed(Pass pass, Step step) {
    boolean lies =
        table.state(pass).pressed != null
            || table.cloth.isPlaced(pass)
            || pass.parts().stream().anyMatch(table.turnedOut::containsKey)
            || pass.strips().stream().anyMatch(strip -> table.state(strip).enclosed != null);
    if (table.isSewn(pass) && !lies) {
      table.tell(Trouble.seam(Kind.TOPSTITCH_UNPRESSED, pass).in(step));
    }
  }

  private void needsSewn(Pass pass, Step step) {
    if (!table.isSewn(pass)) {
      table.tell(Trouble.seam(Kind.NOT_SEWN_YET, pass).in(step));
    }
  }

  /** What is pinned or basted is not sewn yet. */
  void needsUnsewn(Pass pass, Step step) {
    Step before = table.state(pass).sewn;
    if (before != null) {
      table.tell(Trouble.seam(Kind.SEWN_ALREADY, pass).in(step).after(before));
    }
  }

  /** A strip that is not yet sewn, hemmed or shut in. */
  private void needsFree(Strip strip, Step step) {
    Table.StripState state = table.state(strip);
    if (state.treated != null) {
      table.late(Kind.SEWN_ALREADY, strip, step, state.treated);
    }
    for (Pass pass : table.sewnAlong(strip)) {
      table.late(Kind.SEWN_ALREADY, strip, step, table.state(pass).sewn);
    }
  }

  /** A strip whose edge is turned, sewn or folded, so that it can be topstitched. */
  private void needsDone(Strip strip, Step step) {
    Table.StripState state = table.state(strip);
    boolean done =
        state.treated != null
            || state.turned != null
            || !table.sewnAlong(strip).isEmpty()
            || table.turnedOut.containsKey(strip.part())
            || table.folded.containsKey(strip.part());
    if (!done) {
      table.tell(Trouble.edge(Kind.NOT_SEWN_YET, strip).in(step));
    }
  }
}
