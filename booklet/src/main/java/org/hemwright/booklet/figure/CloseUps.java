package org.hemwright.booklet.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.words.Telling;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.style.Inks;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Amount;
import org.hemwright.pattern.make.PressDirection;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.quantity.LengthKind;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Elastic;
import org.hemwright.pattern.seam.Seam;

/** The close-up of each kind of step, with the depths and distances of the drawn size. */
final class CloseUps {
  private static final double WIDE = CloseUp.WIDE;
  private static final double HIGH = CloseUp.HIGH;
  private static final double BEYOND = 6;
  private static final double CLOSE_TO = 2;

  private final Telling telling;
  private final Step step;
  private final NearBy near = new NearBy();

  private CloseUps(Telling telling, Step step) {
    this.telling = telling;
    this.step = step;
  }

  /** The close-ups of a step, at most two: what is sewn, and how it is pressed. */
  static List<CloseUp> of(Telling telling, Step step) {
    List<CloseUp> all = new ArrayList<>();
    new CloseUps(telling, step).act().ifPresent(all::add);
    if (step.act() instanceof Act.Close) {
      new CloseUps(telling, step).closed().ifPresent(all::add);
    }
    if (!(step.act() instanceof Act.Press) && pressesSeam(step)) {
      new CloseUps(telling, step).press().ifPresent(all::add);
    }
    return all;
  }

  private static boolean pressesSeam(Step step) {
    return step.press().isPresent()
        && !(step.press().get() instanceof PressDirection.Flat)
        && !step.work(Work.OfSeam.class).isEmpty();
  }

  private Optional<CloseUp> act() {
    Act act = step.act();
    if (act instanceof Act.Press) {
      return step.work(Work.OfSeam.class).isEmpty() ? pressedEdge() : press();
    } else if (act instanceof Act.HandSew) {
      return handSewn();
    } else if (act instanceof Act.Sew || act instanceof Act.SetIn) {
      return seamed(true);
    } else if (act instanceof Act.Attach) {
      return seamed(true);
    } else if (act instanceof Act.Hem) {
      return hemmed();
    } else if (act instanceof Act.Finish finish) {
      return finished(finish.together());
    } else if (act instanceof Act.FormCasing) {
      return casing(false, false);
    } else if (act instanceof Act.ThreadThrough || act instanceof Act.LayIn) {
      return casing(true, false);
    } else if (act instanceof Act.Close) {
      return step.work().stream().allMatch(Work.OfOpening.class::isInstance)
          ? casing(false, true)
          : intake().flatMap(intake -> intake instanceof Intake.Pleat ? pleat() : dart());
    } else if (act instanceof Act.JoinEnds join) {
      return joined(join);
    } else if (act instanceof Act.Apply) {
      return applied();
    } else if (act instanceof Act.Stitching stitching) {
      return line(stitching.line());
    } else if (act instanceof Act.CutInto cut) {
      return cutInto(cut);
    } else if (act instanceof Act.Fasten fasten) {
      return fastened(fasten);
    } else if (act instanceof Act.Fuse) {
      return fused();
    } else if (act instanceof Act.Bind) {
      return bound();
    } else if (act instanceof Act.InsertZip) {
      return zipped();
    } else if (act instanceof Act.Handle handle) {
      return handle.kind() == Act.Handling.TEST ? tested() : Optional.empty();
    }
    return Optional.empty();
  }

  private Optional<CloseUp> done(String key) {
    return Optional.of(new CloseUp(near.items(), Inline.plain(telling.say("close-up." + key))));
  }

  // --- numbers of the drawn size --------------------------------------------------------------

  private OptionalDouble mm(Optional<Amount> amount) {
    return amount.map(each -> each.in(telling.drawn().numbers())).orElse(OptionalDouble.empty());
  }

  private String text(double mm, LengthKind kind) {
    return telling.words().lengthText(mm, kind);
  }

  private Stitch.Kind stitch() {
    return step.sewing().stitch().map(Stitch::kind).orElse(Stitch.Kind.STRAIGHT);
  }

