package org.hemwright.draft.plan.name;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Name;

/**
 * Things of one kind that have names of their own: fabrics, seams, views.
 *
 * @param <T> the things
 */
public final class Registry<T> {
  private final String what;
  private final Problems problems;
  private final Scope document;
  private final Map<String, Entry<T>> things = new LinkedHashMap<>();

  private record Entry<T>(Name name, T thing) {}

  /**
   * None yet.
   *
   * @param what the phrase for what each is: {@code fabric}
   */
  public Registry(String what, Problems problems, Scope document) {
    this.what = what;
    this.problems = problems;
    this.document = document;
  }

  /** Adds a thing; a second of one name is told, and the first stays. */
  public void add(Name name, T thing) {
    Entry<T> before = things.putIfAbsent(name.text(), new Entry<>(name, thing));
    if (before != null) {
      problems.add(
          problems
              .at(name.span(), "name-twice", name.text())
              .with("name", name.text())
              .with("line", problems.line(before.name.span())));
    }
  }

  /** The things in order. */
  public List<T> all() {
    return things.values().stream().map(Entry::thing).toList();
  }

  /** The thing of a name; where there is none, it is told. */
  public Optional<T> find(Name name) {
    Entry<T> entry = things.get(name.text());
    if (entry == null && !document.excuses(name.text())) {
      Unknown.tellNamed(problems, name, what, things.values().stream().map(Entry::name).toList());
    }
    if (entry != null) {
      problems.used(entry.name.span());
    }
    return Optional.ofNullable(entry).map(Entry::thing);
  }
}
