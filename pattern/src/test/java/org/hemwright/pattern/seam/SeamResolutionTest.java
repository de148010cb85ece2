package org.hemwright.pattern.seam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hemwright.pattern.Garments.seam;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hemwright.pattern.Garments;
import org.hemwright.pattern.Sketch;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.pattern.piece.Piece;
import org.junit.jupiter.api.Test;

/**
 * Garments resolved as a sewer would pin them: the pairs are facts of the trade (common practice,
 * no source), each worked out with paper pieces in the test's own words.
 */
class SeamResolutionTest {
  private static final Wording WORDING = Wording.of(Wording.patternMessages());

  /** {@code panel.1D.side}, with {@code -} before what is sewn against its drawing. */
  private static String word(EdgePlace place) {
    String half =
        switch (place.half()) {
          case WHOLE -> "";
          case DRAWN -> "D";
          case MIRRORED -> "M";
        };
    return (place.reversed() ? "-" : "")
        + place.piece()
        + "."
        + place.copy()
        + half
        + "."
        + place.edge();
  }

  private static List<String> words(Seam seam) {
    List<String> words = new ArrayList<>();
    for (Seam.Join join : seam.joins()) {
      List<String> layers = new ArrayList<>();
      for (Seam.Layer layer : join.layers()) {
        layers.add(String.join(" ", layer.run().stream().map(SeamResolutionTest::word).toList()));
      }
      words.add(String.join(" | ", layers));
    }
    return words;
  }

  private static Map<String, List<String>> resolved(Garments garment) {
    SeamResolution resolution = SeamResolution.resolve(garment.seams(), garment.pieces());
    assertThat(resolution.findings()).isEmpty();
    assertThat(resolution.seams().stream().map(Seam::name))
        .containsExactlyElementsOf(garment.seams().stream().map(SeamRequest::name).toList());
    Map<String, List<String>> words = new HashMap<>();
    resolution.seams().forEach(s -> words.put(s.name(), words(s)));
    return words;
  }

  /** What is found for one seam on the pieces of a garment, worded. */
  private static List<String> told(List<Piece> pieces, SeamRequest... seams) {
    SeamResolution resolution = SeamResolution.resolve(List.of(seams), pieces);
    for (Finding finding : resolution.findings()) {
      assertThat(finding.origin()).contains(Sketch.ORIGIN);
      assertThat(finding.subject()).startsWith("seam ");
    }
    return resolution.findings().stream()
        .map(finding -> WORDING.message(finding) + " / " + WORDING.mend(finding))
        .toList();
  }

  /** Side seams join the two panels left and right; the waist goes round over folds and sides. */
  @Test
  void skirtOfTwoFoldPanels() {
    assertThat(resolved(Garments.skirt()))
        .containsEntry(
            "side_seams", List.of("panel.1D.side | panel.2M.side", "panel.1M.side | panel.2D.side"))
        .containsEntry("band_ring", List.of("band.1.end_right | band.1.end_left"))
        .containsEntry(
            "waist_seam",
            List.of(
                "band.1.lower | panel.1D.waist -panel.2M.waist panel.2D.waist -panel.1M.waist"));
  }

  /**
   * Front and back are drawn with the inseam to the same side, so a front meets the back that is
   * cut mirrored; each leg keeps its two pieces in both seams.
   */
  @Test
  void trousers() {
    assertThat(resolved(Garments.trousers()))
        .containsEntry(
            "inseams", List.of("front.1.inseam | back.2.inseam", "front.2.inseam | back.1.inseam"))
        .containsEntry(
            "outseams",
            List.of("front.1.outseam | back.2.outseam", "front.2.outseam | back.1.outseam"))
        .containsEntry("front_crotch", List.of("front.1.crotch | front.2.crotch"))
        .containsEntry("back_crotch", List.of("back.1.crotch | back.2.crotch"))
        .containsEntry(
            "waist_seam",
            List.of("band.1.lower | front.2.waist -back.1.waist back.2.waist -front.1.waist"));
  }

  @Test
  void legOfOnePieceJoinsItself() {
    assertThat(resolved(Garments.onePieceLeg()))
        .containsEntry(
            "inseam",
            List.of(
                "leg.left.front_inseam | leg.left.back_inseam",
                "leg.right.front_inseam | leg.right.back_inseam"))
        .containsEntry("front_crotch", List.of("leg.left.front_crotch | leg.right.front_crotch"));
  }

