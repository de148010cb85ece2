package org.hemwright.pattern.compare;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.Piece;

/** What a piece says of itself: title, number, how many to cut of what, which openings it has. */
record CardComparing(String name, Map<String, PieceMatch.Both> sizes, List<Change> changes) {
  void compare() {
    tell(Changed.PIECE_TITLE, piece -> Argument.of(piece.card().title()));
    tell(Changed.PIECE_NUMBER, piece -> Argument.of(piece.card().number()));
    tell(Changed.PIECE_CUTS, piece -> cuts(piece.card().cuts()));
    tell(Changed.PIECE_COPIES, piece -> copies(piece.card().copies()));
    tell(
        Changed.PIECE_RIGHT_SIDE,
        piece ->
            new Argument.Term(piece.card().rightSideUp() ? "right-side-up" : "either-side-up"));
    tell(Changed.PIECE_OPENINGS, piece -> names(piece.openings()));
  }

  private void tell(Changed changed, Function<Piece, Argument> said) {
    BySize.tell(
        changed,
        name,
        sizes,
        both -> Optional.of(said.apply(both.old())),
        both -> Optional.of(said.apply(both.now())),
        changes);
  }

  /** As the document says it: {@code 2 of main, on the fold and 1 of lining}. */
  private static Argument cuts(List<Cut> cuts) {
    return names(
        cuts.stream()
            .map(
                cut ->
                    cut.count()
                        + " of "
                        + cut.fabric()
                        + (cut.onFold() ? ", on the fold" : "")
                        + (cut.mirrored() ? ", mirrored" : ""))
            .toList());
  }

  private static Argument copies(List<Copy> copies) {
    return copies.isEmpty()
        ? new Argument.Term("none")
        : Argument.of(
            copies.stream()
                .map(copy -> copy.name() + (copy.mirrored() ? " (mirrored)" : ""))
                .collect(Collectors.joining(", ")));
  }

  private static Argument names(List<String> names) {
    return names.isEmpty() ? new Argument.Term("none") : Argument.of(names);
  }
}
