package org.hemwright.booklet.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.sheet.Clip;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.style.Inks;
import org.hemwright.pattern.View;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.Elastic;
import org.hemwright.pattern.seam.Seam;

/**
 * The figure of a step: on the left the pieces as they lie, on the right a close-up of what is
 * done.
 */
public final class StepFigures {
  private static final double WIDE = 168;
  private static final double WIDEST_SCENE = 102;
  private static final double SMALL_SCENE = 52;
  private static final double BETWEEN = 2;

  /** A scene this much higher than wide is turned on its side. */
  private static final double TALL = 2.3;

  /** A piece this much longer than wide lies lengthwise. */
  private static final double NARROW = 3.5;

  /** More pieces than this along one layer are shown unrolled. */
  private static final int MOST_LAID = 3;

  /** Pieces in one row (mm of table); more go on below. */
  private static final double ROW = 2300;

  /** How high a drawing of several rows may be on paper (mm). */
  private static final double ROWS_HIGH = 76;

  private static final Pen WINDOW = Pen.solid(0.2, Inks.QUIET);

  private final Telling telling;
  private final Step step;
  private final Scene scene = new Scene();
  private final Set<String> shown = new LinkedHashSet<>();
  private boolean rows;

  private StepFigures(Telling telling, Step step) {
    this.telling = telling;
    this.step = step;
  }

  /**
   * The figure of a step.
   *
   * @param title of the step, for its alt text
   */
  public static Optional<Figure> of(Telling telling, Step step, List<Inline> title) {
    return new StepFigures(telling, step).figure(title);
  }

  private Optional<Figure> figure(List<Inline> title) {
    if (step.act() instanceof Act.LeaveRaw) {
      return Optional.empty(); // There is nothing to do, and nothing to see.
    }
    List<CloseUp> close = CloseUps.of(telling, step);
    if (needsTable(close)) {
      draw();
    }
    if (scene.isEmpty() && close.isEmpty()) {
      return Optional.empty();
    }
    double taken = close.size() * (CloseUp.WIDE + BETWEEN);
    double sceneWide = close.size() == 2 ? CloseUp.WIDE : Math.min(WIDE - taken, WIDEST_SCENE);
    boolean below = close.size() == 2 && !scene.isEmpty();
    List<Item> items = new ArrayList<>();
    double left = 0;
    double high = CloseUp.HIGH;
    if (!scene.isEmpty()) {
      boolean several = rows && close.isEmpty();
      Box paper =
          scene.paper(
              below ? SMALL_SCENE : several ? WIDE * 0.8 : sceneWide,
              several ? ROWS_HIGH : CloseUp.HIGH);
      if (!close.isEmpty()) {
        double down = (CloseUp.HIGH - paper.height()) / 2;
        paper = new Box(0, down, paper.width(), down + paper.height());
      } else {
        high = paper.height();
      }
      items.add(new Clip(paper, scene.within(paper)));
      left = paper.width() + BETWEEN;
    }
    for (CloseUp each : close) {
      Box window = new Box(left, 0, left + CloseUp.WIDE, CloseUp.HIGH);
      List<Item> moved =
          each.items().stream().map(item -> item.moved(new Vector(window.minX(), 0))).toList();
      items.add(new Clip(window, moved));
      items.add(Draw.line(Draw.box(window).path(), WINDOW));
      left = window.maxX() + BETWEEN;
    }
    return Optional.of(
        new Figure(
            "step-" + step.id(),
            new Sheet(new Box(-0.5, -0.5, left - BETWEEN + 0.5, high + 0.5), items),
            alt(title, close),
            List.of()));
  }

  /** Whether the pieces are shown beside the close-up: not where only an elastic is handled. */
  private boolean needsTable(List<CloseUp> close) {
    boolean elastics =
        !step.work().isEmpty()
            && step.work().stream()
                .allMatch(work -> work instanceof Work.OfElastic || work instanceof Work.OfOpening);
    return close.isEmpty() || !elastics;
  }

