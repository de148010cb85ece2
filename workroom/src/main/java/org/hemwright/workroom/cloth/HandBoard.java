package org.hemwright.workroom.cloth;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.cloth.byhand.HandMoves;
import org.hemwright.cloth.byhand.OwnLaying;
import org.hemwright.cloth.byhand.OwnLayings;
import org.hemwright.cloth.byhand.OwnPlace;
import org.hemwright.cloth.laying.Spot;
import org.hemwright.cloth.rule.ClothItem;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.LaidPiece;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.paper.words.ClothWords;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.workroom.history.Splice;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/**
 * Moves pieces by hand on one row of the table that a window was last told of. What a window holds
 * meanwhile is its own; only what is kept is written, and only if it is within the rules.
 */
final class HandBoard {
  private HandBoard() {}

  /** What a window was last told of. */
  static final class Looked {
    private Optional<SizeRun> run = Optional.empty();
    private List<YardageRow> rows = List.of();

    SizeRun run() {
      return run.orElseThrow();
    }

    void show(SizeRun shown, YardageTable table) {
      run = Optional.of(shown);
      rows = table.rows();
    }
  }

  static Looked looked(Window window) {
    return window.kept(Looked.class, Looked::new);
  }

  static YardageRow row(Window window, Question question) throws Question.Unclear {
    Looked looked = looked(window);
    int at = question.whole("row");
    if (at < 0 || at >= looked.rows.size() || !looked.rows.get(at).fits()) {
      throw new Question.Unclear("no-laying");
    }
    return looked.rows.get(at);
  }

  /** Whether a row shows a laying by hand. */
  static boolean isOwn(YardageRow row, OwnLayings own) {
    return row.need()
        .flatMap(
            need ->
                own.of(OwnLaying.OfCloth.of(row))
                    .map(laying -> laying.places().equals(OwnLaying.places(need.laying()))))
        .orElse(false);
  }

  /**
   * {@code {"ask": "board", "row"}}: the cloth, and every piece with its outline (mm), from its own
   * place.
   */
  static Frame board(Room room, Window window, Question question) throws Question.Unclear {
    YardageRow row = row(window, question);
    ClothLaying laying = row.need().orElseThrow().laying();
    ObjectNode head = Frame.answer();
    cloth(laying, head);
    write(window, row, laying, head);
    return new Frame(head);
  }

  /** The cloth on the table, without pieces. */
  static void cloth(ClothLaying laying, ObjectNode head) {
    head.put("across", laying.sheet().tableWidth());
    head.put("folded", laying.sheet().fold().name().toLowerCase(java.util.Locale.ROOT));
    head.put("selvedge", laying.sheet().settings().selvedge());
    laying.repeat().ifPresent(repeat -> bars(laying, repeat, head.putObject("bars")));
  }

  /** From bar to bar each way, and a place of one; what does not repeat is left out. */
  private static void bars(ClothLaying laying, Fabric.Repeat repeat, ObjectNode bars) {
    repeat
        .along()
        .ifPresent(every -> bars.put("along", every).put("along_from", laying.barAlong()));
    repeat
        .across()
        .ifPresent(every -> bars.put("across", every).put("across_from", laying.barAcross()));
  }

  /** How long a laying is, and all its pieces. */
  static void write(Window window, YardageRow row, ClothLaying laying, ObjectNode head) {
    write(looked(window).run(), row.nap(), laying, -1, head);
  }

  /**
   * The same of a run.
   *
   * @param only the one piece that is told of; all where it is less than 0
   */
  static void write(SizeRun run, Fabric.Nap nap, ClothLaying laying, int only, ObjectNode head) {
    ClothWords words = new ClothWords(run, false);
    head.put("long", laying.tableLength()).put("open_from", laying.openFrom());
    head.put("length", words.length(laying.length()));
    head.put("taken", laying.length());
    head.put("density", Math.round(100 * laying.density()));
    ArrayNode pieces = head.putArray("pieces");
    for (int i = 0; i < laying.pieces().size(); i++) {
      if (only >= 0 && i != only) {
        continue;
      }
      LaidPiece laid = laying.pieces().get(i);
      OwnPlace place = OwnPlace.of(laid);
      ObjectNode one = pieces.addObject();
      one.put("item", place.item()).put("copy", place.copy());
      one.put("turned", place.turned()).put("mirrored", place.mirrored());
      one.put("along", place.along()).put("across", place.across());
      one.put("one_way", nap == Fabric.Nap.ONE_WAY);
      one.put("held", laid.piece().striped().isPresent());
      one.put("name", laid.piece().piece().card().title());
      one.put("mark", laid.piece().piece().card().mark());
      one.put("layers", laid.item().layers().name().toLowerCase(java.util.Locale.ROOT));
      one.put(
          "turns",
          nap == Fabric.Nap.EITHER_WAY && laid.item().layers() != ClothItem.Layers.ON_FOLD);
      ArrayNode outline = one.putArray("outline");
      for (Spot corner : laid.covered().corners()) {
        outline.add(corner.x() - place.along()).add(corner.y() - place.across());
      }
    }
  }

