package org.hemwright.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.hemwright.checks.Pieces.piece;
import static org.hemwright.checks.Pieces.rectangle;
import static org.hemwright.checks.Pieces.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.Seam;
import org.hemwright.pattern.seam.SeamRequest;
import org.junit.jupiter.api.Test;

/** A sound pair of pieces says nothing; a fault planted in one of two sizes is told there. */
class SewingTogetherChecksTest {
  private static final SeamRequest SIDES = seam("sides", "front.side", "back.side");

  private static Pieces front() {
    return rectangle("front", 200, 600, "hem", "side", "waist", "centre").cut(2, true);
  }

  private static Pieces back() {
    return rectangle("back", 200, 600, "hem", "centre", "waist", "side").cut(2, true);
  }

  /** Size 8 is sound, size 10 has the fault. */
  private static SizeRun run(List<SeamRequest> seams, Pieces front, Pieces back) {
    return Pieces.run(
        seams, List.of(List.of(front().draw(), back().draw()), List.of(front.draw(), back.draw())));
  }

  private static List<Finding> findings(String id, SizeRun run) {
    return StandardChecks.with(CheckSettings.HANDBOOK).stream()
        .filter(check -> check.id().equals(id))
        .flatMap(check -> check.check(run).stream())
        .toList();
  }

  private static void silent(String id, SizeRun run) {
    assertThat(Told.by(id, run)).isEmpty();
  }

  /** Handbook section 3: equal widths on both partners of a seam. */
  @Test
  void allowancesOfASeamAreEqual() {
    silent("allowance-equal", run(List.of(SIDES), front(), back()));
    SizeRun wide = run(List.of(SIDES), front(), back().allowance("side", new Allowance.Plain(15)));
    assertThat(Told.by("allowance-equal", wide))
        .containsExactly(
            "FAIL: In seam sides front.side has an allowance of 10 mm and back.side of 15 mm in"
                + " size 10. / Give both the same, with a line such as `allowance 1 cm`.");
    Finding told = findings("allowance-equal", wide).get(0);
    assertThat(told.places())
        .extracting(place -> place.piece().orElse(""))
        .containsExactly("front", "back");
    assertThat(
            findings(
                "allowance-equal",
                run(List.of(SIDES), front(), back().allowance("side", new Allowance.Plain(11)))))
        .extracting(Finding::status)
        .containsExactly(Status.WARN);
    // An edge elsewhere, and an edge laid by its fold.
    silent(
        "allowance-equal",
        run(List.of(SIDES), front(), back().allowance("hem", new Allowance.Plain(15))));
    silent(
        "allowance-equal",
        run(
            List.of(SIDES),
            front(),
            back().allowance("side", new Allowance.TurnedBack(List.of(25.0)))));
  }

  /** Edges end to end in one layer: only the part that lies on the other is compared. */
  @Test
  void allowancesAreComparedPartByPart() {
    Pieces band = rectangle("band", 400, 60, "lower", "right", "upper", "left").titled("Band", 2);
    Pieces wide = back().allowance("waist", new Allowance.Plain(6)).cut(1, false);
    SeamRequest waist = seam("waist", "band.lower", "front.waist then back.waist");
    SizeRun run =
        Pieces.run(
            List.of(SIDES, waist),
            List.of(List.of(front().cut(1, false).draw(), wide.draw(), band.draw())));
    assertThat(Told.by("allowance-equal", run))
        .singleElement()
        .asString()
        .startsWith("FAIL: In seam waist band.lower has an allowance of 10 mm and back.waist of");
  }

  @Test
  void notchesMeetTheirMates() {
    Pieces one = front().notch("side", 200, "");
    silent("notch-mates", run(List.of(SIDES), one, back().notch("side", 400, "")));
    silent("notch-mates", run(List.of(SIDES), one, back().notch("side", 398.1, "")));
    assertThat(Told.by("notch-mates", run(List.of(SIDES), one, back())))
        .containsExactly(
            "WARN: In seam sides, notch 1 of front.side, 20 cm from the start, meets no notch of"
                + " back.side in size 10. / Notch back.side at the same length, or leave this one"
                + " out.");
    SizeRun moved = run(List.of(SIDES), one, back().notch("side", 396, ""));
    assertThat(Told.by("notch-mates", moved))
        .containsExactly(
            "FAIL: In seam sides, notch 1 of front.side lies 20 cm from the start and its mate on"
                + " back.side 20.4 cm: 4 mm apart in size 10. / Move one of the two, or place both"
                + " at the same length from the start.");
    assertThat(findings("notch-mates", moved).get(0).places().get(0).point())
        .hasValueSatisfying(point -> assertThat(point.y()).isEqualTo(200));
  }

  /** Single on single, double on double (handbook section 1, "Notches"). */
  @Test
  void singleAndDoubleNotchesAreToldApart() {
    SizeRun run =
        run(List.of(SIDES), front().notch("side", 200, ""), back().doubleNotch("side", 400));
    assertThat(Told.by("notch-mates", run))
        .containsExactly(
            "FAIL: In seam sides, notch 1 of front.side meets a notch of back.side, and one of"
                + " them is single and the other double, in size 10. / Make both `notch` or both"
                + " `double notch`.");
  }

