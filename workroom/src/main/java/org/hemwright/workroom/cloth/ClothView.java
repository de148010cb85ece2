package org.hemwright.workroom.cloth;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.cloth.byhand.OwnLayings;
import org.hemwright.cloth.yardage.YardageRequest;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.paper.CuttingLayouts;
import org.hemwright.paper.Paper;
import org.hemwright.paper.PrintedFile;
import org.hemwright.paper.words.ClothWords;
import org.hemwright.pattern.SizeRun;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Progress;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.PatternFolder;
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
  @Override
  public Map<String, Answering> answers() {
    return Map.of(
        "lay", ClothView::lay,
        "board", HandBoard::board,
        "shift", HandBoard::shift,
        "keep_laying", HandBoard::keep,
        "drop_laying", HandBoard::drop);
  }

  /**
   * {@code {"ask": "lay", "size"}}: lays a size on every cloth, width and fold. It is told by and
   * by: {@code laying} how far it has come, {@code laid} what it came to.
   */
  private static Frame lay(Room room, Window window, Question question) throws Question.Unclear {
    Optional<SizeRun> run = room.draft().evaluated().run();
    int size = question.whole("size");
    if (run.isEmpty() || size < 0 || size >= run.get().sizes().size()) {
      throw new Question.Unclear("no-size");
    }
    String name = run.get().sizes().get(size).size().name();
    int revision = room.revision();
    Progress progress =
        (doing, done, of) ->
            room.later(
                () ->
                    window.send(
                        new Frame(
                            Frame.tell("laying")
                                .put("size", name)
                                .put("done", done)
                                .put("of", of))));
    PatternFolder folder = room.edited();
    room.atLength(
        () -> {
          Path kept = room.place().orElseThrow().resolve(Keeper.PLACE);
          KeptLayings store = KeptLayings.in(kept);
          YardageRequest request = YardageRequest.everything().inSizes(List.of(name));
          Evaluated evaluated = Workbench.evaluate(folder);
          YardageTable table = Workbench.yardage(evaluated, run.get(), request, store, progress);
          store.keep();
          return table;
        },
        table -> {
          window.kept(HandBoard.Looked.class, HandBoard.Looked::new).show(run.get(), table);
          window.send(laid(room, run.get(), table, name, revision));
        });
    return new Frame(Frame.answer());
  }

  private static Frame laid(Room room, SizeRun run, YardageTable table, String size, int revision) {
    OwnLayings own = OwnLayings.read(room.text(OwnLayings.FILE));
    ObjectNode head = Frame.tell("laid").put("revision", revision).put("size", size);
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
        table.findings(), room, Workbench.wording(Optional.of(run)), head.putArray("findings"));
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
