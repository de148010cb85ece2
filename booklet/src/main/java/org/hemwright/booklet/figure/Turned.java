package org.hemwright.booklet.figure;

import java.util.List;
import org.hemwright.booklet.words.Telling;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;

/** Which pieces lie with their right sides outside when a step is reached. */
final class Turned {
  private Turned() {}

  /** Whether a piece was turned out, or folded wrong sides together, in a step before this one. */
  static boolean isOut(Telling telling, Step step, String piece) {
    boolean out = false;
    List<Step> steps = telling.run().pattern().making().steps();
    for (Step each : steps) {
      if (each.id().equals(step.id())) {
        return out;
      }
      boolean its =
          each.work(Work.OfPiece.class).stream().anyMatch(work -> work.piece().equals(piece));
      if (its && each.act() instanceof Act.Fold fold) {
        out = fold.wrongSidesTogether();
      } else if (its
          && each.act() instanceof Act.Handle handle
          && handle.kind() == Act.Handling.TURN_OUT) {
        out = true;
      }
    }
    return out;
  }
}
