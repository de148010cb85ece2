package org.hemwright.booklet.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.booklet.words.Telling;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.PressDirection;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;

/** The close-ups of a step, by what is done in it. */
final class CloseUps {
  private final ShownStep shown;

  private CloseUps(ShownStep shown) {
    this.shown = shown;
  }

  /** The close-ups of a step, at most two: what is sewn, and how it is pressed. */
  static List<CloseUp> of(Telling telling, Step step) {
    ShownStep shown = new ShownStep(telling, step);
    List<CloseUp> all = new ArrayList<>();
    new CloseUps(shown).act().ifPresent(all::add);
    if (step.act() instanceof Act.Close) {
      new IntakeCloseUps(shown).closed().ifPresent(all::add);
    }
    if (!(step.act() instanceof Act.Press) && pressesSeam(step)) {
      new SeamCloseUps(shown).press().ifPresent(all::add);
    }
    return all;
  }

  private static boolean pressesSeam(Step step) {
    return step.press().isPresent()
        && !(step.press().get() instanceof PressDirection.Flat)
        && !step.work(Work.OfSeam.class).isEmpty();
  }

  private Optional<CloseUp> act() {
    Step step = shown.step();
    Act act = step.act();
    if (act instanceof Act.Press) {
      return step.work(Work.OfSeam.class).isEmpty()
          ? edge().pressedEdge()
          : new SeamCloseUps(shown).press();
    } else if (act instanceof Act.HandSew) {
      return cloth().handSewn();
    } else if (act instanceof Act.Sew || act instanceof Act.SetIn || act instanceof Act.Attach) {
      return new SeamCloseUps(shown).seamed();
    } else if (act instanceof Act.Hem) {
      return edge().hemmed();
    } else if (act instanceof Act.Finish finish) {
      return edge().finished(finish.together());
    } else if (act instanceof Act.FormCasing) {
      return elastic().casing(false, false);
    } else if (act instanceof Act.ThreadThrough || act instanceof Act.LayIn) {
      return elastic().casing(true, false);
    } else if (act instanceof Act.Close) {
      return step.work().stream().allMatch(Work.OfOpening.class::isInstance)
          ? elastic().casing(false, true)
          : new IntakeCloseUps(shown).closing();
    } else if (act instanceof Act.JoinEnds join) {
      return elastic().joined(join);
    } else if (act instanceof Act.Apply) {
      return elastic().applied();
    } else if (act instanceof Act.Stitching stitching) {
      return edge().line(stitching.line());
    } else if (act instanceof Act.CutInto cut) {
      return edge().cutInto(cut);
    } else if (act instanceof Act.Fasten fasten) {
      return new FastenerCloseUps(shown).fastened(fasten);
    } else if (act instanceof Act.Fuse) {
      return cloth().fused();
    } else if (act instanceof Act.Bind) {
      return edge().bound();
    } else if (act instanceof Act.InsertZip) {
      return new FastenerCloseUps(shown).zipped();
    } else if (act instanceof Act.Handle handle && handle.kind() == Act.Handling.TEST) {
      return cloth().tested();
    }
    return Optional.empty();
  }

  private EdgeCloseUps edge() {
    return new EdgeCloseUps(shown);
  }

  private ElasticCloseUps elastic() {
    return new ElasticCloseUps(shown);
  }

  private FlatCloseUps cloth() {
    return new FlatCloseUps(shown);
  }
}
