package org.hemwright.pattern.construction;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.pattern.construction.Trouble.Kind;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Cord;
import org.hemwright.pattern.make.Making;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;

/** Buttonholes, buttons, eyelets and bar tacks. */
final class FastenWork {
  private final Table table;
  private final Making making;
  private final List<Sized> buttons = new ArrayList<>();
  private final List<Sized> holes = new ArrayList<>();

  /** One button, or one buttonhole; a size that cannot be told is 0. */
  private record Sized(Step step, double size) {}

  FastenWork(Table table, Making making) {
    this.table = table;
    this.making = making;
  }

  void fasten(Act.Fasten fasten, Step step, List<Work> work) {
    for (Work each : work) {
      if (each instanceof Work.OfSeam seam) {
        table.cloth.passes(seam.seam()).forEach(pass -> needsSewn(pass, step));
      } else if (each instanceof Work.OfMark mark) {
        table.cloth.passes().stream()
            .filter(
                pass -> pass.strips().stream().anyMatch(strip -> strip.text().equals(mark.text())))
            .forEach(pass -> needsSewn(pass, step));
      }
    }
    switch (fasten.kind()) {
      case BUTTON -> {
        holeFirst(step);
        layersFirst(step, work);
        add(buttons, fasten, step);
      }
      case BUTTONHOLE -> {
        layersFirst(step, work);
        add(holes, fasten, step);
      }
      case EYELET -> cordAfter(step, work);
      case BAR_TACK -> {}
    }
  }

  private void add(List<Sized> all, Act.Fasten fasten, Step step) {
    OptionalDouble size = table.mm(fasten.size());
    for (int i = 0; i < fasten.count(); i++) {
      all.add(new Sized(step, size.orElse(0)));
    }
  }

  private void needsSewn(Pass pass, Step step) {
    if (!table.isSewn(pass)) {
      table.tell(Trouble.seam(Kind.NOT_SEWN_YET, pass).in(step));
    }
  }

  /** Where a button goes is found by its buttonhole. */
  private void holeFirst(Step step) {
    boolean later =
        table.steps.stream()
            .anyMatch(
                each ->
                    each.act() instanceof Act.Fasten other
                        && other.kind() == Act.Fastening.BUTTONHOLE);
    if (holes.isEmpty() && later) {
      table.tell(Trouble.about(Kind.BUTTON_FIRST, "step", step.id()).in(step));
    }
  }

  /** Holes and buttons go through all layers, once the piece is folded, turned and sewn shut. */
  private void layersFirst(Step step, List<Work> work) {
    List<Step> later = table.steps.subList(table.steps.indexOf(step) + 1, table.steps.size());
    for (Work each : work) {
      if (each instanceof Work.OfPiece piece) {
        later.stream()
            .filter(other -> layers(other, piece))
            .findFirst()
            .ifPresent(
                other ->
                    table.tell(
                        Trouble.about(Kind.FASTENED_EARLY, "piece", piece.piece())
                            .in(step)
                            .after(other)));
      }
    }
  }

  /** Whether a step folds a piece, turns it out, fuses it, or sews it to itself. */
  private boolean layers(Step step, Work.OfPiece piece) {
    boolean handles =
        step.act() instanceof Act.Fold
            || step.act() instanceof Act.Fuse
            || (step.act() instanceof Act.Handle handle && handle.kind() == Act.Handling.TURN_OUT);
    if (handles) {
      return step.work(Work.OfPiece.class).stream()
          .anyMatch(work -> work.piece().equals(piece.piece()));
    }
    return Sewer.sews(step)
        && step.work(Work.OfSeam.class).stream()
            .flatMap(work -> table.cloth.passes(work.seam()).stream())
            .anyMatch(
                pass ->
                    pass.strips().stream().allMatch(strip -> strip.piece().equals(piece.piece())));
  }

  /** An eyelet that lets a cord out goes through the outer layer alone, before the casing. */
  private void cordAfter(Step step, List<Work> work) {
    for (Work each : work) {
      if (each instanceof Work.OfPiece piece) {
        for (Cord cord : making.cords()) {
          Step casing = table.held(cord.name()).casing;
          if (cord.piece().equals(piece.piece()) && casing != null) {
            table.tell(
                Trouble.about(Kind.EYELET_LATE, "piece", piece.piece())
                    .in(step)
                    .after(casing)
                    .with(cord.name()));
          }
        }
      }
    }
  }

  /** As many buttons as holes, and each hole as long as its button is wide. */
  void atTheEnd() {
    if (holes.isEmpty()) {
      return;
    }
    if (holes.size() != buttons.size()) {
      table.tell(Trouble.about(Kind.BUTTON_COUNT, "", "make").values(buttons.size(), holes.size()));
      return;
    }
    holes.sort(Comparator.comparingDouble(Sized::size));
    buttons.sort(Comparator.comparingDouble(Sized::size));
    Optional<Step> told = Optional.empty();
    for (int i = 0; i < holes.size(); i++) {
      Sized hole = holes.get(i);
      Sized button = buttons.get(i);
      boolean small = hole.size() > 0 && hole.size() < button.size();
      if (small && told.filter(hole.step()::equals).isEmpty()) {
        table.tell(
            Trouble.about(Kind.HOLE_SMALL, "step", hole.step().id())
                .in(hole.step())
                .after(button.step())
                .values(hole.size(), button.size()));
        told = Optional.of(hole.step());
      }
    }
  }
}
