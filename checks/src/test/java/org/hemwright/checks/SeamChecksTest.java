package org.hemwright.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hemwright.checks.Pieces.rectangle;
import static org.hemwright.checks.Pieces.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.Seam;
import org.hemwright.pattern.seam.SeamRequest;
import org.junit.jupiter.api.Test;

/** Limits: handbook section 1, "Trueing and walking": warn over 1 mm, fail over 3 mm. */
class SeamChecksTest {
  private static final SeamLengthCheck LENGTHS = new SeamLengthCheck(CheckSettings.HANDBOOK);

  private static Pieces front(double side) {
    return rectangle("front", 200, side, "hem", "side", "waist", "centre").cut(2, true);
  }

  private static Pieces back(double side) {
    return rectangle("back", 200, side, "hem", "centre", "waist", "side").cut(2, true);
  }

  private static SizeRun sides(Seam.Ease ease, double... backLonger) {
    List<List<Piece>> sizes = new ArrayList<>();
    for (double longer : backLonger) {
      sizes.add(List.of(front(600).draw(), back(600 + longer).draw()));
    }
    return Pieces.run(
        List.of(seam("sides", ease, Optional.empty(), "front.side", "back.side")), sizes);
  }

  private static List<Status> statuses(SizeRun run) {
    return LENGTHS.check(run).stream().map(Finding::status).toList();
  }

  @Test
  void theLimitsAreTheHandbooks() {
    assertThat(statuses(sides(Seam.Ease.NONE, 1.0))).isEmpty();
    assertThat(statuses(sides(Seam.Ease.NONE, -1.0))).isEmpty();
    assertThat(statuses(sides(Seam.Ease.NONE, 1.01))).containsExactly(Status.WARN);
    assertThat(statuses(sides(Seam.Ease.NONE, -3.0))).containsExactly(Status.WARN);
    assertThat(statuses(sides(Seam.Ease.NONE, 3.01))).containsExactly(Status.FAIL);
  }

  @Test
  void tellsTheSeamOnceWithItsSizes() {
    SizeRun run = sides(Seam.Ease.NONE, 0, 0.5, 2, 4, 5);
    assertThat(Told.by(LENGTHS, run))
        .containsExactly(
            "FAIL: In seam sides back.side is 2 mm to 5 mm longer than front.side in sizes 12 to"
                + " 16. / Move a corner of one of the two, let `solve` find the length, or declare"
                + " the difference as ease.");
    Finding finding = LENGTHS.check(run).get(0);
    assertThat(finding.found()).hasValue(600);
    assertThat(finding.expected()).hasValue(605);
    assertThat(finding.unit()).isEqualTo("mm");
    assertThat(finding.places().get(0).piece()).contains("front");
    assertThat(finding.origin()).contains(Pieces.ORIGIN);
  }

  /** Handbook check 18: armhole 46.0, cap 48.5 cm: an ease of 2.5 cm, 5.43 %, is what is there. */
  @Test
  void easeIsDeducted() {
    Piece cap = rectangle("front", 200, 485, "hem", "side", "waist", "centre").cut(2, true).draw();
    Piece armhole = back(460).draw();
    for (Seam.Ease ease :
        List.of(
            new Seam.Ease(25, 25, false),
            new Seam.Ease(0, 30, false),
            new Seam.Ease(0.0543, 0.0544, true))) {
      assertThat(
              statuses(
                  Pieces.run(
                      List.of(seam("caps", ease, Optional.empty(), "front.side", "back.side")),
                      List.of(List.of(cap, armhole)))))
          .isEmpty();
    }
    SizeRun tight =
        Pieces.run(
            List.of(
                seam(
                    "caps",
                    new Seam.Ease(0, 20, false),
                    Optional.empty(),
                    "front.side",
                    "back.side")),
            List.of(List.of(cap, armhole)));
    assertThat(Told.by(LENGTHS, tight))
        .containsExactly(
            "FAIL: In seam caps front.side measures 48.5 cm and back.side 46 cm in every size:"
                + " front.side is 5 mm longer than the ease allows. / Move a corner of one of the"
                + " two, let `solve` find the length, or declare another ease.");
    assertThat(statuses(sides(new Seam.Ease(-0.1, -0.1, true), 600 / 0.9 - 600))).isEmpty();
    assertThat(statuses(sides(new Seam.Ease(-0.1, -0.1, true), 0))).containsExactly(Status.FAIL);
  }

