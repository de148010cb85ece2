package org.hemwright.pattern.construction;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.pattern.construction.Trouble.Kind;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Cord;
import org.hemwright.pattern.make.Making;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.measure.LayerWalk;
import org.hemwright.pattern.seam.Elastic;
import org.jspecify.annotations.Nullable;

/** Openings, and the elastics and cords that go in at them. */
final class HeldWork {
  private final Table table;
  private final Making making;
  private final StitchWork stitches;

  HeldWork(Table table, Making making, StitchWork stitches) {
    this.table = table;
    this.making = making;
    this.stitches = stitches;
  }

  /** The piece that holds an elastic or a cord. */
  private Optional<String> piece(String name) {
    return elastic(name).map(Elastic::piece).or(() -> making.cord(name).map(Cord::piece));
  }

  private Optional<Elastic> elastic(String name) {
    return table.cloth.sized().elastics().stream()
        .filter(elastic -> elastic.name().equals(name))
        .findFirst();
  }

  void leave(Step step, List<Pass> passes) {
    for (Step.Opening opening : step.leaves()) {
      OptionalDouble length = table.mm(opening.length());
      table.openings.put(opening.name(), new Table.Opening(step, passes, length));
      OptionalDouble room =
          passes.stream()
              .map(pass -> pass.join().layers().get(0))
              .mapToDouble(layer -> LayerWalk.length(layer, table.cloth.sized()))
              .max();
      if (length.isPresent() && room.isPresent() && length.getAsDouble() > room.getAsDouble()) {
        table.tell(
            Trouble.about(Kind.OPENING_LONG, "opening", opening.name())
                .in(step)
                .with(passes.get(0).seam().name())
                .values(length.getAsDouble(), room.getAsDouble()));
      }
    }
  }

  private Optional<Table.Opening> open(String name, Step step) {
    Table.Opening opening = table.openings.get(name);
    Trouble trouble = Trouble.about(Kind.NOT_LEFT_YET, "opening", name).in(step);
    if (opening == null) {
      table.steps.stream()
          .filter(each -> each.leaves().stream().anyMatch(left -> left.name().equals(name)))
          .findFirst()
          .ifPresentOrElse(later -> table.tell(trouble.after(later)), () -> table.tell(trouble));
      return Optional.empty();
    }
    if (opening.closed != null) {
      table.tell(
          Trouble.about(Kind.CLOSED_ALREADY, "opening", name).in(step).after(opening.closed));
    }
    return Optional.of(opening);
  }

  void close(String name, Step step) {
    Optional<Table.Opening> opening = open(name, step);
    if (opening.isEmpty()) {
      return;
    }
    for (Step other : table.steps) {
      if (other.act() instanceof Act.ThreadThrough thread && thread.opening().equals(name)) {
        held(other).ifPresent(held -> closeAfter(name, held, other, step));
      }
    }
    opening.get().closed = step;
  }

  private void closeAfter(String opening, String name, Step thread, Step step) {
    Table.Held held = table.held(name);
    if (held.in == null) {
      table.tell(
          Trouble.about(Kind.CASING_CLOSED, "opening", opening).in(step).after(thread).with(name));
    } else if (isRing(name) && held.joined == null) {
      table.tell(Trouble.about(Kind.CLOSED_BEFORE_JOINED, "opening", opening).in(step).with(name));
    } else if (isRing(name) && held.tried == null) {
      table.tell(Trouble.about(Kind.NO_TRY_ON, "elastic", name).in(step).with(opening));
    }
  }

  private boolean isRing(String name) {
    return elastic(name).isPresent();
  }

  static Optional<String> held(Step step) {
    return step.work().stream()
        .filter(work -> work instanceof Work.OfElastic || work instanceof Work.OfCord)
        .map(Work::text)
        .findFirst();
  }