  private double amplitude(double scale) {
    return Math.max(1.2, step.sewing().stitch().map(Stitch::widthOrUsual).orElse(2.5) * scale);
  }

  private Optional<Seam.Join> join() {
    return step.work(Work.OfSeam.class).stream()
        .findFirst()
        .flatMap(work -> telling.seam(work.seam()))
        .map(seam -> seam.joins().get(0));
  }

  private Optional<Edge> edge(EdgePlace place) {
    return telling.drawn().piece(place.piece()).flatMap(piece -> piece.edge(place.edge()));
  }

  private double allowance(Seam.Join join) {
    for (Seam.Layer layer : join.layers()) {
      Optional<Edge> edge = edge(layer.run().get(0));
      if (edge.isPresent() && edge.get().allowance().width() > 0) {
        return edge.get().allowance().width();
      }
    }
    return 10;
  }

  private String number(String piece) {
    return telling.card(piece).map(card -> Integer.toString(card.number())).orElse("");
  }

  private static double scale(double mm, double room) {
    return mm <= room ? 1 : room / mm;
  }

  // --- seams ----------------------------------------------------------------------------------

  private Optional<CloseUp> seamed(boolean sewn) {
    if (join().isEmpty()) {
      return Optional.empty();
    }
    Seam.Join join = join().get();
    if (join.layers().stream().anyMatch(telling::isMark)) {
      return placed();
    }
    double wide = allowance(join);
    double scale = scale(wide, 20);
    double from = mm(step.sewing().distance().map(Sewing.Distance::amount)).orElse(wide);
    double edge = 35;
    double line = edge - from * scale;
    String upper = number(join.layers().get(0).run().get(0).piece());
    String lower = number(join.layers().get(join.layers().size() - 1).run().get(0).piece());
    near.cloth(-BEYOND, -BEYOND, WIDE + BEYOND, edge, false);
    Optional<Seam.Layer> between = between(join);
    if (between.isPresent()) {
      near.cloth(11, -BEYOND, WIDE + BEYOND, edge, true).cutShort(11, -BEYOND, edge);
      near.cloth(27, -BEYOND, WIDE + BEYOND, edge, true).cutShort(27, -BEYOND, edge);
      near.edge(edge);
      rows(line, scale, 11, WIDE + BEYOND);
      near.pin(44, line);
      near.measure(34, line, edge, text(from, LengthKind.ALLOWANCE));
      String outside = lower;
      near.tag(outside, 5, 8).tag(number(piece(between.get())), 19, 8).tag(outside, 46, 8);
      return done("between");
    }
    boolean out =
        upper.equals(lower)
            && Turned.isOut(telling, step, join.layers().get(0).run().get(0).piece());
    near.cloth(17, -BEYOND, WIDE + BEYOND, edge, !out);
    near.edge(edge).cutShort(17, -BEYOND, edge);
    near.line(52, edge, 52, edge - 3, Draw.EDGE);
    rows(line, scale, 17, WIDE + BEYOND);
    if (sewn) {
      near.pin(34, line);
    }
    near.measure(24, line, edge, text(from, LengthKind.ALLOWANCE));
    near.tag(lower, 8, 8).tag(upper, 42, 8);
    return done("seam");
  }

  private static String piece(Seam.Layer layer) {
    return layer.run().get(0).piece();
  }

  /** The layer that lies between two copies of another piece, where there is one. */
  static Optional<Seam.Layer> between(Seam.Join join) {
    List<Seam.Layer> layers = join.layers();
    String outside = piece(layers.get(layers.size() - 1));
    long copies = layers.stream().filter(layer -> piece(layer).equals(outside)).count();
    return layers.size() > 2 && copies == 2
        ? layers.stream().filter(layer -> !piece(layer).equals(outside)).findFirst()
        : Optional.empty();
  }

  /** The rows of stitching, the first on the line, others towards the cut edge. */
  private void rows(double line, double scale, double left, double right) {
    double apart = mm(step.sewing().apart()).orElse(2) * scale;
    for (int i = 0; i < step.sewing().rows(); i++) {
      near.stitch(stitch(), left, right, line + i * Math.max(1.2, apart), amplitude(scale));
    }
  }