  /** 4 mm too long below the notch: told there, not as a whole. */
  @Test
  void notchesAreWalkedOneByOne() {
    Piece front = front(600).notch("side", 200, "hip").draw();
    Piece back = back(604).notch("side", 604 - 204, "").draw();
    SizeRun run =
        Pieces.run(
            List.of(seam("sides", "front.side", "back.side")), List.of(List.of(front, back)));
    assertThat(Told.by(LENGTHS, run))
        .containsExactly(
            "FAIL: In seam sides, between the start and hip, back.side is 4 mm longer than"
                + " front.side in every size. / Move the notch on one of the two, or redraw the"
                + " edge between.");
  }

  /** Equal as a whole, 4 mm apart at the notch: the notch is out, not the seam. */
  @Test
  void aNotchOutOfPlaceIsToldOnce() {
    Piece front = front(600).notch("side", 200, "hip").draw();
    Piece back = back(600).notch("side", 600 - 204, "").draw();
    SizeRun run =
        Pieces.run(
            List.of(seam("sides", "front.side", "back.side")), List.of(List.of(front, back)));
    assertThat(Told.by(LENGTHS, run)).isEmpty();
    assertThat(Told.by("notch-mates", run)).hasSize(1);
    Piece other = back(600).notch("side", 600 - 200, "").notch("side", 600 - 300, "").draw();
    assertThat(
            statuses(
                Pieces.run(
                    List.of(seam("sides", "front.side", "back.side")),
                    List.of(List.of(front, other)))))
        .isEmpty();
  }

  /** Three stretches each 1.2 mm out: the whole is 3.6 mm out, and that is the worse of it. */
  @Test
  void smallDifferencesThatAddUpAreToldAsAWhole() {
    Piece front = front(600).notch("side", 200, "").notch("side", 400, "").draw();
    Piece back =
        back(603.6).notch("side", 603.6 - 201.2, "").notch("side", 603.6 - 402.4, "").draw();
    assertThat(
            Told.by(
                LENGTHS,
                Pieces.run(
                    List.of(seam("sides", "front.side", "back.side")),
                    List.of(List.of(front, back)))))
        .singleElement()
        .asString()
        .startsWith(
            "FAIL: In seam sides back.side is 3.6 mm longer than front.side in every size.");
  }

  /** Ease may lie in any one stretch, as over a sleeve cap, but not against its sense. */
  @Test
  void easeMayLieBetweenAnyTwoNotches() {
    Piece front = front(625).notch("side", 200, "").notch("side", 425, "").draw();
    Piece back = back(600).notch("side", 400, "").notch("side", 200, "").draw();
    SeamRequest eased =
        seam("caps", new Seam.Ease(25, 25, false), Optional.empty(), "front.side", "back.side");
    assertThat(statuses(Pieces.run(List.of(eased), List.of(List.of(front, back))))).isEmpty();
    Piece wrong = front(625).notch("side", 195, "").notch("side", 425, "").draw();
    assertThat(Told.by(LENGTHS, Pieces.run(List.of(eased), List.of(List.of(wrong, back)))))
        .hasSize(2)
        .first()
        .asString()
        .startsWith(
            "FAIL: In seam caps, between the start and mark 1, back.side is 5 mm longer than the"
                + " ease allows in every size.");
  }

