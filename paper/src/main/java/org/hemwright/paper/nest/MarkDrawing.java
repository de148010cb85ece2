package org.hemwright.paper.nest;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.label.TurnedBox;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.style.Pens;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.piece.Mark;

/**
 * What the designer marks on a piece: inner and placement lines, points, levels, lengthen lines,
 * her own words, and the fold bracket.
 */
final class MarkDrawing {
  private static final double REACH = 45;
  private static final double LEVEL_TICK = 9;
  private static final double LENGTHEN_APART = 4;
  private static final double BRACKET_DEPTH = 11;
  private static final double LONGEST_BRACKET = 320;

  private final Nest nest;
  private final Canvas canvas;
  private final Speech speech;
  private final Signs common;
  private final List<Runnable> wordsLater = new ArrayList<>();

  MarkDrawing(Nest nest, Canvas canvas, Speech speech) {
    this.nest = nest;
    this.canvas = canvas;
    this.speech = speech;
    this.common = Signs.common(canvas.subject());
  }

  void draw() {
    lengthen();
    inner();
    placement();
    splits();
    drills();
    levels();
    fold();
    labels();
  }

  /** Words come last, when every line is there to keep off. */
  void words() {
    wordsLater.forEach(Runnable::run);
  }

  private void inner() {
    Map<String, List<SizedPath>> lines = new LinkedHashMap<>();
    Map<String, String> texts = new LinkedHashMap<>();
    for (PieceShape shape : nest.shapes()) {
      int index = 0;
      for (Mark.Inner inner : shape.marks(Mark.Inner.class)) {
        String key = inner.name() + index++;
        lines
            .computeIfAbsent(key, k -> new ArrayList<>())
            .add(new SizedPath(shape.size(), inner.path()));
        inner.text().ifPresent(text -> texts.putIfAbsent(key, text));
      }
    }
    lines(lines, texts, Pens.INNER);
  }

  private void placement() {
    Map<String, List<SizedPath>> lines = new LinkedHashMap<>();
    Map<String, String> texts = new LinkedHashMap<>();
    for (PieceShape shape : nest.shapes()) {
      int index = 0;
      for (Mark.Placement placement : shape.marks(Mark.Placement.class)) {
        String key = placement.name() + index++;
        lines
            .computeIfAbsent(key, k -> new ArrayList<>())
            .add(new SizedPath(shape.size(), placement.path()));
        placement.text().ifPresent(text -> texts.putIfAbsent(key, text));
      }
    }
    lines(lines, texts, Pens.PLACEMENT);
  }

  private void splits() {
    Map<String, List<SizedPath>> lines = new LinkedHashMap<>();
    for (PieceShape shape : nest.shapes()) {
      int index = 0;
      for (Mark.Split split : shape.marks(Mark.Split.class)) {
        for (Path line : split.lines()) {
          lines
              .computeIfAbsent(split.name() + index++, k -> new ArrayList<>())
              .add(new SizedPath(shape.size(), line));
        }
      }
    }
    lines(lines, Map.of(), Pens.SPLIT);
  }

  private void lines(Map<String, List<SizedPath>> lines, Map<String, String> texts, Pen pen) {
    lines.forEach(
        (key, paths) -> {
          canvas.draw(LineDrawing.strokes(nest, canvas, paths, pen));
          String text = texts.get(key);
          if (text != null) {
            wordsLater.add(() -> along(paths, text));
          }
        });
  }

  private void along(List<SizedPath> paths, String text) {
    for (SizedPath line : paths) {
      if (canvas.along(line.path(), text, common, 0.5)) {
        return;
      }
    }
    canvas.leftOut(text);
  }

  private void drills() {
    Map<String, Map<Point, List<Size>>> drills = new LinkedHashMap<>();
    Map<String, String> texts = new LinkedHashMap<>();
    for (PieceShape shape : nest.shapes()) {
      int index = 0;
      for (Mark.Drill drill : shape.marks(Mark.Drill.class)) {
        String key = drill.name() + index++;
        enter(drills, key, drill.at(), shape.size());
        drill.text().ifPresent(text -> texts.putIfAbsent(key, text));
      }
    }
    drills.forEach(
        (key, places) -> {
          places.forEach(
              (at, sizes) -> canvas.draw(LineDrawing.signs(nest, canvas, sizes).drill(at)));
          String text = texts.get(key);
          if (text != null) {
            Point first = places.keySet().iterator().next();
            wordsLater.add(() -> near(first, text));
          }
        });
  }