  /** A pocket or the like on its line. */
  private Optional<CloseUp> placed() {
    Seam.Join join = join().orElseThrow();
    double from = mm(step.sewing().distance().map(Sewing.Distance::amount)).orElse(CLOSE_TO);
    double scale = 3;
    near.cloth(-BEYOND, -BEYOND, WIDE + BEYOND, HIGH + BEYOND, false);
    near.cloth(18, 14, WIDE + BEYOND, HIGH + BEYOND, false);
    near.line(18, 14, 18, HIGH + BEYOND, Draw.EDGE).line(18, 14, WIDE + BEYOND, 14, Draw.EDGE);
    double in = from * scale;
    near.stitch(stitch(), 18 + in, WIDE + BEYOND, 14 + in, 2);
    near.put(
        Path.straight(new Point(18 + in, 14 + in), new Point(18 + in, HIGH + BEYOND)), Draw.STITCH);
    near.measure(40, 14, 14 + in, text(from, LengthKind.ALLOWANCE));
    Seam.Layer first = join.layers().get(0);
    Seam.Layer last = join.layers().get(join.layers().size() - 1);
    near.tag(number((telling.isMark(last) ? last : first).run().get(0).piece()), 8, 7);
    near.tag(number((telling.isMark(last) ? first : last).run().get(0).piece()), 52, 36);
    return done("placed");
  }

  /** The two pieces opened out, wrong sides up, and their allowances. */
  private Optional<CloseUp> press() {
    if (join().isEmpty() || step.press().isEmpty()) {
      return Optional.empty();
    }
    Seam.Join join = join().get();
    PressDirection press = step.press().get();
    if (press instanceof PressDirection.Flat || join.layers().stream().anyMatch(telling::isMark)) {
      return Optional.empty();
    }
    String first = number(join.layers().get(0).run().get(0).piece());
    String second = number(join.layers().get(join.layers().size() - 1).run().get(0).piece());
    double wide = allowance(join) * scale(allowance(join), 14);
    double seam = 23;
    boolean open = press instanceof PressDirection.Open;
    boolean up = press instanceof PressDirection.Up;
    String upper = first;
    String lower = second;
    if (press instanceof PressDirection.Toward toward) {
      String goal = number(toward.piece());
      lower = goal;
      upper = first.equals(goal) ? second : first;
    }
    near.cloth(-BEYOND, -BEYOND, WIDE + BEYOND, HIGH + BEYOND, true);
    if (open || up) {
      near.cloth(-BEYOND, seam, WIDE + BEYOND, seam + wide, !open);
      near.edge(seam + wide);
    }
    if (open || !up) {
      near.cloth(-BEYOND, seam - wide, WIDE + BEYOND, seam, !open);
      near.edge(seam - wide);
    }
    near.edge(seam);
    double over = Math.min(wide + 5, 16);
    for (double x : new double[] {14, 46}) {
      if (open) {
        near.arrow(x, seam + 1, x, seam + over).arrow(x, seam - 1, x, seam - over);
      } else {
        near.arrow(x, up ? seam - 7 : seam + 7, x, up ? seam + over - 2 : seam - over + 2);
      }
    }
    near.tag(upper, 30, HIGH - 5).tag(lower, 30, 5);
    return done(open ? "press-open" : "press-side");
  }

  /** An edge's allowance turned to the wrong side and pressed. */
  private Optional<CloseUp> pressedEdge() {
    Optional<Edge> edge = worked();
    if (edge.isEmpty() || edge.get().allowance().width() <= 0) {
      return Optional.empty();
    }
    double wide = edge.get().allowance().width();
    double scale = scale(wide, 20);
    double fold = 12;
    near.cloth(-BEYOND, fold, WIDE + BEYOND, HIGH + BEYOND, true);
    near.cloth(-BEYOND, fold, WIDE + BEYOND, fold + wide * scale, false);
    near.edge(fold).edge(fold + wide * scale);
    near.arrow(31, 4, 31, fold + wide * scale * 0.6);
    near.measure(14, fold, fold + wide * scale, text(wide, LengthKind.ALLOWANCE));
    return done("pressed-edge");
  }

