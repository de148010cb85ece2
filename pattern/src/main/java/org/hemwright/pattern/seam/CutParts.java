package org.hemwright.pattern.seam;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.Piece;

/** Every cut copy and half of every piece of one size, in the order of the document. */
final class CutParts {
  private final Map<String, List<CutPart>> byPiece = new LinkedHashMap<>();
  private final Map<CutPart.Key, CutPart> byKey = new LinkedHashMap<>();
  private final List<MirrorAsked> mirrors = new ArrayList<>();

  CutParts(List<Piece> pieces) {
    for (Piece piece : pieces) {
      List<CutPart> parts = new ArrayList<>();
      for (Copy copy : copies(piece)) {
        if (piece.foldEdge().isPresent()) {
          parts.add(new CutPart(piece, copy, EdgePlace.Half.DRAWN));
          parts.add(new CutPart(piece, copy, EdgePlace.Half.MIRRORED));
        } else {
          parts.add(new CutPart(piece, copy, EdgePlace.Half.WHOLE));
        }
      }
      byPiece.put(piece.name(), List.copyOf(parts));
      parts.forEach(part -> byKey.put(part.key(), part));
    }
  }

  /**
   * A piece whose cut line is missing is sewn as if it were cut once; a check asks for the line.
   */
  private static List<Copy> copies(Piece piece) {
    List<Copy> copies = piece.card().copies();
    return copies.isEmpty() ? List.of(new Copy("1", false)) : copies;
  }

  /**
   * What came of asking whether a piece is its own mirror image.
   *
   * @param edge the index of the edge that the mirror line halves
   */
  record MirrorAsked(String piece, int edge, boolean isOwnMirror) {}

  /** Whether a piece is its own mirror image over the line that halves one of its edges. */
  boolean isOwnMirror(Piece piece, int edge) {
    boolean answer = Symmetry.about(piece, edge);
    mirrors.add(new MirrorAsked(piece.name(), edge, answer));
    return answer;
  }

  /** What was asked so far: all that a resolution takes from the pieces' shapes. */
  List<MirrorAsked> mirrorsAsked() {
    return List.copyOf(mirrors);
  }

  /** The names of all pieces. */
  List<String> pieces() {
    return List.copyOf(byPiece.keySet());
  }

  /** The parts of a piece: copies in order, of each the drawn half first; empty if unknown. */
  List<CutPart> of(String piece) {
    return byPiece.getOrDefault(piece, List.of());
  }

  /** The part that a place lies on. */
  Optional<CutPart> of(EdgePlace place) {
    return Optional.ofNullable(byKey.get(CutPart.Key.of(place)));
  }

  /** The other half of the same copy. */
  Optional<CutPart> otherHalf(CutPart part) {
    EdgePlace.Half other =
        part.half() == EdgePlace.Half.DRAWN ? EdgePlace.Half.MIRRORED : EdgePlace.Half.DRAWN;
    return Optional.ofNullable(
        byKey.get(new CutPart.Key(part.piece().name(), part.copy().name(), other)));
  }
}
