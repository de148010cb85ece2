package org.hemwright.workbench.traced;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Statement;

/**
 * The rules that the corners of one traced piece have in a document, and the document with others.
 *
 * @param edges the piece's edges in order; at the end of each lies a corner
 * @param rules one for each edge, empty ones where the document says none
 * @param as the piece whose rules it takes, or the table
 * @param kept lines of rules between corners, which stay as they are
 */
public record PieceGrading(
    List<String> edges, List<CornerRule> rules, Optional<String> as, List<String> kept) {
  public PieceGrading {
    edges = List.copyOf(edges);
    rules = List.copyOf(rules);
    kept = List.copyOf(kept);
  }

  /** The traced pieces of a document whose outline is traced, by name. */
  public static List<String> pieces(Document document) {
    return document.statements().stream()
        .filter(Statement.PieceSection.class::isInstance)
        .map(Statement.PieceSection.class::cast)
        .filter(piece -> outline(piece).isPresent())
        .map(piece -> piece.name().text())
        .distinct()
        .toList();
  }

  /** What a document says of a traced piece; absent where there is none of that name. */
  public static Optional<PieceGrading> of(Document document, String piece) {
    return section(document, piece).map(section -> of(document, section));
  }

  private static PieceGrading of(Document document, Statement.PieceSection section) {
    Source source = Source.of(document);
    List<String> edges = outline(section).orElseThrow().names().stream().map(Name::text).toList();
    List<CornerRule> rules = new ArrayList<>();
    edges.forEach(edge -> rules.add(new CornerRule(edge, "", "")));
    Optional<String> as = Optional.empty();
    List<String> kept = new ArrayList<>();
    for (Statement each : section.body()) {
      if (each instanceof Statement.Grade grade) {
        int corner = corner(grade, edges);
        String said = source.text(grade.span()).strip();
        if (corner < 0) {
          kept.add(said);
        } else {
          String ways = said.replaceFirst("^grade\\s+\\S+\\s+at\\s+(start|end)\\s*", "");
          rules.set(corner, CornerRule.said(edges.get(corner), ways));
        }
      } else if (each instanceof Statement.GradeAs other) {
        as = Optional.of(other.piece().text());
      } else if (each instanceof Statement.GradeFrom table) {
        as = Optional.of(table.file());
      }
    }
    return new PieceGrading(edges, rules, as, kept);
  }

  /** At the end of which edge a rule's corner lies; -1 for a rule that is for no corner. */
  private static int corner(Statement.Grade grade, List<String> edges) {
    int edge = edges.indexOf(grade.edge().text());
    if (edge < 0 || !(grade.place() instanceof Statement.GradePlace.End end)) {
      return -1;
    }
    return end.atEnd() ? edge : (edge + edges.size() - 1) % edges.size();
  }

  /**
   * The document with lines in the place of a piece's rules for corners, and of what it takes from
   * another piece or a table.
   *
   * @param lines without their indent
   */
  public static Optional<String> written(Document document, String piece, List<String> lines) {
    Optional<Statement.PieceSection> section = section(document, piece);
    if (section.isEmpty()) {
      return Optional.empty();
    }
    Source source = Source.of(document);
    List<String> edges =
        outline(section.get()).orElseThrow().names().stream().map(Name::text).toList();
    String text = document.text();
    StringBuilder after = new StringBuilder();
    int from = 0;
    int at = -1;
    Statement last = section.get();
    for (Statement each : section.get().body()) {
      boolean rule =
          each instanceof Statement.GradeAs
              || each instanceof Statement.GradeFrom
              || each instanceof Statement.AlsoTraced
              || (each instanceof Statement.Grade grade && corner(grade, edges) >= 0);
      if (rule) {
        int start = source.lineStart(source.line(each.span().start()));
        int end = source.lineEnd(source.line(StrictMath.max(0, each.span().end() - 1)));
        after.append(text, from, start);
        at = at < 0 ? after.length() : at;
        from = StrictMath.min(text.length(), end + 1);
      }
      last = each;
    }
    String block = lines.isEmpty() ? "" : "  " + String.join("\n  ", lines) + "\n";
    if (at >= 0) {
      after.append(text, from, text.length());
      return Optional.of(after.insert(at, block).toString());
    }
    int end = source.lineEnd(source.line(StrictMath.max(0, last.span().end() - 1)));
    String before = text.substring(0, end) + "\n" + block;
    return Optional.of(before + text.substring(StrictMath.min(text.length(), end + 1)));
  }

  private static Optional<Statement.OutlineTraced> outline(Statement.PieceSection section) {
    return section.body().stream()
        .filter(Statement.OutlineTraced.class::isInstance)
        .map(Statement.OutlineTraced.class::cast)
        .findFirst();
  }

  private static Optional<Statement.PieceSection> section(Document document, String name) {
    return document.statements().stream()
        .filter(Statement.PieceSection.class::isInstance)
        .map(Statement.PieceSection.class::cast)
        .filter(piece -> piece.name().text().equals(name) && outline(piece).isPresent())
        .findFirst();
  }
}
