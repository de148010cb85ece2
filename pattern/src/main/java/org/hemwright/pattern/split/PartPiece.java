package org.hemwright.pattern.split;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.piece.BodyOpening;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.Corner;
import org.hemwright.pattern.piece.CornerFinish;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.Grain;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;

/**
 * A part, once it is cut, as a piece of its own: what the whole piece says of its corners, notches,
 * openings and intakes is said of the stretches that lie here.
 */
final class PartPiece {
  /** How much of a part's length its grain arrow takes where the whole's own does not lie on it. */
  private static final double ARROW = 0.6;

  private final Piece whole;
  private final Mark.Split split;
  private final PartInWork part;
  private final List<PartEdge> edges;

  private PartPiece(PartInWork part, Mark.Split split) {
    this.whole = part.whole();
    this.split = split;
    this.part = part;
    this.edges = part.edges().numbered();
  }

  /**
   * The part as a piece.
   *
   * @param index which part it is, from 0
   * @param count how many parts there are
   */
  static Piece of(PartInWork part, Mark.Split split, int index, int count) {
    return new PartPiece(part, split).piece(index, count);
  }

  private Piece piece(int index, int count) {
    Point stackPoint = whole.stackPoint();
    Piece piece =
        new Piece(
            card(index, count),
            part.edges().outline(),
            edges.stream().map(PartEdge::edge).toList(),
            corners(),
            notches(),
            whole.grain().map(this::grain),
            part.marks().marks(),
            openings(),
            part.edges().holds(stackPoint) ? stackPoint : edges.get(0).path().start());
    return piece.with(intakes(), bodyOpenings());
  }

  private PieceCard card(int index, int count) {
    PieceCard card = whole.card();
    boolean halves =
        whole.foldEdge().isPresent() && edges.stream().noneMatch(edge -> edge.edge().onFold());
    List<Cut> cuts = new ArrayList<>();
    for (Cut cut : card.cuts()) {
      cuts.add(halves ? new Cut(2 * cut.count(), cut.fabric(), false, true, cut.origin()) : cut);
    }
    List<Copy> copies = halves ? PieceParts.copiesOfHalves(card.copies()) : card.copies();
    String title =
        count == 1
            ? card.title() + ", half"
            : card.title() + ", part " + (index + 1) + " of " + count;
    return new PieceCard(
        split.part(card.name(), index),
        title,
        card.number(),
        cuts,
        copies,
        card.rightSideUp(),
        card.sizes(),
        split.origin(),
        index + 1);
  }

  private List<Corner> corners() {
    List<Corner> corners = new ArrayList<>();
    PartEdge before = edges.get(edges.size() - 1);
    for (PartEdge after : edges) {
      String first = before.edge().name();
      String second = after.edge().name();
      corners.add(new Corner(first, second, after.path().start(), finish(before, after)));
      before = after;
    }
    return corners;
  }

  /**
   * As the whole piece finishes it, where this is one of its corners. A new seam is sewn before its
   * neighbours, and its allowance ends square to it, so that the two parts line up however it runs.
   */
  private CornerFinish finish(PartEdge before, PartEdge after) {
    CornerFinish usual = CornerFinish.between(before.edge(), after.edge());
    boolean cutBefore = before.source().isEmpty();
    if (cutBefore != after.source().isEmpty() && usual.equals(CornerFinish.USUAL)) {
      PartEdge beside = cutBefore ? after : before;
      return beside.edge().onFold()
          ? usual
          : new CornerFinish.Square((cutBefore ? before : after).edge().name());
    }
    if (before.source().isEmpty() || after.source().isEmpty() || after.source().get().from() > 0) {
      return usual;
    }
    return whole.corners().stream()
        .filter(corner -> before.isOf(corner.before()) && after.isOf(corner.after()))
        .filter(corner -> corner.point().isAt(after.path().start()))
        .map(corner -> here(corner, before, after))
        .findFirst()
        .orElse(usual);
  }

