package org.hemwright.draft.add;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.syntax.Statement;

/** Collects ways, each drawn up as a whole text. */
final class Ways {
  private final Insertion insertion;
  private final Optional<Statement.PieceSection> section;
  private final List<Addition> found = new ArrayList<>();

  Ways(Scene scene, Optional<Statement.PieceSection> section) {
    this.insertion = new Insertion(scene.document());
    this.section = section;
  }

  void add(Addition.Way way, NewLine... lines) {
    add(way, List.of(lines));
  }

  void add(Addition.Way way, List<NewLine> lines) {
    insertion
        .with(lines, section)
        .filter(text -> found.stream().noneMatch(other -> other.text().equals(text)))
        .ifPresent(
            text -> found.add(new Addition(way, lines.stream().map(NewLine::text).toList(), text)));
  }

  /** A line at the end of a section that is there already. */
  void within(Addition.Way way, Statement.Section there, String line) {
    String text = insertion.within(there, line);
    if (found.stream().noneMatch(other -> other.text().equals(text))) {
      found.add(new Addition(way, List.of(line), text));
    }
  }

  List<Addition> all() {
    return List.copyOf(found);
  }
}
