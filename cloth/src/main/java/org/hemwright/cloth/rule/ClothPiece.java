package org.hemwright.cloth.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.cloth.laying.Spot;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.piece.AddedAllowance;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.CutLine;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.NotchMark;
import org.hemwright.pattern.piece.NotchSize;
import org.hemwright.pattern.piece.OpenedPiece;
import org.hemwright.pattern.piece.Piece;

/**
 * A piece as one cloth sees it: opened, with its allowances, turned so that its grain arrow points
 * along x.
 *
 * @param id a name that no other cut of this cloth has
 * @param piece the piece as drawn
 * @param copy which of its copies it is; absent where it is all of them
 * @param count how many are cut of this cloth
 * @param mirrored whether every second one is cut mirrored
 * @param onFold whether the designer has it cut on the fold
 * @param shape the opened piece, in its own frame: left edge at x = 0; y = 0 is the fold edge, or
 *     half the height
 * @param frame from the drawing's plane into that frame
 * @param room what the search lays for it: the shape with half of the gap round it, simplified
 *     outward
 * @param halfRoom the same of the half above y = 0; absent where that is not one half
 * @param evenSided whether y = 0 is an axis of symmetry, of its outline, notches and drill marks,
 *     and of the checks it is to have, so that it may lie on a lengthwise fold and be its own
 *     mirror image
 * @param evenTurned whether it is its own mirror image once it is turned end for end
 * @param striped how it is held to the bars of its cloth; absent where it is not
 * @param eitherFace whether its cloth is alike on both sides, so that a copy and its mirror image
 *     are cut alike, each the other turned over
 */
