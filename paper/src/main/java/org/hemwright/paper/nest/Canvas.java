package org.hemwright.paper.nest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.label.Room;
import org.hemwright.paper.label.TurnedBox;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;
import org.hemwright.pattern.finding.Finding;

/**
 * What is drawn on one piece so far, and the room that is left inside it. Words near a line keep a
 * narrow margin, blocks and arrows a wide one.
 */
final class Canvas {
  /** Free space between words and what is drawn (mm). */
  static final double NARROW = 1.1;

  static final double WIDE = 3.5;
  private static final double BETWEEN_BOXES = 6;
  static final double POINTS = 9;

  private static final double STEP = 4;
  private static final double ROW = 6;
  private static final double NEAR = 12;
  private static final double BEND = 0.8;
  private static final double BESIDE_LINE = 1.75;

  private final Nest nest;
  private final Room narrow;
  private final Room wide;

  /** The same less the edges of pages, over which words are set only where they must. */
  private final Room narrowOnPages;

  private final Room wideOnPages;
  private final NearLine seams;
  private final List<Inked> items = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  /**
   * A bare piece.
   *
   * @param seams where pages meet on it, if it is to be printed on pages
   */
  Canvas(Nest nest, List<Path> seams) {
    this.nest = nest;
    List<Path> outlines = new ArrayList<>();
    outlines.add(nest.smallest().cut().path());
    nest.shapes().forEach(shape -> outlines.add(shape.cut().path()));
    narrow = new Room(outlines);
    wide = narrow.empty();
    narrowOnPages = seams.isEmpty() ? narrow : narrow.empty();
    wideOnPages = seams.isEmpty() ? wide : narrow.empty();
    for (Path seam : seams) {
      narrowOnPages.takeLine(seam, NARROW);
      wideOnPages.takeLine(seam, WIDE);
    }
    this.seams = new NearLine(seams);
  }

  Subject subject() {
    return Subject.piece(nest.card().name());
  }

  List<Inked> items() {
    return List.copyOf(items);
  }

  /** The lines drawn so far. */
  List<Path> lines() {
    return items.stream()
        .filter(Stroke.class::isInstance)
        .map(item -> ((Stroke) item).path())
        .toList();
  }

  List<Finding> findings() {
    return List.copyOf(findings);
  }

  /** The room for blocks and arrows. */
  Room wide() {
    return wide;
  }

  /** The same within pages. */
  Room wideOnPages() {
    return wideOnPages;
  }

