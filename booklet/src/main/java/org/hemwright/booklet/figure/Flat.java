package org.hemwright.booklet.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.AddedAllowance;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.CutLine;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.NotchMark;
import org.hemwright.pattern.piece.NotchSize;
import org.hemwright.pattern.piece.OpenedPiece;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.NotchPlace;

/**
 * One cut copy of a piece lying flat on the table, opened over its fold.
 *
 * @param copy its name
 * @param mirroredCopy whether it was cut as the mirror image of the drawing
 * @param opened the piece
 * @param cut the whole cut line, in the drawing's coordinates
 * @param notches on the cut line
 * @param motion from the drawing to the table
 */
record Flat(
    String copy,
    boolean mirroredCopy,
    OpenedPiece opened,
    CutLine cut,
    List<NotchMark> notches,
    Motion motion) {
  Flat {
    notches = List.copyOf(notches);
  }

  /** A copy with its right side up and its grain upward, as drawn; absent where it is not drawn. */
  static Optional<Flat> of(SizedPattern sized, String name, String copy) {
    return sized
        .piece(name)
        .flatMap(piece -> AddedAllowance.to(piece).cutLine().map(line -> of(piece, line, copy)));
  }

  private static Flat of(Piece piece, CutLine half, String copy) {
    OpenedPiece opened = OpenedPiece.of(piece);
    boolean mirrored =
        piece.card().copies().stream()
            .filter(each -> each.name().equals(copy))
            .anyMatch(Copy::mirrored);
    Motion upright =
        piece
            .grain()
            .map(grain -> Motion.turn(Point.ORIGIN, Math.PI / 2 - grain.direction().angle()))
            .orElse(Motion.identity());
    Motion shown =
        mirrored
            ? upright.then(Motion.mirror(Point.ORIGIN, Point.ORIGIN.plus(new Vector(0, 1))))
            : upright;
    return new Flat(
        copy,
        mirrored,
        opened,
        opened.cutLine(half),
        opened.notchMarks(NotchMark.on(piece, half, NotchSize.USUAL)),
        shown);
  }

  /** The first copy of a piece. */
  static Optional<Flat> of(SizedPattern sized, String name) {
    String first =
        sized
            .piece(name)
            .flatMap(piece -> piece.card().copies().stream().findFirst())
            .map(Copy::name)
            .orElse("1");
    return of(sized, name, first);
  }

  String piece() {
    return opened.drawn().name();
  }

  int number() {
    return opened.drawn().card().number();
  }

  /** Whether its wrong side is up. */
  boolean wrongSide() {
    return motion.isMirror() != mirroredCopy;
  }

  Flat then(Motion further) {
    return new Flat(copy, mirroredCopy, opened, cut, notches, motion.then(further));
  }

  /** Turned over about a vertical axis, where it lies. */
  Flat turnedOver() {
    Point centre = outline().bounds().centre();
    return then(Motion.mirror(centre, centre.plus(new Vector(0, 1))));
  }

  /** Its cut line on the table. */
  Outline outline() {
    return cut.outline().moved(motion);
  }

  /** Whether a place lies on this copy. */
  boolean holds(EdgePlace place) {
    return place.piece().equals(piece()) && place.copy().equals(copy);
  }

  /**
   * The stitch line of a place on the table, in the way it is sewn; absent where it is not drawn.
   */
  Optional<Path> path(EdgePlace place) {
    return drawn(place)
        .map(
            path ->
                place.half() == EdgePlace.Half.MIRRORED && opened.mirror().isPresent()
                    ? path.moved(opened.mirror().get())
                    : path)
        .map(path -> path.moved(motion));
  }

  private Optional<Path> drawn(EdgePlace place) {
    Piece piece = opened.drawn();
    Optional<Edge> edge = piece.edge(place.edge());
    if (edge.isEmpty()) {
      return piece.marks(Mark.Placement.class).stream()
          .filter(line -> line.name().equals(place.edge()))
          .map(Mark.Placement::path)
          .map(path -> place.reversed() ? path.reversed() : path)
          .findFirst();
    }
    Edge found = edge.get();
    Path path = found.reversed() ? found.path().reversed() : found.path();
    double from =
        place.from().map(name -> NotchPlace.along(piece, found, name).orElse(0)).orElse(0.0);
    double to =
        place
            .to()
            .map(name -> NotchPlace.along(piece, found, name).orElse(path.length()))
            .orElse(path.length());
    if (to - from < 1) {
      return Optional.empty();
    }
    Path part = from > 0 || to < path.length() ? path.part(from, to) : path;
    return Optional.of(place.reversed() ? part.reversed() : part);
  }

  /** The stitch lines of an edge on the table, on both halves of an opened piece. */
  List<Path> edge(String name) {
    List<Path> paths = new ArrayList<>();
    opened.edges().stream()
        .filter(edge -> edge.edge().name().equals(name))
        .forEach(edge -> paths.add(edge.edge().path().moved(motion)));
    return paths;
  }

  /** The lines of a mark of that name on the table. */
  List<Path> mark(String name) {
    List<Path> paths = new ArrayList<>();
    for (Mark mark : opened.marks()) {
      if (mark instanceof Mark.Placement line && line.name().equals(name)) {
        paths.add(line.path().moved(motion));
      } else if (mark instanceof Mark.Inner line && line.name().equals(name)) {
        paths.add(line.path().moved(motion));
      }
    }
    return paths;
  }
}
