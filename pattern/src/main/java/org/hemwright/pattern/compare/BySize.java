package org.hemwright.pattern.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hemwright.pattern.finding.Argument;

/** Collects what differs in each size, so that one change is told once with all its sizes. */
final class BySize {
  private final int of;
  private final Map<Key, List<String>> said = new LinkedHashMap<>();
  private final Map<Key, Map<String, Change.Values>> measured = new LinkedHashMap<>();

  private record Key(
      Changed changed, String subject, Optional<Argument> was, Optional<Argument> is) {}

  /**
   * Starts collecting.
   *
   * @param of how many sizes are looked at
   */
  BySize(int of) {
    this.of = of;
  }

  /** What one thing says in every size, old and new; tells where they differ. */
  static void tell(
      Changed changed,
      String subject,
      Map<String, PieceMatch.Both> sizes,
      Function<PieceMatch.Both, Optional<Argument>> was,
      Function<PieceMatch.Both, Optional<Argument>> is,
      List<Change> changes) {
    BySize differing = new BySize(sizes.size());
    sizes.forEach(
        (size, both) -> differing.add(size, changed, subject, was.apply(both), is.apply(both)));
    changes.addAll(differing.changes());
  }

  /** Something said in one size, if old and new differ. */
  void add(
      String size, Changed changed, String subject, Optional<Argument> was, Optional<Argument> is) {
    if (!was.equals(is)) {
      said.computeIfAbsent(new Key(changed, subject, was, is), key -> new ArrayList<>()).add(size);
    }
  }

  /** Something that came or went in one size. */
  void add(String size, Changed changed, String subject) {
    said.computeIfAbsent(
            new Key(changed, subject, Optional.empty(), Optional.empty()), key -> new ArrayList<>())
        .add(size);
  }

  /** A length of one size. */
  void add(String size, Changed changed, String subject, Change.Values values) {
    measured
        .computeIfAbsent(
            new Key(changed, subject, Optional.empty(), Optional.empty()),
            key -> new LinkedHashMap<>())
        .put(size, values);
  }

  /** What came together; sizes are left out where it is so in all of them. */
  List<Change> changes() {
    List<Change> changes = new ArrayList<>();
    said.forEach(
        (key, sizes) ->
            changes.add(
                new Change(
                    key.changed,
                    key.subject,
                    Optional.empty(),
                    key.was,
                    key.is,
                    sizes.size() == of ? List.of() : sizes,
                    Map.of())));
    measured.forEach((key, values) -> changes.add(Change.of(key.changed, key.subject, values)));
    return changes;
  }
}
