package org.hemwright.draft.plan.make;

import static org.hemwright.draft.plan.make.ActReader.Takes.EDGE;
import static org.hemwright.draft.plan.make.ActReader.Takes.INTAKE;
import static org.hemwright.draft.plan.make.ActReader.Takes.MARK;
import static org.hemwright.draft.plan.make.ActReader.Takes.OPENING;
import static org.hemwright.draft.plan.make.ActReader.Takes.PIECE;
import static org.hemwright.draft.plan.make.ActReader.Takes.SEAM;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.hemwright.draft.syntax.StepRule;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.make.Work;

/** What each act can be done to, and with which stitch where the step names none. */
final class ActReader {
  private ActReader() {}

  /** A kind of thing that an act can be done to; its words are a phrase of the message file. */
  enum Takes {
    SEAM("a-seam"),
    EDGE("an-edge"),
    PIECE("a-piece"),
    MARK("a-mark"),
    INTAKE("an-intake"),
    OPENING("an-opening"),
    ELASTIC("an-elastic"),
    CORD("a-cord");

    private final String key;

    Takes(String key) {
      this.key = key;
    }

    /** For people: "a seam". */
    Argument words() {
      return new Argument.Term(key);
    }

    /** The kind of a work. */
    static Takes of(Work work) {
      if (work instanceof Work.OfSeam) {
        return SEAM;
      } else if (work instanceof Work.OfEdge) {
        return EDGE;
      } else if (work instanceof Work.OfPiece) {
        return PIECE;
      } else if (work instanceof Work.OfMark) {
        return MARK;
      } else if (work instanceof Work.OfIntake) {
        return INTAKE;
      } else if (work instanceof Work.OfOpening) {
        return OPENING;
      }
      return work instanceof Work.OfElastic ? ELASTIC : CORD;
    }
  }

  /** What may stand in the work of a step. */
  static Set<Takes> takes(StepRule rule) {
    if (rule instanceof StepRule.Sew
        || rule instanceof StepRule.Attach
        || rule instanceof StepRule.SetIn) {
      return EnumSet.of(SEAM);
    } else if (rule instanceof StepRule.HandSew) {
      return EnumSet.of(SEAM, EDGE, OPENING);
    } else if (rule instanceof StepRule.Finish) {
      return EnumSet.of(SEAM, EDGE, PIECE);
    } else if (rule instanceof StepRule.LeaveRaw) {
      return EnumSet.of(EDGE, PIECE);
    } else if (rule instanceof StepRule.Hem || rule instanceof StepRule.Apply) {
      return EnumSet.of(EDGE);
    } else if (rule instanceof StepRule.Bind
        || rule instanceof StepRule.FormCasing
        || rule instanceof StepRule.CutInto) {
      return EnumSet.of(SEAM, EDGE);
    } else if (rule instanceof StepRule.Stitching || rule instanceof StepRule.Press) {
      return EnumSet.of(SEAM, EDGE, PIECE, MARK, INTAKE);
    } else if (rule instanceof StepRule.InsertZip) {
      return EnumSet.of(OPENING);
    } else if (rule instanceof StepRule.Close) {
      return EnumSet.of(OPENING, INTAKE);
    } else if (rule instanceof StepRule.Fasten) {
      return EnumSet.of(PIECE, MARK, EDGE, SEAM);
    } else if (rule instanceof StepRule.Handle handle) {
      return handled(handle.how());
    }
    return EnumSet.of(PIECE);
  }

  private static Set<Takes> handled(Act.Handling how) {
    return switch (how) {
      case MARK -> EnumSet.of(PIECE, MARK, INTAKE);
      case PIN -> EnumSet.of(SEAM, EDGE, PIECE);
      case TURN_OUT, TRY_ON, TEST -> EnumSet.of(PIECE);
    };
  }

  /** What a step in her own words may deal with. */
  static Set<Takes> deals(Act.Dealing.How how) {
    return switch (how) {
      case SEWING -> EnumSet.of(SEAM, EDGE);
      case FINISHING -> EnumSet.of(SEAM, EDGE, PIECE);
      case HEMMING -> EnumSet.of(EDGE);
      case CLOSING -> EnumSet.of(OPENING, INTAKE);
    };
  }

  /** Whether the act is stitched. */
  static boolean stitches(StepRule rule) {
    return !(rule instanceof StepRule.LeaveRaw
        || rule instanceof StepRule.ThreadThrough
        || rule instanceof StepRule.LayIn
        || rule instanceof StepRule.Press
        || rule instanceof StepRule.Fold
        || rule instanceof StepRule.CutInto
        || rule instanceof StepRule.Handle
        || rule instanceof StepRule.Fuse
        || rule instanceof StepRule.Fasten
        || rule instanceof StepRule.Own);
  }

  /** The stitch that an act has by its own name. */
  static Optional<Stitch> ownStitch(StepRule rule) {
    if (rule instanceof StepRule.HandSew) {
      return Optional.of(Stitch.of(Stitch.Kind.SLIP_STITCH));
    } else if (rule instanceof StepRule.Fasten fasten) {
      return fasten.what() == Act.Fastening.BUTTONHOLE
          ? Optional.of(Stitch.of(Stitch.Kind.BUTTONHOLE))
          : Optional.empty();
    } else if (rule instanceof StepRule.Stitching stitching) {
      return switch (stitching.line()) {
        case BASTE, GATHER, EASE -> Optional.of(Stitch.of(Stitch.Kind.BASTING));
        case STAYSTITCH, UNDERSTITCH -> Optional.of(Stitch.of(Stitch.Kind.STRAIGHT));
        case TOPSTITCH -> Optional.empty();
      };
    }
    return Optional.empty();
  }
}
