package org.hemwright.pattern.split;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Path;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;

/**
 * A piece of one size cut apart, or what stands in the way.
 *
 * @param parts absent where there are findings
 * @param findings why it cannot be cut so; each fails, about the piece, without sizes
 */
public record Divided(Optional<PieceParts> parts, List<Finding> findings) {
  public Divided {
    findings = List.copyOf(findings);
  }

  /** Cuts a piece apart. */
  public static Divided of(Piece piece, Mark.Split split) {
    List<Finding> findings = new ArrayList<>();
    Optional<PieceParts> parts =
        split.onFold() ? alongFold(piece, split, findings) : alongLines(piece, split, findings);
    return new Divided(findings.isEmpty() ? parts : Optional.empty(), findings);
  }

  /** The split of that name, if the piece declares it and it can be made. */
  public static Optional<PieceParts> of(Piece piece, String split) {
    return piece.marks(Mark.Split.class).stream()
        .filter(mark -> mark.name().equals(split))
        .findFirst()
        .flatMap(mark -> of(piece, mark).parts());
  }

  private static Optional<PieceParts> alongFold(
      Piece piece, Mark.Split split, List<Finding> findings) {
    if (piece.foldEdge().isEmpty()) {
      findings.add(finding("split-no-fold", piece, split).build());
      return Optional.empty();
    }
    PartInWork half = PartInWork.halfOnFold(piece, split);
    return Optional.of(
        new PieceParts(
            piece,
            split,
            List.of(PartPiece.of(half, split, 0, 1)),
            half.stretches(0),
            List.of(new PieceParts.Join(split.name(), 0, 0))));
  }

  private static Optional<PieceParts> alongLines(
      Piece piece, Mark.Split split, List<Finding> findings) {
    List<PartInWork> work = new ArrayList<>(List.of(PartInWork.whole(piece)));
    for (int i = 0; i < split.lines().size() && findings.isEmpty(); i++) {
      cut(work, piece, split, i, findings);
    }
    if (!findings.isEmpty()) {
      return Optional.empty();
    }
    List<Piece> parts = new ArrayList<>();
    List<PieceParts.Stretch> stretches = new ArrayList<>();
    for (int i = 0; i < work.size(); i++) {
      parts.add(PartPiece.of(work.get(i), split, i, work.size()));
      stretches.addAll(work.get(i).stretches(i));
    }
    List<PieceParts.Join> joins = new ArrayList<>();
    for (int line = 0; line < split.lines().size(); line++) {
      String seam = seam(split, line);
      int first = -1;
      for (int i = 0; i < parts.size(); i++) {
        if (parts.get(i).edge(seam).isPresent()) {
          if (first < 0) {
            first = i;
          } else {
            joins.add(new PieceParts.Join(seam, first, i));
          }
        }
      }
    }
    return Optional.of(new PieceParts(piece, split, parts, stretches, joins));
  }

  /** The name of the seam along one line of a split: its own, numbered where there are several. */
  static String seam(Mark.Split split, int line) {
    return split.lines().size() <= 1 ? split.name() : split.name() + "_" + (line + 1);
  }

  private static void cut(
      List<PartInWork> work, Piece piece, Mark.Split split, int line, List<Finding> findings) {
    Path path = split.lines().get(line);
    for (int i = 0; i < work.size(); i++) {
      Optional<PartInWork.Halves> cut = work.get(i).cut(path, split, line);
      if (cut.isPresent()) {
        PartInWork.Halves made = cut.get();
        made.trouble().ifPresent(code -> findings.add(finding(code, piece, split).build()));
        work.set(i, made.first());
        work.add(i + 1, made.second());
        return;
      }
    }
    findings.add(finding("split-beside", piece, split).build());
  }

  private static Finding.Builder finding(String code, Piece piece, Mark.Split split) {
    return Finding.fail(code, piece.name())
        .with("piece", piece.name())
        .with("split", split.name())
        .at(split.origin());
  }
}
