package org.hemwright.pattern.compare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.make.Amount;

/** What the document says of one thing in both versions: in words, or as a length by size. */
record SaidComparing(SizeRun old, SizeRun now, List<Change> changes) {
  void said(Changed changed, String subject, Argument then, Argument said) {
    if (!then.equals(said)) {
      changes.add(Change.of(changed, subject, then, said));
    }
  }

  /** A length of both versions in every size that both have. */
  void length(Changed changed, String subject, Optional<Amount> then, Optional<Amount> length) {
    if (then.isEmpty() || length.isEmpty()) {
      return;
    }
    Map<String, Change.Values> values = new LinkedHashMap<>();
    for (SizedPattern sized : now.sizes()) {
      String size = sized.size().name();
      OptionalDouble mm = length.get().in(sized.numbers());
      OptionalDouble earlier =
          old.size(size).map(own -> then.get().in(own.numbers())).orElse(OptionalDouble.empty());
      if (mm.isPresent()
          && earlier.isPresent()
          && Math.abs(mm.getAsDouble() - earlier.getAsDouble()) > Tolerance.DRAWN_LENGTH) {
        values.put(size, Change.Values.of(earlier.getAsDouble(), mm.getAsDouble()));
      }
    }
    if (!values.isEmpty()) {
      changes.add(Change.of(changed, subject, values));
    }
  }

  static Argument yes(boolean said) {
    return new Argument.Term(said ? "yes" : "no");
  }

  /** Text, or that there is none. */
  static Argument text(String text) {
    return text.isEmpty() ? new Argument.Term("none") : Argument.of(text);
  }

  /** Names, or that there are none. */
  static Argument names(List<String> names) {
    return names.isEmpty() ? new Argument.Term("none") : Argument.of(names);
  }
}
