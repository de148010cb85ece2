package org.hemwright.checks.fault;

import static org.hemwright.checks.fault.WrittenFault.READING;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.hemwright.pattern.quantity.QuantityKind;

/** Numbers: dials, what is solved, what is named. */
final class NumberSlips {
  private NumberSlips() {}

  static final List<Slip> ALL =
      List.of(
          Slip.changed(
              "a dial that stands beyond its range",
              "",
              "^dial (\\w+) *= (.+?) +from (.+?) to (.+?)  ",
              (written, line, m) -> {
                boolean plain = !m.group(4).matches(".*(cm|mm|in|%)$");
                String unit = plain ? "" : m.group(4).replaceFirst("^[\\d./ ]+", "").strip();
                String beyond = plain ? "1" : unit.equals("%") ? "99%" : "99 " + unit;
                return Written.put(line, m, 2, beyond);
              },
              READING),
          new Slip("a solved number written as it is in one size", NumberSlips::solveFixed),
          // A number that the document names, off in the middle size alone, and told in no other.
          Slip.changed(
                  "a number of the document 6 mm larger in one size",
                  "",
                  "^let (\\w+) += (.*)",
                  (written, line, m) -> {
                    List<String> changed = new ArrayList<>();
                    var first = written.garment().run().sizes().get(0);
                    var number = first.numbers().get(m.group(1));
                    boolean length = number != null && number.kind() == QuantityKind.LENGTH;
                    if (length
                        && !m.group(2).contains(" when ")
                        && !m.group(2).contains(" then ")) {
                      String size = written.garment().middleSize();
                      String named = size.matches("\\d+") ? size : '"' + size + '"';
                      String expression = m.group(2).replaceFirst(" +#.*", "");
                      changed.add(
                          "let %s = %s + 6 mm when size from %s to %s, otherwise %s"
                              .formatted(m.group(1), expression, named, named, expression));
                    }
                    return changed;
                  },
                  "grade-even",
                  "seam-length")
              .toldOfAnyPiece()
              .toldInMiddleSize());

  private static Stream<WrittenFault> solveFixed(Written written) {
    return Stream.of("", "piece")
        .flatMap(
            kind ->
                written.each(
                    kind,
                    "^( *)solve (\\w+) so that .*",
                    (line, m) -> {
                      String name =
                          m.group(1).isEmpty() ? m.group(2) : line.name() + "." + m.group(2);
                      var base =
                          written.garment().run().sizes().stream()
                              .filter(s -> s.numbers().containsKey(name))
                              .findFirst()
                              .orElseThrow();
                      double mm = Objects.requireNonNull(base.numbers().get(name)).amount();
                      return List.of(
                          m.group(1)
                              + "let "
                              + m.group(2)
                              + " = "
                              + String.format("%.2f", mm)
                              + " mm");
                    },
                    Set.of("seam-length", "girth-ease", "grade-even", "grade-order", READING)));
  }
}
