package org.hemwright.pattern.construction;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.pattern.construction.Trouble.Kind;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Making;
import org.hemwright.pattern.make.PressDirection;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;

/** Does the steps one after the other. */
final class Follower {
  private final Table table;
  private final Pressing pressing;
  private final Crossings crossings;
  private final Sewer sewer;
  private final EdgeWork edges;
  private final HeldWork held;
  private final StitchWork stitches;
  private final TurnWork turns;
  private final FastenWork fastens;
  private final IntakeWork intakes;
  private final LineWork lines;
  private final PieceWork pieces;
  private final TrimWork trims;

  Follower(CutCloth cloth, List<Step> steps, Making making) {
    table = new Table(cloth, steps);
    pressing = new Pressing(table);
    crossings = new Crossings(table, pressing);
    Rounds rounds = new Rounds(table);
    sewer = new Sewer(table, pressing, crossings, rounds);
    turns = new TurnWork(table, pressing, rounds, sewer);
    fastens = new FastenWork(table, making);
    edges = new EdgeWork(table, crossings, sewer);
    stitches = new StitchWork(table);
    held = new HeldWork(table, making, stitches);
    intakes = new IntakeWork(table, stitches);
    lines = new LineWork(table, stitches, turns, edges, sewer, intakes);
    pieces = new PieceWork(table);
    trims = new TrimWork(table);
  }

  List<Trouble> troubles() {
    return List.copyOf(table.troubles);
  }

  List<Done> follow() {
    List<Done> done = new ArrayList<>();
    for (Step step : table.steps) {
      Doing doing = new Doing(step);
      doing.act();
      done.add(doing.done());
    }
    edges.atTheEnd();
    held.atTheEnd();
    fastens.atTheEnd();
    new WholeMaking(table).atTheEnd();
    return done;
  }

  /** One step being done. */
  private final class Doing {
    private final Step step;
    private final List<Work> work = new ArrayList<>();
    private final List<Pass> sewn = new ArrayList<>();
    private final Set<Strip> strips = new LinkedHashSet<>();

    Doing(Step step) {
      this.step = step;
      step.work().stream().filter(this::isHere).forEach(work::add);
    }

    private boolean isHere(Work each) {
      if (each instanceof Work.OfSeam seam) {
        return !table.cloth.passes(seam.seam()).isEmpty();
      } else if (each instanceof Work.OfEdge edge) {
        return !table.cloth.strips(edge).isEmpty();
      } else if (each instanceof Work.OnPiece on) {
        return table.cloth.piece(on.piece()).isPresent();
      }
      return true;
    }

    Done done() {
      return new Done(step, work, sewn, List.copyOf(strips));
    }

    private List<Pass> passes() {
      return work.stream()
          .filter(Work.OfSeam.class::isInstance)
          .flatMap(each -> table.cloth.passes(((Work.OfSeam) each).seam()).stream())
          .toList();
    }

    private List<Strip> edgeStrips() {
      return work.stream()
          .filter(Work.OfEdge.class::isInstance)
          .flatMap(each -> table.cloth.strips((Work.OfEdge) each).stream())
          .toList();
    }

    private List<Part> parts() {
      return work.stream()
          .filter(Work.OfPiece.class::isInstance)
          .flatMap(each -> table.cloth.parts((Work.OfPiece) each).stream())
          .toList();
    }

