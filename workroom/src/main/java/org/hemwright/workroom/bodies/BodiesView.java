package org.hemwright.workroom.bodies;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Coverage;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.SizeWords;
import org.hemwright.workbench.report.CoverageWords;
import org.hemwright.workroom.history.Revision;
import org.hemwright.workroom.history.Splice;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/** Shows the size chart as a grid and changes its cells. */
public final class BodiesView implements View {
  private static final int MOST_ROWS = 500;
  private static final int MOST_CELLS = 200;

  @Override
  public Map<String, Answering> answers() {
    return Map.of("chart", BodiesView::chart, "cells", BodiesView::cells);
  }

  /** The chart that the document names, where it is a text that can be edited here. */
  private static Optional<String> file(Room room) {
    return room.draft().document().stream()
        .flatMap(document -> document.statements().stream())
        .filter(Statement.SizesFrom.class::isInstance)
        .map(statement -> ((Statement.SizesFrom) statement).file())
        .filter(name -> room.texts().containsKey(name))
        .findFirst();
  }

  /** {@code {"ask": "chart"}}: its cells, and whom it serves. */
  private static Frame chart(Room room, Window window, Question question) {
    ObjectNode head = Frame.answer().put("revision", room.revision());
    ArrayNode rows = head.putArray("rows");
    ArrayNode serves = head.putArray("serves");
    Optional<String> file = file(room);
    file.ifPresent(
        name -> {
          head.put("file", name);
          for (List<ChartCells.Cell> row : ChartCells.of(room.text(name)).rows()) {
            ArrayNode cells = rows.addArray();
            row.forEach(cell -> cells.add(cell.said()));
          }
        });
    Optional<SizeRun> run = room.draft().evaluated().run();
    run.ifPresent(
        known -> {
          SizeWords sizes =
              new SizeWords(known.pattern().chart().sizes().stream().map(Size::name).toList());
          for (Coverage.Answer answer :
              Coverage.of(known.pattern().chart(), known.pattern().details().wearers())) {
            serves.add(CoverageWords.of(answer, sizes));
          }
        });
    return new Frame(head);
  }

  /**
   * {@code {"ask": "cells", "row", "column", "block": [[value, …], …], "revision"}}: puts a block
   * of values in the chart. One that was made for an older chart is refused.
   */
  private static Frame cells(Room room, Window window, Question question) throws Question.Unclear {
    int row = question.whole("row");
    int column = question.whole("column");
    List<List<String>> block = block(question.body().path("block"));
    Optional<String> file = file(room);
    boolean inside = row >= 0 && row < MOST_ROWS && column >= 0 && column < MOST_CELLS;
    if (file.isEmpty() || !inside) {
      throw new Question.Unclear("no-cell");
    }
    int seen = question.whole("revision");
    for (Revision revision : room.history()) {
      if (revision.number() > seen
          && revision.splices().stream().anyMatch(s -> s.file().equals(file.get()))) {
        throw new Question.Unclear("chart-changed");
      }
    }
    String text = room.text(file.get());
    List<Splice> splices = ChartCells.of(text).with(file.get(), text, row, column, block);
    boolean changed = !splices.isEmpty() && room.change(splices, false, "chart").isPresent();
    return new Frame(Frame.answer().put("changed", changed));
  }

  private static List<List<String>> block(JsonNode asked) throws Question.Unclear {
    if (!asked.isArray() || asked.isEmpty() || asked.size() > MOST_ROWS) {
      throw new Question.Unclear("block-rows", MOST_ROWS);
    }
    List<List<String>> block = new ArrayList<>();
    for (JsonNode row : asked) {
      if (!row.isArray() || row.isEmpty() || row.size() > MOST_CELLS) {
        throw new Question.Unclear("row-cells", MOST_CELLS);
      }
      List<String> values = new ArrayList<>();
      row.forEach(value -> values.add(value.asText()));
      block.add(values);
    }
    return block;
  }
}
