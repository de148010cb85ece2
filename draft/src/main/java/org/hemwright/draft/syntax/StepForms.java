package org.hemwright.draft.syntax;

import static org.hemwright.draft.syntax.Form.row;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hemwright.pattern.make.Act;

/** Forms of the steps of {@code make}. */
final class StepForms {
  private static final String WORK = " <work> {and <work>}";
  private static final String CLAUSES = " {, <clause:step clause>}";
  private static final String SEWN = " [with <stitch> {or <stitch>}]" + CLAUSES;

  static final List<Form> ROWS = rows();

  private StepForms() {}

  private static List<Form> rows() {
    List<Form> rows = new ArrayList<>();
    joining(rows);
    finishing(rows);
    holding(rows);
    handling(rows);
    return List.copyOf(rows);
  }

  private static Form step(
      String id, String notation, String example, String sentence, Function<Match, StepRule> rule) {
    return row(
        "step " + id, Where.MAKE, notation, example, sentence, m -> statement(m, rule.apply(m)));
  }

  private static Statement statement(Match m, StepRule rule) {
    return new Statement.Step(
        rule,
        m.all("work", WorkName.class),
        MakeForms.stitches(m),
        m.all("clause", StepClause.class),
        m.span());
  }

  private static void joining(List<Form> rows) {
    rows.add(
        step(
            "sew",
            "sew" + WORK + SEWN,
            "sew side_seams with stretch stitch 3 mm, press toward back",
            "Sews seams on the machine, one after the other unless they are sewn in one pass.",
            m -> new StepRule.Sew()));
    rows.add(
        step(
            "attach",
            "attach" + WORK + " by " + DrawingForms.EVEN + SEWN,
            "attach waist_seam by quarters with zigzag 0.5 mm by 2.5 mm, press down",
            "Sews a band on, its even parts matched to the seams and notches of the garment.",
            m -> new StepRule.Attach(DrawingForms.parts(m))));
    rows.add(
        step(
            "set in",
            "set in" + WORK + SEWN,
            "set in armholes with straight stitch 2.5 mm, press toward sleeve",
            "Sets a sleeve into its armhole when both are closed to rounds.",
            m -> new StepRule.SetIn()));
    rows.add(
        step(
            "hand sew",
            "hand sew" + WORK + SEWN,
            "hand sew collar.inner with slip stitch",
            "Sews a seam, a hem, an edge or an opening by hand.",
            m -> new StepRule.HandSew()));
    rows.add(
        step(
            "bind",
            "bind" + WORK + " [in tape <tape:number>]" + SEWN,
            "bind front.neck in tape 12 mm with straight stitch 2.5 mm",
            "Encloses edges in a bought tape of that finished width, or in a piece of the pattern.",
            m -> new StepRule.Bind(MakeForms.amount(m, "tape"))));
  }

  private static void finishing(List<Form> rows) {
    rows.add(
        step(
            "finish",
            "finish" + WORK + " [(together | apart)]" + SEWN,
            "finish side_seams together with overlock or zigzag 5 mm by 2 mm",
            "Keeps cut edges from fraying; the allowances of a seam together or apart.",
            m -> new StepRule.Finish(together(m))));
    rows.add(
        step(
            "leave raw",
            "leave raw" + WORK + " [<why:text>]" + CLAUSES,
            "leave raw panel.hem \"Jersey does not fray\"",
            "These edges stay as they are cut.",
            m -> new StepRule.LeaveRaw(m.maybe("why", String.class))));
    rows.add(
        step(
            "hem",
            "hem" + WORK + SEWN,
            "hem panel.hem with zigzag 2.5 mm by 2.5 mm, at 3 mm from the raw edge",
            "Turns hems along their fold, once or twice as their allowance is folded, and stitches"
                + " them.",
            m -> new StepRule.Hem()));
    for (Act.Line line : Act.Line.values()) {
      String word = new Act.Stitching(line).word();
      rows.add(
          step(
              word,
              word + WORK + SEWN,
              lineExample(line),
              lineSentence(line),
              m -> stitching(line)));
    }
    rows.add(
        step(
            "press",
            "press" + WORK + " <way:press way>" + CLAUSES,
            "press shoulders toward back",
            "Presses seams, edges or pieces.",
            m -> new StepRule.Press(m.one("way", StepRule.PressRule.class))));
  }

