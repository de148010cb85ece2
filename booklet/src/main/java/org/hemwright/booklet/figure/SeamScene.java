package org.hemwright.booklet.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.seam.Seam;

/** The pieces of a seam as they lie when it is sewn, or seen when it is. */
final class SeamScene {
  /** More pieces than this along one layer are shown unrolled. */
  private static final int MOST_LAID = 3;

  /** A scene this much higher than wide is turned on its side. */
  private static final double TALL = 2.3;

  private final StepScene table;

  SeamScene(StepScene table) {
    this.table = table;
  }

  /** Draws what the step does along a seam. */
  void draw(Seam seam) {
    Seam.Join join = seam.joins().get(0);
    Optional<LaidLayer> first = LaidLayer.of(join.layers().get(0), table.telling().drawn());
    Optional<LaidLayer> second =
        LaidLayer.of(join.layers().get(join.layers().size() - 1), table.telling().drawn());
    if (first.isEmpty() || second.isEmpty()) {
      return;
    }
    Optional<Seam.Layer> between = SeamCloseUps.between(join);
    List<Seam.Layer> outside =
        join.layers().stream()
            .filter(
                layer -> piece(layer).equals(piece(join.layers().get(join.layers().size() - 1))))
            .toList();
    // Of two copies that something lies between, it meets the first one's right side.
    Optional<LaidLayer> inner =
        between.flatMap(layer -> LaidLayer.of(layer, table.telling().drawn()));
    Optional<LaidLayer> outer =
        inner.flatMap(layer -> LaidLayer.of(outside.get(0), table.telling().drawn()));
    if (table.step().act() instanceof Act.Stitching stitching
        && (stitching.line() == Act.Line.TOPSTITCH || stitching.line() == Act.Line.UNDERSTITCH)
        && !isPlaced(join)
        && !isRound(first.get(), second.get())) {
      opened(inner.orElse(first.get()), outer.orElse(second.get()));
    } else if (inner.isEmpty()
        && first.get().piece().equals(second.get().piece())
        && !isSame(first.get(), second.get())
        && Turned.isOut(table.telling(), table.step(), first.get().piece())) {
      Flat flat = first.get().flats().get(0);
      table.scene().piece(flat);
      new SeamLines(table)
          .draw(new LaidLayer(List.of(flat), first.get().seam()), true, point -> true);
      table.show(flat, first.get().seam());
    } else if (inner.isPresent() && outer.isPresent()) {
      laid(second.get(), outer.get(), inner);
    } else if (isSame(first.get(), second.get())) {
      folded(first.get(), second.get());
    } else if (isPlaced(join)) {
      boolean onSecond =
          table.telling().drawn().piece(placed(join)).isPresent()
              && table.telling().isMark(join.layers().get(1));
      placed(onSecond ? first.get() : second.get(), onSecond ? second.get() : first.get());
    } else if (table.step().act() instanceof Act.Attach
        || seam.even().isPresent()
        || isRound(first.get(), second.get())) {
      // a band along an opening: their marks stand over each other
      Unrolled.of(table.telling(), seam, join).draw(table.scene(), table.shown());
    } else {
      laid(first.get(), second.get(), Optional.empty());
    }
  }

  private static String piece(Seam.Layer layer) {
    return layer.run().get(0).piece();
  }

  private static boolean isSame(LaidLayer first, LaidLayer second) {
    return first.flats().size() == 1
        && second.flats().size() == 1
        && first.flats().get(0).piece().equals(second.flats().get(0).piece())
        && first.flats().get(0).copy().equals(second.flats().get(0).copy());
  }

  /** Whether a straight band goes round an opening that is none. */
  private static boolean isRound(LaidLayer first, LaidLayer second) {
    boolean straight = first.start().distanceTo(first.end()) > 0.98 * first.length();
    boolean bent = second.start().distanceTo(second.end()) < 0.9 * second.length();
    return (straight && bent && second.flats().size() > 1)
        || second.flats().size() > MOST_LAID
        || first.flats().size() > MOST_LAID;
  }

