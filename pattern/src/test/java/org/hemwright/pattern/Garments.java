package org.hemwright.pattern;

import static org.hemwright.pattern.Sketch.ORIGIN;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.SmoothCurve;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.SeamRequest;
import org.hemwright.pattern.seam.SeamRequest.Run;
import org.hemwright.pattern.seam.SeamRequest.Term;

/** Small garments for tests: pieces of one size, and the seams that hold them together. */
public record Garments(List<Piece> pieces, List<SeamRequest> seams) {
  public Garments {
    pieces = List.copyOf(pieces);
    seams = List.copyOf(seams);
  }

  /** {@code piece.edge} as the document writes it, with {@code every} and {@code reversed}. */
  public static Term term(String text) {
    List<String> words = new ArrayList<>(List.of(text.split(" ")));
    boolean every = words.remove("every");
    boolean reversed = words.remove("reversed");
    String from = "";
    String to = "";
    int at = words.indexOf("from");
    if (at >= 0) {
      from = words.get(at + 1);
    }
    at = words.indexOf("to");
    if (at >= 0) {
      to = words.get(at + 1);
    }
    List<String> names = List.of(words.get(0).split("\\."));
    Term term = Term.of(names.get(0), names.get(names.size() - 1), ORIGIN).taken(every);
    term = names.size() == 3 ? term.ofCopy(names.get(1)) : term;
    term =
        term.between(
            Optional.of(from).filter(s -> !s.isEmpty()), Optional.of(to).filter(s -> !s.isEmpty()));
    return reversed ? term.turned() : term;
  }

  /** {@code front.armhole then back.armhole}. */
  public static Run run(String text) {
    return Run.of(List.of(text.split(" then ")).stream().map(Garments::term).toArray(Term[]::new));
  }

  /** {@code a.b with c.d}. */
  public static SeamRequest seam(String name, String text) {
    return SeamRequest.of(
        name,
        ORIGIN,
        List.of(text.split(" with ")).stream().map(Garments::run).toArray(Run[]::new));
  }

  /** The example of the language guide: a panel cut twice on the fold, and a band. */
  public static Garments skirt() {
    Sketch panel =
        Sketch.piece("panel")
            .point("centre_hem", 0, 0)
            .point("side_hem", 310, 10)
            .point("side_waist", 250, 610)
            .point("centre_waist", 0, 600)
            .against("hem", "centre_hem", "side_hem")
            .against("side", "side_hem", "side_waist")
            .against("waist", "side_waist", "centre_waist")
            .along("centre", "centre_waist", "centre_hem")
            .fold("centre")
            .notch("side", 200, "hip")
            .level("hip", 0, 410)
            .grain(100, 100, 100, 500)
            .cut(2, false);
    Piece drawn = panel.draw();
    double quarter = drawn.edges().get(2).path().length();
    Piece band =
        Sketch.rectangle("band", 4 * quarter, 66, "lower", "end_right", "upper", "end_left")
            .notch("lower", quarter, "")
            .notch("lower", 2 * quarter, "")
            .notch("lower", 3 * quarter, "")
            .draw();
    return new Garments(
        List.of(drawn, band),
        List.of(
            seam("side_seams", "panel.side with panel.side"),
            seam("band_ring", "band.end_right with band.end_left"),
            seam("waist_seam", "band.lower with every panel.waist")));
  }

  /** Half a leg, cut twice and mirrored. */
  public static Sketch leg(String name, double fork) {
    return Sketch.piece(name)
        .point("hem_out", 0, 0)
        .point("hem_in", 220, 0)
        .point("fork", 230 + fork, 750)
        .point("centre", 230, 1000)
        .point("side", 0, 1000)
        .along("hem", "hem_out", "hem_in")
        .against("inseam", "hem_in", "fork")
        .against("crotch", "fork", "centre")
        .along("waist", "centre", "side")
        .along("outseam", "side", "hem_out")
        .grain(100, 100, 100, 900)
        .cut(2, true);
  }

  /** Front and back leg, cut twice and mirrored, and a waistband closed into a ring. */
  public static Garments trousers() {
    return new Garments(
        List.of(
            leg("front", 40).draw(),
            leg("back", 80).draw(),
            Sketch.rectangle("band", 920, 66, "lower", "end_right", "upper", "end_left").draw()),
        List.of(
            seam("inseams", "front.inseam with back.inseam"),
            seam("outseams", "front.outseam with back.outseam"),
            seam("front_crotch", "front.crotch with front.crotch"),
            seam("back_crotch", "back.crotch with back.crotch"),
            seam("band_ring", "band.end_right with band.end_left"),
            seam("waist_seam", "band.lower with every front.waist then every back.waist")));
  }

