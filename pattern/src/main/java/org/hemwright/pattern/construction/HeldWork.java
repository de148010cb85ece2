package org.hemwright.pattern.construction;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.pattern.construction.Trouble.Kind;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Cord;
import org.hemwright.pattern.make.Making;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.seam.Elastic;

/** Openings, and the elastics and cords that go in at them. */
final class HeldWork {
  private final Table table;
  private final Making making;

  HeldWork(Table table, Making making) {
    this.table = table;
    this.making = making;
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
      table.openings.put(
          opening.name(), new Table.Opening(step, passes, table.mm(opening.length())));
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

  void layIn(String name, Step step) {
    Table.Held held = table.held(name);
    Optional<Step> closing = Optional.ofNullable(held.casing).or(() -> closed(name));
    closing.ifPresent(
        before ->
            table.tell(
                Trouble.about(Kind.CASING_CLOSED, word(name), name)
                    .in(step)
                    .after(before)
                    .with(name)));
    in(held, step);
    held.laid = true;
  }

  void casing(String name, Step step) {
    Table.Held held = table.held(name);
    if (held.casing == null) {
      held.casing = step;
    }
  }

  void apply(String name, List<Strip> strips, Step step) {
    Table.Held held = table.held(name);
    in(held, step);
    held.applied = true;
    strips.forEach(strip -> table.state(strip).applied = true);
  }

  void joinEnds(String name, Step step) {
    Table.Held held = table.held(name);
    Optional<Table.Opening> opening =
        held.opening.flatMap(each -> Optional.ofNullable(table.openings.get(each)));
    Optional<Step> shut =
        held.laid
            ? Optional.ofNullable(held.casing).or(() -> closed(name))
            : opening.flatMap(each -> Optional.ofNullable(each.closed));
    shut.ifPresent(
        before ->
            table.tell(
                Trouble.about(Kind.CASING_CLOSED, word(name), name)
                    .in(step)
                    .after(before)
                    .with(name)));
    held.joined = step;
  }

  /** Everything that is in and not yet closed has been tried on. */
  void tryOn(Step step) {
    for (Table.Held held : table.held.values()) {
      if (held.in != null && held.tried == null) {
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
    close(name, step);
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