  private boolean isPlaced(Seam.Join join) {
    return join.layers().stream().anyMatch(table.telling()::isMark);
  }

  private static String placed(Seam.Join join) {
    return join.layers().get(1).run().get(0).piece();
  }

  /**
   * Right sides together: the lower layer whole, the upper one cut away some way off the seam, and
   * between them another one, if there is one.
   */
  private void laid(LaidLayer top, LaidLayer lying, Optional<LaidLayer> middle) {
    LaidLayer level = lying.flats().size() > 1 ? lying.levelled() : lying;
    LaidLayer over = top.on(level, true);
    Box both = level.bounds().union(over.bounds());
    Motion turn =
        both.height() > TALL * both.width()
            ? Motion.turn(both.centre(), -Math.PI / 2)
            : Motion.identity();
    LaidLayer ground = level.then(turn);
    LaidLayer upper = over.then(turn);
    ground.flats().forEach(table.scene()::piece);
    Optional<LaidLayer> inner = middle.map(layer -> layer.on(ground, true));
    inner.ifPresent(layer -> layer.flats().forEach(table.scene()::piece));
    Vector chord = ground.chord();
    List<Scene.Side> sides = new ArrayList<>();
    for (Flat flat : upper.flats()) {
      Scene.Side side = kept(flat, upper, chord);
      sides.add(side);
      table.scene().piece(flat, side, false);
    }
    Box focus = focus(ground, upper);
    boolean twins =
        ground.flats().size() == 1
            && upper.flats().size() == 1
            && ground.flats().get(0).piece().equals(upper.flats().get(0).piece());
    new SeamLines(table).draw(upper, twins, point -> sides.get(0).depth(point) > 0);
    Labels labels = new Labels(focus).avoid(upper.seam());
    for (int i = 0; i < upper.flats().size(); i++) {
      Flat flat = upper.flats().get(i);
      Scene.Side side = sides.get(i);
      table.shown().add(flat.piece());
      table.label(labels, flat, point -> side.depth(point) > 0);
    }
    List<Flat> beneath = new ArrayList<>(ground.flats());
    inner.ifPresent(layer -> beneath.addAll(0, layer.flats()));
    for (Flat flat : beneath) {
      table.shown().add(flat.piece());
      if (!twins || inner.isPresent()) {
        table.label(
            labels,
            flat,
            point -> {
              for (int i = 0; i < sides.size(); i++) {
                if (sides.get(i).depth(point) > 0
                    && upper.flats().get(i).outline().contains(point)) {
                  return false;
                }
              }
              return ground.flats().stream().noneMatch(flat::equals)
                  || inner.isEmpty()
                  || inner.get().flats().stream()
                      .noneMatch(cover -> cover.outline().contains(point));
            });
      }
    }
  }

  /** Lays a piece down as far as its stitch line. */
  private void stitchLine(Flat flat) {
    table
        .scene()
        .shape(
            flat.opened().stitchLine().path().moved(flat.motion()),
            flat.wrongSide(),
            Subject.piece(flat.piece()));
  }

  /** Right sides up, opened out from their seam; one that was turned out lies by itself. */
  private void opened(LaidLayer top, LaidLayer lying) {
    boolean twins = top.piece().equals(lying.piece());
    LaidLayer bottom = lying.flats().size() > 1 ? lying.levelled() : lying;
    if (twins) {
      Flat flat = bottom.flats().get(0);
      stitchLine(flat);
      new SeamLines(table).draw(new LaidLayer(List.of(flat), bottom.seam()), true, point -> true);
      table.show(flat);
      return;
    }
    LaidLayer upper = top.on(bottom, false);
    for (LaidLayer layer : List.of(bottom, upper)) {
      for (Flat flat : layer.flats()) {
        stitchLine(flat);
      }
    }
    new SeamLines(table).draw(upper, false, point -> true);
    Box focus = focus(bottom, upper);
    Labels labels = new Labels(focus).avoid(upper.seam());
    for (LaidLayer layer : List.of(bottom, upper)) {
      for (Flat flat : layer.flats()) {
        table.shown().add(flat.piece());
        table.label(labels, flat, point -> true);
      }
    }
  }