  /** A leg without a side seam, with a cuff that is cut twice and is its own mirror image. */
  public static Garments onePieceLeg() {
    Piece leg =
        Sketch.piece("leg")
            .point("hem_back", 0, 0)
            .point("hem_front", 400, 0)
            .point("fork_front", 480, 700)
            .point("centre_front", 440, 950)
            .point("centre_back", -20, 960)
            .point("fork_back", -120, 700)
            .along("hem", "hem_back", "hem_front")
            .against("front_inseam", "hem_front", "fork_front")
            .against("front_crotch", "fork_front", "centre_front")
            .along("waist", "centre_front", "centre_back")
            .along("back_crotch", "centre_back", "fork_back")
            .along("back_inseam", "fork_back", "hem_back")
            .cut(2, true, "left", "right")
            .draw();
    Piece cuff =
        Sketch.rectangle("cuff", 400, 80, "lower", "end_right", "upper", "end_left")
            .cut(2, false)
            .draw();
    return new Garments(
        List.of(leg, cuff),
        List.of(
            seam("inseam", "leg.front_inseam with leg.back_inseam"),
            seam("front_crotch", "leg.front_crotch with leg.front_crotch"),
            seam("back_crotch", "leg.back_crotch with leg.back_crotch"),
            seam("cuff_ring", "cuff.end_right with cuff.end_left"),
            seam("cuff_seam", "cuff.lower with leg.hem")));
  }

  private static Path armhole(double depth) {
    return SmoothCurve.from(new Point(250, 400))
        .to(new Point(250 - depth, 480))
        .to(new Point(200, 600))
        .path();
  }

  private static Sketch body(String name, double neck, double depth) {
    return Sketch.piece(name)
        .point("hem_centre", 0, 0)
        .point("hem_side", 250, 0)
        .point("underarm", 250, 400)
        .point("tip", 200, 600)
        .point("neck_side", 80, 620)
        .point("neck_centre", 0, neck)
        .along("hem", "hem_centre", "hem_side")
        .against("side", "hem_side", "underarm")
        .along("armhole", armhole(depth))
        .along("shoulder", "tip", "neck_side")
        .against("neck", "neck_side", "neck_centre")
        .along("centre", "neck_centre", "hem_centre")
        .fold("centre")
        .grain(50, 50, 50, 500)
        .cut(1, false);
  }

  /** Front and back on the fold, set-in sleeves, neckband. */
  public static Garments tee() {
    Piece sleeve =
        Sketch.piece("sleeve")
            .point("hem_l", -100, 0)
            .point("hem_r", 100, 0)
            .point("under_r", 170, 400)
            .point("under_l", -170, 400)
            .along("hem", "hem_l", "hem_r")
            .against("underarm_front", "hem_r", "under_r")
            .along(
                "cap",
                SmoothCurve.from(new Point(170, 400))
                    .to(new Point(0, 520))
                    .to(new Point(-170, 400))
                    .path())
            .along("underarm_back", "under_l", "hem_l")
            .grain(0, 20, 0, 400)
            .cut(2, true)
            .draw();
    Piece front = body("front", 540, 60).draw();
    Piece back = body("back", 600, 45).draw();
    Piece band =
        Sketch.rectangle("neckband", 400, 40, "lower", "end_right", "upper", "end_left").draw();
    return new Garments(
        List.of(front, back, sleeve, band),
        List.of(
            seam("armhole_seams", "sleeve.cap with front.armhole then back.armhole reversed"),
            seam("neck_seam", "neckband.lower with every front.neck then every back.neck"),
            seam("sides", "front.side with back.side"),
            seam("shoulders", "front.shoulder with back.shoulder"),
            seam("underarms", "sleeve.underarm_front with sleeve.underarm_back"),
            seam("neckband_ring", "neckband.end_right with neckband.end_left")));
  }

  /** Two patch pockets on the backs of the trousers. */
  public static Garments pocket(int pockets) {
    Piece back =
        leg("back", 80)
            .point("p1", 60, 900)
            .point("p2", 60, 760)
            .point("p3", 190, 760)
            .point("p4", 190, 900)
            .placement("pocket_place", "p1", "p2", "p3", "p4")
            .draw();
    Piece pocket =
        Sketch.rectangle("pocket", 130, 140, "bottom", "right", "top", "left")
            .cut(pockets, false)
            .draw();
    return new Garments(
        List.of(back, pocket),
        List.of(
            seam(
                "pocket_seam",
                "pocket.left reversed then pocket.bottom then pocket.right"
                    + " with back.pocket_place")));
  }
}
