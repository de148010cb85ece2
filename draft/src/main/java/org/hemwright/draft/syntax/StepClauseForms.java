package org.hemwright.draft.syntax;

import static org.hemwright.draft.syntax.Form.row;

import java.util.List;
import java.util.function.Function;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Sewing;

/** Forms of what a step may add after a comma. */
final class StepClauseForms {
  static final List<Form> ROWS =
      List.of(
          clause(
              "pressed",
              "press <way:press way>",
              "sew side_seams with overlock, press toward back",
              "How the step is pressed when it is sewn.",
              m -> new StepClause.Pressed(m.one("way", StepRule.PressRule.class), m.span())),
          clause(
              "leaving",
              "leaving <name> <length:number> open [<where:text>]",
              "sew lining_seam, leaving turning_gap 12 cm open \"at the lower edge\"",
              "An opening that is left, with a name by which a later step closes it.",
              m ->
                  new StepClause.Leaving(
                      m.name("name"),
                      MakeForms.amount(m, "length").orElseThrow(),
                      m.maybe("where", String.class),
                      m.span())),
          clause(
              "one pass",
              "in one pass",
              "sew waist_seam and band_fold with overlock, in one pass",
              "The seams of the step lie on each other and are sewn together.",
              m -> new StepClause.OnePass(m.span())),
          clause(
              "rows",
              "in <count> rows [<apart:number> apart]",
              "topstitch waist_seam with straight stitch 3 mm, in 2 rows 6 mm apart",
              "How many rows, and how far from each other.",
              StepClauseForms::rows),
          clause(
              "distance",
              "at <amount:number> from the (raw edge | fold | edge | seam)",
              "hem panel.hem with zigzag 2.5 mm by 2.5 mm, at 3 mm from the raw edge",
              "How far the stitching lies from something.",
              m ->
                  new StepClause.Distance(
                      MakeForms.amount(m, "amount").orElseThrow(), from(m), m.span())),
          clause(
              "with needle",
              "needle <needle>",
              "hem panel.hem with twin needle 3 mm, needle twin stretch 75 4 mm apart",
              "Another needle than the usual one.",
              m -> new StepClause.WithNeedle(m.one("needle", StepRule.NeedleRule.class), m.span())),
          clause(
              "sold in",
              "sold in <length:literal> {and <length:literal>}",
              "insert zip in back_gap with straight stitch 2.5 mm, sold in 18 cm and 20 cm",
              "The lengths in which a zip is sold.",
              StepClauseForms::sold),
          clause(
              "dealing",
              "(sewing | finishing | hemming | closing) <work> {and <work>}",
              "do \"Sew the tab into the band\" with straight stitch, sewing tab_seam and tab.end",
              "What a step in your own words deals with, and how.",
              m -> new StepClause.Dealing(how(m), m.all("work", WorkName.class), m.span())),
          clause(
              "in view",
              "in view <view:name> {and <view:name>}",
              "turn out pocket, in view B",
              "The step is done in these views only.",
              m -> new StepClause.InView(m.all("view", Name.class), m.span())),
          clause(
              "in sizes",
              "in sizes <sizes>",
              "staystitch front.neck with straight stitch 2 mm, in sizes 22 to 30",
              "The step is done in these sizes only.",
              m -> new StepClause.InSizes(m.one("sizes", Statement.Sizes.class), m.span())),
          clause(
              "note",
              "note <words:text>",
              "sew side_seams with overlock, note \"A walking foot helps on thick jersey\"",
              "A tip that stands beside the step.",
              m -> new StepClause.Note(m.text("words"), m.span())),
          clause(
              "see that",
              "see that <words:text>",
              "sew side_seams with overlock, see that \"Both notches meet\"",
              "What the maker looks at before going on.",
              m -> new StepClause.See(m.text("words"), m.span())),
          clause(
              "step name",
              "as <name>",
              "sew side_seams with overlock, as close_sides",
              "A name by which the step is known in booklet, posts and mails; it has one of its own if"
                  + " you give none.",
              m -> new StepClause.As(m.name("name"), m.span())));

  private StepClauseForms() {}

  private static Form clause(
      String id, String notation, String example, String sentence, Function<Match, Object> make) {
    return row(id, Where.STEP_CLAUSE, notation, example, sentence, make);
  }

  private static StepClause rows(Match m) {
    if (m.count("count") < 1) {
      throw new Refusal("count-nothing", m.span());
    }
    return new StepClause.Rows(m.count("count"), MakeForms.amount(m, "apart"), m.span());
  }

  private static StepClause sold(Match m) {
    List<Expression.Literal> lengths = m.all("length", Expression.Literal.class);
    lengths.forEach(MakeForms::positive);
    return new StepClause.Sold(lengths, m.span());
  }

  private static Sewing.Distance.From from(Match m) {
    return m.said("raw")
        ? Sewing.Distance.From.RAW_EDGE
        : m.said("fold")
            ? Sewing.Distance.From.FOLD
            : m.said("seam") ? Sewing.Distance.From.SEAM : Sewing.Distance.From.EDGE;
  }

  private static Act.Dealing.How how(Match m) {
    return m.said("sewing")
        ? Act.Dealing.How.SEWING
        : m.said("finishing")
            ? Act.Dealing.How.FINISHING
            : m.said("hemming") ? Act.Dealing.How.HEMMING : Act.Dealing.How.CLOSING;
  }
}