  private Optional<Edge> worked() {
    return step.work(Work.OfEdge.class).stream()
        .findFirst()
        .flatMap(
            work -> telling.drawn().piece(work.piece()).flatMap(piece -> piece.edge(work.edge())));
  }

  // --- darts and pleats -----------------------------------------------------------------------

  private Optional<Intake> intake() {
    return step.work(Work.OfIntake.class).stream().findFirst().flatMap(telling::intake);
  }

  /** A dart folded along its middle and sewn from the edge to its point. */
  private Optional<CloseUp> dart() {
    double fold = 32;
    double edge = 8;
    double tip = 50;
    double deep = 16;
    near.cloth(edge, -BEYOND, WIDE + BEYOND, fold, true);
    near.line(edge, -BEYOND, edge, fold, Draw.EDGE);
    near.line(edge, fold, WIDE + BEYOND, fold, Draw.FOLD);
    near.line(edge, fold - deep, tip, fold, Draw.STITCH);
    // The threads are left long at the point and tied.
    near.line(tip, fold, tip + 5, fold + 3, Pen.solid(0.4, Inks.CHALK));
    near.line(tip, fold, tip + 5, fold + 1, Pen.solid(0.4, Inks.CHALK));
    near.ring(tip, fold, 0.8);
    near.pin(20, fold - deep + (20 - edge) / (tip - edge) * deep);
    near.pin(34, fold - deep + (34 - edge) / (tip - edge) * deep);
    near.arrow(edge + 3, fold - deep - 5, tip - 14, fold - 11);
    return done("dart");
  }

  /** A pleat's three lines and where its outer fold goes. */
  private Optional<CloseUp> pleat() {
    double edge = 32;
    near.cloth(-BEYOND, -BEYOND, WIDE + BEYOND, edge, false).edge(edge);
    near.line(14, -BEYOND, 14, edge, Draw.FOLD);
    near.line(31, -BEYOND, 31, edge, Draw.HIDDEN);
    near.line(48, -BEYOND, 48, edge, Draw.STITCH);
    near.items()
        .addAll(
            Draw.arrow(
                Path.of(
                    new Cubic(
                        new Point(14, edge + 2),
                        new Point(20, edge + 13),
                        new Point(40, edge + 13),
                        new Point(47.5, edge + 2)))));
    return done("pleat");
  }

  /** What is closed as it then lies: a pleat held at the top, a dart pressed to one side. */
  private Optional<CloseUp> closed() {
    Optional<Intake> intake = intake();
    double edge = 36;
    if (intake.isEmpty()) {
      return Optional.empty();
    }
    if (intake.get() instanceof Intake.Pleat) {
      near.cloth(-BEYOND, -BEYOND, WIDE + BEYOND, edge, false).edge(edge);
      near.line(40, -BEYOND, 40, edge, Draw.EDGE);
      near.line(23, -BEYOND, 23, edge, Draw.HIDDEN);
      near.stitch(Stitch.Kind.BASTING, 14, 49, edge - 5, 1);
      return done("pleat-closed");
    }
    near.cloth(-BEYOND, -BEYOND, WIDE + BEYOND, edge, true).edge(edge);
    near.put(
        Path.polyline(
            List.of(
                new Point(31, edge), new Point(31, 8), new Point(45, edge), new Point(31, edge))),
        Draw.EDGE);
    near.line(31, edge, 31, 8, Draw.STITCH);
    near.arrow(22, 22, 36, 22);
    return done("dart-pressed");
  }

  /** Two folds drawn together by hand, the thread within them. */
  private Optional<CloseUp> handSewn() {
    double low = 21;
    double high = 25;
    near.cloth(-BEYOND, -BEYOND, WIDE + BEYOND, low, false).edge(low);
    near.cloth(-BEYOND, high, WIDE + BEYOND, HIGH + BEYOND, false).edge(high);
    boolean up = false;
    for (double x = 4; x < 40; x += 6) {
      double from = up ? high : low;
      double to = up ? low : high;
      near.line(x, from, x, to, Pen.solid(0.45, Inks.CHALK));
      double within = up ? low - 1 : high + 1;
      near.line(x, within, x + 6, within, Draw.STITCH);
      up = !up;
    }
    near.put(
        Path.polyline(
            List.of(new Point(40, low - 1), new Point(57, low + 2), new Point(40, low - 2.2))),
        Pen.solid(0.35, Inks.BLACK));
    near.arrow(44, 12, 56, 12);
    return done("hand");
  }