  private String alt(List<Inline> title, List<CloseUp> close) {
    List<List<Inline>> pieces = shown.stream().map(telling::piece).toList();
    Slots named = Slots.of("title", List.of(new Inline.Own(Inline.plain(title))));
    StringBuilder text = new StringBuilder(Inline.plain(telling.say("figure.alt", named)));
    if (!pieces.isEmpty()) {
      Slots listed = Slots.of("pieces", telling.words().listed(pieces));
      text.append(' ').append(Inline.plain(telling.say("figure.shows", listed)));
    }
    close.forEach(each -> text.append(' ').append(each.alt()));
    return text.toString();
  }

  // --- what lies on the table -----------------------------------------------------------------

  private void draw() {
    Act act = step.act();
    List<Work.OfSeam> seams = step.work(Work.OfSeam.class);
    if (act instanceof Act.Fold fold) {
      step.work(Work.OfPiece.class).forEach(piece -> fold(piece, fold));
    } else if (!seams.isEmpty()) {
      telling.seam(seams.get(0).seam()).ifPresent(this::seam);
    } else {
      edges();
    }
  }

  private void seam(Seam seam) {
    Seam.Join join = seam.joins().get(0);
    Optional<LaidLayer> first = LaidLayer.of(join.layers().get(0), telling.drawn());
    Optional<LaidLayer> second =
        LaidLayer.of(join.layers().get(join.layers().size() - 1), telling.drawn());
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
    Optional<LaidLayer> inner = between.flatMap(layer -> LaidLayer.of(layer, telling.drawn()));
    Optional<LaidLayer> outer =
        inner.flatMap(layer -> LaidLayer.of(outside.get(0), telling.drawn()));
    if (step.act() instanceof Act.Stitching stitching
        && (stitching.line() == Act.Line.TOPSTITCH || stitching.line() == Act.Line.UNDERSTITCH)
        && !isPlaced(join)
        && !isRound(first.get(), second.get())) {
      opened(inner.orElse(first.get()), outer.orElse(second.get()));
    } else if (inner.isEmpty()
        && piece(first.get()).equals(piece(second.get()))
        && !isSame(first.get(), second.get())
        && Turned.isOut(telling, step, piece(first.get()))) {
      Flat flat = first.get().flats().get(0);
      scene.piece(flat);
      stitched(new LaidLayer(List.of(flat), first.get().seam()), true, point -> true);
      show(flat, first.get().seam());
    } else if (inner.isPresent() && outer.isPresent()) {
      laid(second.get(), outer.get(), inner);
    } else if (isSame(first.get(), second.get())) {
      folded(first.get(), second.get());
    } else if (isPlaced(join)) {
      boolean onSecond =
          telling.drawn().piece(placed(join)).isPresent() && telling.isMark(join.layers().get(1));
      placed(onSecond ? first.get() : second.get(), onSecond ? second.get() : first.get());
    } else if (step.act() instanceof Act.Attach
        || seam.even().isPresent()
        || isRound(first.get(), second.get())) {
      unrolled(seam, join);
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
    return join.layers().stream().anyMatch(telling::isMark);
  }

  private static String placed(Seam.Join join) {
    return join.layers().get(1).run().get(0).piece();
  }

  private void show(Flat flat) {
    show(flat, List.of());
  }

  /** Names a piece where no line is in the way. */
  private void show(Flat flat, List<Path> lines) {
    shown.add(flat.piece());
    label(new Labels(flat.outline().bounds()).avoid(lines), flat, point -> true);
  }

  /**
   * Right sides together: the lower layer whole, the upper one cut away some way off the seam, and
   * between them another one, if there is one.
   */
  private void laid(LaidLayer top, LaidLayer lying, Optional<LaidLayer> middle) {
    LaidLayer level = lying.flats().size() > 1 ? level(lying) : lying;
    LaidLayer over = top.on(level, true);
    Box both = bounds(level).union(bounds(over));
    Motion turn =
        both.height() > TALL * both.width()
            ? Motion.turn(both.centre(), -Math.PI / 2)
            : Motion.identity();
    LaidLayer ground = level.then(turn);
    LaidLayer upper = over.then(turn);
    ground.flats().forEach(scene::piece);
    Optional<LaidLayer> inner = middle.map(layer -> layer.on(ground, true));
    inner.ifPresent(layer -> layer.flats().forEach(scene::piece));
    Vector chord = chord(ground);
    List<Scene.Side> sides = new ArrayList<>();
    for (Flat flat : upper.flats()) {
      Scene.Side side = kept(flat, upper, chord);
      sides.add(side);
      scene.piece(flat, side, false);
    }
    Box focus = focus(ground, upper);
    boolean twins =
        ground.flats().size() == 1
            && upper.flats().size() == 1
            && ground.flats().get(0).piece().equals(upper.flats().get(0).piece());
    stitched(upper, twins, point -> sides.get(0).depth(point) > 0);
    Labels labels = new Labels(focus).avoid(upper.seam());
    for (int i = 0; i < upper.flats().size(); i++) {
      Flat flat = upper.flats().get(i);
      Scene.Side side = sides.get(i);
      shown.add(flat.piece());
      label(labels, flat, point -> side.depth(point) > 0);
    }
    List<Flat> beneath = new ArrayList<>(ground.flats());
    inner.ifPresent(layer -> beneath.addAll(0, layer.flats()));
    for (Flat flat : beneath) {
      shown.add(flat.piece());
      if (!twins || inner.isPresent()) {
        label(
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

  private void label(Labels labels, Flat flat, Predicate<Point> seen) {
    labels
        .on(flat.outline(), seen)
        .ifPresent(at -> scene.words(Integer.toString(flat.number()), at));
  }

  private static Box bounds(LaidLayer layer) {
    Box all = layer.flats().get(0).outline().bounds();
    for (Flat flat : layer.flats()) {
      all = all.union(flat.outline().bounds());
    }
    return all;
  }

  /** Right sides up, opened out from their seam; one that was turned out lies by itself. */
  private void opened(LaidLayer top, LaidLayer lying) {
    boolean twins = piece(top).equals(piece(lying));
    LaidLayer bottom = lying.flats().size() > 1 ? level(lying) : lying;
    if (twins) {
      Flat flat = bottom.flats().get(0);
      scene.shape(
          flat.opened().stitchLine().path().moved(flat.motion()),
          flat.wrongSide(),
          Subject.piece(flat.piece()));
      stitched(new LaidLayer(List.of(flat), bottom.seam()), true, point -> true);
      show(flat);
      return;
    }
    LaidLayer upper = top.on(bottom, false);
    for (LaidLayer layer : List.of(bottom, upper)) {
      for (Flat flat : layer.flats()) {
        scene.shape(
            flat.opened().stitchLine().path().moved(flat.motion()),
            flat.wrongSide(),
            Subject.piece(flat.piece()));
      }
    }
    stitched(upper, false, point -> true);
    Box focus = focus(bottom, upper);
    Labels labels = new Labels(focus).avoid(upper.seam());
    for (LaidLayer layer : List.of(bottom, upper)) {
      for (Flat flat : layer.flats()) {
        shown.add(flat.piece());
        label(labels, flat, point -> true);
      }
    }
  }

  private static String piece(LaidLayer layer) {
    return layer.flats().get(0).piece();
  }

  /** Turned so that its seam runs level, the pieces below it. */
  private static LaidLayer level(LaidLayer layer) {
    Vector chord = chord(layer);
    LaidLayer turned = layer.then(Motion.turn(layer.start(), -chord.angle()));
    double inside = turned.flats().get(0).outline().bounds().centre().y() - turned.start().y();
    return inside > 0 ? turned.then(Motion.turn(turned.start(), Math.PI)) : turned;
  }

  /** What is shown: all, or where the seam is short beside its pieces, what lies round it. */
  private Box focus(LaidLayer bottom, LaidLayer upper) {
    Box all = scene.bounds();
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
    scene.focus(near);
    return near;
  }

  private static Vector chord(LaidLayer layer) {
    Vector chord = layer.end().minus(layer.start());
    return chord.length() > 1 ? chord : layer.at(layer.length() / 2).tangent();
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

  /**
   * The lines of stitching, also of the step's other seams that lie on the same piece.
   *
   * @param halves whether a piece that was cut on the fold is sewn on both halves
   * @param seen what of the table has not been cut away
   */
  private void stitched(LaidLayer layer, boolean halves, Predicate<Point> seen) {
    List<Path> lines = new ArrayList<>(layer.seam());
    if (halves) {
      for (Work.OfSeam work : step.work(Work.OfSeam.class)) {
        telling.seam(work.seam()).stream()
            .flatMap(seam -> seam.joins().stream())
            .flatMap(join -> join.layers().get(0).run().stream())
            .forEach(
                place ->
                    layer.flats().stream()
                        .filter(flat -> flat.holds(place))
                        .forEach(flat -> flat.path(place).ifPresent(lines::add)));
      }
    }
    if (halves) {
      Flat flat = layer.flats().get(0);
      flat.opened()
          .drawn()
          .foldEdge()
          .map(fold -> fold.path().moved(flat.motion()))
          .ifPresent(
              fold -> {
                Motion mirror = Motion.mirror(fold.start(), fold.end());
                List.copyOf(lines).forEach(path -> lines.add(path.moved(mirror)));
              });
    }
    List<Path> once = new ArrayList<>();
    for (Path path : lines) {
      Point middle = path.at(path.length() / 2).point();
      boolean shows = layer.seam().contains(path) || seen.test(middle);
      if (shows
          && once.stream()
              .noneMatch(known -> known.at(known.length() / 2).point().distanceTo(middle) < 1)) {
        once.add(path);
      }
    }
    once.forEach(path -> scene.line(path, sews() ? Draw.STITCH : Draw.ACTION));
    if (step.act() instanceof Act.Handle || (sews() && !(step.act() instanceof Act.Stitching))) {
      double each = 90;
      for (Path path : once) {
        scene.pins(path, Math.max(2, Math.min(6, (int) (path.length() / each) + 1)));
      }
    }
  }

  private boolean sews() {
    return step.act() instanceof Act.Sew
        || step.act() instanceof Act.Attach
        || step.act() instanceof Act.SetIn
        || step.act() instanceof Act.HandSew
        || step.act() instanceof Act.Stitching
        || step.act() instanceof Act.FormCasing;
  }

  /** One piece folded so that two of its own edges meet. */
  private void folded(LaidLayer first, LaidLayer second) {
    Motion level = lengthwise(second.flats().get(0));
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
    boolean out = Turned.isOut(telling, step, flat.piece());
    scene.piece(flat, side, true);
    scene.piece(turned, side, true, !out);
    shown.add(flat.piece());
    stitched(upper, false, point -> true);
    scene.words(Integer.toString(flat.number()), axis.toward(there, 0.5));
  }

  /** Laid right side up on its line. */
  private void placed(LaidLayer top, LaidLayer ground) {
    LaidLayer laid = top.on(ground, false);
    ground.flats().forEach(scene::piece);
    for (Flat flat : laid.flats()) {
      List<Path> sewn = new ArrayList<>();
      flat.opened().edges().forEach(edge -> sewn.add(edge.edge().path().moved(flat.motion())));
      Path all = flat.opened().stitchLine().path().moved(flat.motion());
      scene.shape(all, flat.wrongSide(), Subject.piece(flat.piece()));
    }
    laid.seam().forEach(path -> scene.line(path, Draw.STITCH));
    Labels labels = new Labels(scene.bounds()).avoid(laid.seam());
    for (Flat flat : laid.flats()) {
      shown.add(flat.piece());
      label(labels, flat, point -> true);
    }
    for (Flat flat : ground.flats()) {
      shown.add(flat.piece());
      label(
          labels,
          flat,
          point -> laid.flats().stream().noneMatch(on -> on.outline().contains(point)));
    }
  }

  /** A band along an opening, both unrolled: their marks stand over each other. */
  private void unrolled(Seam seam, Seam.Join join) {
    Unrolled.of(telling, seam, join).draw(scene, shown);
  }

  private void fold(Work.OfPiece work, Act.Fold fold) {
    Flat.of(telling.drawn(), work.piece())
        .ifPresent(
            flat -> {
              Flat shownSide = fold.wrongSidesTogether() ? flat.turnedOver() : flat;
              Flat lying = shownSide.then(lengthwise(shownSide));
              scene.piece(lying);
              show(lying);
              Box box = lying.outline().bounds();
              boolean wide = box.width() > box.height();
              Path line =
                  fold.along()
                      .flatMap(name -> lying.mark(name).stream().findFirst())
                      .orElseGet(
                          () ->
                              wide
                                  ? Path.straight(
                                      new Point(box.minX(), box.centre().y()),
                                      new Point(box.maxX(), box.centre().y()))
                                  : Path.straight(
                                      new Point(box.centre().x(), box.minY()),
                                      new Point(box.centre().x(), box.maxY())));
              scene.line(line, Draw.FOLD);
              Vector across = line.endDirection().left();
              double reach = Math.min(box.width(), box.height()) * 0.42;
              for (double share : new double[] {0.25, 0.75}) {
                Point on = line.at(line.length() * share).point();
                Point from = on.minus(across.times(reach));
                Point to = on.plus(across.times(reach));
                scene.arrow(arc(from, to));
              }
            });
  }

  private static Path arc(Point from, Point to) {
    Vector aside = to.minus(from).right().times(0.35);
    return Path.of(
        new Cubic(from, from.toward(to, 0.25).plus(aside), from.toward(to, 0.75).plus(aside), to));
  }

  /** A turn that lays a long narrow piece level. */
  private static Motion lengthwise(Flat flat) {
    Box box = flat.outline().bounds();
    return box.height() > NARROW * box.width()
        ? Motion.turn(box.centre(), -Math.PI / 2)
        : Motion.identity();
  }

  /** Pieces side by side, with the edges and marks that are worked on. */
  private void edges() {
    Map<String, List<Work>> byPiece = new LinkedHashMap<>();
    for (Work work : works()) {
      owner(work).ifPresent(p -> byPiece.computeIfAbsent(p, k -> new ArrayList<>()).add(work));
    }
    boolean wrong =
        step.act() instanceof Act.Hem
            || step.act() instanceof Act.Press
            || step.act() instanceof Act.Fuse
            || step.act() instanceof Act.FormCasing;
    double x = 0;
    double row = 0;
    double high = 0;
    for (Map.Entry<String, List<Work>> entry : byPiece.entrySet()) {
      Optional<Flat> found = Flat.of(telling.drawn(), entry.getKey());
      if (found.isEmpty()) {
        continue;
      }
      Flat side = wrong ? found.get().turnedOver() : found.get();
      Flat flat = side.then(lengthwise(side));
      Box box = flat.outline().bounds();
      if (x > 0 && x + box.width() > ROW) {
        row -= high + 60;
        x = 0;
        high = 0;
      }
      high = Math.max(high, box.height());
      Flat lying = flat.then(Motion.move(new Vector(x - box.minX(), row - box.maxY())));
      x += box.width() + Math.max(30, box.width() * 0.12);
      scene.piece(lying);
      List<Path> lines = new ArrayList<>();
      entry.getValue().forEach(work -> lines.addAll(emphasise(lying, work)));
      show(lying, lines);
    }
    rows = row < 0;
  }

  private List<Work> works() {
    List<Work> works = new ArrayList<>(step.work());
    if (step.act() instanceof Act.Own own) {
      own.deals().forEach(dealing -> works.add(dealing.work()));
    }
    if (works.isEmpty()
        && !(step.act() instanceof Act.Handle handle && handle.kind() == Act.Handling.TEST)) {
      telling.run().pattern().views().stream()
          .filter(view -> step.views().contains(view.name()))
          .findFirst()
          .map(View::pieces)
          .orElse(List.of())
          .forEach(piece -> works.add(new Work.OfPiece(piece, Optional.empty())));
    }
    return works;
  }

  private Optional<String> owner(Work work) {
    if (work instanceof Work.OfEdge edge) {
      return Optional.of(edge.piece());
    } else if (work instanceof Work.OfPiece piece) {
      return Optional.of(piece.piece());
    } else if (work instanceof Work.OfMark mark) {
      return Optional.of(mark.piece());
    } else if (work instanceof Work.OfIntake intake) {
      return Optional.of(intake.piece());
    } else if (work instanceof Work.OfElastic elastic) {
      return telling.drawn().elastics().stream()
          .filter(each -> each.name().equals(elastic.elastic()))
          .map(Elastic::piece)
          .findFirst();
    } else if (work instanceof Work.OfCord cord) {
      return telling.run().pattern().making().cord(cord.cord()).map(each -> each.piece());
    } else if (work instanceof Work.OfOpening opening) {
      return opened(opening.opening());
    }
    return Optional.empty();
  }

  /** The piece in which an opening was left: that of the first layer of the seam. */
  private Optional<String> opened(String opening) {
    return telling.run().pattern().making().steps().stream()
        .filter(each -> each.leaves().stream().anyMatch(left -> left.name().equals(opening)))
        .flatMap(each -> each.work().stream())
        .flatMap(
            work ->
                work instanceof Work.OfSeam seam
                    ? telling.seam(seam.seam()).stream()
                        .map(found -> found.joins().get(0).layers().get(0).run().get(0).piece())
                    : owner(work).stream())
        .findFirst();
  }

  /** Draws what is worked on; the lines are given back. */
  private List<Path> emphasise(Flat flat, Work work) {
    List<Path> lines = new ArrayList<>();
    if (work instanceof Work.OfEdge edge) {
      lines.addAll(flat.edge(edge.edge()));
      lines.forEach(path -> scene.line(path, Draw.ACTION));
    } else if (work instanceof Work.OfMark mark) {
      lines.addAll(flat.mark(mark.mark()));
      lines.forEach(path -> scene.line(path, Draw.ACTION));
    } else if (work instanceof Work.OfIntake intake) {
      lines.addAll(intake(flat, intake.intake()));
    } else if (work instanceof Work.OfPiece && step.act() instanceof Act.Fasten fasten) {
      for (Point at : fastened(flat, fasten)) {
        scene.dot(at);
        lines.add(Path.straight(at, at.plus(new Vector(1, 0))));
      }
    }
    return lines;
  }

  /** Where the pattern marks buttons, buttonholes or the like on a piece. */
  private static List<Point> fastened(Flat flat, Act.Fasten fasten) {
    String kind = fasten.kind().name().toLowerCase(Locale.ROOT).replace("_", "");
    List<Mark.Drill> drills = flat.opened().drawn().marks(Mark.Drill.class);
    List<Mark.Drill> named =
        drills.stream()
            .filter(drill -> drill.name().replaceAll("[_0-9]+$", "").replace("_", "").equals(kind))
            .toList();
    List<Mark.Drill> meant = named.isEmpty() && drills.size() == fasten.count() ? drills : named;
    return meant.stream().map(drill -> flat.motion().apply(drill.at())).toList();
  }

  private List<Path> intake(Flat flat, String name) {
    Piece piece = flat.opened().drawn();
    List<Path> lines = new ArrayList<>();
    for (Intake intake : piece.intakes()) {
      Optional<Edge> edge = piece.edge(intake.edge());
      if (!intake.name().equals(name) || edge.isEmpty()) {
        continue;
      }
      Path path = edge.get().path();
      if (intake instanceof Intake.Dart dart) {
        Point a = path.at(dart.from()).point();
        Point b = path.at(dart.to()).point();
        lines.add(Path.polyline(List.of(a, dart.tip(), b)));
      } else if (intake instanceof Intake.Pleat pleat) {
        lines.addAll(pleat.lines());
      } else {
        lines.add(path.part(intake.from(), intake.to()));
      }
    }
    List<Path> lying = new ArrayList<>();
    for (Path line : lines) {
      lying.add(line.moved(flat.motion()));
      flat.opened()
          .mirror()
          .ifPresent(mirror -> lying.add(line.moved(mirror).moved(flat.motion())));
    }
    lying.forEach(line -> scene.line(line, Draw.STITCH));
    return lying;
  }
}