  void thread(String name, String through, Step step) {
    Table.Held held = table.held(name);
    Optional<Table.Opening> opening = open(through, step);
    once(name, held.in, step);
    opening.ifPresent(left -> leadsIn(name, through, left, step));
    if (held.joined != null) {
      table.tell(Trouble.about(Kind.JOINED_FIRST, word(name), name).in(step).after(held.joined));
    }
    if (opening.isPresent() && held.casing == null && closed(name).isEmpty()) {
      table.tell(
          Trouble.about(Kind.NO_CASING, word(name), name).in(step).with(piece(name).orElse(name)));
    }
    if (opening.isPresent()) {
      OptionalDouble length = opening.get().length;
      OptionalDouble width =
          elastic(name).map(Elastic::width).map(OptionalDouble::of).orElse(OptionalDouble.empty());
      if (length.isPresent() && width.isPresent() && length.getAsDouble() < width.getAsDouble()) {
        table.tell(
            Trouble.about(Kind.OPENING_NARROW, "opening", through)
                .in(opening.get().left)
                .with(name)
                .values(length.getAsDouble(), width.getAsDouble()));
      }
    }
    in(held, step);
    held.opening = Optional.of(through);
  }

  /** An elastic goes in once, and its ends are joined once. */
  private void once(String name, @Nullable Step before, Step step) {
    if (before != null) {
      table.tell(Trouble.about(Kind.HELD_TWICE, word(name), name).in(step).after(before));
    }
  }

  /** An opening leads into the piece that holds what is drawn in. */
  private void leadsIn(String name, String through, Table.Opening opening, Step step) {
    Optional<String> piece = piece(name);
    boolean leads =
        opening.passes.isEmpty()
            ? opening.left.work().stream()
                .anyMatch(
                    work ->
                        work instanceof Work.OfEdge edge
                            && piece.filter(edge.piece()::equals).isPresent())
            : opening.passes.stream()
                .flatMap(pass -> pass.parts().stream())
                .anyMatch(part -> piece.filter(part.piece()::equals).isPresent());
    if (piece.isPresent() && !leads) {
      table.tell(
          Trouble.about(Kind.WRONG_OPENING, word(name), name)
              .in(step)
              .after(opening.left)
              .with(through));
    }
  }

  private static void in(Table.Held held, Step step) {
    if (held.in == null) {
      held.in = step;
    }
  }

  private String word(String name) {
    return isRing(name) ? "elastic" : "cord";
  }

  /** The part that holds it, where that is closed on itself. */
  private Optional<Step> closed(String name) {
    return table.closed.entrySet().stream()
        .filter(entry -> piece(name).filter(entry.getKey().piece()::equals).isPresent())
        .map(java.util.Map.Entry::getValue)
        .findFirst();
  }

  private void tellClosed(String name, Step step, Step before) {
    table.tell(
        Trouble.about(Kind.CASING_CLOSED, word(name), name).in(step).after(before).with(name));
  }

  void layIn(String name, Step step) {
    Table.Held held = table.held(name);
    Optional<Step> closing = Optional.ofNullable(held.casing).or(() -> closed(name));
    closing.ifPresent(before -> tellClosed(name, step, before));
    once(name, held.in, step);
    in(held, step);
    held.laid = true;
  }

  void casing(String name, Step step, List<Strip> strips) {
    Table.Held held = table.held(name);
    if (held.casing == null) {
      held.casing = step;
    }
    Optional<String> piece = piece(name);
    if (piece.isPresent() && strips.stream().map(Strip::piece).noneMatch(piece.get()::equals)) {
      table.tell(Trouble.about(Kind.WRONG_CASING, word(name), name).in(step).with(piece.get()));
    }
    wideEnough(name, step, strips);
    if (held.laid && isRing(name) && held.tried == null) {
      table.tell(Trouble.about(Kind.LAID_UNTRIED, "elastic", name).in(step));
    }
  }

  /** A turned edge is stitched so far from its fold that the elastic lies flat in it. */
  private void wideEnough(String name, Step step, List<Strip> strips) {
    Optional<Elastic> elastic = elastic(name);
    Optional<Sewing.Distance> distance = step.sewing().distance();
    if (elastic.isEmpty() || distance.isEmpty()) {
      return;
    }
    OptionalDouble at = table.mm(distance.get().amount());
    for (Strip strip : strips) {
      List<Double> folds = table.cloth.folds(strip);
      if (at.isPresent() && !folds.isEmpty() && table.cloth.passesOf(strip).isEmpty()) {
        boolean fromFold = distance.get().from() == Sewing.Distance.From.FOLD;
        boolean fromRaw = distance.get().from() == Sewing.Distance.From.RAW_EDGE;
        double room = fromFold ? at.getAsDouble() : folds.get(0) - at.getAsDouble();
        if ((fromFold || fromRaw) && room < elastic.get().width()) {
          table.tell(
              Trouble.about(Kind.CASING_NARROW, "elastic", name)
                  .in(step)
                  .at(strip)
                  .values(room, elastic.get().width()));
          return;
        }
      }
    }
  }

