package org.hemwright.booklet.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.sheet.Clip;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.pattern.View;
import org.hemwright.pattern.piece.AddedAllowance;
import org.hemwright.pattern.piece.CutLine;
import org.hemwright.pattern.piece.FoldLine;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.PieceCard;

/** Pieces by themselves: each for the list, those of a view for the cover. */
public final class PieceFigures {
  private static final double SMALL = 38;
  private static final double COVER_WIDE = 150;
  private static final double COVER_HIGH = 100;

  /** What the drawings of all views may take of the cover (mm of height). */
  private static final double COVER_ALL = 150;

  private PieceFigures() {}

  /** A piece with its grain, folds and notches. */
  public static Optional<Figure> piece(Telling telling, PieceCard card) {
    return Flat.of(telling.drawn(), card.name())
        .map(
            flat -> {
              Scene scene = new Scene();
              draw(scene, flat);
              Box fitted = scene.paper(SMALL, SMALL);
              Box paper = new Box(0, 0, SMALL, fitted.height());
              return new Figure(
                  "piece-" + card.name(),
                  new Sheet(paper, List.of(new Clip(paper, scene.within(paper)))),
                  Inline.plain(
                      telling.say(
                          "figure.piece.alt", Slots.of("piece", telling.piece(card.name())))),
                  telling.piece(card.name()));
            });
  }

  private static void draw(Scene scene, Flat flat) {
    scene.piece(flat);
    for (FoldLine fold :
        flat.opened().foldLines(FoldLine.of(flat.opened().drawn(), halfCut(flat)))) {
      scene.line(fold.path().moved(flat.motion()), Draw.FOLD);
    }
    flat.opened()
        .mirror()
        .ifPresent(
            mirror ->
                flat.opened()
                    .drawn()
                    .foldEdge()
                    .ifPresent(edge -> scene.line(edge.path().moved(flat.motion()), Draw.HIDDEN)));
    for (Mark mark : flat.opened().marks()) {
      if (mark instanceof Mark.Placement line) {
        scene.line(line.path().moved(flat.motion()), Draw.HIDDEN);
      } else if (mark instanceof Mark.Inner line) {
        scene.line(line.path().moved(flat.motion()), Draw.FINE);
      }
    }
    Box box = flat.outline().bounds();
    Point centre = box.centre();
    double reach = box.height() * 0.28;
    scene.arrow(
        Path.straight(
            centre.plus(new Vector(box.width() * 0.14, -reach)),
            centre.plus(new Vector(box.width() * 0.14, reach))));
    scene.words(Integer.toString(flat.number()), centre.plus(new Vector(-box.width() * 0.12, 0)));
  }

  private static CutLine halfCut(Flat flat) {
    return AddedAllowance.to(flat.opened().drawn()).cutLine().orElse(flat.cut());
  }

  /** All pieces of a view, side by side in one scale. */
  public static Optional<Figure> view(Telling telling, View view) {
    Scene scene = new Scene();
    double x = 0;
    double row = 0;
    double high = 0;
    double widest = 1800;
    List<List<Inline>> named = new ArrayList<>();
    for (String name : view.pieces()) {
      Optional<Flat> found = Flat.of(telling.drawn(), name);
      if (found.isEmpty()) {
        continue;
      }
      Flat flat = found.get();
      Box box = flat.outline().bounds();
      if (box.height() > 3 * box.width() && box.height() > 900) {
        flat = flat.then(Motion.turn(Point.ORIGIN, -Math.PI / 2));
        box = flat.outline().bounds();
      }
      if (x > 0 && x + box.width() > widest) {
        row -= high + 60;
        x = 0;
        high = 0;
      }
      Flat lying = flat.then(Motion.move(new Vector(x - box.minX(), row - box.maxY())));
      scene.piece(lying);
      scene.words(Integer.toString(lying.number()), lying.outline().bounds().centre());
      x += box.width() + 60;
      high = Math.max(high, box.height());
      named.add(telling.piece(name));
    }
    if (scene.isEmpty()) {
      return Optional.empty();
    }
    Box table = scene.bounds();
    double scale =
        Math.min(
            COVER_WIDE / table.width(),
            Math.min(COVER_HIGH, COVER_ALL / telling.run().pattern().views().size())
                / table.height());
    Box paper = new Box(0, 0, table.width() * scale + 8, table.height() * scale + 8);
    List<Item> items = scene.within(paper);
    Slots slots = Slots.of("view", telling.view(view)).and("pieces", telling.words().listed(named));
    return Optional.of(
        new Figure(
            "view-" + view.name(),
            new Sheet(paper, items),
            Inline.plain(telling.say("figure.view.alt", slots)),
            telling.severalViews() ? telling.words().capital(telling.view(view)) : List.of()));
  }
}
