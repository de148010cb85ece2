package org.hemwright.booklet.prose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Provenance;
import org.hemwright.booklet.words.Telling;
import org.hemwright.pattern.Dial;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.quantity.LengthKind;

/** Reads {@code {table numbers short_length, long_length}}: a column a number, a row a size. */
record NumberTable(Telling telling, InlineReader inlines) {
  List<Block> read(ProsePlace place) {
    List<String> names = new ArrayList<>();
    for (String name : place.name().substring("numbers ".length()).split(",", -1)) {
      if (inlines.isNumber(name.strip(), place.origin())) {
        names.add(name.strip());
      }
    }
    if (names.isEmpty()) {
      return List.of();
    }
    List<List<Inline>> head = new ArrayList<>();
    head.add(telling.say("table.size"));
    names.forEach(name -> head.add(List.of(heading(name))));
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (SizedPattern sized : telling.run().sizes()) {
      List<List<Inline>> row = new ArrayList<>();
      row.add(List.of(Telling.size(sized.size().name())));
      for (String name : names) {
        row.add(
            telling
                .number(name, sized, LengthKind.FINISHED)
                .map(value -> List.<Inline>of(value))
                .orElseGet(() -> telling.say("table.none")));
      }
      rows.add(row);
    }
    return List.of(new Block.Table(telling.say("finished.caption"), head, rows));
  }

  /** A dial by what its text says it is, another number by its name. */
  private Inline heading(String name) {
    Optional<Dial> dial =
        telling.run().pattern().dials().stream()
            .filter(each -> each.name().equals(name) && !each.text().isBlank())
            .findFirst();
    return dial.map(
            each ->
                (Inline)
                    new Inline.Value(
                        each.text(), Provenance.of(Provenance.Source.NAME, "dial", name)))
        .orElse(Telling.name(name));
  }
}