  /** A cuff is its own mirror image: one of the two is sewn from its other end. */
  @Test
  void cuffsNeedNotBeCutMirrored() {
    assertThat(resolved(Garments.onePieceLeg()).get("cuff_seam"))
        .containsExactlyInAnyOrder("cuff.2.lower | leg.right.hem", "-cuff.1.lower | leg.left.hem");
  }

  /** The sleeve that faces the drawn half of the body is the mirrored one. */
  @Test
  void tee() {
    assertThat(resolved(Garments.tee()))
        .containsEntry(
            "sides", List.of("front.1D.side | back.1M.side", "front.1M.side | back.1D.side"))
        .containsEntry(
            "underarms",
            List.of(
                "sleeve.1.underarm_front | sleeve.1.underarm_back",
                "sleeve.2.underarm_front | sleeve.2.underarm_back"))
        .containsEntry(
            "armhole_seams",
            List.of(
                "sleeve.1.cap | front.1M.armhole -back.1D.armhole",
                "sleeve.2.cap | front.1D.armhole -back.1M.armhole"))
        .containsEntry(
            "neck_seam",
            List.of("neckband.1.lower | front.1D.neck -back.1M.neck back.1D.neck -front.1M.neck"));
  }

  @Test
  void pocketsOnAPlacementLine() {
    assertThat(resolved(Garments.pocket(2)).get("pocket_seam"))
        .containsExactly(
            "-pocket.1.left pocket.1.bottom pocket.1.right | back.1.pocket_place",
            "-pocket.2.left pocket.2.bottom pocket.2.right | back.2.pocket_place");
    assertThat(told(Garments.pocket(1).pieces(), Garments.pocket(1).seams().get(0)))
        .containsExactly(
            "Seam pocket_seam can be sewn in more than one way: it does not say which copy of"
                + " `pocket.left reversed then pocket.bottom then pocket.right` meets which copy"
                + " of `back.pocket_place`. / Name the copies with a line such as `copies left,"
                + " right` in each piece, and say in the seam which is meant.");
    assertThat(told(Garments.pocket(1).pieces(), seam("p", "pocket.top with back.2.pocket_place")))
        .isEmpty();
  }

  @Test
  void piecesBetweenNotches() {
    Sketch side = Sketch.rectangle("front", 200, 600, "hem", "side", "waist", "centre");
    Sketch other = Sketch.rectangle("back", 200, 600, "hem", "centre", "waist", "side");
    List<Piece> pieces =
        List.of(
            side.cut(2, true).notch("side", 150, "vent").notch("side", 400, "pocket").draw(),
            other.cut(2, true).notch("side", 150, "vent").draw());
    SeamResolution resolution =
        SeamResolution.resolve(
            List.of(seam("sides", "front.side from vent with back.side from vent")), pieces);
    assertThat(resolution.findings()).isEmpty();
    EdgePlace place = resolution.seams().get(0).joins().get(0).layers().get(0).run().get(0);
    assertThat(place.from()).contains("vent");
    assertThat(place.to()).isEmpty();
    assertThat(told(pieces, seam("sides", "front.side from pocket to vent with back.side")))
        .containsExactly(
            "Seam sides takes `front.side` from pocket to vent, and vent comes before pocket on"
                + " that edge. / Write `from vent to pocket`, and `reversed` after it if it is to"
                + " be sewn the other way.");
    assertThat(told(pieces, seam("sides", "front.side from went with back.side")))
        .containsExactly(
            "Seam sides names a notch `went` on `front.side`, and no notch there has that name."
                + " / Did you mean `vent`?");
  }

  /** Two fronts cut the same way cannot be a left and a right. */
  @Test
  void twoFrontsNoneMirrored() {
    Garments trousers = Garments.trousers();
    Piece front =
        Sketch.rectangle("front", 200, 600, "hem", "side", "waist", "centre").cut(2, false).draw();
    assertThat(told(List.of(front), seam("centre_front", "front.centre with front.centre")))
        .containsExactly(
            "Seam centre_front cannot lie right sides together: all copies of front are cut the"
                + " same way, so `front.centre` has no mirror image to meet. / Write `mirrored` in"
                + " the cut line of front.");
    Piece lying =
        Sketch.piece("front")
            .point("a", 0, 0)
            .point("b", 200, 0)
            .point("c", 180, 600)
            .point("d", 0, 620)
            .along("hem", "a", "b")
            .against("outseam", "b", "c")
            .along("waist", "c", "d")
            .along("centre", "d", "a")
            .cut(2, false)
            .draw();
    assertThat(
            told(
                List.of(lying, trousers.pieces().get(1)),
                seam("s", "front.outseam with back.outseam")))
        .containsExactly(
            "Seam s cannot lie right sides together: all copies of front are cut the same way, so"
                + " `front.outseam` has no mirror image to meet. / Write `mirrored` in the cut"
                + " line of front.");
  }