  void apply(String name, List<Strip> strips, Step step) {
    Table.Held held = table.held(name);
    for (Strip strip : strips) {
      Step treated = table.state(strip).treated;
      if (treated != null) {
        table.late(Kind.SEWN_ALREADY, strip, step, treated);
      } else if (held.joined != null && !stitches.isRoundYet(strip)) {
        table.tell(Trouble.edge(Kind.APPLIED_FLAT, strip).in(step).after(held.joined).with(name));
      }
      table.state(strip).applied = true;
    }
    boolean round = strips.stream().anyMatch(stitches::isClosedRound);
    if (isRing(name) && round && held.joined == null) {
      table.tell(Trouble.about(Kind.APPLIED_APART, "elastic", name).in(step));
    }
    in(held, step);
    held.applied = true;
  }

  void joinEnds(String name, Step step) {
    Table.Held held = table.held(name);
    Optional<Table.Opening> opening =
        held.opening.flatMap(each -> Optional.ofNullable(table.openings.get(each)));
    Optional<Step> shut =
        held.laid
            ? Optional.ofNullable(held.casing).or(() -> closed(name))
            : opening.flatMap(each -> Optional.ofNullable(each.closed));
    shut.ifPresent(before -> tellClosed(name, step, before));
    once(name, held.joined, step);
    held.joined = step;
  }

  /** Everything that is in and not yet closed has been tried on. */
  void tryOn(Step step) {
    for (Table.Held held : table.held.values()) {
      if ((held.in != null || held.joined != null) && held.tried == null) {
        held.tried = step;
      }
    }
  }

  void zip(String name, Act.InsertZip zip, Step step) {
    Table.Opening opening = table.openings.get(name);
    if (opening != null && opening.length.isPresent() && !zip.sold().isEmpty()) {
      double longest = zip.sold().get(zip.sold().size() - 1);
      if (longest < opening.length.getAsDouble()) {
        table.tell(
            Trouble.about(Kind.ZIP_SHORT, "opening", name)
                .in(step)
                .values(longest, opening.length.getAsDouble()));
      }
    }
    if (opening != null) {
      inReach(name, opening, step);
    }
    close(name, step);
  }

  /** A zip goes in before the edge at its end is faced or shut in a band. */
  private void inReach(String name, Table.Opening opening, Step step) {
    for (Pass pass : opening.passes) {
      for (Strip strip : pass.strips()) {
        for (boolean begins : new boolean[] {true, false}) {
          Step shut =
              table
                  .cloth
                  .beside(strip, begins)
                  .map(table::state)
                  .map(state -> state.enclosed)
                  .orElse(null);
          if (shut != null && !(shut.act() instanceof Act.Hem)) {
            table.tell(
                Trouble.about(Kind.ZIP_LATE, "opening", name).in(step).after(shut).at(strip));
            return;
          }
        }
      }
    }
  }

  void atTheEnd() {
    table.openings.forEach(
        (name, opening) -> {
          if (opening.closed == null) {
            table.tell(Trouble.about(Kind.NEVER_CLOSED, "opening", name).in(opening.left));
          }
        });
    for (Elastic elastic : table.cloth.sized().elastics()) {
      if (table.cloth.piece(elastic.piece()).isPresent()) {
        atTheEnd("elastic", elastic.name());
      }
    }
    for (Cord cord : making.cords()) {
      if (table.cloth.piece(cord.piece()).isPresent()) {
        atTheEnd("cord", cord.name());
      }
    }
  }

  private void atTheEnd(String word, String name) {
    Table.Held held = table.held(name);
    if (held.in == null) {
      table.tell(Trouble.about(Kind.LEFT_OUT, word, name));
    } else if (isRing(name) && held.joined == null && !held.applied) {
      table.tell(Trouble.about(Kind.ENDS_APART, word, name).in(held.in));
    }
  }
}
