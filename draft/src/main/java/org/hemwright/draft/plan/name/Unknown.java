package org.hemwright.draft.plan.name;

import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.Span;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.NearName;

/** Tells that nothing has a name, and which name was probably meant. */
public final class Unknown {
  private static final Span NOWHERE = new Span(0, 0);

  private Unknown() {}

  /**
   * Tells it.
   *
   * @param what the phrase for what was looked for: {@code fabric}
   * @param known the names that there are
   */
  public static void tell(Problems problems, Name name, String what, List<String> known) {
    tellNamed(problems, name, what, known.stream().map(Unknown::nowhere).toList());
  }

  /**
   * Tells it, of names that are given at places of the document.
   *
   * @param what the phrase for what was looked for: {@code fabric}
   * @param known the names that there are, where they are given
   */
  public static void tellNamed(Problems problems, Name name, String what, List<Name> known) {
    Finding.Builder finding = problems.at(name.span(), "name-unknown", name.text());
    tell(problems, name, finding, what, "", known);
  }

  /**
   * Tells it of something that belongs to a piece.
   *
   * @param owner the piece's name
   */
  public static void tell(
      Problems problems, Name name, String what, String owner, List<String> known) {
    tellNamed(problems, name, what, owner, known.stream().map(Unknown::nowhere).toList());
  }

  /** The same, of names that are given at places of the document. */
  public static void tellNamed(
      Problems problems, Name name, String what, String owner, List<Name> known) {
    Finding.Builder finding =
        problems.at(name.span(), "name-unknown-in-piece", owner + "." + name.text());
    tell(problems, name, finding.with("owner", owner), what, owner, known);
  }

  private static Name nowhere(String name) {
    return new Name(name, NOWHERE);
  }

  private static void tell(
      Problems problems,
      Name name,
      Finding.Builder finding,
      String what,
      String owner,
      List<Name> known) {
    finding.with("name", name.text()).with("what", new Argument.Term(what));
    List<String> names = known.stream().map(Name::text).toList();
    Optional<String> near = NearName.to(name.text(), names);
    if (near.isPresent()) {
      finding.with("near", near.get()).mendedBy(problems.replace(name.span(), near.get()));
    } else if (!known.isEmpty()) {
      finding.with("known", Argument.of(names));
    }
    Optional<Name> given =
        known.stream()
            .filter(each -> near.filter(each.text()::equals).isPresent())
            .filter(each -> !each.span().equals(NOWHERE))
            .findFirst();
    problems.addUnknown(finding, name, owner, given);
  }
}
