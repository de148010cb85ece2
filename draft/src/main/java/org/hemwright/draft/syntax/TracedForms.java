package org.hemwright.draft.syntax;

import static org.hemwright.draft.syntax.Form.row;
import static org.hemwright.draft.syntax.Where.GRADE_PLACE;
import static org.hemwright.draft.syntax.Where.GRADE_STEP;
import static org.hemwright.draft.syntax.Where.GRADE_WAY;
import static org.hemwright.draft.syntax.Where.LEFT_EDGE;
import static org.hemwright.draft.syntax.Where.PIECE;
import static org.hemwright.draft.syntax.Where.TRACED_EDGE;

import java.util.List;
import java.util.Optional;

/** Forms of pieces that were drawn elsewhere, and of rules by which a traced outline is graded. */
final class TracedForms {
  static final List<Form> ROWS =
      List.of(
          row(
                  "traced piece",
                  LEFT_EDGE,
                  "piece <name> traced <file:text> [in size <size>] [, where <line:text> is"
                      + " <length:literal>,] as <title:text> number <number:count> [in sizes"
                      + " <sizes>]",
                  "piece front traced \"traced/front.svg\" as \"Trouser front\" number 1",
                  "A piece whose lines lie in a drawing, of the base size if no other is named; a"
                      + " line of known length gives the scale where the drawing is not in true"
                      + " size.",
                  TracedForms::piece)
              .opens(PIECE),
          row(
              "also traced",
              PIECE,
              "also traced <file:text> [outline <line:text>] in size <size>",
              "also traced \"traced/front-20.svg\" in size 20",
              "The same piece drawn in another size; the sizes between follow.",
              m ->
                  new Statement.AlsoTraced(
                      m.text("file"),
                      m.maybe("line", String.class),
                      m.one("size", NumberRule.SizeWord.class),
                      m.span())),
          row(
                  "traced outline",
                  PIECE,
                  "outline traced <line:text> from (the (top | bottom) (left | right) | <dot:text>)"
                      + " (clockwise | anticlockwise | counterclockwise) [, corners over"
                      + " <corner:literal>] [, less <usual:literal>], edges <edge:traced edge> {,"
                      + " <edge:traced edge>}",
                  "outline traced \"front\" from the top left clockwise, edges waist, crotch,"
                      + " inseam, hem, outseam",
                  "A line or layer of the drawing as the outline, its edges named from corner to"
                      + " corner; what is less is allowance that the drawing has.",
                  TracedForms::outline)
              .onlyOnce(),
          row(
              "stretch left out",
              TRACED_EDGE,
              "left out [to <dot:text>]",
              "outline traced \"cut line\" from the top left clockwise, less 1 cm, edges waist,"
                  + " side, left out, hem less 3 cm, left out, centre less 0",
              "A short end of the allowance that is no edge; its neighbours run on until they"
                  + " meet.",
              m ->
                  new Statement.TracedEdge(
                      Optional.empty(), m.maybe("dot", String.class), Optional.empty(), m.span())),
          row(
              "traced edge",
              TRACED_EDGE,
              "<edge:name> [to <dot:text>] [less <allowance:literal>]",
              "outline traced \"line\" from the top left clockwise, edges waist, side to \"fork\","
                  + " inseam less 1.5 cm, hem",
              "An edge up to the next corner, or to a dot of the drawing, and the allowance to take"
                  + " off.",
              TracedForms::edge),
          row(
              "traced point",
              Where.POINT_RULE,
              "traced <mark:text>",
              "point pocket_at traced \"pocket corner\"",
              "Where a dot, a cross or a small ring of the drawing lies.",
              m -> new PointRule.Traced(m.text("mark"), m.span())),
          row(
              "along traced",
              Where.ALONG,
              "traced <mark:text>",
              "notch side traced \"notches\"",
              "Where short lines or dots of the drawing lie on it.",
              m -> new Along.Traced(m.text("mark"), m.span())),
          row(
              "grain traced",
              Where.GRAIN_RULE,
              "traced <line:text>",
              "grain traced \"grain\"",
              "As the longest straight line of that name in the drawing, from its first point to"
                  + " its last.",
              m -> new Statement.GrainRule.Traced(m.text("line"))),
          row(
              "grade from",
              PIECE,
              "grade from <file:text>",
              "grade from \"rules.csv\"",
              "The rules that a table has for this piece.",
              m -> new Statement.GradeFrom(m.text("file"), m.span())),
          row(
              "grade as",
              PIECE,
              "grade as <piece:name>",
              "grade as front",
              "The rules of another traced piece, on edges of the same names.",
              m -> new Statement.GradeAs(m.name("piece"), m.span())),
          row(
              "grade",
              PIECE,
              "grade <edge:name> at <place:grade place> (stays | <way:grade way> {, <way:grade"
                  + " way>})",
              "grade side at start right 1/4 of the hip step, up 2 mm",
              "How a corner or control point of a traced outline moves from each size to the next"
                  + " larger one.",
              m ->
                  new Statement.Grade(
                      m.name("edge"),
                      m.one("place", Statement.GradePlace.class),
                      m.all("way", Statement.GradeWay.class),
                      m.span())),
          row(
              "rule at an end",
              GRADE_PLACE,
              "(start | end)",
              "grade waist at end right 5 mm",
              "The corner at that end of the edge.",
              m -> new Statement.GradePlace.End(m.said("end"))),
          row(
              "rule along",
              GRADE_PLACE,
              "<amount:literal> from (start | end)",
              "grade side at 50% from start right 6 mm",
              "A control point, a length or a share along the edge as it was drawn.",
              m -> {
                Expression.Literal amount = m.literal("amount");
                if (amount.unit() != Unit.PERCENT) {
                  LiteralKinds.need(amount, Unit.CM);
                }
                return new Statement.GradePlace.Measured(amount, m.said("end"));
              }),
          row(
              "rule at a dot",
              GRADE_PLACE,
              "<dot:text>",
              "grade side at \"hip\" right 6 mm",
              "A control point beside a dot of the drawing.",
              m -> new Statement.GradePlace.Dot(m.text("dot"))),
          row(
              "grade way",
              GRADE_WAY,
              "(right | left | up | down) <step:grade step>",
              "grade side at start right 5 mm, up 1/8 of the scye_depth step",
              "To one side, or up or down, as the piece lies on the drawing.",
              m ->
                  new Statement.GradeWay(
                      m.said("up") || m.said("down"),
                      m.said("left") || m.said("down"),
                      m.one("step", Statement.GradeStep.class))),
          row(
              "step of a measurement",
              GRADE_STEP,
              "<share:literal> of [the] <measurement:name> step",
              "grade side at start right 1/4 of the hip step",
              "A share of what the size chart adds to a measurement.",
              TracedForms::ofMeasurement),
          row(
              "step in lengths",
              GRADE_STEP,
              "<first:literal> {, then <step>}",
              "grade side at start right 5 mm, then 7 mm from size 22",
              "A length for each step between sizes, another from a size up.",
              TracedForms::stepped));

