package org.hemwright.paper.nest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.label.TextBlock;
import org.hemwright.paper.label.TurnedBox;
import org.hemwright.paper.sheet.Fill;
import org.hemwright.paper.sheet.Ink;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.style.Pens;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.words.PieceWords;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.piece.Cut;

/**
 * One nest as a picture to look at rather than to cut: on a tint, with its lines and signs, and of
 * its words only the number, the title and the cut. Lines and words may be many times their size on
 * paper, so that they can be seen on a picture that is much smaller than the piece.
 */
public final class PiecePicture {
  private static final Ink TINT = new Ink(0xf1, 0xf4, 0xf7);
  private static final double FIGURE = 30;
  private static final double TITLE = 12;
  private static final double FACTS = 9;
  private static final double STRIP = 4;
  private static final double SHORTEST = 20;

  private final SizeRun run;
  private final Nest nest;
  private final double scale;
  private final Canvas canvas;

  private PiecePicture(SizeRun run, Nest nest, double scale) {
    this.run = run;
    this.nest = nest;
    this.scale = scale;
    canvas = new Canvas(nest, List.of());
  }

  /**
   * The picture, its stack point at the origin (mm).
   *
   * @param stitchLines whether stitch lines are drawn
   * @param scale how many times their size on paper lines and words are, 1 or more
   */
  public static List<Inked> of(SizeRun run, Nest nest, boolean stitchLines, double scale) {
    return new PiecePicture(run, nest, scale).drawn(stitchLines);
  }

  private List<Inked> drawn(boolean stitchLines) {
    LineDrawing lines = new LineDrawing(nest, canvas);
    lines.draw(stitchLines);
    new MarkDrawing(nest, canvas, Speech.of(run)).draw();
    List<SizedPath> cuts =
        nest.shapes().stream().map(shape -> new SizedPath(shape.size(), shape.cutLine())).toList();
    for (SharedLines.Run part : SharedLines.of(cuts)) {
      boolean alone = part.sizes().size() == 1;
      Pen pen = alone ? nest.styles().of(part.sizes().get(0)).cut() : Pens.CUT;
      Layer layer = LineDrawing.layer(part.sizes());
      canvas.draw(List.of(new Stroke(part.path(), pen, layer, canvas.subject())));
    }
    List<Inked> drawn = new ArrayList<>();
    for (PieceShape shape : nest.shapes()) {
      Layer layer = Layer.of(shape.size().name());
      drawn.add(new Fill(Outline.of(shape.cut().path()), TINT, layer, canvas.subject()));
    }
    for (Inked item : canvas.items()) {
      drawn.add(item instanceof Stroke stroke ? stroke.in(stroke.pen().times(weight())) : item);
    }
    drawn.addAll(words());
    nest.smallest().grain().ifPresent(grain -> drawn.addAll(grain(grain)));
    return drawn;
  }

  /** Lines grow less than words do, lest a nest run together. */
  private double weight() {
    return Math.max(1, Math.sqrt(scale) * 1.1);
  }

  private List<Inked> words() {
    String cut =
        nest.card().cuts().isEmpty()
            ? ""
            : PieceWords.cut(run, nest.card().cuts().get(0), nest.whole()).replaceAll(":.*", "");
    Point near = canvas.wide().centre();
    for (double size = scale; size >= scale / 2; size *= 0.85) {
      TextBlock block = block(cut, size);
      for (double angle : new double[] {0, Math.PI / 2}) {
        Optional<TurnedBox> box = canvas.wide().find(angle, block.width(), block.height(), near);
        if (box.isPresent()) {
          canvas.take(box.get());
          return block.in(box.get(), Layer.COMMON, canvas.subject());
        }
      }
    }
    return List.of();
  }

  private TextBlock block(String cut, double size) {
    String number = Integer.toString(nest.card().number());
    var figure = Face.LIGHT.set(number, FIGURE * size);
    double column = figure.width() + Face.mm(FIGURE * size) * 0.25;
    TextBlock.Builder block = new TextBlock.Builder();
    block.line(Face.SEMIBOLD.set(nest.card().title(), TITLE * size), Inks.BLACK, column);
    block.line(Face.REGULAR.set(cut, FACTS * size), Inks.BLACK, column);
    block.at(figure, Inks.BLACK, 0, figure.capitalHeight());
    return block.build();
  }

  private List<Inked> grain(Path laid) {
    Vector along = laid.end().minus(laid.start()).unit();
    Vector way = Canvas.upright(along);
    Signs signs = new Signs(Layer.COMMON, canvas.subject(), Inks.BLACK, scale);
    double strip = STRIP * scale;
    for (double length = laid.length() * 0.7; length > SHORTEST * scale; length *= 0.8) {
      Optional<TurnedBox> box =
          canvas.wide().find(way.angle(), length, strip, laid.at(laid.length() / 2).point());
      if (box.isPresent()) {
        Point low = box.get().at(0, strip / 2);
        Point high = box.get().at(length, strip / 2);
        boolean same = way.equals(along);
        List<Inked> arrow = new ArrayList<>();
        for (Inked item : signs.grain(same ? low : high, same ? high : low, oneWay())) {
          arrow.add(item instanceof Stroke stroke ? stroke.in(stroke.pen().times(weight())) : item);
        }
        return arrow;
      }
    }
    return List.of();
  }

  private boolean oneWay() {
    for (Cut cut : nest.card().cuts()) {
      if (run.pattern()
          .fabric(cut.fabric())
          .filter(fabric -> fabric.laidWith() == Fabric.Nap.ONE_WAY)
          .isPresent()) {
        return true;
      }
    }
    return false;
  }
}