  // --- edges ----------------------------------------------------------------------------------

  private Optional<CloseUp> hemmed() {
    Optional<Edge> edge = worked();
    if (edge.isEmpty()) {
      return Optional.empty();
    }
    Allowance allowance = edge.get().allowance();
    double depth =
        allowance instanceof Allowance.TurnedBack back ? back.folds().get(0) : allowance.width();
    if (depth <= 0) {
      return Optional.empty();
    }
    boolean twice = allowance instanceof Allowance.TurnedBack back && back.folds().size() > 1;
    double scale = scale(depth, 24);
    double fold = 8;
    double top = fold + depth * scale;
    near.cloth(-BEYOND, fold, WIDE + BEYOND, HIGH + BEYOND, true);
    near.cloth(-BEYOND, fold, WIDE + BEYOND, top, false);
    near.edge(fold).edge(top);
    if (twice && allowance instanceof Allowance.TurnedBack back) {
      double under = top - back.folds().get(1) * scale;
      near.line(-BEYOND, under, WIDE + BEYOND, under, Draw.HIDDEN);
    }
    Optional<Sewing.Distance> said = step.sewing().distance();
    double from = mm(said.map(Sewing.Distance::amount)).orElse(CLOSE_TO);
    boolean fromFold =
        said.map(Sewing.Distance::from).filter(f -> f == Sewing.Distance.From.FOLD).isPresent();
    double line = fromFold ? fold + from * scale : top - Math.max(1.2, from * scale);
    rows(line, scale, -BEYOND, WIDE + BEYOND);
    near.measure(11, fold, top, text(depth, LengthKind.ALLOWANCE));
    double low = fromFold ? fold : line;
    double high = fromFold ? line : top;
    near.measure(46, low, high, text(from, LengthKind.ALLOWANCE));
    return done(twice ? "hem-twice" : "hem");
  }

  private Optional<CloseUp> finished(boolean together) {
    double edge = 31;
    near.cloth(-BEYOND, -BEYOND, WIDE + BEYOND, edge, true);
    near.edge(edge);
    if (together) {
      near.cloth(-BEYOND, -BEYOND, 17, edge, false);
      near.cutShort(17, -BEYOND, edge).edge(edge);
      near.line(-BEYOND, 14, WIDE + BEYOND, 14, Draw.STITCH);
    }
    Stitch.Kind kind = stitch();
    double left = together ? 17 : -BEYOND;
    if (kind == Stitch.Kind.ZIGZAG) {
      near.stitch(kind, left, WIDE + BEYOND, edge - 1.6, amplitude(1));
    } else {
      near.stitch(kind, left, WIDE + BEYOND, edge - 1.6, 3);
    }
    return done(together ? "finish-together" : "finish");
  }

  private Optional<CloseUp> line(Act.Line line) {
    double from = mm(step.sewing().distance().map(Sewing.Distance::amount)).orElse(CLOSE_TO + 1);
    double scale = scale(from, 16) * (from < 5 ? 2 : 1);
    boolean seam = !step.work(Work.OfSeam.class).isEmpty() && line == Act.Line.TOPSTITCH;
    double at = seam ? 25 : 36;
    near.cloth(-BEYOND, -BEYOND, WIDE + BEYOND, seam ? HIGH + BEYOND : at, false);
    near.edge(at);
    double y = at - from * scale;
    if (line == Act.Line.GATHER || line == Act.Line.EASE) {
      for (int i = 0; i < 9; i++) {
        double x = 4 + i * 7;
        near.put(
            Path.of(
                new Cubic(
                    new Point(x, at),
                    new Point(x + 2, at - 5),
                    new Point(x - 2, at - 9),
                    new Point(x, at - 16))),
            Draw.FINE);
      }
    }
    if (line == Act.Line.GATHER) {
      // Rows that will be drawn up lie side by side within the cloth.
      double apart = Math.max(1.2, mm(step.sewing().apart()).orElse(2) * scale);
      for (int i = 0; i < step.sewing().rows(); i++) {
        near.stitch(stitch(), -BEYOND, WIDE + BEYOND, y - i * apart, amplitude(scale));
      }
    } else {
      rows(y, scale, -BEYOND, WIDE + BEYOND);
    }
    near.measure(14, y, at, text(from, LengthKind.ALLOWANCE));
    return done("line");
  }

