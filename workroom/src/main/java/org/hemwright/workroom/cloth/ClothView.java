package org.hemwright.workroom.cloth;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.cloth.byhand.OwnLayings;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.yardage.YardageRequest;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.paper.CuttingLayouts;
import org.hemwright.paper.Paper;
import org.hemwright.paper.PrintedFile;
import org.hemwright.paper.words.ClothWords;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.SizeRun;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.out.KeptLayings;
import org.hemwright.workroom.keep.Keeper;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;
import org.hemwright.workroom.text.FindingWords;

/** Lays the size that is looked at. */
public final class ClothView implements View {
  /** No loom is wider (mm), and nothing is cut from less; common practice, no source. */
  private static final double WIDEST = 5000;

  private static final double NARROWEST = 200;

  @Override
  public Map<String, Answering> answers() {
    return Map.of(
        "lay", ClothView::lay,
        "board", HandBoard::board,
        "shift", HandBoard::shift,
        "keep_laying", HandBoard::keep,
        "search_on", LookOn::begin,
        "stop_search", LookOn::stop,
        "drop_laying", HandBoard::drop);
  }

  @Override
  public void closed(Room room, Window window) {
    window.kept(LookOn.Search.class, LookOn.Search::new).end();
  }

  /**
   * {@code {"ask": "lay", "size", "also"}}: lays a size on every cloth, width and fold, and on a
   * width (mm) that is none of its own where {@code also} is more than 0. It is told by and by:
   * {@code laying} how far it has come, {@code found} a shorter laying of some cloth, {@code laid}
   * what all came to.
   */
  private static Frame lay(Room room, Window window, Question question) throws Question.Unclear {
    Optional<SizeRun> run = room.draft().evaluated().run();
    int size = question.whole("size");
    if (run.isEmpty() || size < 0 || size >= run.get().sizes().size()) {
      throw new Question.Unclear("no-size");
    }
    String name = run.get().sizes().get(size).size().name();
    int revision = room.revision();
    double also = question.body().path("also").asDouble(0);
    if (!(also >= 0) || also > WIDEST || (also > 0 && also < NARROWEST)) {
      throw new Question.Unclear("cloth-from-cm-m");
    }
    SizeRun shown = run.get();
    YardageTable.Watcher watcher =
        new YardageTable.Watcher() {
          @Override
          public synchronized void laid(int done, int of) {
            room.later(
                () ->
                    window.send(
                        new Frame(
                            Frame.tell("laying")
                                .put("size", name)
                                .put("done", done)
                                .put("of", of))));
          }

          @Override
          public void shorter(YardageTable.Cloth cloth, ClothLaying laying) {
            if (cloth.size() == size) {
              room.later(() -> window.send(found(shown, name, cloth, laying)));
            }
          }
        };
    OwnLayings own = OwnLayings.read(room.text(OwnLayings.FILE));
    room.atLength(
        () -> {
          Path kept = room.place().orElseThrow().resolve(Keeper.PLACE);
          KeptLayings store = KeptLayings.in(kept);
          YardageTable table = YardageTable.of(shown, request(shown, name, also), store, watcher);
          store.keep();
          return own.applied(only(table, also));
        },
        table -> {
          window.kept(HandBoard.Looked.class, HandBoard.Looked::new).show(run.get(), table);
          window.send(laid(room, run.get(), table, name, revision));
        });
    return new Frame(Frame.answer());
  }

  /** All widths that a fabric of the pattern is sold in, and another that is asked about. */
  private static YardageRequest request(SizeRun run, String size, double also) {
    YardageRequest usual = YardageRequest.everything().inSizes(List.of(size));
    if (also == 0) {
      return usual;
    }
    List<Double> widths = new ArrayList<>(List.of(also));
    run.pattern().fabrics().forEach(fabric -> widths.addAll(fabric.widths()));
    return usual.onWidths(widths);
  }

  /** Without the rows of a fabric on a width that only another is sold in. */
  private static YardageTable only(YardageTable table, double also) {
    return new YardageTable(
        table.rows().stream()
            .filter(row -> row.width() == also || row.fabric().widths().contains(row.width()))
            .toList(),
        table.findings());
  }

  private static Frame found(
      SizeRun run, String size, YardageTable.Cloth cloth, ClothLaying laying) {
    ClothWords words = new ClothWords(run, false);
    ObjectNode head = Frame.tell("found").put("size", size);
    head.put("heading", words.heading(cloth.views().get(0), cloth.fabric(), cloth.nap()));
    head.put("width", words.length(cloth.width())).put("fold", ClothWords.fold(cloth.fold()));
    HandBoard.cloth(laying, head);
    HandBoard.write(run, cloth.nap(), laying, -1, head);
    return new Frame(head);
  }

  private static Frame laid(Room room, SizeRun run, YardageTable table, String size, int revision) {
    OwnLayings own = OwnLayings.read(room.text(OwnLayings.FILE));
    ObjectNode head = Frame.tell("laid").put("revision", revision).put("size", size);
    head.put("inches", run.pattern().details().units() == Details.Units.INCHES);
    ClothWords words = new ClothWords(run, false);
    ArrayNode rows = head.putArray("rows");
    for (YardageRow row : table.rows()) {
      ObjectNode told = rows.addObject();
      told.put("heading", words.heading(row.view(), row.fabric(), row.nap()));
      told.put("width", words.length(row.width()));
      told.put("fold", ClothWords.fold(row.fold()));
      told.put("best", row.best()).put("fits", row.fits());
      told.put("own", HandBoard.isOwn(row, own));
      row.need()
          .ifPresent(
              need ->
                  told.put("length", words.length(need.length()))
                      .put("density", Math.round(100 * need.laying().density())));
      ArrayNode misfits = told.putArray("misfits");
      row.misfits().forEach(misfit -> misfits.add(misfit.piece()));
    }
    FindingWords.write(
        table.findings(),
        room,
        revision,
        Workbench.wording(Optional.of(run)),
        head.putArray("findings"));
    ArrayNode pictures = head.putArray("pictures");
    List<PrintedFile> drawn = CuttingLayouts.pictures(run, table, Paper.PictureKind.SVG);
    int next = 0;
    for (int i = 0; i < table.rows().size(); i++) {
      YardageRow row = table.rows().get(i);
      if (row.best() && row.fits() && next < drawn.size()) {
        ((ObjectNode) rows.get(i)).put("picture", next);
        pictures.add(new String(drawn.get(next++).bytes(), StandardCharsets.UTF_8));
      }
    }
    return new Frame(head);
  }
}