  /** A finish of the whole's corner, its edges under the names that they have here. */
  private static CornerFinish here(Corner corner, PartEdge before, PartEdge after) {
    if (corner.finish() instanceof CornerFinish.Square square) {
      boolean first = square.edge().equals(corner.before());
      return new CornerFinish.Square((first ? before : after).edge().name());
    } else if (corner.finish() instanceof CornerFinish.TurnedBack turned) {
      boolean first = turned.edge().equals(corner.before());
      return new CornerFinish.TurnedBack((first ? before : after).edge().name());
    }
    return corner.finish();
  }

  /** The whole's notches that lie here, and one in the middle of each new edge. */
  private List<Notch> notches() {
    List<Notch> notches = new ArrayList<>();
    for (Notch notch : whole.notches()) {
      for (PartEdge edge : alongWhole(notch.edge())) {
        Source source = edge.source().orElseThrow();
        double at = notch.distance() - source.from();
        if (at >= -Tolerance.DRAWN_LENGTH
            && at <= source.length() + Tolerance.DRAWN_LENGTH
            && !isAtCut(source, notch)) {
          notches.add(
              new Notch(
                  edge.edge().name(),
                  Math.max(0, Math.min(source.length(), at)),
                  notch.kind(),
                  notch.name(),
                  notch.origin()));
        }
      }
    }
    for (int line = 0; line < Math.max(1, split.lines().size()); line++) {
      String seam = Divided.seam(split, line);
      Notch.Kind kind = line % 2 == 0 ? Notch.Kind.SINGLE : Notch.Kind.DOUBLE;
      for (PartEdge edge : edges) {
        if (edge.edge().name().equals(seam)) {
          double middle = edge.path().length() / 2;
          notches.add(new Notch(seam, middle, kind, Optional.empty(), split.origin()));
        }
      }
    }
    return notches;
  }

  /** Whether a notch lies where the edge is cut: the end of the new seam marks that place. */
  private boolean isAtCut(Source source, Notch notch) {
    double length = whole.edge(source.edge()).map(edge -> edge.path().length()).orElse(0.0);
    boolean atStart =
        source.from() > 0 && Math.abs(notch.distance() - source.from()) <= Tolerance.DRAWN_LENGTH;
    boolean atEnd =
        source.to() < length - Tolerance.DRAWN_LENGTH
            && Math.abs(notch.distance() - source.to()) <= Tolerance.DRAWN_LENGTH;
    return atStart || atEnd;
  }

  /** The grain arrow where it lies on the part, else one like it through the part's middle. */
  private Grain grain(Grain grain) {
    if (part.edges().holds(grain.from()) && part.edges().holds(grain.to())) {
      return grain;
    }
    Vector along = grain.direction();
    Box box = part.edges().outline().bounds();
    Point middle = box.centre();
    double reach =
        ARROW / 2 * (Math.abs(along.dx()) * box.width() + Math.abs(along.dy()) * box.height());
    return new Grain(
        middle.plus(along.times(-reach)), middle.plus(along.times(reach)), grain.origin());
  }

  /** The edges here that lie along an edge of the whole piece. */
  private List<PartEdge> alongWhole(String edge) {
    return edges.stream().filter(own -> own.isOf(edge)).toList();
  }

  private List<String> openings() {
    return edges.stream()
        .filter(edge -> edge.source().filter(s -> whole.openings().contains(s.edge())).isPresent())
        .map(edge -> edge.edge().name())
        .toList();
  }

  private List<BodyOpening> bodyOpenings() {
    List<BodyOpening> openings = new ArrayList<>();
    for (BodyOpening opening : whole.bodyOpenings()) {
      for (PartEdge edge : alongWhole(opening.edge())) {
        openings.add(
            new BodyOpening(
                edge.edge().name(), opening.over(), opening.closure(), opening.origin()));
      }
    }
    return openings;
  }

  private List<Intake> intakes() {
    List<Intake> intakes = new ArrayList<>();
    for (Intake intake : whole.intakes()) {
      for (PartEdge edge : alongWhole(intake.edge())) {
        Source source = edge.source().orElseThrow();
        if (intake.from() >= source.from() - Tolerance.DRAWN_LENGTH
            && intake.to() <= source.to() + Tolerance.DRAWN_LENGTH) {
          double from = Math.max(0, intake.from() - source.from());
          double to = intake.to() - source.from();
          intakes.add(intake.onEdge(edge.edge().name()).at(from, to));
        }
      }
    }
    return intakes;
  }
}
