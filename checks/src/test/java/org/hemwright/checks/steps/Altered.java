package org.hemwright.checks.steps;

import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Amount;
import org.hemwright.pattern.make.PressDirection;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.make.Work;

/** A step of the document with one thing about it altered. */
final class Altered {
  private Altered() {}

  static Step copy(
      Step step,
      String id,
      Act act,
      List<Work> work,
      Sewing sewing,
      Optional<PressDirection> press,
      List<Step.Opening> leaves) {
    return new Step(
        id,
        act,
        work,
        sewing,
        press,
        leaves,
        step.words(),
        step.views(),
        step.sizes(),
        step.origin());
  }

  /** The same step under another name, leaving nothing open. */
  static Step again(Step step) {
    return copy(
        step,
        step.id() + "_again",
        step.act(),
        step.work(),
        step.sewing(),
        step.press(),
        List.of());
  }

  /** The same step, doing something else. */
  static Step acting(Step step, Act act) {
    return copy(step, step.id(), act, step.work(), step.sewing(), step.press(), step.leaves());
  }

  /** The same step, done to something else. */
  static Step dealing(Step step, List<Work> work) {
    return copy(step, step.id(), step.act(), work, step.sewing(), step.press(), step.leaves());
  }

  /** The same step, stitched otherwise. */
  static Step sewn(Step step, Sewing sewing) {
    return copy(step, step.id(), step.act(), step.work(), sewing, step.press(), step.leaves());
  }

  static Step pressed(Step step, Optional<PressDirection> way) {
    return copy(step, step.id(), step.act(), step.work(), step.sewing(), way, step.leaves());
  }

  static Step stitched(Step step, List<Stitch> choices) {
    Sewing own = step.sewing();
    return copy(
        step,
        step.id(),
        step.act(),
        step.work(),
        new Sewing(
            choices, Optional.empty(), own.needle(), own.rows(), own.apart(), own.distance()),
        step.press(),
        step.leaves());
  }

  /** The same step, stitched so far from an edge (mm). */
  static Step at(Step step, double mm, Sewing.Distance.From from) {
    Sewing own = step.sewing();
    return sewn(
        step,
        new Sewing(
            own.choices(),
            own.raw(),
            own.needle(),
            own.rows(),
            own.apart(),
            Optional.of(new Sewing.Distance(Amount.mm(mm), from))));
  }
}