    void act() {
      passes().forEach(pass -> strips.addAll(pass.strips()));
      strips.addAll(edgeStrips());
      Act act = step.act();
      if (act instanceof Act.Sew || act instanceof Act.SetIn) {
        sew(passes());
      } else if (act instanceof Act.Attach attach) {
        passes().forEach(pass -> stitches.evenParts(pass, step, attach));
        sew(passes());
      } else if (act instanceof Act.HandSew) {
        sew(passes());
        edgeStrips().forEach(strip -> edges.hemByHand(strip, step));
        openings().forEach(this::close);
      } else if (act instanceof Act.Finish finish) {
        finish(finish.together());
      } else if (act instanceof Act.LeaveRaw) {
        edgeStrips().forEach(strip -> edges.leaveRaw(strip, step));
        wholePieces().forEach(strip -> edges.leaveRaw(strip, step));
      } else if (act instanceof Act.Hem) {
        edgeStrips().forEach(this::hem);
      } else if (act instanceof Act.Bind) {
        bind();
      } else if (act instanceof Act.Stitching stitching) {
        lines.line(
            stitching.line(), step, new LineWork.Along(work, passes(), edgeStrips(), allStrips()));
      } else if (act instanceof Act.Press) {
        press();
      } else if (act instanceof Act.Own own) {
        own(own);
      } else {
        holdOrHandle(act);
      }
      if (!(act instanceof Act.Press)) {
        step.press().ifPresent(way -> passes().forEach(pass -> press(pass, way)));
      }
      if (!(act instanceof Act.Stitching) && step.sewing().stitch().isPresent()) {
        table.sewnOnce = true;
      }
    }

    private void holdOrHandle(Act act) {
      Optional<String> name = HeldWork.held(step);
      if (act instanceof Act.FormCasing casing) {
        sew(passes());
        edgeStrips().forEach(this::hem);
        held.leave(step, passes());
        held.casing(casing.holds(), step, List.copyOf(strips));
      } else if (act instanceof Act.ThreadThrough thread) {
        name.ifPresent(each -> held.thread(each, thread.opening(), step));
      } else if (act instanceof Act.LayIn) {
        name.ifPresent(each -> held.layIn(each, step));
      } else if (act instanceof Act.Apply) {
        name.ifPresent(each -> held.apply(each, edgeStrips(), step));
        name.ifPresent(each -> stitches.onElastic(each, step));
      } else if (act instanceof Act.JoinEnds) {
        name.ifPresent(each -> held.joinEnds(each, step));
      } else if (act instanceof Act.InsertZip zip) {
        openings().forEach(each -> held.zip(each, zip, step));
      } else if (act instanceof Act.Close) {
        openings().forEach(this::close);
        intakes.takeIn(work, step);
      } else if (act instanceof Act.Fold) {
        pieces.fold(parts(), step);
        parts().forEach(part -> strips.addAll(table.cloth.strips(part)));
      } else if (act instanceof Act.CutInto cut) {
        passes().forEach(pass -> trims.cut(pass, step, cut));
        edgeStrips().forEach(strip -> trims.cut(strip, step, cut));
      } else if (act instanceof Act.Fuse) {
        pieces.fuse(parts(), step);
      } else if (act instanceof Act.Fasten fasten) {
        fastens.fasten(fasten, step, work);
      } else if (act instanceof Act.Handle handle) {
        handle(handle.kind());
      }
    }

    // --- sewing -------------------------------------------------------------------------------

    private void sew(List<Pass> passes) {
      if (Sewer.isOnePass(step)) {
        sewer.sew(passes, step);
      } else {
        passes.stream()
            .map(pass -> pass.seam().name())
            .distinct()
            .forEach(seam -> sewer.sew(table.cloth.passes(seam), step));
      }
      passes.forEach(pass -> stitches.sewn(pass, step));
      sewn.addAll(passes);
      if (!(step.act() instanceof Act.FormCasing)) {
        held.leave(step, passes);
      }
    }

    private List<String> openings() {
      return work.stream().filter(Work.OfOpening.class::isInstance).map(Work::text).toList();
    }

    private void close(String opening) {
      Table.Opening left = table.openings.get(opening);
      held.close(opening, step);
      if (left != null) {
        left.passes.forEach(pass -> strips.addAll(pass.strips()));
        left.passes.forEach(pass -> stitches.sewn(pass, step));
      }
    }

    private void hem(Strip strip) {
      edges.hem(strip, step);
      stitches.stitched(strip, step);
    }

    private void finish(boolean together) {
      passes().forEach(pass -> edges.finish(pass, step, together));
      edgeStrips().forEach(strip -> edges.finish(strip, step));
      wholePieces().forEach(strip -> edges.finish(strip, step));
    }

    /** All strips of the pieces that are named whole. */
    private List<Strip> wholePieces() {
      parts().forEach(part -> strips.addAll(table.cloth.strips(part)));
      return parts().stream().flatMap(part -> table.cloth.strips(part).stream()).toList();
    }

