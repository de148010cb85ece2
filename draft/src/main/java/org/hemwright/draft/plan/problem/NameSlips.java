package org.hemwright.draft.plan.problem;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.Span;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;

/**
 * Names that are used and that nothing has. When all is planned it is known which names nothing
 * uses: where one of those is near to an unknown name, one of the two is a slip of the pen. It is
 * the one that is given where the other is used more than once, or is made of words that the
 * document knows.
 */
final class NameSlips {
  private final List<Use> uses = new ArrayList<>();
  private final Set<Span> used = new HashSet<>();
  private final Map<String, Integer> nameless = new LinkedHashMap<>();

  /**
   * A use of a name that nothing has.
   *
   * @param finding what is told of it there
   * @param section the part or piece in which it was looked for, or empty
   * @param near the name that is near to it, where it is given
   */
  record Use(Finding finding, Name name, String section, Optional<Name> near) {}

  void used(Span definition) {
    used.add(definition);
  }

  void nameless(String section) {
    nameless.merge(section, 1, Integer::sum);
  }

  void add(Use use) {
    uses.add(use);
  }

  /** What is told: at each use, or once where the pen slipped. */
  List<Finding> findings(Problems problems) {
    Map<Span, Set<String>> wanted = new LinkedHashMap<>();
    Map<String, Set<String>> missing = new LinkedHashMap<>();
    for (Use use : uses) {
      use.near()
          .ifPresent(
              near ->
                  wanted
                      .computeIfAbsent(near.span(), span -> new LinkedHashSet<>())
                      .add(use.name().text()));
      missing
          .computeIfAbsent(use.section(), section -> new LinkedHashSet<>())
          .add(use.name().text());
    }
    List<Finding> told = new ArrayList<>();
    Set<String> everywhere = new LinkedHashSet<>();
    missing.values().forEach(everywhere::addAll);
    WordCount words = WordCount.of(problems.text());
    Set<Span> slipped = new HashSet<>();
    for (Use use : uses) {
      boolean explained =
          missing.getOrDefault(use.section(), Set.of()).size()
                  <= nameless.getOrDefault(use.section(), 0)
              || everywhere.size() <= nameless.getOrDefault("", 0);
      if (explained) {
        continue;
      }
      Optional<Name> near = use.near().filter(name -> isSlip(use, name, wanted, words));
      if (near.isEmpty()) {
        told.add(use.finding());
      } else if (slipped.add(near.get().span())) {
        told.add(slip(near.get(), use.name(), problems));
      }
    }
    return told;
  }

  private boolean isSlip(Use use, Name near, Map<Span, Set<String>> wanted, WordCount words) {
    boolean alone = wanted.getOrDefault(near.span(), Set.of()).size() == 1;
    long times = uses.stream().filter(each -> each.name().text().equals(use.name().text())).count();
    boolean known = words.isAtHome(use.name().text()) && !words.isAtHome(near.text());
    return !used.contains(near.span()) && alone && (times > 1 || known);
  }

  private Finding slip(Name given, Name wanted, Problems problems) {
    Set<Long> lines = new TreeSet<>();
    for (Use use : uses) {
      if (use.name().text().equals(wanted.text())) {
        lines.add(problems.lineOf(use.name().span()));
      }
    }
    return problems
        .at(given.span(), "name-slipped", given.text())
        .with("name", given.text())
        .with("wanted", wanted.text())
        .with("lines", Argument.of(lines.stream().map(line -> Long.toString(line)).toList()))
        .with("count", Argument.of(lines.size()))
        .mendedBy(problems.replace(given.span(), wanted.text()))
        .build();
  }
}
