package org.hemwright.pattern.construction;

import java.util.List;
import org.hemwright.pattern.construction.Trouble.Kind;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;

/** What is done to whole pieces: folded, and fused to interfacing. */
record PieceWork(Table table) {
  /** A piece is folded once, before it is closed. */
  void fold(List<Part> parts, Step step) {
    for (Part part : parts) {
      Step before = table.folded.put(part, step);
      if (before != null && isSameFold(before, step)) {
        table.tell(Trouble.about(Kind.SEWN_ALREADY, "piece", part.piece()).in(step).after(before));
      }
      Step closed = table.closed.get(part);
      if (closed != null) {
        table.tell(Trouble.about(Kind.SEWN_ALREADY, "piece", part.piece()).in(step).after(closed));
      }
    }
  }

  /** Whether it folds as this step does; a fold that is pressed in may be turned over later. */
  private static boolean isSameFold(Step other, Step step) {
    return other.act() instanceof Act.Fold one
        && step.act() instanceof Act.Fold here
        && one.wrongSidesTogether() == here.wrongSidesTogether();
  }

  /** Interfacing is fused once, before the piece is folded or sewn. */
  void fuse(List<Part> parts, Step step) {
    for (Part part : parts) {
      Step fused = table.fused.putIfAbsent(part, step);
      Step folded = table.folded.get(part);
      if (fused != null) {
        table.tell(Trouble.about(Kind.SEWN_ALREADY, "piece", part.piece()).in(step).after(fused));
      } else if (folded != null) {
        table.tell(Trouble.about(Kind.FUSED_LATE, "piece", part.piece()).in(step).after(folded));
        return;
      }
      for (Strip strip : table.cloth.strips(part)) {
        for (Pass pass : table.sewnAlong(strip)) {
          Step before = table.state(pass).sewn;
          Trouble trouble = Trouble.about(Kind.FUSED_LATE, "piece", part.piece()).in(step);
          table.tell(before == null ? trouble : trouble.after(before));
          return;
        }
      }
    }
  }
}