    private void bind() {
      for (Pass pass : passes()) {
        edges.finish(pass, step, true);
      }
      for (Strip strip : edgeStrips()) {
        edges.bind(strip, step);
        stitches.stitched(strip, step);
      }
    }

    private List<Strip> allStrips() {
      return strips.stream().filter(strip -> !table.cloth.isLine(strip)).toList();
    }

    // --- pressing, handling ---------------------------------------------------------------------

    private void press() {
      PressDirection way = step.press().orElse(new PressDirection.Flat());
      passes().forEach(pass -> press(pass, way));
      for (Strip strip : edgeStrips()) {
        Table.StripState state = table.state(strip);
        if (state.enclosed != null) {
          table.late(Kind.ENCLOSED, strip, step, state.enclosed);
        } else if (table.sewnAlong(strip).isEmpty()) {
          state.turned = step;
        } else {
          pressing.pressAlone(strip, way);
          table.sewnAlong(strip).stream()
              .filter(table.cloth::isPlaced)
              .forEach(pass -> table.late(Kind.SEWN_ALREADY, strip, step, table.state(pass).sewn));
        }
      }
      for (Work each : work) {
        if (each instanceof Work.OfIntake intake) {
          intakes.press(intake, step);
        }
      }
    }

    private void press(Pass pass, PressDirection way) {
      if (!table.isSewn(pass)) {
        table.tell(Trouble.seam(Kind.NOT_SEWN_YET, pass).in(step));
        return;
      }
      Strip first = pass.strips().get(0);
      Table.StripState state = table.state(first);
      boolean flat = way instanceof PressDirection.Flat;
      if (state.enclosed != null && !step.equals(state.enclosed) && !flat) {
        table.tell(Trouble.seam(Kind.ENCLOSED, pass).in(step).after(state.enclosed));
      }
      if (!flat || table.state(pass).pressed == null) {
        pressing.press(pass, way, step);
      }
    }

    private void handle(Act.Handling kind) {
      switch (kind) {
        case TURN_OUT -> parts().forEach(part -> turns.turnOut(part, step));
        case TRY_ON -> held.tryOn(step);
        case MARK -> intakes.mark(work, step);
        case PIN -> passes().forEach(pass -> lines.needsUnsewn(pass, step));
        case TEST -> {
          if (table.sewnOnce) {
            table.tell(Trouble.about(Kind.TEST_LATE, "step", step.id()).in(step));
          }
        }
      }
    }

    // --- her own words --------------------------------------------------------------------------

    private void own(Act.Own own) {
      List<Pass> passes = new ArrayList<>();
      List<Pass> finished = new ArrayList<>();
      for (Act.Dealing dealing : own.deals()) {
        List<Pass> seam =
            dealing.work() instanceof Work.OfSeam named
                ? table.cloth.passes(named.seam())
                : List.of();
        List<Strip> edge =
            dealing.work() instanceof Work.OfEdge named ? table.cloth.strips(named) : List.of();
        switch (dealing.how()) {
          case SEWING -> {
            passes.addAll(seam);
            edge.forEach(strip -> edges.bind(strip, step));
          }
          case FINISHING -> {
            finished.addAll(seam);
            edge.forEach(strip -> edges.finish(strip, step));
            if (dealing.work() instanceof Work.OfPiece piece) {
              table.cloth.parts(piece).stream()
                  .flatMap(part -> table.cloth.strips(part).stream())
                  .forEach(strip -> edges.finish(strip, step));
            }
          }
          case HEMMING -> edge.forEach(this::hem);
          case CLOSING -> {
            if (dealing.work() instanceof Work.OfOpening opening) {
              close(opening.opening());
            } else if (dealing.work() instanceof Work.OfIntake intake) {
              intakes.takeIn(intake.piece(), intake.intake(), step);
            }
          }
        }
      }
      sew(passes);
      // A French seam, say, is sewn and finished by one step.
      finished.forEach(pass -> edges.finish(pass, step, true));
    }
  }
}
