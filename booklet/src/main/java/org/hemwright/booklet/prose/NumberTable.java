package org.hemwright.booklet.prose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Provenance;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.pattern.Dial;
import org.hemwright.pattern.SizedPattern;

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
    names.forEach(name -> head.add(telling.words().capital(List.of(heading(name)))));
    List<List<List<Inline>>> rows = new ArrayList<>();
    List<SizedPattern> sizes = telling.run().sizes();
    for (int first = 0; first < sizes.size(); ) {
      int last = first;
      while (last + 1 < sizes.size()
          && texts(sizes.get(last + 1), names).equals(texts(sizes.get(first), names))) {
        last++;
      }
      List<List<Inline>> row = new ArrayList<>();
      row.add(sizes(sizes.subList(first, last + 1)));
      row.addAll(cells(sizes.get(first), names));
      rows.add(row);
      first = last + 1;
    }
    return List.of(new Block.Table(telling.say("finished.caption"), head, rows));
  }

  private List<Inline> sizes(List<SizedPattern> alike) {
    Inline first = Telling.size(alike.get(0).size().name());
    return alike.size() == 1
        ? List.of(first)
        : telling.say(
            "sizes.range",
            Slots.of("first", first)
                .and("last", Telling.size(alike.get(alike.size() - 1).size().name())));
  }

  private List<List<Inline>> cells(SizedPattern sized, List<String> names) {
    return names.stream()
        .map(
            name ->
                telling
                    .number(name, sized, telling.kind(name))
                    .map(List::<Inline>of)
                    .orElseGet(() -> telling.say("table.none")))
        .toList();
  }

  private List<String> texts(SizedPattern sized, List<String> names) {
    return cells(sized, names).stream().map(Inline::plain).toList();
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
                        telling.own(each.text()),
                        Provenance.of(Provenance.Source.NAME, "dial", name)))
        .orElse(telling.name(name));
  }
}