  private static void enter(
      Map<String, Map<Point, List<Size>>> all, String key, Point at, Size size) {
    Map<Point, List<Size>> places = all.computeIfAbsent(key, k -> new LinkedHashMap<>());
    Point same =
        places.keySet().stream()
            .filter(known -> known.distanceTo(at) <= Tolerance.PRINTED_AS_ONE)
            .findFirst()
            .orElse(at);
    places.computeIfAbsent(same, k -> new ArrayList<>()).add(size);
  }

  /** Words as near to a point as they fit. */
  private void near(Point point, String text) {
    SetLine line = Face.REGULAR.set(text, Canvas.POINTS);
    Optional<TurnedBox> box =
        canvas.near(
            point,
            0,
            line.width(),
            line.capitalHeight() + line.descent(),
            REACH + line.width() / 2);
    box.ifPresentOrElse(
        room -> canvas.draw(List.of(common.words(line, room.at(0, line.descent()), 0)), room),
        () -> canvas.leftOut(text));
  }

  private void levels() {
    Map<String, Map<Point, List<Size>>> levels = new LinkedHashMap<>();
    for (PieceShape shape : nest.shapes()) {
      int index = 0;
      for (Mark.Level level : shape.marks(Mark.Level.class)) {
        enter(levels, Speech.spoken(level.name()) + "\n" + index++, level.at(), shape.size());
      }
    }
    levels.forEach(
        (key, places) -> {
          Point first = places.keySet().iterator().next();
          Vector inward = inward(first);
          places.forEach(
              (at, sizes) ->
                  canvas.draw(
                      List.of(
                          LineDrawing.signs(nest, canvas, sizes)
                              .line(at, at.plus(inward.times(LEVEL_TICK)), Pens.INNER))));
          String name = Speech.capital(key.substring(0, key.indexOf('\n')));
          wordsLater.add(() -> near(first.plus(inward.times(LEVEL_TICK + 6)), name + " line"));
        });
  }

  /** Across the grain, into the piece. */
  private Vector inward(Point at) {
    Vector across = grain().left();
    return nest.smallest().cut().contains(at.plus(across.times(LEVEL_TICK)))
        ? across
        : across.negated();
  }

  private Vector grain() {
    return nest.smallest()
        .grain()
        .map(grain -> grain.end().minus(grain.start()).unit())
        .orElse(new Vector(0, 1));
  }

  /** The middle size's line, run on from side to side of the largest, and a second beside it. */
  private void lengthen() {
    PieceShape middle = nest.shapes().get(nest.shapes().size() / 2);
    for (Mark.Lengthen lengthen : middle.marks(Mark.Lengthen.class)) {
      Path line = lengthen.line();
      Vector along = Canvas.upright(line.end().minus(line.start()).unit());
      Path across =
          Path.straight(
              line.start().plus(along.times(-5000)), line.start().plus(along.times(5000)));
      double from = Double.POSITIVE_INFINITY;
      double to = Double.NEGATIVE_INFINITY;
      for (PieceShape shape : nest.shapes()) {
        for (var meeting : across.meetings(shape.cut().path())) {
          from = Math.min(from, meeting.distanceOnThis());
          to = Math.max(to, meeting.distanceOnThis());
        }
      }
      if (to - from > LENGTHEN_APART) {
        Path first = across.part(from, to);
        Vector aside = along.left().times(LENGTHEN_APART);
        List<Inked> pair =
            List.of(
                common.line(first.start(), first.end(), Pens.LENGTHEN),
                common.line(first.start().minus(aside), first.end().minus(aside), Pens.LENGTHEN));
        canvas.draw(pair);
        wordsLater.add(
            () ->
                canvas.along(
                    first, List.of("Lengthen or shorten here", "Lengthen, shorten"), common, 0.4));
      }
    }
  }

  private void fold() {
    PieceShape smallest = nest.smallest();
    if (smallest.fold().isEmpty()) {
      return;
    }
    Path fold = smallest.fold().get();
    double length = fold.length();
    double reach = Math.min(LONGEST_BRACKET, length * 0.62);
    Point from = fold.at((length - reach) / 2).point();
    Point to = fold.at((length + reach) / 2).point();
    Vector inward = fold.startDirection().left();
    List<Inked> bracket = common.fold(from, to, inward, BRACKET_DEPTH);
    canvas.draw(bracket);
    Path back =
        Path.straight(from.plus(inward.times(BRACKET_DEPTH)), to.plus(inward.times(BRACKET_DEPTH)));
    String text = "Place on the fold of the " + speech.cloth();
    wordsLater.add(
        0, () -> canvas.along(back, List.of(text, "Place on the fold", "Fold"), common, 0.5));
  }

  private void labels() {
    PieceShape smallest = nest.smallest();
    for (Mark.Label label : smallest.marks(Mark.Label.class)) {
      wordsLater.add(() -> near(label.at(), label.text()));
    }
  }
}
