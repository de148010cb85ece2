package org.hemwright.cloth.yardage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.hemwright.cloth.rule.ClothPiece;
import org.hemwright.cloth.rule.ClothSheet;
import org.hemwright.cloth.rule.Matching;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.split.Divided;
import org.hemwright.pattern.split.PieceParts;
import org.hemwright.pattern.split.SplitChoice;

/**
 * What is cut of a cloth for one piece: the whole, or its parts where the cloth is too narrow.
 *
 * @param whole the piece
 * @param waysOut how it may be cut apart, in the order of the document
 */
record Cuttable(ClothPiece whole, List<InParts> waysOut) {
  Cuttable {
    waysOut = List.copyOf(waysOut);
  }

  /** A piece cut apart in one way, and what each part takes of the cloth. */
  record InParts(PieceParts parts, List<ClothPiece> pieces) {
    InParts {
      pieces = List.copyOf(pieces);
    }

    SplitChoice choice() {
      return new SplitChoice(parts.whole().name(), parts.split().name());
    }
  }

  /**
   * One cut of a piece; absent where its cut line cannot be drawn.
   *
   * @param cut the place of the cut in the piece's card
   * @param suffix tells several cuts of one cloth apart
   */
  static Optional<Cuttable> of(Piece piece, int cut, String suffix, double gap) {
    return clothPiece(piece, cut, suffix, gap)
        .map(
            whole -> {
              List<InParts> waysOut = new ArrayList<>();
              for (Mark.Split split : piece.marks(Mark.Split.class)) {
                Divided.of(piece, split)
                    .parts()
                    .flatMap(parts -> inParts(parts, cut, suffix, gap))
                    .ifPresent(waysOut::add);
              }
              return new Cuttable(whole, waysOut);
            });
  }

  private static Optional<ClothPiece> clothPiece(Piece piece, int cut, String suffix, double gap) {
    Cut own = piece.card().cuts().get(cut);
    return ClothPiece.of(piece.name() + suffix, piece, own, gap);
  }

  private static Optional<InParts> inParts(PieceParts parts, int cut, String suffix, double gap) {
    List<ClothPiece> pieces = new ArrayList<>();
    for (Piece part : parts.parts()) {
      clothPiece(part, cut, suffix, gap).ifPresent(pieces::add);
    }
    return pieces.size() == parts.parts().size()
        ? Optional.of(new InParts(parts, pieces))
        : Optional.empty();
  }

  /** The whole and all parts. */
  List<ClothPiece> all() {
    List<ClothPiece> all = new ArrayList<>(List.of(whole));
    waysOut.forEach(way -> all.addAll(way.pieces));
    return all;
  }

  /** How it may be cut apart. */
  List<PieceParts> splits() {
    return waysOut.stream().map(InParts::parts).toList();
  }

  /** The same, held to the bars of a striped cloth. */
  Cuttable matched(Matching matching) {
    return each(matching::matched);
  }

  /** Each of its copies by itself, where they are cut alike and never apart; else all as one. */
  List<Cuttable> copies() {
    List<Copy> copies = whole.piece().card().copies();
    boolean alike = whole.count() == copies.size() && copies.stream().noneMatch(Copy::mirrored);
    return alike && waysOut.isEmpty()
        ? copies.stream().map(copy -> new Cuttable(whole.alone(copy.name()), List.of())).toList()
        : List.of(this);
  }

  /** The same, each of its pieces otherwise. */
  Cuttable each(UnaryOperator<ClothPiece> otherwise) {
    return new Cuttable(
        otherwise.apply(whole),
        waysOut.stream()
            .map(way -> new InParts(way.parts, way.pieces.stream().map(otherwise).toList()))
            .toList());
  }

  /** The name of the whole piece. */
  String name() {
    return whole.name();
  }

  /**
   * What is cut of a cloth: the whole where it finds room, else the parts of the first way out that
   * do, else the whole, which is then found not to fit.
   */
  List<ClothPiece> on(ClothSheet flat) {
    if (flat.takes(whole)) {
      return List.of(whole);
    }
    return waysOut.stream()
        .filter(way -> way.pieces.stream().allMatch(flat::takes))
        .findFirst()
        .map(InParts::pieces)
        .orElse(List.of(whole));
  }

  /** Whether the whole finds room, or all parts of one way out. */
  boolean findsRoomOn(ClothSheet flat) {
    return on(flat).stream().allMatch(flat::takes);
  }

  /** How much room across the grain it needs at least, whole or in parts (mm). */
  double leastAcross() {
    double least = whole.shape().height();
    for (InParts way : waysOut) {
      double most = way.pieces.stream().mapToDouble(part -> part.shape().height()).max().orElse(0);
      least = Math.min(least, most);
    }
    return least;
  }

  /** What of it is among the pieces with these ids, all of the whole or of its parts. */
  Optional<List<String>> among(Set<String> ids) {
    if (ids.contains(whole.id())) {
      return Optional.of(List.of(whole.id()));
    }
    return wayAmong(ids).map(way -> way.pieces.stream().map(ClothPiece::id).toList());
  }

  /** How it is cut apart where the pieces with these ids are cut. */
  Optional<SplitChoice> choice(Set<String> ids) {
    return ids.contains(whole.id()) ? Optional.empty() : wayAmong(ids).map(InParts::choice);
  }

  private Optional<InParts> wayAmong(Set<String> ids) {
    return waysOut.stream()
        .filter(way -> way.pieces.stream().allMatch(piece -> ids.contains(piece.id())))
        .findFirst();
  }
}