  private Optional<CloseUp> cutInto(Act.CutInto cut) {
    double wide = join().map(this::allowance).orElse(10.0);
    double scale = scale(wide, 20);
    double edge = 34;
    double seam = edge - wide * scale;
    near.cloth(-BEYOND, -BEYOND, WIDE + BEYOND, edge, true);
    near.line(-BEYOND, seam, WIDE + BEYOND, seam, Draw.STITCH);
    OptionalDouble to = mm(cut.to());
    if (to.isPresent()) {
      double left = seam + to.getAsDouble() * scale;
      near.line(-BEYOND, left, WIDE + BEYOND, left, Draw.ACTION);
      near.line(-BEYOND, edge, WIDE + BEYOND, edge, Draw.HIDDEN);
      near.measure(20, seam, left, text(to.getAsDouble(), LengthKind.ALLOWANCE));
      return done("trim");
    }
    near.edge(edge);
    for (int i = 0; i < 6; i++) {
      double x = 6 + i * 10;
      double tip = seam + 1.5;
      if (cut.kind() == Act.Cutting.NOTCH) {
        near.put(
            Path.polyline(
                List.of(new Point(x - 2, edge), new Point(x, tip), new Point(x + 2, edge))),
            Draw.ACTION);
      } else {
        near.line(x, edge, x, tip, Draw.ACTION);
      }
    }
    return done("clip");
  }

  // --- elastics and casings -------------------------------------------------------------------

  private Optional<Elastic> elastic() {
    String name =
        step.act() instanceof Act.FormCasing casing
            ? casing.holds()
            : step.work(Work.OfElastic.class).stream()
                .findFirst()
                .map(Work.OfElastic::elastic)
                .orElse("");
    List<Elastic> all = telling.drawn().elastics();
    return all.stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .or(() -> all.stream().findFirst());
  }

  private Optional<Step.Opening> opening() {
    return telling.run().pattern().making().steps().stream()
        .flatMap(each -> each.leaves().stream())
        .filter(
            left ->
                step.leaves().contains(left)
                    || (step.act() instanceof Act.ThreadThrough through
                        && through.opening().equals(left.name()))
                    || step.work(Work.OfOpening.class).stream()
                        .anyMatch(work -> work.opening().equals(left.name())))
        .findFirst();
  }

  /** A casing with what is in it, and the opening in its stitching. */
  private Optional<CloseUp> casing(boolean threading, boolean closing) {
    double width = elastic().map(Elastic::width).orElse(10.0);
    double scale = scale(width, 17);
    double seam = 12;
    double fold = seam + width * scale + 5;
    near.cloth(-BEYOND, -BEYOND, WIDE + BEYOND, fold, true);
    near.edge(fold);
    near.line(-BEYOND, seam - 4, WIDE + BEYOND, seam - 4, Draw.FINE);
    double low = seam + 2.5;
    double high = low + width * scale;
    double tip = threading ? 40 : WIDE + BEYOND;
    near.line(-BEYOND, low, tip, low, Draw.HIDDEN);
    near.line(-BEYOND, high, tip, high, Draw.HIDDEN);
    double left = 22;
    double right = 44;
    near.stitch(stitch(), -BEYOND, left, seam, 1.6);
    near.stitch(stitch(), right, WIDE + BEYOND, seam, 1.6);
    if (closing) {
      near.line(left, seam, right, seam, Draw.ACTION);
    }
    if (threading) {
      near.line(tip, low, tip, high, Draw.EDGE);
      near.put(
          Path.of(
              new Cubic(
                  new Point(tip - 3, (low + high) / 2),
                  new Point(tip + 10, (low + high) / 2 + 3),
                  new Point(tip + 10, (low + high) / 2 - 3),
                  new Point(tip - 3, (low + high) / 2 - 1.2))),
          Draw.EDGE);
      near.arrow(tip - 22, (low + high) / 2, tip - 8, (low + high) / 2);
    }
    opening()
        .map(Step.Opening::length)
        .map(length -> length.in(telling.drawn().numbers()))
        .filter(OptionalDouble::isPresent)
        .ifPresent(
            mm ->
                near.measureAcross(
                    left, right, seam - 9.5, text(mm.getAsDouble(), LengthKind.FINISHED)));
    near.measure(10, low, high, text(width, LengthKind.NOTION));
    return done(threading ? "thread" : closing ? "close" : "casing");
  }

