package org.hemwright.paper.nest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.label.Room;
import org.hemwright.paper.label.TurnedBox;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.quantity.DecimalText;

/** The grain arrow and, on knits, the stretch arrow, moved to where the piece has room for them. */
final class ArrowDrawing {
  private static final double LONGEST_GRAIN = 260;
  private static final double SHORTEST_GRAIN = 24;
  private static final double STRIP = 6.4;
  private static final double STRETCH_HEIGHT = 8.5;
  private static final double LONGEST_STRETCH = 62;
  private static final double[] WORD_SHARES = {0.5, 0.35, 0.65, 0.2, 0.8};

  private final SizeRun run;
  private final Nest nest;
  private final Canvas canvas;
  private final Signs signs;

  private ArrowDrawing(SizeRun run, Nest nest, Canvas canvas) {
    this.run = run;
    this.nest = nest;
    this.canvas = canvas;
    this.signs = Signs.common(canvas.subject());
  }

  static void draw(SizeRun run, Nest nest, Canvas canvas, Speech speech) {
    ArrowDrawing drawing = new ArrowDrawing(run, nest, canvas);
    nest.smallest().grain().ifPresent(drawing::grain);
    drawing.stretch();
  }

  private List<Fabric> fabrics() {
    List<Fabric> fabrics = new ArrayList<>();
    for (Cut cut : nest.card().cuts()) {
      run.pattern().fabric(cut.fabric()).ifPresent(fabrics::add);
    }
    return fabrics;
  }

  private void grain(Path laid) {
    Vector along = laid.end().minus(laid.start()).unit();
    Vector way = Canvas.upright(along);
    boolean oneWay = fabrics().stream().anyMatch(fabric -> fabric.laidWith() == Fabric.Nap.ONE_WAY);
    SetLine word = Face.REGULAR.set("Grain", Canvas.POINTS);
    Point near = laid.at(laid.length() / 2).point();
    double longest = Math.min(LONGEST_GRAIN, reach(along) * 0.6);
    for (double length = longest; length >= SHORTEST_GRAIN; length *= 0.86) {
      Optional<TurnedBox> found = canvas.wide().find(way.angle(), length, STRIP, near);
      if (found.isPresent()) {
        TurnedBox box = found.get();
        Point low = box.at(0, 1.3);
        Point high = box.at(box.width(), 1.3);
        List<Inked> items = new ArrayList<>();
        boolean same = way.equals(along);
        items.addAll(signs.grain(same ? low : high, same ? high : low, oneWay));
        items.add(signs.words(word, box.at(wordPlace(box, word), 3.2), box.angle()));
        canvas.draw(items, box);
        return;
      }
    }
    canvas.overlay(signs.grain(laid.start(), laid.end(), oneWay));
    canvas.leftOut("Grain");
  }

  /** How far along the arrow its word begins: in the middle, or where no pages meet in it. */
  private double wordPlace(TurnedBox box, SetLine word) {
    double room = box.width() - word.width();
    double high = word.capitalHeight() + word.descent();
    for (double share : WORD_SHARES) {
      TurnedBox place = new TurnedBox(box.at(room * share, 3.2), box.angle(), word.width(), high);
      if (!canvas.isAcrossPages(place)) {
        return room * share;
      }
    }
    return room / 2;
  }

  /** How far the smallest shape reaches in a direction (mm). */
  private double reach(Vector along) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Point point : nest.smallest().cut().path().flattened(1)) {
      double at = point.minus(Point.ORIGIN).dot(along);
      least = Math.min(least, at);
      most = Math.max(most, at);
    }
    return most - least;
  }

  private void stretch() {
    Optional<Vector> marked =
        nest.smallest().marks(Mark.Stretch.class).stream().map(Mark.Stretch::direction).findFirst();
    Optional<Fabric> knit =
        fabrics().stream().filter(fabric -> fabric.kind() == Fabric.Kind.KNIT).findFirst();
    Optional<Vector> across = nest.smallest().grain().map(grain -> grain.startDirection().right());
    Optional<Vector> direction = marked.or(() -> knit.flatMap(fabric -> across));
    if (direction.isEmpty()) {
      return;
    }
    Vector way = Canvas.upright(direction.get());
    OptionalDouble least = knit.map(Fabric::stretchAcross).orElse(OptionalDouble.empty());
    String words =
        least.isPresent()
            ? "Greatest stretch, at least\u00a0"
                + DecimalText.of(least.getAsDouble() * 100, 0)
                + "%"
            : "Greatest stretch";
    SetLine line = Face.REGULAR.set(words, Canvas.POINTS);
    Point near = canvas.wide().centre();
    for (Room room : List.of(canvas.wideOnPages(), canvas.wide())) {
      for (double length = LONGEST_STRETCH; length > line.width(); length -= 4) {
        if (put(room, way, length, line, near)) {
          return;
        }
      }
      if (put(room, way, line.width(), line, near)) {
        return;
      }
    }
    canvas.leftOut(words);
  }

  private boolean put(Room room, Vector way, double length, SetLine line, Point near) {
    Optional<TurnedBox> found = room.find(way.angle(), length, STRETCH_HEIGHT, near);
    if (found.isEmpty()) {
      return false;
    }
    TurnedBox box = found.get();
    List<Inked> items = new ArrayList<>(signs.stretch(box.at(0, 1.8), box.at(box.width(), 1.8)));
    items.add(signs.words(line, box.at((box.width() - line.width()) / 2, 5.2), box.angle()));
    canvas.draw(items, box);
    return true;
  }
}
