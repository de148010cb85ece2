package org.hemwright.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hemwright.checks.Pieces.rectangle;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.pattern.Acceptance;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeRange;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.finding.Wording;
import org.junit.jupiter.api.Test;

/** What the designer accepts is told apart; what she accepts in vain is told. */
class AcceptancesTest {
  private static final Origin LINE = new Origin("pattern.hem", 40, 1);
  private static final Finding LONG =
      Finding.fail("seam-length-part", "seam side_seams").sizes(List.of("8", "10", "12")).build();

  /** Four sizes, 8 to 14. */
  private static SizeRun run(Acceptance... acceptances) {
    SizeRun run =
        Pieces.run(
            List.of(),
            java.util.Collections.nCopies(
                4, List.of(rectangle("panel", 200, 300, "a", "b", "c", "d").draw())));
    Pattern old = run.pattern();
    return new SizeRun(
        new Pattern(
            old.details(),
            old.chart(),
            old.base(),
            old.fabrics(),
            old.dials(),
            old.views(),
            old.pieces(),
            old.paper(),
            List.of(acceptances)),
        run.sizes());
  }

  private static Acceptance accept(String check, String subject) {
    return new Acceptance(check, subject, Optional.empty(), "It is steamed to shape", LINE);
  }

  private static Acceptance accept(String check, String subject, int from, int to) {
    List<Size> sizes = run().pattern().chart().sizes();
    SizeRange range = new SizeRange(sizes.get(from), sizes.get(to));
    return new Acceptance(check, subject, Optional.of(range), "It is steamed to shape", LINE);
  }

  private static List<Finding> judged(Acceptance... acceptances) {
    return Acceptances.of(run(acceptances)).judged("seam-length", List.of(LONG));
  }

  @Test
  void anAcceptedFindingKeepsItsPlaceAndCarriesTheReason() {
    List<Finding> judged = judged(accept("seam-length", "seam side_seams"));
    assertThat(judged).hasSize(1);
    assertThat(judged.get(0).status()).isEqualTo(Status.ACCEPTED);
    assertThat(judged.get(0).sizes()).isEqualTo(LONG.sizes());
    assertThat(judged.get(0).reason()).contains("It is steamed to shape");
    assertThat(judged(accept("seam-length-part", "seam side_seams"))).isEqualTo(judged);
  }

  @Test
  void anotherCheckOrSubjectIsNotAccepted() {
    assertThat(judged(accept("junction", "seam side_seams"))).containsExactly(LONG);
    assertThat(judged(accept("seam-length", "seam side"))).containsExactly(LONG);
    assertThat(LONG.reason()).isEmpty();
  }

  @Test
  void inSomeSizesOnlyTheOthersStand() {
    List<Finding> judged = judged(accept("seam-length", "seam side_seams", 1, 3));
    assertThat(judged).extracting(Finding::status).containsExactly(Status.ACCEPTED, Status.FAIL);
    assertThat(judged.get(0).sizes()).containsExactly("10", "12");
    assertThat(judged.get(1).sizes()).containsExactly("8");
    assertThat(
            judged(
                accept("seam-length", "seam side_seams", 0, 0),
                accept("seam-length", "seam side_seams", 1, 2)))
        .extracting(Finding::status)
        .containsExactly(Status.ACCEPTED, Status.ACCEPTED);
  }

  /** A finding that holds whatever the size is not accepted in some of them. */
  @Test
  void whatHoldsWhateverTheSizeIsAcceptedWholly() {
    Finding unstated = Finding.fail("cut-unstated", "panel").build();
    Acceptances some = Acceptances.of(run(accept("cut-count", "panel", 0, 2)));
    Acceptances all = Acceptances.of(run(accept("cut-count", "panel")));
    assertThat(some.judged("cut-count", List.of(unstated))).containsExactly(unstated);
    assertThat(all.judged("cut-count", List.of(unstated)).get(0).status())
        .isEqualTo(Status.ACCEPTED);
  }

  private static List<String> idle(Map<String, List<Finding>> found, Acceptance... acceptances) {
    Acceptances all = Acceptances.of(run(acceptances));
    Wording wording = Wording.of(StandardChecks.messages());
    return all.idle(found).stream().map(wording::line).toList();
  }

  @Test
  void anAcceptanceThatIsMetIsNotTold() {
    assertThat(
            idle(
                Map.of("seam-length", List.of(LONG.accepted("Steamed"))),
                accept("seam-length", "seam side_seams"),
                accept("seam-length", "seam side_seams", 0, 3)))
        .isEmpty();
  }

  @Test
  void anAcceptanceThatNoLongerAppliesIsTold() {
    assertThat(idle(Map.of("seam-length", List.of()), accept("seam-length", "seam side_seams")))
        .containsExactly(
            "pattern.hem:40:1: The document accepts what `seam-length` finds on seam side_seams,"
                + " and it finds nothing there now. Take the line out, or look whether what was"
                + " judged has moved.");
    assertThat(
            idle(
                Map.of("seam-length", List.of(LONG)),
                accept("seam-length", "seam side_seams", 3, 3),
                accept("seam-length", "seam side")))
        .containsExactly(
            "pattern.hem:40:1: The document accepts what `seam-length` finds on seam side_seams"
                + " in sizes 14 to 14, and it finds nothing there now. Take the line out, or name"
                + " what it is about now: it finds something on seam side_seams.",
            "pattern.hem:40:1: The document accepts what `seam-length` finds on seam side, and it"
                + " finds nothing there now. Take the line out, or name what it is about now: it"
                + " finds something on seam side_seams.");
  }

  @Test
  void aCheckThatThereIsNotIsTold() {
    assertThat(
            idle(
                Map.of("seam-length", List.of()),
                accept("seam-lenght", "seam side_seams"),
                accept("drape", "panel")))
        .containsExactly(
            "pattern.hem:40:1: The document accepts what `seam-lenght` finds on seam side_seams,"
                + " and no check has that name. Write `seam-length`.",
            "pattern.hem:40:1: The document accepts what `drape` finds on panel, and no check has"
                + " that name. Write the name that the report gives: seam-length.");
  }

  /** Asked in one size, a run cannot tell that a finding of another size is gone. */
  @Test
  void aRunOfSomeSizesDoesNotTellOfTheOthers() {
    SizeRun all = run(accept("seam-length", "seam side_seams"));
    SizeRun one = new SizeRun(all.pattern(), all.sizes().subList(0, 1));
    assertThat(Acceptances.of(one).idle(Map.of("seam-length", List.of()))).isEmpty();
  }

  @Test
  void theLineToWriteIsGivenAsTheDocumentTakesIt() {
    assertThat(Acceptances.line("seam-length", LONG))
        .isEqualTo("accept seam-length on seam side_seams because \"\"");
    assertThat(Acceptances.line("chart", Finding.warn("chart-step", "hip (cm)").build()))
        .isEqualTo("accept chart on \"hip (cm)\" because \"\"");
  }
}
