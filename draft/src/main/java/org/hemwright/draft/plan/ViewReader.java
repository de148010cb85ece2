package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hemwright.draft.plan.name.Registry;
import org.hemwright.draft.plan.name.Unknown;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.View;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Origin;

/** Reads the views, and holds pieces against fabrics and one another. */
final class ViewReader {
  private final Compilation shared;
  private final Problems problems;
  private final Registry<Fabric> fabrics;

  /** Whether a view names what is no piece, perhaps one that it means to take. */
  private boolean strangers;

  ViewReader(Compilation shared, Registry<Fabric> fabrics) {
    this.shared = shared;
    this.problems = shared.problems();
    this.fabrics = fabrics;
  }

  /** The views; where the document names none, one of all pieces. */
  List<View> read(Document document, Details details, List<PiecePlan> pieces) {
    Map<Integer, String> numbers = new LinkedHashMap<>();
    List<String> names = new ArrayList<>();
    boolean unread = false;
    Doubt doubt = Doubt.of(document);
    Registry<View> views = new Registry<>("view", problems, shared.document());
    for (PiecePlan piece : pieces) {
      if (!names.contains(piece.card().name())) {
        names.add(piece.card().name());
      }
    }
    for (Statement statement : document.statements()) {
      if (statement instanceof Statement.PieceSection piece) {
        number(piece, numbers);
        for (Statement line : piece.body()) {
          if (line instanceof Statement.Cut cut) {
            fabrics.find(cut.fabric());
          }
        }
      } else if (statement instanceof Statement.ViewSection view) {
        views.add(view.name(), view(view, names));
        unread |= view.body().stream().anyMatch(line -> doubt.holds(line.span()));
      } else if (statement instanceof Statement.Unread missed) {
        unread |= missed.word().equals("view");
      }
    }
    List<View> all = new ArrayList<>(views.all());
    all.removeIf(view -> view.pieces().isEmpty());
    boolean stated = !views.all().isEmpty() || unread;
    if (stated) {
      tellUnused(document, names, all, unread);
    }
    if (all.isEmpty()) {
      all.add(new View("A", details.title(), names, new Origin(document.file(), 1, 1)));
    }
    return all;
  }

  private void number(Statement.PieceSection piece, Map<Integer, String> numbers) {
    String other = numbers.putIfAbsent(piece.number(), piece.name().text());
    if (other != null && !other.equals(piece.name().text())) {
      problems.add(
          problems
              .at(piece.name().span(), "piece-number-twice", piece.name().text())
              .with("number", Integer.toString(piece.number()))
              .with("piece", piece.name().text())
              .with("other", other));
    }
    if (piece.number() < 1) {
      problems.add(
          problems
              .at(piece.name().span(), "piece-number-low", piece.name().text())
              .with("number", Integer.toString(piece.number())));
    }
  }

  private View view(Statement.ViewSection view, List<String> names) {
    List<String> taken = new ArrayList<>();
    boolean unread = false;
    for (Statement line : view.body()) {
      if (line instanceof Statement.Pieces said) {
        for (Name piece : said.pieces()) {
          if (names.contains(piece.text())) {
            shared.lookup().sections(piece.text());
            taken.add(piece.text());
          } else if (!shared.document().excuses(piece.text())) {
            strangers = true;
            Unknown.tellNamed(problems, piece, "piece", shared.lookup().given(names));
          }
        }
      } else if (line instanceof Statement.Unread) {
        unread = true;
      }
    }
    boolean said = view.body().stream().anyMatch(Statement.Pieces.class::isInstance);
    if (!said && !unread) {
      problems.add(
          problems
              .at(view.name().span(), "view-without-pieces", view.name().text())
              .with("view", view.name().text()));
    }
    return new View(view.name().text(), view.title(), taken, problems.origin(view.span()));
  }

  private void tellUnused(Document document, List<String> names, List<View> views, boolean unread) {
    List<String> unused =
        names.stream()
            .filter(name -> views.stream().noneMatch(view -> view.pieces().contains(name)))
            .toList();
    if (unread || strangers || unused.isEmpty()) {
      return;
    }
    for (Statement statement : document.statements()) {
      if (statement instanceof Statement.PieceSection piece
          && piece.name().text().equals(unused.get(0))) {
        problems.add(
            problems
                .at(piece.name().span(), "piece-in-no-view", unused.get(0))
                .with("pieces", Argument.of(unused))
                .with("count", Argument.of(unused.size())));
        return;
      }
    }
  }
}