  private static List<OwnPlace> places(Question question) throws Question.Unclear {
    List<OwnPlace> places = new ArrayList<>();
    for (JsonNode each : question.body().path("places")) {
      double along = each.path("along").asDouble(Double.NaN);
      double across = each.path("across").asDouble(Double.NaN);
      if (!Double.isFinite(along) || !Double.isFinite(across)) {
        throw new Question.Unclear("two-lengths");
      }
      places.add(
          new OwnPlace(
              each.path("item").asText(),
              each.path("copy").asInt(),
              each.path("turned").asBoolean(),
              each.path("mirrored").asBoolean(),
              along,
              across));
    }
    return places;
  }

  /**
   * {@code {"ask": "shift", "row", "places", "at", "along", "across"}} or with {@code "turn"}: puts
   * one piece elsewhere, or turns it; nothing is remembered of it here. Told at once as {@code
   * shifted}: where that piece came to lie, and where it could not lie as it was put, {@code
   * objection} and what it would lie {@code on}.
   */
  static Frame shift(Room room, Window window, Question question) throws Question.Unclear {
    YardageRow row = row(window, question);
    List<OwnPlace> places = places(question);
    int at = question.whole("at");
    HandMoves moves = new HandMoves(row);
    if (at < 0 || at >= places.size() || moves.laying(places).isEmpty()) {
      throw new Question.Unclear("other-pieces");
    }
    boolean turn = question.body().path("turn").asBoolean();
    double along = turn ? 0 : question.number("along");
    double across = turn ? 0 : question.number("across");
    room.promptly(
        () -> turn ? moves.turn(places, at) : moves.move(places, at, along, across),
        moved -> {
          ObjectNode head = Frame.tell("shifted").put("at", at);
          moved.objection().ifPresent(why -> head.put("objection", HandMoves.word(why)));
          moved.on().ifPresent(id -> head.put("on", title(row, id)));
          ClothLaying laying = moves.laying(moved.places()).orElseThrow();
          write(looked(window).run(), row.nap(), laying, at, head);
          window.send(new Frame(head));
        });
    return new Frame(Frame.answer());
  }

  private static String title(YardageRow row, String piece) {
    return row.need().orElseThrow().laying().pieces().stream()
        .filter(laid -> laid.piece().id().equals(piece))
        .map(laid -> laid.piece().piece().card().title())
        .findFirst()
        .orElse(piece);
  }

  /**
   * {@code {"ask": "keep_laying", "row", "places"}}: keeps a laying in the folder, unless something
   * speaks against it.
   */
  static Frame keep(Room room, Window window, Question question) throws Question.Unclear {
    YardageRow row = row(window, question);
    OwnLaying own = new OwnLaying(OwnLaying.OfCloth.of(row), places(question));
    Optional<ClothLaying> laying = own.on(row.need().orElseThrow().laying());
    boolean holds = laying.isPresent() && OwnLayings.objections(row, laying.get()).isEmpty();
    if (holds) {
      write(room, OwnLayings.read(room.text(OwnLayings.FILE)).with(own));
    }
    return new Frame(Frame.answer().put("kept", holds));
  }

  /** {@code {"ask": "drop_laying", "row"}}: takes a laying by hand out of the folder. */
  static Frame drop(Room room, Window window, Question question) throws Question.Unclear {
    YardageRow row = row(window, question);
    write(room, OwnLayings.read(room.text(OwnLayings.FILE)).without(OwnLaying.OfCloth.of(row)));
    return new Frame(Frame.answer());
  }

  /** Writes her layings as they are now. */
  static void write(Room room, OwnLayings own) {
    String before = room.text(OwnLayings.FILE);
    String after = own.text();
    if (!before.equals(after)) {
      room.change(List.of(Splice.between(OwnLayings.FILE, before, after)), false, "");
    }
  }
}