  private Optional<CloseUp> joined(Act.JoinEnds join) {
    Optional<Elastic> elastic = elastic();
    if (elastic.isEmpty()) {
      return Optional.empty();
    }
    double width = elastic.get().width();
    double lap = elastic.get().overlap();
    double scale = scale(Math.max(width, lap), 24);
    double low = 23 - width * scale / 2;
    double high = 23 + width * scale / 2;
    double half = join.overlapped() ? lap * scale / 2 : 0;
    double left = WIDE / 2 - half;
    double right = WIDE / 2 + half;
    near.cloth(-BEYOND, low, right, high, false);
    near.put(Draw.box(-BEYOND, low, right, high).path(), Draw.EDGE);
    near.cloth(left, low, WIDE + BEYOND, high, false);
    near.put(Draw.box(left, low, WIDE + BEYOND, high).path(), Draw.EDGE);
    if (join.overlapped()) {
      near.line(right, low, right, high, Draw.HIDDEN);
      double in = 1.4;
      near.put(Draw.box(left + in, low + in, right - in, high - in).path(), Draw.STITCH);
      near.line(left + in, low + in, right - in, high - in, Draw.STITCH);
      near.line(left + in, high - in, right - in, low + in, Draw.STITCH);
      near.measureAcross(left, right, high + 3, text(lap, LengthKind.NOTION));
    } else {
      near.stitch(Stitch.Kind.ZIGZAG, left, left + 0.1, 23, width * scale);
    }
    return done("join");
  }

  private Optional<CloseUp> applied() {
    near.cloth(-BEYOND, -BEYOND, WIDE + BEYOND, 36, true).edge(36);
    near.cloth(-BEYOND, 26, WIDE + BEYOND, 36, false).edge(26);
    near.stitch(stitch(), -BEYOND, WIDE + BEYOND, 31, 2.4);
    near.arrow(24, 20, 8, 20).arrow(38, 20, 54, 20);
    near.pin(12, 31).pin(50, 31);
    return done("apply");
  }

  // --- the rest -------------------------------------------------------------------------------

