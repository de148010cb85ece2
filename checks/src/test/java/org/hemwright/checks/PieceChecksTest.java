package org.hemwright.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hemwright.checks.Pieces.piece;
import static org.hemwright.checks.Pieces.rectangle;

import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.piece.Allowance;
import org.junit.jupiter.api.Test;

class PieceChecksTest {
  private static Pieces sound() {
    return rectangle("front", 200, 600, "hem", "side", "waist", "centre").cut(2, true);
  }

  @Test
  void aSoundPiecePassesEveryCheck() {
    Pieces raw = sound();
    for (String edge : List.of("hem", "side", "waist", "centre")) {
      raw.allowance(edge, Allowance.NONE);
    }
    SizeRun run = Pieces.run(raw);
    for (Check check : StandardChecks.with(CheckSettings.HANDBOOK)) {
      assertThat(check.check(run)).as(check.id()).isEmpty();
    }
    assertThat(StandardChecks.with(CheckSettings.HANDBOOK).stream().map(Check::id))
        .doesNotHaveDuplicates();
  }

  /** A bow tie: its second and fourth edges cross in the middle. */
  @Test
  void anOutlineThatCrossesItself() {
    SizeRun run =
        Pieces.run(
            piece("bow")
                .edge("lower", 0, 0)
                .edge("rising", 100, 0)
                .edge("upper", 0, 100)
                .edge("falling", 100, 100));
    assertThat(Told.by("outline-simple", run))
        .containsExactly(
            "FAIL: The stitch line of bow crosses or touches itself once, first where `rising`"
                + " meets `falling`, in every size. / Move a point of `rising` or `falling` so"
                + " that the two stay apart.");
    Finding finding = new OutlineCheck().check(run).get(0);
    assertThat(finding.places().get(0).point())
        .hasValueSatisfying(at -> assertThat(at.distanceTo(new Point(50, 50))).isLessThan(1e-3));
    assertThat(finding.places().get(0).piece()).isEqualTo(Optional.of("bow"));
  }

  @Test
  void whatAPieceMustSay() {
    assertThat(Told.by("grain", Pieces.run(sound().withoutGrain())))
        .containsExactly(
            "FAIL: front has no grain arrow. / Write a line such as `grain along centre` or"
                + " `grain up` in it.");
    assertThat(Told.by("cut-count", Pieces.run(sound().cut(0, false))))
        .containsExactly(
            "FAIL: front does not say how many to cut. / Write a line such as `cut 2 of main,"
                + " mirrored` in it.");
    assertThat(Told.by("label", Pieces.run(sound().titled(" ", 1))))
        .containsExactly(
            "FAIL: front has no title for the maker. / Write one after its name, as in `piece"
                + " front \"Skirt front\" number 1`.");
    Pieces back = rectangle("back", 200, 600, "hem", "side", "waist", "centre");
    assertThat(Told.by("label", Pieces.run(sound(), back)))
        .containsExactly(
            "FAIL: back and front both have the number 1. / Give one of them a number of its own.");
    assertThat(Told.by("label", Pieces.run(sound(), back.titled("Back", 2)))).isEmpty();
  }

  @Test
  void theFoldIsDrawnAndCutAlike() {
    assertThat(Told.by("fold", Pieces.run(sound().onFold(true, "centre")))).isEmpty();
    assertThat(Told.by("fold", Pieces.run(sound().onFold(true, ""))))
        .containsExactly(
            "FAIL: front is to be cut on the fold, and none of its edges lies there. / Name the"
                + " edge with a line such as `fold centre`, or leave out `on the fold`.");
    assertThat(Told.by("fold", Pieces.run(sound().onFold(false, "centre"))))
        .containsExactly(
            "FAIL: `centre` of front lies on the fold, and its cut line does not say so. / Add `on"
                + " the fold` to the cut line of front.");
  }

  @Test
  void oneCauseIsToldOnceForAllItsSizes() {
    SizeRun run =
        Pieces.run(
            List.of(),
            List.of(
                List.of(sound().draw()),
                List.of(sound().withoutGrain().draw()),
                List.of(sound().withoutGrain().draw())));
    assertThat(Told.by("grain", run))
        .singleElement()
        .asString()
        .contains("front has no grain arrow. That is so in sizes 10 and 12.");
  }

  @Test
  void limitsComeInOrder() {
    assertThat(CheckSettings.HANDBOOK).isEqualTo(CheckSettings.HANDBOOK.withSeams(1, 3));
    assertThatThrownBy(() -> CheckSettings.HANDBOOK.withSeams(3, 1))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