  private static Optional<Boolean> together(Match m) {
    return m.said("together")
        ? Optional.of(true)
        : m.said("apart") ? Optional.of(false) : Optional.empty();
  }

  private static StepRule stitching(Act.Line line) {
    return new StepRule.Stitching(line);
  }

  private static String lineExample(Act.Line line) {
    return switch (line) {
      case TOPSTITCH -> "topstitch waist_seam with twin needle 3 mm, in 2 rows 6 mm apart";
      case STAYSTITCH -> "staystitch front.neck with straight stitch 2 mm";
      case UNDERSTITCH -> "understitch neck_facing with straight stitch 2.5 mm";
      case BASTE -> "baste band_fold with basting 4.5 mm";
      case GATHER -> "gather skirt.waist with basting 4 mm, in 2 rows 5 mm apart";
      case EASE -> "ease sleeve.cap with basting 4 mm";
    };
  }

  private static String lineSentence(Act.Line line) {
    return switch (line) {
      case TOPSTITCH -> "Stitches from the right side along a seam, an edge, a fold or a line.";
      case STAYSTITCH -> "Stitches inside an allowance, so that the edge keeps its length.";
      case UNDERSTITCH -> "Stitches a facing to the allowances beside its seam.";
      case BASTE -> "Holds layers together until they are sewn.";
      case GATHER -> "Draws an edge, or the longer layer of a seam, up into gathers.";
      case EASE -> "Draws an edge, or the longer layer of a seam, up without gathers.";
    };
  }

  private static void holding(List<Form> rows) {
    rows.add(
        step(
            "form casing",
            "form casing" + WORK + " for <held:name>" + SEWN,
            "form casing band_fold for waist_elastic with straight stitch 2.5 mm,"
                + " leaving feed 6 cm open \"at the centre back\"",
            "Stitches the tunnel for an elastic or cord along a seam or a turned edge.",
            m -> new StepRule.FormCasing(m.name("held"))));
    rows.add(
        step(
            "thread",
            "thread <held:name> through <opening:name>" + CLAUSES,
            "thread waist_elastic through feed",
            "Draws an elastic or cord through its casing, in at an opening that was left.",
            m -> new StepRule.ThreadThrough(m.name("held"), m.name("opening"))));
    rows.add(
        step(
            "lay",
            "lay <held:name> in <work>" + CLAUSES,
            "lay waist_elastic in band",
            "Lays an elastic or cord in before the casing is stitched round it.",
            m -> new StepRule.LayIn(m.name("held"))));
    rows.add(
        step(
            "apply",
            "apply <held:name> to" + WORK + " [by " + DrawingForms.EVEN + "]" + SEWN,
            "apply leg_elastic to leg.hem by quarters with zigzag 3 mm by 2.5 mm",
            "Stitches an elastic straight onto edges, stretched between even parts.",
            m -> new StepRule.Apply(m.name("held"), m.said("by") ? DrawingForms.parts(m) : 0)));
    rows.add(
        step(
            "join",
            "join <held:name> [(overlapped | end to end)]" + SEWN,
            "join waist_elastic overlapped with box stitch",
            "Joins the ends of an elastic to a ring; overlapped if you do not say.",
            m -> new StepRule.JoinEnds(m.name("held"), !m.said("end"))));
    rows.add(
        step(
            "insert zip",
            "insert zip in <work>" + SEWN,
            "insert zip in back_gap with straight stitch 2.5 mm, sold in 18 cm and 20 cm and 23 cm",
            "Puts a zip into an opening that was left; the shortest that reaches is bought.",
            m -> new StepRule.InsertZip()));
    rows.add(
        step(
            "close",
            "close" + WORK + SEWN,
            "close feed with stretch stitch 3 mm",
            "Closes openings that were left, darts and pleats.",
            m -> new StepRule.Close()));
  }

