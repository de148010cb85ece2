package org.hemwright.draft.syntax;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.syntax.Statement.FabricSection;
import org.hemwright.draft.syntax.Statement.MakeSection;
import org.hemwright.draft.syntax.Statement.PaperSection;
import org.hemwright.draft.syntax.Statement.PartSection;
import org.hemwright.draft.syntax.Statement.PieceSection;
import org.hemwright.draft.syntax.Statement.SeamSection;
import org.hemwright.draft.syntax.Statement.Unread;
import org.hemwright.draft.syntax.Statement.ViewSection;

/** A statement at the left edge while the lines below it are still being read. */
final class OpenSection {
  private final Statement head;
  private final Optional<Where> inside;
  private final List<Statement> body = new ArrayList<>();
  private final Map<String, Statement> said = new LinkedHashMap<>();
  private int indent = -1;

  /**
   * Starts one.
   *
   * @param inside where its lines stand; empty where it owns none
   */
  OpenSection(Statement head, Optional<Where> inside) {
    this.head = head;
    this.inside = inside;
  }

  Statement head() {
    return head;
  }

  Optional<Where> inside() {
    return inside;
  }

  /** How many blanks its first line stands in, which this line is if there was none. */
  int indent(int blanks) {
    if (indent < 0) {
      indent = blanks;
    }
    return indent;
  }

  /** Adds a line. */
  void add(Statement line) {
    body.add(line);
  }

  /** Notes that a form was said; returns the statement that said it before. */
  Optional<Statement> sayOnce(String form, Statement statement) {
    return Optional.ofNullable(said.putIfAbsent(form, statement));
  }

  /** Whether a form was said. */
  boolean hasSaid(String form) {
    return said.containsKey(form);
  }

  /** The whole section. */
  Statement close() {
    if (body.isEmpty()) {
      return head;
    }
    if (head instanceof FabricSection s) {
      return new FabricSection(s.name(), s.kind(), s.title(), body, s.span());
    } else if (head instanceof PartSection s) {
      return new PartSection(s.name(), body, s.span());
    } else if (head instanceof PieceSection s) {
      return new PieceSection(
          s.name(), s.title(), s.number(), s.sizes(), s.traced(), body, s.span());
    } else if (head instanceof SeamSection s) {
      return new SeamSection(s.name(), s.layers(), s.clauses(), body, s.span());
    } else if (head instanceof ViewSection s) {
      return new ViewSection(s.name(), s.title(), body, s.span());
    } else if (head instanceof PaperSection s) {
      return new PaperSection(body, s.span());
    } else if (head instanceof MakeSection s) {
      return new MakeSection(body, s.span());
    } else if (head instanceof Unread s) {
      return new Unread(s.word(), s.name(), body, s.span());
    }
    throw new IllegalStateException("no section: " + head);
  }
}
