package org.hemwright.draft.syntax;

import static org.hemwright.draft.syntax.Form.row;
import static org.hemwright.draft.syntax.Where.CONDITION;
import static org.hemwright.draft.syntax.Where.LEFT_EDGE;
import static org.hemwright.draft.syntax.Where.NUMBER;
import static org.hemwright.draft.syntax.Where.NUMBER_RULE;
import static org.hemwright.draft.syntax.Where.PART;
import static org.hemwright.draft.syntax.Where.PIECE;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.syntax.Condition.Comparison;
import org.hemwright.draft.syntax.Expression.Measure;
import org.hemwright.draft.syntax.Expression.Ratio;
import org.hemwright.draft.syntax.Expression.Way;

/** Forms that give a number: dials, lets, solves, and what an expression may say in words. */
final class NumberForms {
  static final List<Form> ROWS =
      List.of(
          row(
              "dial",
              LEFT_EDGE,
              "dial <name> = <value:literal> from <lowest:literal> to <highest:literal> <words:text>",
              "dial hip_ease = 4 cm from 0 cm to 12 cm \"Ease at the hip\"",
              "A number that you may turn within its range; the words say what it does.",
              NumberForms::dial),
          row(
              "let",
              EnumSet.of(LEFT_EDGE, PART, PIECE),
              "let <name> = <rule>",
              "let quarter = (hip + hip_ease) / 4",
              "Gives a number a name. In a part or piece it is that piece's own.",
              m -> new Statement.Let(m.name("name"), m.one("rule", NumberRule.class), m.span())),
          row(
              "solve",
              EnumSet.of(LEFT_EDGE, PART, PIECE),
              "solve <name> so that <left:number> = <right:number> within <low:number> and"
                  + " <high:number>",
              "solve cap_height so that length of sleeve.cap = armhole within 8 cm and 22 cm",
              "Finds the number between the two bounds that makes both sides equal, in every size"
                  + " on its own.",
              m ->
                  new Statement.Solve(
                      m.name("name"),
                      m.number("left"),
                      m.number("right"),
                      m.number("low"),
                      m.number("high"),
                      m.span())),
          row(
              "stepped",
              NUMBER_RULE,
              "<first:number>, then <step> {, then <step>}",
              "let waist_rise = 1 cm, then 1.3 cm from size 22",
              "One number for the first sizes, another from a size up.",
              m ->
                  new NumberRule.Stepped(
                      m.number("first"), m.all("step", NumberRule.Step.class), m.span())),
          row(
              "step",
              Where.STEP,
              "<value:number> from size <from:size>",
              "let waist_rise = 1 cm, then 1.3 cm from size 22",
              "The number from that size up.",
              m ->
                  new NumberRule.Step(m.number("value"), m.one("from", NumberRule.SizeWord.class))),
          row(
              "chosen",
              NUMBER_RULE,
              "<choice> {, <choice>}, otherwise <otherwise:number>",
              "let dart = 3 cm when hip > 110 cm, otherwise 2 cm",
              "The first number whose condition holds in the size.",
              m ->
                  new NumberRule.Chosen(
                      m.all("choice", NumberRule.Choice.class), m.number("otherwise"), m.span())),
          row(
              "choice",
              Where.CHOICE,
              "<value:number> when <condition>",
              "let dart = 3 cm when hip > 110 cm, otherwise 2 cm",
              "The number where the condition holds.",
              m -> new NumberRule.Choice(m.number("value"), m.one("condition", Condition.class))),
          row(
              "plain",
              NUMBER_RULE,
              "<value:number>",
              "let half_waist = waist / 2",
              "The same for every size.",
              m -> new NumberRule.Plain(m.number("value"))),
          row(
              "size between",
              CONDITION,
              "size from <from:size> to <to:size>",
              "let dart = 3 cm when size from 14 to 22, otherwise 2 cm",
              "In these sizes and all between them.",
              NumberForms::sizeWithin),
          row(
              "size from",
              CONDITION,
              "size from <from:size>",
              "let dart = 3 cm when size from 22, otherwise 2 cm",
              "In this size and all above it.",
              NumberForms::sizeWithin),
          row(
              "size up to",
              CONDITION,
              "size up to <to:size>",
              "let dart = 2 cm when size up to 12, otherwise 3 cm",
              "In this size and all below it.",
              NumberForms::sizeWithin),
          row(
              "compared",
              CONDITION,
              "<left:number> ('<' | '>' | at least | at most) <right:number>",
              "let dart = 3 cm when hip at least 110 cm and waist < 90 cm, otherwise 2 cm",
              "Where one number is less or more than another; join several with `and`.",
              NumberForms::compared),
          row(
              "length of",
              NUMBER,
              "length of <path>",
              "let hem_sweep = 4 * length of panel.hem",
              "How long a line, curve, path or edge is.",
              m -> new Expression.LengthOf(m.path("path"), m.span())),
          row(
              "between",
              NUMBER,
              "(distance | across | rise | angle) from <from:point> to <to:point>",
              "let drop = rise from panel.centre_waist to panel.side_waist",
              "Between two points: how far, how far to the right, how far up, or the angle of"
                  + " their line.",
              m ->
                  new Expression.Between(
                      m.said("distance")
                          ? Measure.DISTANCE
                          : m.said("across")
                              ? Measure.ACROSS
                              : m.said("rise") ? Measure.RISE : Measure.ANGLE,
                      m.reference("from"),
                      m.reference("to"),
                      m.span())),
          row(
              "girth",
              NUMBER,
              "girth of <piece:name> at <height:point>",
              "let finished_hip = girth of panel at hip",
              "The whole distance round the garment at the height of a point or level, over all"
                  + " copies of the piece.",
              m -> new Expression.GirthOf(m.name("piece"), m.reference("height"), m.span())),
          row(
              "either",
              NUMBER,
              "(smaller | larger) of <first:number> and <second:number>",
              "let ease = larger of 2 cm and 4% of hip",
              "The one of two numbers.",
              m ->
                  new Expression.Either(
                      m.said("larger"), m.number("first"), m.number("second"), m.span())),
          row(
              "ratio",
              NUMBER,
              "(sine | cosine | tangent) of <angle:number>",
              "let run = 12 cm * cosine of 30 deg",
              "The ratio of two sides of a right triangle with this angle: a plain number.",
              m ->
                  new Expression.Trigonometric(
                      m.said("sine") ? Ratio.SINE : m.said("cosine") ? Ratio.COSINE : Ratio.TANGENT,
                      m.number("angle"),
                      m.span())),
          row(
              "hypotenuse",
              NUMBER,
              "hypotenuse of <first:number> and <second:number>",
              "let slant = hypotenuse of 3 cm and 4 cm",
              "The long side of a right triangle.",
              m ->
                  new Expression.RightTriangle(
                      true, m.number("first"), m.number("second"), m.span())),
          row(
              "other side",
              NUMBER,
              "other side of <first:number> and <second:number>",
              "let height = other side of 5 cm and 3 cm",
              "The other short side of a right triangle with this long side and this short one.",
              m ->
                  new Expression.RightTriangle(
                      false, m.number("first"), m.number("second"), m.span())),
          row(
              "round up or down",
              NUMBER,
              "round (up | down) <value:number> to <step:number>",
              "let elastic_cut = round up waist to 5 mm",
              "Up or down to a whole number of steps.",
              m ->
                  new Expression.Rounded(
                      m.said("up") ? Way.UP : Way.DOWN,
                      m.number("value"),
                      m.number("step"),
                      m.span())),
          row(
              "round",
              NUMBER,
              "round <value:number> to <step:number>",
              "let strip = round waist / 3 to 1/8 in",
              "To the nearest whole number of steps.",
              m ->
                  new Expression.Rounded(
                      Way.NEAREST, m.number("value"), m.number("step"), m.span())));

  private NumberForms() {}

  private static Statement dial(Match m) {
    Expression.Literal value = m.literal("value");
    Expression.Literal from = m.literal("lowest");
    Expression.Literal to = m.literal("highest");
    LiteralKinds.same(List.of(value, from, to));
    return new Statement.Dial(m.name("name"), value, from, to, m.text("words"), m.span());
  }

  private static Condition sizeWithin(Match m) {
    Optional<NumberRule.SizeWord> from = m.maybe("from", NumberRule.SizeWord.class);
    return new Condition.SizeWithin(from, m.maybe("to", NumberRule.SizeWord.class), m.span());
  }

  private static Condition compared(Match m) {
    Comparison comparison =
        m.said("<")
            ? Comparison.LESS
            : m.said(">")
                ? Comparison.MORE
                : m.said("least") ? Comparison.AT_LEAST : Comparison.AT_MOST;
    return new Condition.Compared(m.number("left"), comparison, m.number("right"), m.span());
  }
}
