package org.hemwright.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.nest.GroupDrawing;
import org.hemwright.paper.nest.Nest;
import org.hemwright.paper.nest.PiecePicture;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.style.SizeStyle;
import org.hemwright.paper.style.SizeStyles;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.HouseType;
import org.hemwright.paper.type.SetLine;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.body.Size;

/**
 * All pieces of a group side by side, to look at: grain upward, long narrow ones lying below, the
 * title above and a key to the sizes at the foot.
 */
public final class Pictures {
  private static final double NARROW = 4;
  private static final double GAP = 14;
  private static final double SHAPE = 1.5;
  private static final double TITLE = 26;
  private static final double TEXT = 10;

  private final GroupDrawing group;
  private final boolean stitchLines;
  private final HouseType type;
  private final double scale;
  private final List<Item> items = new ArrayList<>();
  private double reached;

  private Pictures(GroupDrawing group, boolean stitchLines, HouseType type, double scale) {
    this.group = group;
    this.stitchLines = stitchLines;
    this.type = type;
    this.scale = scale;
  }

  /**
   * The picture as a sheet (mm, pieces in true size).
   *
   * @param type the fonts of the house
   * @param scale how many times their size on paper lines and words are, 1 or more
   */
  public static Sheet of(GroupDrawing group, boolean stitchLines, HouseType type, double scale) {
    return new Pictures(group, stitchLines, type, scale).sheet();
  }

  /** A piece that waits for its place, with the box it fills. */
  private record Waiting(int number, List<Inked> items, Box box) {}

  private Sheet sheet() {
    List<Waiting> waiting = new ArrayList<>();
    for (int i = 0; i < group.nests().size(); i++) {
      Nest nest = group.nest(i, 0);
      Box box = nest.bounds();
      if (box.height() > NARROW * box.width()) {
        nest = group.nest(i, 1);
        box = nest.bounds();
      }
      waiting.add(
          new Waiting(
              nest.card().number(), PiecePicture.of(group.run(), nest, stitchLines, scale), box));
    }
    waiting.sort(Comparator.comparing(Pictures::isLow).thenComparing(Waiting::number));
    double room = room(waiting);
    double top = lay(waiting, room);
    double foot = key(top - gap(), room);
    title();
    double head = Face.mm(TITLE * scale) * 1.9;
    return new Sheet(new Box(-gap(), foot - gap(), reached + gap(), head + gap() * 0.6), items);
  }

  private double gap() {
    return GAP * Math.max(1, scale * 0.7);
  }

  private static boolean isLow(Waiting piece) {
    return piece.box().width() > NARROW * piece.box().height();
  }

  /** Of the widths at which some row is full, that whose rows fill the handiest shape best. */
  private double room(List<Waiting> waiting) {
    double widest = waiting.stream().mapToDouble(piece -> piece.box().width()).max().orElse(0);
    double best = widest;
    double least = Double.POSITIVE_INFINITY;
    for (int first = 0; first < waiting.size(); first++) {
      double room = -gap();
      for (int last = first; last < waiting.size(); last++) {
        room += waiting.get(last).box().width() + gap();
        if (room >= widest) {
          double high = -rows(waiting, room, (piece, x, top) -> {});
          double slender = Math.max(room / high, high / room);
          double cost = room * high * (1 + Math.max(0, slender - SHAPE));
          if (cost < least) {
            least = cost;
            best = room;
          }
        }
      }
    }
    return best;
  }

  /** Lays pieces in rows downward from 0; answers where the last row ends. */
  private double lay(List<Waiting> waiting, double room) {
    return rows(
        waiting,
        room,
        (piece, x, top) -> {
          Vector move = new Vector(x - piece.box().minX(), top - piece.box().maxY());
          piece.items().forEach(item -> items.add(item.moved(move)));
          reached = Math.max(reached, x + piece.box().width());
        });
  }

  /** Is given each piece with the place of its upper left corner. */
  private interface Placing {
    void put(Waiting piece, double x, double top);
  }

  private double rows(List<Waiting> waiting, double room, Placing put) {
    double top = 0;
    double x = 0;
    double deep = 0;
    for (Waiting piece : waiting) {
      if (x > 0 && x + piece.box().width() > room + Tolerance.PRINTED_AS_ONE) {
        top -= deep + gap();
        x = 0;
        deep = 0;
      }
      put.put(piece, x, top);
      x += piece.box().width() + gap();
      deep = Math.max(deep, piece.box().height());
    }
    return top - deep;
  }

  private void title() {
    Speech speech = Speech.of(group.run());
    double up = gap() * 0.8;
    SetLine title = type.title(speech.details().title(), TITLE * scale);
    words(title, 0, up);
    SetLine sizes = Face.REGULAR.set(speech.sizes(group.sizeNames()), TEXT * 1.2 * scale);
    words(sizes, title.width() + Face.mm(TITLE * scale) * 0.6, up);
  }

  private void words(SetLine line, double x, double y) {
    reached = Math.max(reached, x + line.width());
    items.add(new Words(line, new Point(x, y), 0, Inks.BLACK, Layer.COMMON, Subject.NONE));
  }

  /** A sample of each size's line with its name; answers where it ends. */
  private double key(double top, double room) {
    if (group.sizes().size() < 2 || group.nests().isEmpty()) {
      return top + gap();
    }
    SizeStyles styles = group.nests().get(0).styles();
    double sample = 20 * scale;
    double high = Face.mm(TEXT * scale) * 1.6;
    double x = 0;
    double y = top - Face.mm(TEXT * scale);
    for (Size size : group.sizes()) {
      SetLine name = Face.REGULAR.set(size.name(), TEXT * scale);
      double wide = sample + name.width() + 9 * scale;
      if (x > 0 && x + wide > room) {
        x = 0;
        y -= high;
      }
      SizeStyle style = styles.of(size);
      Point from = new Point(x, y + name.capitalHeight() / 2);
      items.add(
          new Stroke(
              Path.straight(from, from.plus(new Vector(sample, 0))),
              style.cut().times(Math.max(1, Math.sqrt(scale) * 1.1)),
              Layer.of(size.name()),
              Subject.NONE));
      words(name, x + sample + 2.5 * scale, y);
      x += wide;
    }
    return y;
  }
}
