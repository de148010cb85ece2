package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.body.SizeRange;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.PieceCard;

/** Reads what a piece says of itself. */
final class CardCompiler {
  /** More copies than any garment has. */
  private static final int MOST_COPIES = 100;

  private final PieceDeclaration piece;
  private final PieceLines lines;
  private final Problems problems;
  private final SizeRange all;

  CardCompiler(Compilation shared, PieceDeclaration piece, PieceLines lines) {
    this.piece = piece;
    this.lines = lines;
    this.problems = shared.problems();
    this.all = shared.sizes().all();
  }

  /** The card. */
  PieceCard card() {
    Statement.PieceSection section = piece.section();
    List<Cut> cuts = cuts();
    SizeRange sizes = piece.scope().sizes();
    return new PieceCard(
        section.name().text(),
        section.title(),
        Math.max(1, section.number()),
        cuts,
        copies(cuts),
        !lines.all(Statement.RightSideUp.class).isEmpty(),
        sizes.equals(all) ? Optional.empty() : Optional.of(sizes),
        problems.origin(section.span()));
  }

  private List<Cut> cuts() {
    List<Cut> cuts = new ArrayList<>();
    for (Statement.Cut cut : lines.all(Statement.Cut.class)) {
      if (cut.count() < 1 || cut.count() > MOST_COPIES) {
        problems.add(
            problems
                .at(cut.span(), "cut-count", piece.scope().name())
                .with("count", Argument.of(cut.count()))
                .with("most", Argument.of(MOST_COPIES)));
      } else {
        cuts.add(
            new Cut(
                cut.count(),
                cut.fabric().text(),
                cut.onFold(),
                cut.mirrored(),
                problems.origin(cut.span())));
      }
    }
    boolean tried = !lines.all(Statement.Cut.class).isEmpty() || lines.unread("cut");
    if (!tried) {
      problems.add(
          problems
              .at(piece.section().name().span(), "cut-missing", piece.scope().name())
              .with("piece", piece.scope().name()));
    }
    return cuts;
  }

  private List<Copy> copies(List<Cut> cuts) {
    int count = cuts.isEmpty() ? 1 : cuts.get(0).count();
    boolean mirrored = !cuts.isEmpty() && cuts.get(0).mirrored();
    List<String> names = new ArrayList<>();
    Optional<Statement.Copies> said = lines.one(Statement.Copies.class);
    said.ifPresent(copies -> copies.names().forEach(name -> names.add(name.text())));
    if (said.isPresent() && (names.size() != count || names.stream().distinct().count() != count)) {
      problems.add(
          problems
              .at(said.get().span(), "copies-do-not-match", piece.scope().name())
              .with("named", Argument.of(names.stream().distinct().count()))
              .with("count", Argument.of(count)));
      names.clear();
    }
    List<Copy> copies = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      String name = names.isEmpty() ? Integer.toString(i + 1) : names.get(i);
      copies.add(new Copy(name, mirrored && i % 2 == 1));
    }
    return copies;
  }
}
