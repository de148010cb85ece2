package org.hemwright.paper.nest;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hemwright.geometry.GeometryProblem;
import org.hemwright.geometry.OffsetPath;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.style.Pens;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.piece.Allowance;

/** The lines of a piece other than its cut line: fold, stitch line, folds of hems, notches. */
final class LineDrawing {
  private static final String HEM_WORDS = "Fold line of the hem";

  private final Nest nest;
  private final Canvas canvas;

  /** The first fold of each hem, by the edge's name. */
  private final Map<String, List<SizedPath>> hems = new LinkedHashMap<>();

  LineDrawing(Nest nest, Canvas canvas) {
    this.nest = nest;
    this.canvas = canvas;
  }

  void draw(boolean stitchLines) {
    fold();
    hems(stitchLines);
    if (stitchLines) {
      stitches();
    }
    notches();
  }

  /** Words beside the folds of hems, when every line is there to keep off. */
  void words() {
    Signs signs = Signs.common(canvas.subject());
    for (List<SizedPath> hem : hems.values()) {
      boolean put = false;
      for (SizedPath line : hem) {
        put = put || canvas.along(line.path(), HEM_WORDS, signs, 0.5);
      }
      if (!put) {
        canvas.leftOut(HEM_WORDS);
      }
    }
  }

  private void fold() {
    List<SizedPath> folds = new ArrayList<>();
    for (PieceShape shape : nest.shapes()) {
      shape.fold().ifPresent(fold -> folds.add(new SizedPath(shape.size(), fold)));
    }
    if (!folds.isEmpty()) {
      canvas.draw(strokes(nest, canvas, folds, Pens.FOLD));
    }
  }

  private void stitches() {
    canvas.draw(
        strokes(
            nest,
            canvas,
            nest.shapes().stream()
                .map(shape -> new SizedPath(shape.size(), shape.stitchLine()))
                .toList(),
            Pens.STITCH));
  }

  /** Each fold of a hem: the first along the edge itself, a second at the first one's depth. */
  private void hems(boolean stitchLines) {
    Map<String, List<SizedPath>> seconds = new LinkedHashMap<>();
    for (PieceShape shape : nest.shapes()) {
      for (PieceShape.EdgeShape edge : shape.edges()) {
        if (edge.allowance() instanceof Allowance.TurnedBack hem) {
          String key = edge.name() + edge.mirrored();
          hems.computeIfAbsent(key, k -> new ArrayList<>())
              .add(new SizedPath(shape.size(), edge.path()));
          if (hem.folds().size() == 2) {
            beside(edge, hem.folds().get(0))
                .forEach(
                    path ->
                        seconds
                            .computeIfAbsent(key, k -> new ArrayList<>())
                            .add(new SizedPath(shape.size(), path)));
          }
        }
      }
    }
    for (List<SizedPath> hem : hems.values()) {
      if (!stitchLines) {
        canvas.draw(strokes(nest, canvas, hem, Pens.HEM_FOLD));
      }
      hem.forEach(line -> canvas.keepOff(line.path()));
    }
    seconds.values().forEach(hem -> canvas.draw(strokes(nest, canvas, hem, Pens.HEM_FOLD)));
  }

  private static List<Path> beside(PieceShape.EdgeShape edge, double depth) {
    try {
      return List.of(OffsetPath.of(edge.path(), edge.mirrored() ? depth : -depth));
    } catch (GeometryProblem problem) {
      return List.of();
    }
  }

  /** Notches, each once for all sizes that share it. */
  private void notches() {
    Map<PieceShape.Tick, List<Size>> ticks = new LinkedHashMap<>();
    for (PieceShape shape : nest.shapes()) {
      for (PieceShape.NotchShape notch : shape.notches()) {
        for (PieceShape.Tick tick : notch.ticks()) {
          PieceShape.Tick same =
              ticks.keySet().stream()
                  .filter(known -> isAt(known.from(), tick.from()) && isAt(known.to(), tick.to()))
                  .findFirst()
                  .orElse(tick);
          ticks.computeIfAbsent(same, key -> new ArrayList<>()).add(shape.size());
        }
      }
    }
    ticks.forEach(
        (tick, sizes) ->
            canvas.draw(List.of(signs(nest, canvas, sizes).notch(tick.from(), tick.to()))));
  }

  private static boolean isAt(Point a, Point b) {
    return a.distanceTo(b) <= Tolerance.PRINTED_AS_ONE;
  }

  /** Signs for some sizes: in a size's own ink where it is alone. */
  static Signs signs(Nest nest, Canvas canvas, List<Size> sizes) {
    return new Signs(
        layer(sizes),
        canvas.subject(),
        sizes.size() == 1 ? nest.styles().of(sizes.get(0)).ink() : Inks.BLACK);
  }

  static Layer layer(List<Size> sizes) {
    return new Layer(sizes.stream().map(Size::name).distinct().toList());
  }

  /** Lines of several sizes, each stretch once, in a size's own ink where it is alone. */
  static List<Inked> strokes(Nest nest, Canvas canvas, List<SizedPath> lines, Pen pen) {
    List<Inked> strokes = new ArrayList<>();
    for (SharedLines.Run run : SharedLines.of(lines)) {
      Pen own = run.sizes().size() == 1 ? nest.styles().of(run.sizes().get(0)).with(pen) : pen;
      strokes.add(new Stroke(run.path(), own, layer(run.sizes()), canvas.subject()));
    }
    return strokes;
  }
}
