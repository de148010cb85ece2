package org.hemwright.pattern.split;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.pattern.View;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Making;
import org.hemwright.pattern.make.PressDirection;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.seam.EdgePlace;

/**
 * How a garment is made when one piece is cut apart: the parts are joined before the piece is first
 * used, and from there on are what the piece was. Interfacing is fused to each part while it lies
 * alone. Where a seam of the piece is finished so that it does not fray, so is that of the parts.
 *
 * @param parts the piece in parts
 * @param seams the names of the seams that the piece is sewn in
 * @param elastics the names of the elastics that it holds
 * @param views every view of the pattern
 */
record SplitMaking(PieceParts parts, Set<String> seams, Set<String> elastics, List<View> views) {
  Making of(Making making) {
    Optional<Step> first =
        making.steps().stream()
            .filter(step -> !(step.act() instanceof Act.Fuse) && uses(step))
            .findFirst();
    List<Making.Stage> stages = new ArrayList<>();
    for (Making.Stage stage : making.stages()) {
      List<Step> steps = new ArrayList<>();
      for (Step step : stage.steps()) {
        if (first.isPresent() && step.id().equals(first.get().id())) {
          steps.add(joining(step, making));
          finishing(step, making).ifPresent(steps::add);
        }
        steps.add(onParts(step));
      }
      stages.add(new Making.Stage(stage.title(), steps));
    }
    return new Making(stages, making.cords(), making.sleepwear(), making.usualNeedle());
  }

  private boolean uses(Step step) {
    return step.work().stream().anyMatch(this::uses)
        || (step.act() instanceof Act.Own own
            && own.deals().stream().anyMatch(deal -> uses(deal.work())));
  }

  private boolean uses(Work work) {
    if (work instanceof Work.OfSeam seam) {
      return seams.contains(seam.seam());
    } else if (work instanceof Work.OfElastic elastic) {
      return elastics.contains(elastic.elastic());
    }
    return isOnWhole(work);
  }

  private boolean isOnWhole(Work work) {
    return work instanceof Work.OnPiece on && on.piece().equals(parts.whole().name());
  }

  /** Sews the parts together, as seams are usually sewn here, before they are first used. */
  private Step joining(Step before, Making making) {
    Sewing sewing =
        making.steps().stream()
            .filter(step -> step.act() instanceof Act.Sew && !step.sewing().choices().isEmpty())
            .map(Step::sewing)
            .findFirst()
            .map(
                usual ->
                    new Sewing(
                        usual.choices(),
                        Optional.empty(),
                        usual.needle(),
                        1,
                        Optional.empty(),
                        Optional.empty()))
            .orElse(Sewing.NONE);
    return ofJoins(
        "sew_", new Act.Sew(false), sewing, Optional.of(new PressDirection.Open()), before);
  }

  /** The edges of a seam that is pressed open are finished apart, as others of the piece are. */
  private Optional<Step> finishing(Step before, Making making) {
    return making.steps().stream()
        .filter(step -> step.act() instanceof Act.Finish && uses(step))
        .findFirst()
        .map(
            like ->
                ofJoins("finish_", new Act.Finish(false), like.sewing(), Optional.empty(), before));
  }

  private Step ofJoins(
      String word, Act act, Sewing sewing, Optional<PressDirection> press, Step before) {
    List<Work> work = new ArrayList<>();
    parts.joins().forEach(join -> work.add(new Work.OfSeam(join.seam())));
    Set<String> used = new LinkedHashSet<>();
    for (View view : views) {
      if (view.pieces().contains(parts.whole().name())) {
        used.add(view.name());
      }
    }
    return new Step(
        word + parts.split().name(),
        act,
        work,
        sewing,
        press,
        List.of(),
        Step.Words.NONE,
        used.isEmpty() ? before.views() : List.copyOf(used),
        parts.whole().card().sizes(),
        parts.split().origin());
  }

  private Step onParts(Step step) {
    List<Work> work = new ArrayList<>();
    step.work().forEach(each -> work.addAll(onParts(each)));
    Optional<PressDirection> press =
        step.press()
            .map(
                way ->
                    way instanceof PressDirection.Toward toward
                            && toward.piece().equals(parts.whole().name())
                        ? onParts(toward)
                        : way);
    return new Step(
        step.id(),
        onParts(step.act()),
        work,
        step.sewing(),
        press,
        step.leaves(),
        step.words(),
        step.views(),
        step.sizes(),
        step.origin());
  }

  private Act onParts(Act act) {
    if (!(act instanceof Act.Own own)) {
      return act;
    }
    List<Act.Dealing> deals = new ArrayList<>();
    for (Act.Dealing deal : own.deals()) {
      onParts(deal.work()).forEach(work -> deals.add(new Act.Dealing(deal.how(), work)));
    }
    return new Act.Own(own.words(), deals);
  }

  /** To the side of the piece is to that of any of its parts, in the copies that come of it. */
  private PressDirection.Toward onParts(PressDirection.Toward toward) {
    List<PressDirection.Under> under = new ArrayList<>();
    for (int i = 0; i < parts.parts().size(); i++) {
      String part = parts.parts().get(i).name();
      if (toward.copy().isEmpty()) {
        under.add(new PressDirection.Under(part, Optional.empty()));
      } else {
        Set<String> copies = new LinkedHashSet<>();
        copies.add(parts.copy(i, toward.copy().get(), EdgePlace.Half.DRAWN));
        copies.add(parts.copy(i, toward.copy().get(), EdgePlace.Half.MIRRORED));
        copies.forEach(copy -> under.add(new PressDirection.Under(part, Optional.of(copy))));
      }
    }
    return new PressDirection.Toward(under.get(0).piece(), toward.copy(), toward.seenFrom(), under);
  }

  private List<Work> onParts(Work work) {
    if (!isOnWhole(work)) {
      return List.of(work);
    }
    List<Work> all = new ArrayList<>();
    for (int i = 0; i < parts.parts().size(); i++) {
      String part = parts.parts().get(i).name();
      int index = i;
      if (work instanceof Work.OfPiece) {
        all.add(new Work.OfPiece(part, Optional.empty()));
      } else if (work instanceof Work.OfEdge edge) {
        parts.stretches().stream()
            .filter(stretch -> stretch.part() == index && stretch.edge().equals(edge.edge()))
            .forEach(stretch -> all.add(new Work.OfEdge(part, Optional.empty(), stretch.name())));
      } else if (work instanceof Work.OfMark mark && has(index, mark.mark())) {
        all.add(new Work.OfMark(part, mark.mark()));
      } else if (work instanceof Work.OfIntake intake
          && parts.parts().get(i).intakes().stream()
              .anyMatch(own -> own.name().equals(intake.intake()))) {
        all.add(new Work.OfIntake(part, intake.intake()));
      }
    }
    return all.isEmpty() ? List.of(work) : all;
  }

  private boolean has(int part, String mark) {
    return parts.parts().get(part).marks().stream()
        .anyMatch(
            drawn ->
                (drawn instanceof Mark.Inner inner && inner.name().equals(mark))
                    || (drawn instanceof Mark.Placement line && line.name().equals(mark))
                    || (drawn instanceof Mark.Drill drill && drill.name().equals(mark)));
  }
}
