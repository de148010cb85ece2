package org.hemwright.booklet.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.words.Telling;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.sheet.Subject;

/** What the marks of the figures mean: a sample of each. */
public final class KeyFigures {
  private static final double WIDE = 30;
  private static final double HIGH = 11;

  private KeyFigures() {}

  /** A sample of each mark, its caption the words. */
  public static List<Figure> of(Telling telling) {
    List<Figure> all = new ArrayList<>();
    all.add(sample(telling, "right", items -> cloth(items, false)));
    all.add(sample(telling, "wrong", items -> cloth(items, true)));
    all.add(sample(telling, "edge", items -> items.add(Draw.line(2, 5, 28, 5, Draw.EDGE))));
    all.add(sample(telling, "stitch", items -> items.add(Draw.line(2, 5, 28, 5, Draw.STITCH))));
    all.add(sample(telling, "fold", items -> items.add(Draw.line(2, 5, 28, 5, Draw.FOLD))));
    all.add(sample(telling, "action", items -> items.add(Draw.line(2, 5, 28, 5, Draw.ACTION))));
    all.add(
        sample(
            telling,
            "pin",
            items -> {
              items.add(Draw.line(2, 5, 28, 5, Draw.STITCH));
              items.addAll(Draw.pin(new Point(15, 5), new Vector(0, 1)));
            }));
    all.add(
        sample(
            telling,
            "notch",
            items -> {
              items.add(Draw.line(2, 7, 28, 7, Draw.EDGE));
              items.add(Draw.line(15, 7, 15, 4.4, Draw.EDGE));
            }));
    all.add(
        sample(
            telling,
            "arrow",
            items -> items.addAll(Draw.arrow(new Point(6, 5), new Point(25, 5)))));
    all.add(sample(telling, "cutaway", items -> cutAway(items)));
    return all;
  }

  private static void cloth(List<Item> items, boolean wrong) {
    items.addAll(Draw.cloth(Draw.box(3, 1, 27, 10), wrong, Subject.NONE));
    items.add(Draw.line(Draw.box(3, 1, 27, 10).path(), Draw.EDGE));
  }

  private static void cutAway(List<Item> items) {
    cloth(items, false);
    Scene scene = new Scene();
    scene.area(Draw.box(3, 1, 15, 10).path(), true, Subject.NONE);
    scene.line(Draw.box(3, 1, 15, 10).path(), Draw.FINE);
    items.addAll(scene.within(new Box(-0.5, -3, 18.5, 14)));
  }

  private static Figure sample(Telling telling, String key, Consumer<List<Item>> draw) {
    List<Item> items = new ArrayList<>();
    draw.accept(items);
    List<Inline> words = telling.say("key." + key);
    return new Figure(
        "key-" + key, new Sheet(new Box(0, 0, WIDE, HIGH), items), Inline.plain(words), words);
  }
}
