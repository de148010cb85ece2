package org.hemwright.draft.plan;

import java.util.HashSet;
import java.util.Set;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.Statement;

/** Holds the names of splits and their parts against those of other seams and pieces. */
final class SplitNames {
  private final Problems problems;
  private final Set<String> seams = new HashSet<>();
  private final Set<String> pieces = new HashSet<>();

  SplitNames(Problems problems) {
    this.problems = problems;
  }

  /** Tells every name that is given twice. */
  void read(Document document) {
    for (Statement statement : document.statements()) {
      if (statement instanceof Statement.SeamSection seam) {
        seams.add(seam.name().text());
      } else if (statement instanceof Statement.PieceSection piece) {
        pieces.add(piece.name().text());
      }
    }
    for (Statement statement : document.statements()) {
      if (statement instanceof Statement.PieceSection piece) {
        for (Statement line : piece.body()) {
          if (line instanceof Statement.Split split) {
            read(split, piece.name().text());
          }
        }
      }
    }
  }

  private void read(Statement.Split split, String piece) {
    if (!seams.add(split.name().text())) {
      taken(split.name(), piece, "split-seam-taken");
    }
    for (Name part : split.parts()) {
      if (!pieces.add(part.text())) {
        taken(part, piece, "split-part-taken");
      }
    }
  }

  private void taken(Name name, String piece, String code) {
    problems.add(
        problems.at(name.span(), code, piece).with("name", name.text()).with("piece", piece));
  }
}