public record ClothPiece(
    String id,
    Piece piece,
    Optional<String> copy,
    int count,
    boolean mirrored,
    boolean onFold,
    Silhouette shape,
    Motion frame,
    Silhouette room,
    Optional<Silhouette> halfRoom,
    boolean evenSided,
    boolean evenTurned,
    Optional<Striped> striped,
    boolean eitherFace) {
  /** Two outlines this close are cut alike (mm): the width of a chalk line; no source. */
  private static final double ALIKE = 0.5;

  /**
   * What one cut of a piece takes of its cloth; absent where its cut line cannot be drawn.
   *
   * @param gap the least distance to other pieces (mm)
   */
  public static Optional<ClothPiece> of(String id, Piece piece, Cut cut, double gap) {
    return AddedAllowance.to(piece).cutLine().map(line -> of(id, piece, cut, gap, line));
  }

  private static ClothPiece of(String id, Piece piece, Cut cut, double gap, CutLine half) {
    OpenedPiece opened = OpenedPiece.of(piece);
    Outline outline = opened.cutLine(half).outline();
    Vector grain = piece.grain().map(g -> g.direction()).orElse(new Vector(0, 1));
    Motion turn = Motion.turn(Point.ORIGIN, -grain.angle());
    Silhouette turned = Silhouette.of(outline, turn);
    Optional<Double> axis = foldAlongGrain(piece, grain, turn);
    double middle = axis.orElse((turned.low() + turned.high()) / 2);
    Motion frame = turn.then(Motion.move(new Vector(-turned.left(), -middle)));
    Silhouette shape = Silhouette.of(outline, frame);
    List<Point> marks = marks(piece, opened, half, frame);
    Silhouette image = shape.mirrored();
    boolean sided =
        shape.upperHalf().isPresent()
            && shape.isLike(image, ALIKE)
            && alike(marks, marks.stream().map(p -> new Point(p.x(), -p.y())).toList());
    double across = shape.left() + shape.right();
    boolean turnedEven =
        shape.isLike(image.turned(), ALIKE)
            && alike(marks, marks.stream().map(p -> new Point(across - p.x(), p.y())).toList());
    Silhouette grown = GrownOutline.of(shape, gap / 2);
    return new ClothPiece(
        id,
        piece,
        Optional.empty(),
        cut.count(),
        cut.mirrored(),
        cut.onFold(),
        shape,
        frame,
        OuterOutline.of(grown),
        grown.upperHalf().map(OuterOutline::of),
        sided,
        turnedEven,
        Optional.empty(),
        false);
  }

  /** Where the fold edge lies across the grain, if there is one and it runs with the grain. */
  private static Optional<Double> foldAlongGrain(Piece piece, Vector grain, Motion turn) {
    return piece
        .foldEdge()
        .map(Edge::path)
        .filter(
            path ->
                Math.abs(path.end().minus(path.start()).unit().cross(grain))
                    <= Tolerance.SAME_DIRECTION)
        .map(path -> turn.apply(path.start()).y());
  }

  private static List<Point> marks(Piece piece, OpenedPiece opened, CutLine half, Motion frame) {
    List<Point> marks = new ArrayList<>();
    for (NotchMark notch : opened.notchMarks(NotchMark.on(piece, half, NotchSize.USUAL))) {
      notch.ticks().forEach(tick -> marks.add(frame.apply(tick.at())));
    }
    for (Mark mark : opened.marks()) {
      if (mark instanceof Mark.Drill drill) {
        marks.add(frame.apply(drill.at()));
      }
    }
    return marks;
  }

  private static boolean alike(List<Point> marks, List<Point> others) {
    return marks.stream()
        .allMatch(mark -> others.stream().anyMatch(other -> mark.distanceTo(other) <= ALIKE));
  }

  /** One of its copies by itself, that is cut as drawn. */
  public ClothPiece alone(String one) {
    return new ClothPiece(
        id + ":" + one,
        piece,
        Optional.of(one),
        1,
        false,
        onFold,
        shape,
        frame,
        room,
        halfRoom,
        evenSided,
        evenTurned,
        striped,
        eitherFace);
  }

  ClothPiece with(Striped bars) {
    return new ClothPiece(
        id,
        piece,
        copy,
        count,
        mirrored,
        onFold,
        shape,
        frame,
        room,
        halfRoom,
        evenSided && bars.isCentred(),
        evenTurned,
        Optional.of(bars),
        eitherFace);
  }

  /**
   * The same on a cloth that is alike on both sides. Bars that run along the cloth hold a piece to
   * the side that it is cut on; there it stays as it is.
   */
  public ClothPiece onClothAlike() {
    return heldAcross() ? this : facing(true);
  }

  /** The same on a cloth that has a right side. */
  public ClothPiece onRightSide() {
    return facing(false);
  }

  private ClothPiece facing(boolean either) {
    return new ClothPiece(
        id,
        piece,
        copy,
        count,
        mirrored,
        onFold,
        shape,
        frame,
        room,
        halfRoom,
        evenSided,
        evenTurned,
        striped,
        either);
  }

  /**
   * Where a pattern drawn as a half is turned over, in the piece's own frame: the two ends of the
   * line through its fold edge, from one side of the whole shape to the other; absent where it is
   * drawn whole.
   */
  public Optional<List<Point>> foldLine() {
    return piece.foldEdge().map(Edge::path).map(this::acrossShape);
  }

  private List<Point> acrossShape(Path edge) {
    Point start = frame.apply(edge.start());
    Vector way = frame.apply(edge.end()).minus(start).unit();
    double first = 0;
    double last = 0;
    List<Spot> corners = shape.corners();
    for (int i = 0; i < corners.size(); i++) {
      Vector one = from(start, corners.get(i));
      Vector other = from(start, corners.get((i + 1) % corners.size()));
      double side = way.cross(one);
      double next = way.cross(other);
      if (side * next <= 0 && side != next) {
        double share = side / (side - next);
        double along = (1 - share) * way.dot(one) + share * way.dot(other);
        first = Math.min(first, along);
        last = Math.max(last, along);
      }
    }
    return List.of(start.plus(way.times(first)), start.plus(way.times(last)));
  }

  private static Vector from(Point start, Spot corner) {
    return new Vector(corner.x() - start.x(), corner.y() - start.y());
  }

  /**
   * Whether it may lie on a lengthwise fold of the cloth: not where its pattern is a half whose
   * fold edge runs another way, since such a half cannot be laid there.
   */
  boolean liesOnFold() {
    return evenSided && piece.foldEdge().map(Edge::path).map(this::runsAlong).orElse(true);
  }

  private boolean runsAlong(Path edge) {
    Vector way = frame.apply(edge.end()).minus(frame.apply(edge.start()));
    return Math.abs(way.dy()) < Math.abs(way.dx());
  }

  /** Whether it is cut with its printed side up on the right side of the cloth, never doubled. */
  public boolean rightSideUp() {
    return piece.card().rightSideUp() && !eitherFace;
  }

  /** Whether it may be cut folded: not where it is held to bars that are uneven across. */
  boolean liesFolded() {
    return striped.isEmpty() || striped.get().repeat().liesFolded();
  }

  /** Whether it is held to bars that run along the cloth. */
  boolean heldAcross() {
    return striped.filter(own -> own.across().isPresent()).isPresent();
  }

  /** Where its first notch of a name lies on the stitch line, in its own frame. */
  public Optional<Point> notchPlace(String name) {
    return piece.notches().stream()
        .filter(notch -> notch.name().filter(name::equals).isPresent())
        .findFirst()
        .flatMap(
            notch ->
                piece
                    .edge(notch.edge())
                    .map(edge -> edge.path().at(notch.distance()).point())
                    .map(frame::apply));
  }

  /** The piece's name in the document. */
  public String name() {
    return piece.name();
  }

  /** How many are cut as drawn. */
  public int asDrawn() {
    return count - asMirrored();
  }

  /** How many are cut as the mirror image of the drawing. */
  public int asMirrored() {
    return mirrored ? count / 2 : 0;
  }

  /** Whether the piece and its mirror image are cut alike on a cloth with this nap. */
  public boolean ownMirror(Fabric.Nap nap) {
    return eitherFace || ownShape(nap == Fabric.Nap.EITHER_WAY);
  }

  /** Whether its mirror image has its own shape, turned end for end where it may be. */
  boolean ownShape(boolean eitherWay) {
    return evenSided || (eitherWay && evenTurned);
  }

  /** How many pairs of a piece and its mirror image there are among its copies. */
  public int pairs(Fabric.Nap nap) {
    return ownMirror(nap) ? count / 2 : Math.min(asDrawn(), asMirrored());
  }

  /** The half above its axis, as laid on a fold; only of an even-sided piece. */
  public Silhouette half() {
    return shape
        .upperHalf()
        .orElseThrow(() -> new IllegalStateException(id + " is not even about its grain"));
  }
}
