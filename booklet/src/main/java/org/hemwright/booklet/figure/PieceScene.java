package org.hemwright.booklet.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.View;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.Elastic;

/** Pieces side by side, or one that is folded, with what of them is worked on. */
final class PieceScene {
  /** Pieces in one row (mm of table); more go on below. */
  private static final double ROW = 2300;

  private final StepScene table;

  PieceScene(StepScene table) {
    this.table = table;
  }

  /**
   * Draws pieces side by side, with the edges and marks that are worked on; whether it took several
   * rows.
   */
  boolean draw() {
    Map<String, List<Work>> byPiece = new LinkedHashMap<>();
    for (Work work : works()) {
      owner(work).ifPresent(p -> byPiece.computeIfAbsent(p, k -> new ArrayList<>()).add(work));
    }
    boolean wrong =
        table.step().act() instanceof Act.Hem
            || table.step().act() instanceof Act.Press
            || table.step().act() instanceof Act.Fuse
            || table.step().act() instanceof Act.FormCasing;
    double x = 0;
    double row = 0;
    double high = 0;
    for (Map.Entry<String, List<Work>> entry : byPiece.entrySet()) {
      Optional<Flat> found = Flat.of(table.telling().drawn(), entry.getKey());
      if (found.isEmpty()) {
        continue;
      }
      Flat side = wrong ? found.get().turnedOver() : found.get();
      Flat flat = side.then(StepScene.lengthwise(side));
      Box box = flat.outline().bounds();
      if (x > 0 && x + box.width() > ROW) {
        row -= high + 60;
        x = 0;
        high = 0;
      }
      high = Math.max(high, box.height());
      Flat lying = flat.then(Motion.move(new Vector(x - box.minX(), row - box.maxY())));
      x += box.width() + Math.max(30, box.width() * 0.12);
      table.scene().piece(lying);
      List<Path> lines = new ArrayList<>();
      entry.getValue().forEach(work -> lines.addAll(emphasise(lying, work)));
      table.show(lying, lines);
    }
    return row < 0;
  }

  /** Draws a piece with the line that it is folded along, and which way. */
  void fold(Work.OfPiece work, Act.Fold fold) {
    Flat.of(table.telling().drawn(), work.piece())
        .ifPresent(
            flat -> {
              Flat shownSide = fold.wrongSidesTogether() ? flat.turnedOver() : flat;
              Flat lying = shownSide.then(StepScene.lengthwise(shownSide));
              table.scene().piece(lying);
              table.show(lying);
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
              table.scene().line(line, Draw.FOLD);
              Vector across = line.endDirection().left();
              double reach = Math.min(box.width(), box.height()) * 0.42;
              for (double share : new double[] {0.25, 0.75}) {
                Point on = line.at(line.length() * share).point();
                Point from = on.minus(across.times(reach));
                Point to = on.plus(across.times(reach));
                table.scene().arrow(arc(from, to));
              }
            });
  }

  private static Path arc(Point from, Point to) {
    Vector aside = to.minus(from).right().times(0.35);
    return Path.of(
        new Cubic(from, from.toward(to, 0.25).plus(aside), from.toward(to, 0.75).plus(aside), to));
  }

  private List<Work> works() {
    List<Work> works = new ArrayList<>(table.step().work());
    if (table.step().act() instanceof Act.Own own) {
      own.deals().forEach(dealing -> works.add(dealing.work()));
    }
    if (works.isEmpty()
        && !(table.step().act() instanceof Act.Handle handle
            && handle.kind() == Act.Handling.TEST)) {
      table.telling().run().pattern().views().stream()
          .filter(view -> table.step().views().contains(view.name()))
          .findFirst()
          .map(View::pieces)
          .orElse(List.of())
          .forEach(piece -> works.add(new Work.OfPiece(piece, Optional.empty())));
    }
    return works;
  }

  private Optional<String> owner(Work work) {
    if (work instanceof Work.OnPiece on) {
      return Optional.of(on.piece());
    } else if (work instanceof Work.OfElastic elastic) {
      return table.telling().drawn().elastics().stream()
          .filter(each -> each.name().equals(elastic.elastic()))
          .map(Elastic::piece)
          .findFirst();
    } else if (work instanceof Work.OfCord cord) {
      return table.telling().run().pattern().making().cord(cord.cord()).map(each -> each.piece());
    } else if (work instanceof Work.OfOpening opening) {
      return opened(opening.opening());
    }
    return Optional.empty();
  }

  /** The piece in which an opening was left: that of the first layer of the seam. */
  private Optional<String> opened(String opening) {
    return table.telling().run().pattern().making().steps().stream()
        .filter(each -> each.leaves().stream().anyMatch(left -> left.name().equals(opening)))
        .flatMap(each -> each.work().stream())
        .flatMap(
            work ->
                work instanceof Work.OfSeam seam
                    ? table.telling().seam(seam.seam()).stream()
                        .map(found -> found.joins().get(0).layers().get(0).run().get(0).piece())
                    : owner(work).stream())
        .findFirst();
  }

  /** Draws what is worked on; the lines are given back. */
  private List<Path> emphasise(Flat flat, Work work) {
    List<Path> lines = new ArrayList<>();
    if (work instanceof Work.OfEdge edge) {
      lines.addAll(flat.edge(edge.edge()));
      lines.forEach(path -> table.scene().line(path, Draw.ACTION));
    } else if (work instanceof Work.OfMark mark) {
      lines.addAll(flat.mark(mark.mark()));
      lines.forEach(path -> table.scene().line(path, Draw.ACTION));
    } else if (work instanceof Work.OfIntake intake) {
      lines.addAll(intake(flat, intake.intake()));
    } else if (work instanceof Work.OfPiece && table.step().act() instanceof Act.Fasten fasten) {
      for (Point at : fastened(flat, fasten)) {
        table.scene().dot(at);
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
    lying.forEach(line -> table.scene().line(line, Draw.STITCH));
    return lying;
  }
}