  private Optional<CloseUp> fastened(Act.Fasten fasten) {
    double size = fasten.size().in(telling.drawn().numbers()).orElse(10);
    double scale = scale(size, 30) * (size < 10 ? 2 : 1);
    double half = size * scale / 2;
    near.cloth(-BEYOND, -BEYOND, WIDE + BEYOND, HIGH + BEYOND, false);
    switch (fasten.kind()) {
      case BUTTONHOLE -> {
        double wide = 2.2;
        near.stitch(Stitch.Kind.ZIGZAG, 31 - half, 31 + half, 23 + wide, wide);
        near.stitch(Stitch.Kind.ZIGZAG, 31 - half, 31 + half, 23 - wide, wide);
        for (double end : new double[] {31 - half, 31 + half}) {
          for (double x = -0.6; x <= 0.6; x += 0.6) {
            near.line(end + x, 19.6, end + x, 26.4, Pen.solid(0.45, Inks.CHALK));
          }
        }
        near.line(31 - half + 1.2, 23, 31 + half - 1.2, 23, Draw.EDGE);
        near.pin(31 + half - 1.6, 23);
        near.measureAcross(31 - half, 31 + half, 33, text(size, LengthKind.NOTION));
        return done("buttonhole");
      }
      case BUTTON -> {
        near.ring(31, 23, half).ring(29, 23, 0.7).ring(33, 23, 0.7);
        near.line(29, 23, 33, 23, Draw.STITCH);
      }
      case EYELET -> near.ring(31, 23, half).ring(31, 23, half * 1.5);
      case BAR_TACK -> {
        near.cloth(20, -BEYOND, WIDE + BEYOND, 27, false);
        near.line(20, -BEYOND, 20, 27, Draw.EDGE).line(20, 27, WIDE + BEYOND, 27, Draw.EDGE);
        for (int i = 0; i <= 9; i++) {
          double x = 20.8 + i * half * 2 / 9;
          near.line(x, 23.6, x + 0.5, 26.6, Pen.solid(0.4, Inks.CHALK));
        }
        near.measureAcross(20.8, 20.8 + half * 2, 31, text(size, LengthKind.NOTION));
        return done("bar-tack");
      }
    }
    near.measureAcross(31 - half, 31 + half, 33, text(size, LengthKind.NOTION));
    return done("fasten");
  }

  private Optional<CloseUp> fused() {
    near.cloth(-BEYOND, -BEYOND, WIDE + BEYOND, HIGH + BEYOND, true);
    near.cloth(14, -BEYOND, WIDE + BEYOND, 38, false);
    near.line(14, -BEYOND, 14, 38, Draw.EDGE).line(14, 38, WIDE + BEYOND, 38, Draw.EDGE);
    for (int i = 0; i < 11; i++) {
      for (int k = 0; k < 8; k++) {
        near.ring(18 + i * 4.4, 2 + k * 4.6, 0.35);
      }
    }
    near.arrow(38, 45, 38, 33);
    return done("fuse");
  }

  private Optional<CloseUp> bound() {
    near.cloth(-BEYOND, -BEYOND, WIDE + BEYOND, 30, false);
    near.cloth(-BEYOND, 20, WIDE + BEYOND, 32, false);
    near.edge(32).edge(20);
    near.line(-BEYOND, 30, WIDE + BEYOND, 30, Draw.HIDDEN);
    near.stitch(stitch(), -BEYOND, WIDE + BEYOND, 21.5, 1.6);
    return done("bind");
  }

  private Optional<CloseUp> zipped() {
    near.cloth(-BEYOND, -BEYOND, WIDE + BEYOND, HIGH + BEYOND, false);
    near.line(-BEYOND, 24.5, WIDE + BEYOND, 24.5, Draw.EDGE);
    near.line(-BEYOND, 21.5, WIDE + BEYOND, 21.5, Draw.EDGE);
    for (int i = 0; i < 20; i++) {
      near.line(i * 3.4, 21.8, i * 3.4, 24.2, Draw.FINE);
    }
    near.line(-BEYOND, 30, 54, 30, Draw.STITCH).line(-BEYOND, 16, 54, 16, Draw.STITCH);
    near.line(54, 16, 54, 30, Draw.STITCH);
    return done("zip");
  }

  private Optional<CloseUp> tested() {
    near.cloth(6, 10, 56, 34, false);
    near.cloth(16, 10, 56, 34, true);
    near.put(Draw.box(6, 10, 56, 34).path(), Draw.EDGE);
    near.cutShort(16, 10, 34);
    near.stitch(usual(), 16, 56, 26, 1.8);
    near.arrow(24, 40, 8, 40).arrow(38, 40, 54, 40);
    return done("test");
  }

  /** The stitch in which the garment's first seam is sewn. */
  private Stitch.Kind usual() {
    return telling.run().pattern().making().steps().stream()
        .filter(each -> each.act() instanceof Act.Sew)
        .flatMap(each -> each.sewing().stitch().stream())
        .map(Stitch::kind)
        .findFirst()
        .orElse(Stitch.Kind.STRAIGHT);
  }
}
