package org.hemwright.pattern.construction;

import java.util.List;
import java.util.OptionalDouble;
import org.hemwright.pattern.construction.Trouble.Kind;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;

/** Cuts allowances down, and cuts into them: trimmed, graded, clipped, notched. */
record TrimWork(Table table) {
  /** Cuts into an allowance, or cuts it down. */
  void cut(Strip strip, Step step, Act.CutInto cut) {
    Table.StripState state = table.state(strip);
    if (state.enclosed != null) {
      table.late(Kind.ENCLOSED, strip, step, state.enclosed);
      return;
    }
    OptionalDouble left = cut.to().map(table::mm).orElse(OptionalDouble.empty());
    double allowance = table.cloth.allowance(strip);
    if (left.isPresent() && left.getAsDouble() > allowance - EdgeWork.EDGE && allowance > 0) {
      table.tell(
          Trouble.edge(Kind.NOTHING_TRIMMED, strip).in(step).values(left.getAsDouble(), allowance));
    }
    boolean down = cut.kind() == Act.Cutting.TRIM || cut.kind() == Act.Cutting.GRADE;
    List<Pass> sewn = table.cloth.passesOf(strip);
    if (down && !sewn.isEmpty() && sewn.stream().noneMatch(table::isSewn)) {
      table.tell(Trouble.edge(Kind.NOT_SEWN_YET, strip).in(step));
    }
    if (sewn.isEmpty()) {
      bend(List.of(strip), step, cut);
    }
    if (down && state.finish != null) {
      table.late(Kind.FINISH_CUT_OFF, strip, step, state.finish);
    }
  }

  /** The same along a seam, which is sewn before. */
  void cut(Pass pass, Step step, Act.CutInto cut) {
    if (!table.isSewn(pass)) {
      table.tell(Trouble.seam(Kind.NOT_SEWN_YET, pass).in(step));
      return;
    }
    for (Strip strip : pass.strips()) {
      if (!table.cloth.isLine(strip)) {
        cut(strip, step, cut);
      }
    }
    bend(pass.strips(), step, cut);
  }

  /**
   * Inward curves are clipped, wedges are cut out of outward ones (handbook section 3); told where
   * every edge concerned bends the other way.
   */
  private void bend(List<Strip> strips, Step step, Act.CutInto cut) {
    List<Bend> bends =
        strips.stream().filter(strip -> !table.cloth.isLine(strip)).map(table.cloth::bend).toList();
    boolean wrong =
        switch (cut.kind()) {
          case CLIP -> bends.stream().allMatch(Bend::isOutward);
          case NOTCH -> bends.stream().allMatch(Bend::isInward);
          case TRIM, GRADE -> false;
        };
    if (wrong && !bends.isEmpty()) {
      table.tell(
          Trouble.edge(Kind.WRONG_BEND, strips.get(0))
              .in(step)
              .with(cut.kind() == Act.Cutting.CLIP ? "notch" : "clip"));
    }
  }
}