  private TracedForms() {}

  private static Statement piece(Match m) {
    Optional<Statement.ScaleLine> scale =
        m.maybe("length", Expression.Literal.class)
            .map(length -> new Statement.ScaleLine(m.text("line"), length(length)));
    return new Statement.PieceSection(
        m.name("name"),
        m.text("title"),
        m.count("number"),
        m.maybe("sizes", Statement.Sizes.class),
        Optional.of(
            new Statement.TracedFrom(
                m.text("file"), m.maybe("size", NumberRule.SizeWord.class), scale, m.span())),
        List.of(),
        m.span());
  }

  private static Statement outline(Match m) {
    Statement.TracedStart start =
        m.maybe("dot", String.class)
            .<Statement.TracedStart>map(Statement.TracedStart.Dot::new)
            .orElseGet(() -> new Statement.TracedStart.Farthest(m.said("top"), m.said("left")));
    Optional<Expression.Literal> corner = m.maybe("corner", Expression.Literal.class);
    corner.ifPresent(angle -> LiteralKinds.need(angle, Unit.DEG));
    List<Statement.TracedEdge> edges = m.all("edge", Statement.TracedEdge.class);
    if (edges.stream().filter(edge -> edge.name().isPresent()).count() < 2) {
      throw new Refusal("traced-one-edge", m.span());
    }
    return new Statement.OutlineTraced(
        m.text("line"),
        start,
        m.said("clockwise"),
        corner,
        m.maybe("usual", Expression.Literal.class).map(TracedForms::length),
        edges,
        m.span());
  }

  private static Statement.TracedEdge edge(Match m) {
    return new Statement.TracedEdge(
        Optional.of(m.name("edge")),
        m.maybe("dot", String.class),
        m.maybe("allowance", Expression.Literal.class).map(TracedForms::length),
        m.span());
  }

  private static Statement.GradeStep ofMeasurement(Match m) {
    Expression.Literal share = m.literal("share");
    if (share.unit() != Unit.PERCENT) {
      LiteralKinds.plain(share);
    }
    return new Statement.GradeStep.OfMeasurement(share, m.name("measurement"));
  }

  private static Statement.GradeStep stepped(Match m) {
    List<NumberRule.Step> later = m.all("step", NumberRule.Step.class);
    for (NumberRule.Step step : later) {
      if (!(step.value() instanceof Expression.Literal literal)) {
        throw new Refusal("grade-step-sum", step.value().span());
      }
      length(literal);
    }
    return new Statement.GradeStep.Stepped(length(m.literal("first")), later);
  }

  private static Expression.Literal length(Expression.Literal literal) {
    LiteralKinds.need(literal, Unit.CM);
    return literal;
  }
}