  /** What is shown: all, or where the seam is short beside its pieces, what lies round it. */
  private Box focus(LaidLayer bottom, LaidLayer upper) {
    Box all = table.scene().bounds();
    Box seam = bottom.seam().get(0).bounds();
    for (LaidLayer layer : List.of(bottom, upper)) {
      for (Path path : layer.seam()) {
        seam = seam.union(path.bounds());
      }
    }
    double reach = Math.max(seam.width(), seam.height());
    if (reach > 0.45 * Math.max(all.width(), all.height())) {
      return all;
    }
    Box near = seam.grown(Math.max(50, reach * 0.4));
    table.scene().focus(near);
    return near;
  }

  /** The side of the table on which an upper piece is shown: from the seam halfway across it. */
  private static Scene.Side kept(Flat flat, LaidLayer layer, Vector chord) {
    Point middle = layer.at(layer.length() / 2).point();
    Box box = flat.outline().bounds();
    Vector along = chord.unit();
    double reach = box.centre().minus(middle).dot(along.left());
    double deepest =
        flat.outline().path().flattened(1).stream()
            .mapToDouble(p -> Math.abs(p.minus(middle).dot(along.left())))
            .max()
            .orElse(0);
    double far = Math.min(0.55 * deepest, Math.max(0.3 * deepest, 160));
    return reach >= 0
        ? new Scene.Side(middle.plus(along.left().times(far)), along.negated())
        : new Scene.Side(middle.plus(along.right().times(far)), along);
  }

  /** One piece folded so that two of its own edges meet. */
  private void folded(LaidLayer first, LaidLayer second) {
    Motion level = StepScene.lengthwise(second.flats().get(0));
    LaidLayer lying = second.then(level);
    Flat flat = lying.flats().get(0);
    LaidLayer own = new LaidLayer(List.of(flat), first.then(level).seam());
    LaidLayer upper = own.on(lying, true);
    Point here = own.at(own.length() / 2).point();
    Point there = lying.at(lying.length() / 2).point();
    Vector across = there.minus(here);
    if (across.length() < 1) {
      return;
    }
    Point axis = here.toward(there, 0.5);
    Scene.Side side = new Scene.Side(axis, across.right());
    Flat turned = upper.flats().get(0);
    boolean out = Turned.isOut(table.telling(), table.step(), flat.piece());
    table.scene().piece(flat, side, true);
    table.scene().piece(turned, side, true, !out);
    table.shown().add(flat.piece());
    new SeamLines(table).draw(upper, false, point -> true);
    table.scene().words(Integer.toString(flat.number()), axis.toward(there, 0.5));
  }

  /** Laid right side up on its line. */
  private void placed(LaidLayer top, LaidLayer ground) {
    LaidLayer laid = top.on(ground, false);
    ground.flats().forEach(table.scene()::piece);
    for (Flat flat : laid.flats()) {
      Path all = flat.opened().stitchLine().path().moved(flat.motion());
      table.scene().shape(all, flat.wrongSide(), Subject.piece(flat.piece()));
    }
    laid.seam().forEach(path -> table.scene().line(path, Draw.STITCH));
    Labels labels = new Labels(table.scene().bounds()).avoid(laid.seam());
    for (Flat flat : laid.flats()) {
      table.shown().add(flat.piece());
      table.label(labels, flat, point -> true);
    }
    for (Flat flat : ground.flats()) {
      table.shown().add(flat.piece());
      table.label(
          labels,
          flat,
          point -> laid.flats().stream().noneMatch(on -> on.outline().contains(point)));
    }
  }
}