  private static void handling(List<Form> rows) {
    rows.add(
        step(
            "fold",
            "fold <work> [along <line:name>] (wrong | right) sides together" + CLAUSES,
            "fold band along fold_line wrong sides together",
            "Folds a piece along a line of its own, or in half lengthwise.",
            m -> new StepRule.Fold(m.maybe("line", Name.class), m.said("wrong"))));
    for (Act.Cutting how : List.of(Act.Cutting.CLIP, Act.Cutting.NOTCH)) {
      String word = new Act.CutInto(how, Optional.empty()).word();
      rows.add(
          step(
              word,
              word + WORK + CLAUSES,
              word + (how == Act.Cutting.CLIP ? " front.neck" : " collar_edge"),
              how == Act.Cutting.CLIP
                  ? "Cuts into the allowance of an inward curve or corner."
                  : "Cuts wedges out of the allowance of an outward curve.",
              m -> new StepRule.CutInto(how, Optional.empty())));
    }
    rows.add(
        step(
            "trim",
            "(trim | grade)" + WORK + " to <to:number>" + CLAUSES,
            "trim collar_edge to 5 mm",
            "Cuts allowances down, all alike, or in steps from this up.",
            m ->
                new StepRule.CutInto(
                    m.said("grade") ? Act.Cutting.GRADE : Act.Cutting.TRIM,
                    MakeForms.amount(m, "to"))));
    for (Act.Handling how : List.of(Act.Handling.TURN_OUT, Act.Handling.MARK, Act.Handling.PIN)) {
      String word = new Act.Handle(how).word();
      rows.add(
          step(
              word,
              word + WORK + " [<words:text>]" + CLAUSES,
              switch (how) {
                case TURN_OUT -> "turn out pocket";
                case MARK -> "mark back.pocket_place \"on the right side\"";
                default -> "pin waist_seam \"stretch the band between the pins\"";
              },
              switch (how) {
                case TURN_OUT -> "Turns pieces right side out.";
                case MARK -> "Carries marks over to the cloth.";
                default -> "Pins seams or edges together.";
              },
              m -> new StepRule.Handle(how, m.maybe("words", String.class))));
    }
    rows.add(
        step(
            "try on",
            "(try on | test) [<words:text>]" + CLAUSES,
            "try on \"Draw the elastic up until it sits well\"",
            "Tries the garment on, or tries stitch and iron on a scrap.",
            m ->
                new StepRule.Handle(
                    m.said("test") ? Act.Handling.TEST : Act.Handling.TRY_ON,
                    m.maybe("words", String.class))));
    rows.add(
        step(
            "fuse",
            "fuse" + WORK + " [with <fabric:name>]" + CLAUSES,
            "fuse collar with interfacing",
            "Fuses interfacing to the wrong side of pieces.",
            m -> new StepRule.Fuse(m.maybe("fabric", Name.class))));
    rows.add(
        step(
            "fasten",
            "(buttonhole | button | eyelet | bar tack) <count> of <size:number> (in | on) <work>"
                + SEWN,
            "buttonhole 5 of 15 mm in front",
            "Works buttonholes, eyelets or bar tacks, or sews buttons on: how many, and how long or"
                + " wide each is.",
            m ->
                new StepRule.Fasten(
                    fastening(m), m.count("count"), MakeForms.amount(m, "size").orElseThrow())));
    rows.add(
        step(
            "do",
            "do <words:text>" + SEWN,
            "do \"Wrap the placket round the slit\" with straight stitch 2.5 mm, sewing placket_seam",
            "A step in your own words; say which seams and edges it sews, finishes, hems or closes.",
            m -> new StepRule.Own(m.text("words"))));
  }

  private static Act.Fastening fastening(Match m) {
    if (m.count("count") < 1) {
      throw new Refusal("count-nothing", m.span());
    }
    return m.said("buttonhole")
        ? Act.Fastening.BUTTONHOLE
        : m.said("button")
            ? Act.Fastening.BUTTON
            : m.said("eyelet") ? Act.Fastening.EYELET : Act.Fastening.BAR_TACK;
  }
}