  /** A skirt of two fold panels and a band; the ring passes a side, a fold and a side. */
  private static SizeRun skirt(
      double panel, double band, int parts, boolean notched, Seam.Ease ease) {
    Pieces strip =
        rectangle("band", band, 66, "lower", "end_right", "upper", "end_left").titled("Band", 2);
    for (int i = 1; notched && i < parts; i++) {
      strip.notch("lower", band * i / parts, "");
    }
    SeamRequest.Even even = new SeamRequest.Even(parts, List.of("sides", "centres"));
    return Pieces.run(
        List.of(
            seam("side_seams", "panel.side", "panel.side"),
            seam("waist", ease, Optional.of(even), "band.lower", "every panel.waist")),
        List.of(
            List.of(
                rectangle("panel", panel, 600, "hem", "side", "waist", "centre")
                    .notch("side", 200, "")
                    .cut(2, false)
                    .onFold(true, "centre")
                    .draw(),
                strip.draw())));
  }

  /** A long seam is matched by a notch on its way (common practice, no source). */
  @Test
  void aLongSeamWithoutANotchIsTold() {
    for (double height : new double[] {449, 451}) {
      SizeRun run =
          Pieces.run(
              List.of(seam("sides", "panel.side", "panel.centre")),
              List.of(
                  List.of(
                      Pieces.piece("panel")
                          .edge("hem", 0, 0)
                          .edge("side", 200, 0)
                          .edge("waist", 200, height)
                          .edge("top", 100, height + 40)
                          .edge("centre", 0, height)
                          .against("centre")
                          .draw())));
      assertThat(Told.by("seam-marks", run)).hasSize(height > 450 ? 1 : 0);
    }
  }

  /** Handbook check 25: a loop of 64 cm is marked at 0, 16, 32 and 48 cm. */
  @Test
  void quarterMarksMeetSidesAndFolds() {
    SizeRun run = skirt(160, 640, 4, true, Seam.Ease.NONE);
    assertThat(Told.by("seam-marks", run)).isEmpty();
    assertThat(Told.by(LENGTHS, run)).isEmpty();
    assertThat(Told.by("seam-marks", skirt(160, 640, 4, false, Seam.Ease.NONE)))
        .containsExactly(
            "WARN: Seam waist matches 4 even parts, and band.lower lacks 3 of the notches that"
                + " would show them. / Notch it there, with a line such as `notch lower at"
                + " quarters`.");
    assertThat(Told.by("seam-marks", skirt(160, 640, 3, true, Seam.Ease.NONE)))
        .containsExactly(
            "WARN: Seam waist matches 3 even parts at sides and centres; on its way panel.waist"
                + " passes 3 seams and folds, and 2 would be met. / Divide it into as many parts as"
                + " the other layer has, or sew it as one stretch without even marks.");
  }

  /** A band of 0.85 of the opening is stretched evenly: handbook check 7, 44.2 cm on 52 cm. */
  @Test
  void aStretchedBandIsStretchedEvenly() {
    Seam.Ease stretched = new Seam.Ease(-0.15, -0.15, true);
    assertThat(Told.by(LENGTHS, skirt(130, 442, 4, true, stretched))).isEmpty();
    assertThat(Told.by(LENGTHS, skirt(130, 452, 4, true, stretched)))
        .singleElement()
        .asString()
        .startsWith("FAIL: In seam waist band.lower measures 45.2 cm and panel.waist 52 cm");
  }

  /** Law: layers made equal never speak, whatever their length; made unequal they do. */
  @Test
  void equalLayersNeverSpeak() {
    Random random = new Random(5);
    for (int i = 0; i < 200; i++) {
      double side = 100 + random.nextDouble() * 900;
      double notch = random.nextDouble() * side;
      Piece front = front(side).notch("side", notch, "").draw();
      Piece back = back(side).notch("side", side - notch, "").draw();
      SeamRequest sides = seam("sides", "front.side", "back.side");
      assertThat(statuses(Pieces.run(List.of(sides), List.of(List.of(front, back))))).isEmpty();
      double out = (random.nextBoolean() ? 1 : -1) * (1.001 + random.nextDouble() * 50);
      Piece longer = back(side + out).draw();
      assertThat(statuses(Pieces.run(List.of(sides), List.of(List.of(front, longer)))))
          .containsExactly(Math.abs(out) > 3 ? Status.FAIL : Status.WARN);
    }
  }
}
