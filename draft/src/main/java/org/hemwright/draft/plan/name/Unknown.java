package org.hemwright.draft.plan.name;

import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Name;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.NearName;

/** Tells that nothing has a name, and which name was probably meant. */
public final class Unknown {
  private Unknown() {}

  /**
   * Tells it.
   *
   * @param what the phrase for what was looked for: {@code fabric}
   * @param known the names that there are
   */
  public static void tell(Problems problems, Name name, String what, List<String> known) {
    tell(problems, name, problems.at(name.span(), "name-unknown", name.text()), what, known);
  }

  /**
   * Tells it of something that belongs to a piece.
   *
   * @param owner the piece's name
   */
  public static void tell(
      Problems problems, Name name, String what, String owner, List<String> known) {
    Finding.Builder finding =
        problems.at(name.span(), "name-unknown-in-piece", owner + "." + name.text());
    tell(problems, name, finding.with("owner", owner), what, known);
  }

  private static void tell(
      Problems problems, Name name, Finding.Builder finding, String what, List<String> known) {
    finding.with("name", name.text()).with("what", new Argument.Term(what));
    Optional<String> near = NearName.to(name.text(), known);
    if (near.isPresent()) {
      finding.with("near", near.get()).mendedBy(problems.replace(name.span(), near.get()));
    } else if (!known.isEmpty()) {
      finding.with("known", Argument.of(known));
    }
    problems.add(finding);
  }
}