  @Test
  void namesThatNothingBears() {
    List<Piece> pieces = Garments.trousers().pieces();
    assertThat(told(pieces, seam("s", "frnot.inseam with back.inseem")))
        .containsExactly(
            "Seam s names a piece `frnot`, and no piece has that name. / Did you mean `front`?",
            "Seam s names `back.inseem`, and back has no edge or placement line of that name. /"
                + " Did you mean `back.inseam`?");
    assertThat(told(pieces, seam("s", "front.left.inseam with back.x")))
        .containsExactly(
            "Seam s names a copy `left` of front, and none of its copies has that name. / Its"
                + " copies are 1 and 2; a line such as `copies left, right` names them.",
            "Seam s names `back.x`, and back has no edge or placement line of that name. / It has"
                + " hem, inseam, crotch, waist and outseam.");
    assertThat(told(Garments.tee().pieces(), seam("s", "front.centre with back.side")))
        .containsExactly(
            "Seam s names `front.centre`, which lies on the fold: there is no cloth edge to sew. /"
                + " Sew another edge, or take the fold away so that front is cut in two parts.");
  }

  @Test
  void aPieceThatThisSizeLacksLeavesItsSeamsOut() {
    SeamResolution resolution =
        SeamResolution.resolve(
            List.of(seam("s", "yoke.lower with front.waist")),
            Garments.trousers().pieces(),
            Set.of("yoke"));
    assertThat(resolution.findings()).isEmpty();
    assertThat(resolution.seams()).isEmpty();
  }

  @Test
  void oneCauseOnly() {
    Garments tee = Garments.tee();
    List<SeamRequest> seams = new ArrayList<>(tee.seams());
    seams.replaceAll(
        s ->
            s.name().equals("shoulders")
                ? seam("shoulders", "front.shoulder with back.sholder")
                : s);
    assertThat(told(tee.pieces(), seams.toArray(SeamRequest[]::new)))
        .containsExactly(
            "Seam shoulders names `back.sholder`, and back has no edge or placement line of that"
                + " name. / Did you mean `back.shoulder`?");
  }

  @Test
  void runsThatBreakSayHowTheyWouldHold() {
    Garments tee = Garments.tee();
    List<SeamRequest> seams = new ArrayList<>(tee.seams());
    seams.set(0, seam("armhole_seams", "sleeve.cap with front.armhole then back.armhole"));
    assertThat(told(tee.pieces(), seams.toArray(SeamRequest[]::new)))
        .containsExactly(
            "Seam armhole_seams goes on from `front.armhole` to `back.armhole`, and the second"
                + " does not start where the first ends. / Say which way it is walked:"
                + " `front.armhole reversed then back.armhole` or `front.armhole then"
                + " back.armhole reversed`.");
    assertThat(told(tee.pieces(), seams.get(0)))
        .containsExactly(
            "Seam armhole_seams goes on from `front.armhole` to `back.armhole`, and the second"
                + " does not start where the first ends. / Declare the seam that joins the two,"
                + " or name edges that follow on each other.");
  }

  /** Edges in a row can be walked in one way only, whichever way each is drawn. */
  @Test
  void aRunThatCanBeWalkedInOneWayNeedsNoReversing() {
    List<Piece> pieces = Garments.pocket(2).pieces();
    Garments written =
        new Garments(
            pieces,
            List.of(
                seam(
                    "pocket_seam",
                    "pocket.left then pocket.bottom then pocket.right with back.pocket_place")));
    assertThat(resolved(written).get("pocket_seam"))
        .isEqualTo(resolved(Garments.pocket(2)).get("pocket_seam"));
    assertThat(
            told(
                pieces,
                seam(
                    "p",
                    "pocket.left then pocket.bottom then pocket.right reversed"
                        + " with back.pocket_place")))
        .containsExactly(
            "Seam p goes on from `pocket.left` to `pocket.bottom`, and the second does not start"
                + " where the first ends. / Say which way it is walked: `pocket.left reversed then"
                + " pocket.bottom then pocket.right`.");
  }