  @Test
  void aNotchWithoutAMateIsToldWhereTheOtherLayerHasSome() {
    SizeRun run =
        run(
            List.of(SIDES),
            front().notch("side", 200, "").notch("side", 450, ""),
            back().notch("side", 400, ""));
    assertThat(Told.by("notch-mates", run))
        .containsExactly(
            "WARN: In seam sides, notch 2 of front.side, 45 cm from the start, meets no notch of"
                + " back.side in size 10. / Notch back.side at the same length, or leave this one"
                + " out.");
  }

  /** What is eased in may lie before or after a notch, never more than that. */
  @Test
  void easeMayLieOnEitherSideOfANotch() {
    SeamRequest eased =
        seam("sides", new Seam.Ease(10, 10, false), Optional.empty(), "front.side", "back.side");
    for (double at : new double[] {200, 205, 210}) {
      Pieces longer =
          rectangle("front", 200, 610, "hem", "side", "waist", "centre")
              .cut(2, true)
              .notch("side", at, "");
      silent(
          "notch-mates",
          Pieces.run(
              List.of(eased),
              List.of(List.of(longer.draw(), back().notch("side", 400, "").draw()))));
    }
    Pieces low =
        rectangle("front", 200, 610, "hem", "side", "waist", "centre")
            .cut(2, true)
            .notch("side", 196, "");
    assertThat(
            findings(
                "notch-mates",
                Pieces.run(
                    List.of(eased),
                    List.of(List.of(low.draw(), back().notch("side", 400, "").draw())))))
        .hasSize(1);
  }

  /** Two shoulders whose neck corners lie so many mm towards the middle, on 100 mm of neck. */
  private static SizeRun shoulders(double front, double back, boolean band) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(
        piece("front")
            .edge("shoulder", 0, 0)
            .edge("armhole", 120, 0)
            .edge("low", 120, 100)
            .edge("neck", 100 * Math.tan(Math.toRadians(front)), 100)
            .against("neck")
            .allowance("neck", band ? new Allowance.Plain(10) : Allowance.NONE)
            .draw());
    pieces.add(
        piece("back")
            .edge("shoulder", 0, 0)
            .edge("neck", 120, 0)
            .edge("low", 120 - 100 * Math.tan(Math.toRadians(back)), 100)
            .edge("armhole", 0, 100)
            .against("shoulder")
            .against("armhole")
            .draw());
    return Pieces.run(
        List.of(seam("shoulders", "front.shoulder", "back.shoulder")), List.of(pieces));
  }

  /** Handbook check value 17: 85° and 95° pass, 88° and 97° are 5° out. */
  @Test
  void theAnglesBesideASeamMakeAHalfTurn() {
    silent("junction", shoulders(5, -5, false));
    silent("junction", shoulders(0, 1.9, false));
    assertThat(Told.by("junction", shoulders(2, -7, false)))
        .containsExactly(
            "FAIL: Where seam shoulders ends, front.neck and back.neck meet at 88° and 97°: 185°"
                + " together, so the edge dips there in every size. / Let both edges leave the"
                + " seam so that the two angles come to 180°, as with `leaving square to`.");
    assertThat(findings("junction", shoulders(3, 0, false)))
        .extracting(Finding::code, Finding::status)
        .containsExactly(tuple("junction-peak", Status.WARN));
  }

  @Test
  void edgesLeaveAFoldSquarely() {
    for (double lower : new double[] {0, 3, -3, 10}) {
      SizeRun run =
          Pieces.run(
              piece("front")
                  .edge("hem", 0, 0)
                  .edge("side", 100, lower)
                  .edge("waist", 100, 600)
                  .edge("centre", 0, 600)
                  .cut(1, false)
                  .onFold(true, "centre"));
      assertThat(findings("square-at-fold", run))
          .extracting(Finding::subject)
          .isEqualTo(lower == 10 ? List.of("front.hem") : List.of());
    }
  }

  @Test
  void everyEdgeIsUsed() {
    SizeRun run =
        run(
            List.of(SIDES),
            front()
                .allowance("hem", new Allowance.TurnedBack(List.of(20.0)))
                .allowance("waist", Allowance.NONE),
            back());
    assertThat(findings("edge-used", run))
        .extracting(Finding::subject, Finding::sizes)
        .contains(tuple("front.hem", List.of("8")), tuple("front.centre", List.of("8", "10")))
        .noneMatch(tuple -> tuple.toList().get(0).toString().endsWith(".side"));
    assertThat(Told.by("edge-used", run))
        .contains(
            "WARN: `centre` of front has an allowance of 10 mm, and no seam or hem uses it. / Name it"
                + " in a seam, turn it back as a hem, or write `centre none` in the allowance line"
                + " if it stays raw.");
  }
}