  /** Whether a box lies across the line where two pages meet, or touches it. */
  boolean isAcrossPages(TurnedBox box) {
    int steps = 1 + (int) (box.width() / NARROW);
    int rows = 1 + (int) (box.height() / ROW);
    double half = box.height() / rows / 2;
    for (int row = 0; row < rows; row++) {
      for (int i = 0; i <= steps; i++) {
        Point middle = box.at(box.width() * i / steps, half * (2 * row + 1));
        if (seams.passes(middle, half + NARROW)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Puts lines down and keeps words off them. */
  void draw(List<? extends Inked> drawn) {
    for (Inked item : drawn) {
      items.add(item);
      if (item instanceof Stroke stroke) {
        keepOff(stroke.path());
      }
    }
  }

  void keepOff(Path line) {
    narrow.takeLine(line, NARROW);
    wide.takeLine(line, WIDE);
    if (narrowOnPages != narrow) {
      narrowOnPages.takeLine(line, NARROW);
      wideOnPages.takeLine(line, WIDE);
    }
  }

  /** Puts words or signs down in a box that is theirs from now on. */
  void draw(List<? extends Inked> drawn, TurnedBox box) {
    items.addAll(drawn);
    take(box);
  }

  void take(TurnedBox box) {
    narrow.take(box, NARROW);
    wide.take(box, BETWEEN_BOXES);
    if (narrowOnPages != narrow) {
      narrowOnPages.take(box, NARROW);
      wideOnPages.take(box, BETWEEN_BOXES);
    }
  }

  /** Puts something down without keeping anything off it. */
  void overlay(List<? extends Inked> drawn) {
    items.addAll(drawn);
  }

  /** A box near a point, with a narrow margin. */
  Optional<TurnedBox> near(Point point, double angle, double width, double height, double reach) {
    return narrowOnPages
        .find(angle, width, height, point)
        .filter(box -> box.centre().distanceTo(point) <= reach)
        .or(
            () ->
                narrow
                    .find(angle, width, height, point)
                    .filter(box -> box.centre().distanceTo(point) <= reach));
  }

  /**
   * Words beside a line, as near to a share of it as they fit, on either side.
   *
   * @return whether there was room
   */
  boolean along(Path path, String text, Signs signs, double share) {
    return along(narrowOnPages, path, text, signs, share)
        || (narrowOnPages != narrow && along(narrow, path, text, signs, share));
  }

  /**
   * Words beside a line, or fewer words where those find no room, or the fewest near its middle.
   * Words for which there is no room at all are told of.
   *
   * @param texts the fullest first
   */
  void along(Path path, List<String> texts, Signs signs, double share) {
    for (String text : texts) {
      if (along(path, text, signs, share)) {
        return;
      }
    }
    String fewest = texts.get(texts.size() - 1);
    SetLine line = Face.REGULAR.set(fewest, POINTS);
    Point middle = path.at(path.length() * share).point();
    double high = line.capitalHeight() + line.descent();
    for (double angle : new double[] {0, Math.PI / 2}) {
      Optional<TurnedBox> box = near(middle, angle, line.width(), high, NEAR + line.width() / 2);
      if (box.isPresent()) {
        Point foot = box.get().at(0, line.descent());
        draw(List.of(signs.words(line, foot, angle)), box.get());
        return;
      }
    }
    leftOut(texts.get(0));
  }

  private boolean along(Room room, Path path, String text, Signs signs, double share) {
    SetLine line = Face.REGULAR.set(text, POINTS);
    Stations stations = new Stations(path);
    double length = stations.length();
    double half = line.width() / 2;
    double ideal = length * share;
    for (double off = 0; off <= length; off += STEP) {
      for (double at : off == 0 ? new double[] {ideal} : new double[] {ideal - off, ideal + off}) {
        if (at - half < 0 || at + half > length || stations.bend(at, half) > BEND) {
          continue;
        }
        Vector way = upright(stations.direction(at));
        double high = line.capitalHeight() + line.descent();
        Point foot = stations.at(at).minus(way.times(half));
        TurnedBox above =
            new TurnedBox(
                foot.plus(way.left().times(BESIDE_LINE)), way.angle(), line.width(), high);
        TurnedBox below =
            new TurnedBox(
                foot.minus(way.left().times(BESIDE_LINE + high)), way.angle(), line.width(), high);
        for (TurnedBox box : List.of(above, below)) {
          if (room.isFree(box)) {
            draw(List.of(signs.words(line, box.at(0, line.descent()), box.angle())), box);
            return true;
          }
        }
      }
    }
    return false;
  }

  /** A direction, or its opposite: the one in which words can be read. */
  static Vector upright(Vector along) {
    boolean back = along.dx() < -0.02 || (Math.abs(along.dx()) <= 0.02 && along.dy() < 0);
    return back ? along.negated() : along;
  }

  /** Says that some words found no room and are left out. */
  void leftOut(String words) {
    found("words-left-out", words);
  }

  /** Says that the piece's own words found no room in it and stand beside it. */
  void beside(String words) {
    found("label-fit", words);
  }

  private void found(String code, String words) {
    findings.add(
        Finding.warn(code, nest.card().name())
            .sizes(nest.sizeNames())
            .with("words", words)
            .at(nest.card().origin())
            .build());
  }
}