  @Test
  void countsThatDiffer() {
    assertThat(
            told(
                Garments.skirt().pieces(),
                seam("waist_seam", "band.lower with panel.waist"),
                seam("ring", "band.end_left with band.end_left")))
        .containsExactly(
            "Seam waist_seam has 1 of `band.lower` and 4 of `panel.waist` among the cut pieces,"
                + " so some would have no partner. / Change how many are cut, name the copy that"
                + " is meant, or write `every` before an edge whose copies are taken end to end.",
            "Seam ring sews `band.end_left` to itself, and there is only one of it. / Cut band"
                + " twice and mirrored, or name the edge that it is sewn to.");
  }

  @Test
  void startsThatDoNotMeetAreSaidToNeedReversing() {
    Piece band =
        Sketch.piece("band")
            .point("a", 0, 0)
            .point("b", 900, 0)
            .point("c", 900, 60)
            .point("d", 0, 60)
            .along("lower", "a", "b")
            .along("end_right", "b", "c")
            .along("upper", "c", "d")
            .along("end_left", "d", "a")
            .draw();
    assertThat(told(List.of(band), seam("ring", "band.end_right with band.end_left")))
        .containsExactly(
            "Seam ring brings the start of `band.end_right` to the start of `band.end_left`, and"
                + " right sides together the two run opposite ways. / Write `band.end_left"
                + " reversed`.");
    assertThat(told(List.of(band), seam("ring", "band.end_right with band.end_left reversed")))
        .isEmpty();
  }

  /** A leg whose inseams are drawn one up and one down would be sewn to the other leg. */
  @Test
  void copiesThatCrossAreToldOfButSewn() {
    List<Piece> pieces = Garments.onePieceLeg().pieces();
    assertThat(told(pieces, seam("inseam", "leg.front_inseam with leg.back_inseam reversed")))
        .containsExactly(
            "Seam inseam joins `leg.front_inseam` of copy left to `leg.back_inseam reversed` of"
                + " copy right. / If each copy is to be joined to its own, write"
                + " `leg.back_inseam`; if not, name the copies in the seam.");
  }

  @Test
  void aWaistThatMeetsAHemIsToldOf() {
    List<Piece> pieces = Garments.trousers().pieces();
    assertThat(told(pieces, seam("outseams", "front.outseam with back.outseam reversed")))
        .containsExactly(
            "Seam outseams brings the waist end of `front.outseam` to the hem end of"
                + " `back.outseam reversed`. / If both waist ends are to meet, write"
                + " `back.outseam`.");
  }

  /** Panels of two kinds with names: nothing says which inner meets which face. */
  @Test
  void namedCopiesWithoutACommonNameAreTwoWays() {
    List<Piece> pieces =
        List.of(
            Sketch.rectangle("front", 200, 600, "hem", "side", "waist", "centre")
                .fold("centre")
                .cut(2, false, "outer", "inner")
                .draw(),
            Sketch.rectangle("back", 200, 600, "hem", "side", "waist", "centre")
                .fold("centre")
                .cut(2, false, "face", "lining")
                .draw());
    assertThat(told(pieces, seam("sides", "front.side with back.side")))
        .singleElement()
        .asString()
        .startsWith("Seam sides can be sewn in more than one way");
    assertThat(
            told(
                pieces,
                seam("outer", "front.outer.side with back.face.side"),
                seam("inner", "front.inner.side with back.lining.side")))
        .isEmpty();
  }

  /** Shell, facing and piping in one pass: the third lies on the first or on the second. */
  @Test
  void threeLayers() {
    List<Piece> pieces =
        List.of(
            Sketch.rectangle("shell", 300, 200, "lower", "r", "edge", "l").cut(2, true).draw(),
            Sketch.rectangle("facing", 300, 60, "edge", "r", "upper", "l").cut(2, true).draw(),
            Sketch.rectangle("piping", 300, 20, "edge", "r", "upper", "l").cut(2, true).draw());
    Garments garment =
        new Garments(
            pieces, List.of(seam("front_edge", "shell.edge with facing.edge with piping.edge")));
    assertThat(resolved(garment).get("front_edge"))
        .containsExactly(
            "shell.1.edge | facing.1.edge | piping.1.edge",
            "shell.2.edge | facing.2.edge | piping.2.edge");
  }

  @Test
  void everyProblemIsWorded() {
    assertThat(WORDING.lacking(SeamProblem.codes())).isEmpty();
  }
}
