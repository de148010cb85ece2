package org.hemwright.workroom.table;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.util.RawValue;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.IntPredicate;
import org.hemwright.draft.plan.Evaluation;
import org.hemwright.paper.style.SizeStyles;
import org.hemwright.pattern.body.Size;
import org.hemwright.workbench.LiveDraft;
import org.hemwright.workroom.history.Revision;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Window;

/** Keeps the table of every window as the draft stands. */
public final class TableView implements View {
  private final DrawnRun drawing = new DrawnRun();
  private Map<DrawnRun.Spot, Ink> drawn = Map.of();

  /** What a window has on its table. */
  private static final class Table {
    final Map<String, Integer> structures = new HashMap<>();
    final Map<DrawnRun.Spot, Ink> there = new LinkedHashMap<>();
  }

  @Override
  public Map<String, Answering> answers() {
    return Map.of();
  }

  @Override
  public void opened(Room room, Window window) {
    draw(room);
    show(room, room.draft(), window, drawn);
  }

  @Override
  public void revised(Room room, Revision revision) {
    if (revision.cause() != Revision.Cause.MOMENT) {
      if (revision.drafts()) {
        draw(room);
      }
      room.windows().forEach(window -> show(room, room.draft(), window, drawn));
    }
  }

  private void draw(Room room) {
    drawn =
        room.draft().evaluation().map(values -> drawing.of(values, size -> true)).orElse(Map.of());
  }

  /** How each size is drawn in a nest: as on paper. */
  private static void styles(LiveDraft draft, ArrayNode styles) {
    draft
        .evaluation()
        .ifPresent(
            values -> {
              SizeStyles all = SizeStyles.of(values.sizes(), true);
              for (Size size : values.sizes()) {
                ObjectNode style = styles.addObject().put("ink", all.of(size).ink().hex());
                ArrayNode dashes = style.putArray("dashes");
                all.of(size).dashes().forEach(dashes::add);
              }
            });
  }

  /**
   * Answers with values that are not yet written, while something is dragged: of the sizes that
   * they are of, what changed; other sizes lie as they were told last. All is in the answer itself,
   * so that it is drawn once.
   *
   * @param looked the place in the chart of the size that is looked at; of the others only the
   *     outlines are drawn
   * @param head of the answer, to which it is added
   */
  public Frame shown(Room room, Window window, Evaluation values, int looked, ObjectNode head) {
    Map<DrawnRun.Spot, Ink> now = drawing.of(values, size -> size == looked);
    Set<Integer> sizes = new LinkedHashSet<>();
    values.sizes().forEach(size -> sizes.add(size.position()));
    Table table = window.kept(Table.class, Table::new);
    head.put("revision", room.revision());
    return new Frame(head, changes(table, now, sizes::contains, head));
  }

  /**
   * Shows what a document would come to that is not written, pieces that it adds and all.
   *
   * @param looked the place in the chart of the size that is looked at; of the others only the
   *     outlines are drawn
   */
  public void showTried(Room room, Window window, LiveDraft tried, int looked) {
    tried
        .evaluation()
        .ifPresent(values -> show(room, tried, window, drawing.of(values, size -> size == looked)));
  }

  /** Lays everything back as it is written. */
  public void layBack(Room room, Window window) {
    draw(room);
    show(room, room.draft(), window, drawn);
  }

  private static void show(Room room, LiveDraft draft, Window window, Map<DrawnRun.Spot, Ink> now) {
    Table table = window.kept(Table.class, Table::new);
    ObjectNode head = Frame.tell("pieces").put("revision", room.revision());
    ArrayNode sizes = head.putArray("sizes");
    draft.sizes().forEach(sizes::add);
    draft.evaluated().run().ifPresent(run -> head.put("base", run.pattern().base().position()));
    styles(draft, head.putArray("styles"));
    ArrayNode order = head.putArray("order");
    Set<String> drawn = new LinkedHashSet<>();
    now.keySet().forEach(spot -> drawn.add(spot.piece()));
    Set<String> names = new LinkedHashSet<>();
    draft
        .evaluated()
        .run()
        .ifPresent(run -> run.pattern().pieces().forEach(card -> names.add(card.name())));
    names.retainAll(drawn);
    names.addAll(drawn);
    names.forEach(order::add);
    window.send(new Frame(head, changes(table, now, size -> true, head)));
  }

  /** Writes into the head what is new to a table, and gives its numbers. */
  private static float[] changes(
      Table table, Map<DrawnRun.Spot, Ink> now, IntPredicate sizes, ObjectNode head) {
    ArrayNode structures = head.putArray("structures");
    ArrayNode drawings = head.putArray("drawings");
    int count = 0;
    Map<DrawnRun.Spot, Ink> changed = new LinkedHashMap<>();
    for (Map.Entry<DrawnRun.Spot, Ink> each : now.entrySet()) {
      Ink before = table.there.get(each.getKey());
      if (before == null || !before.isLike(each.getValue())) {
        changed.put(each.getKey(), each.getValue());
        count += each.getValue().numbers().length;
      }
    }
    float[] numbers = new float[count];
    int at = 0;
    for (Map.Entry<DrawnRun.Spot, Ink> each : changed.entrySet()) {
      Ink ink = each.getValue();
      Integer structure = table.structures.get(ink.structure());
      if (structure == null) {
        structure = table.structures.size();
        table.structures.put(ink.structure(), structure);
        structures.addRawValue(new RawValue(ink.structure()));
      }
      drawings.addArray().add(structure).add(each.getKey().size()).add(ink.numbers().length);
      System.arraycopy(ink.numbers(), 0, numbers, at, ink.numbers().length);
      at += ink.numbers().length;
    }
    ArrayNode gone = head.putArray("gone");
    table
        .there
        .keySet()
        .removeIf(
            spot -> {
              boolean left = sizes.test(spot.size()) && !now.containsKey(spot);
              if (left) {
                gone.addArray().add(spot.piece()).add(spot.size());
              }
              return left;
            });
    table.there.putAll(changed);
    return numbers;
  }
}
