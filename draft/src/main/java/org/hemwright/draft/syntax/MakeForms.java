package org.hemwright.draft.syntax;

import static org.hemwright.draft.syntax.Form.row;
import static org.hemwright.draft.syntax.Where.LEFT_EDGE;
import static org.hemwright.draft.syntax.Where.MAKE;
import static org.hemwright.draft.syntax.Where.NEEDLE;
import static org.hemwright.draft.syntax.Where.PRESS_WAY;
import static org.hemwright.draft.syntax.Where.STITCH;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hemwright.pattern.make.Cord;
import org.hemwright.pattern.make.Needle;
import org.hemwright.pattern.make.Stitch;

/** Forms of {@code make} besides its steps: stages, what is usual, stitches, needles, cords. */
final class MakeForms {
  static final List<Form> ROWS =
      List.of(
          row(
                  "make",
                  LEFT_EDGE,
                  "make",
                  "make",
                  "How the garment is made: its steps in order, in the lines below.",
                  m -> new Statement.MakeSection(List.of(), m.span()))
              .opens(MAKE)
              .onlyOnce(),
          row(
              "stage",
              MAKE,
              "stage <title:text>",
              "stage \"The waistband\"",
              "The steps from here on belong together, and make one post of a sew-along.",
              m -> new Statement.Stage(m.text("title"), m.span())),
          row(
                  "usual stitch",
                  MAKE,
                  "usual stitch <stitch> {or <stitch>}",
                  "usual stitch stretch stitch 3 mm or zigzag 0.5 mm by 2.5 mm",
                  "The stitch of every step that sews and names none.",
                  m -> new Statement.UsualStitch(stitches(m), m.span()))
              .onlyOnce(),
          row(
                  "usual needle",
                  MAKE,
                  "needle <needle>",
                  "needle stretch 75 to 90",
                  "The needle of every step that names none.",
                  m ->
                      new Statement.UsualNeedle(
                          m.one("needle", StepRule.NeedleRule.class), m.span()))
              .onlyOnce(),
          row(
                  "sleepwear",
                  MAKE,
                  "sleepwear",
                  "sleepwear",
                  "It is slept in: for children's sizes cautions on how close it fits follow.",
                  m -> new Statement.Sleepwear(m.span()))
              .onlyOnce(),
          row(
              "cord",
              MAKE,
              "cord <name> in <piece:name> at "
                  + words(Cord.Place.values())
                  + ", length <length:number> [, free ends <free:number>] [, with toggles]"
                  + " [, bar tacked]",
              "cord waist_cord in band at waist, length 120 cm, free ends 7 cm, bar tacked",
              "A cord or drawstring: where it lies, how long it is, and how far each end hangs out"
                  + " when the garment lies flat.",
              MakeForms::cord),
          row(
              "stitch",
              STITCH,
              "(straight stitch | stretch stitch | twin needle | cover stitch | chain stitch |"
                  + " basting) [<length:literal>]",
              "usual stitch stretch stitch 3 mm",
              "A stitch of the machine and how long one stitch is.",
              MakeForms::plain),
          row(
              "zigzag",
              STITCH,
              "zigzag [<width:literal> by <length:literal>]",
              "usual stitch zigzag 2.5 mm by 2.5 mm",
              "A zigzag: how wide, and how long one stitch is.",
              m -> made(m, Stitch.Kind.ZIGZAG)),
          row(
              "overlock",
              STITCH,
              "overlock [of (three | four) threads]",
              "usual stitch overlock of four threads",
              "An overlock stitch, which sews and covers the cut edge; of three threads if you do"
                  + " not say.",
              m ->
                  made(m, m.said("four") ? Stitch.Kind.OVERLOCK_FOUR : Stitch.Kind.OVERLOCK_THREE)),
          row(
              "other stitch",
              STITCH,
              "(blind hem stitch | box stitch | buttonhole stitch | backstitch | slip stitch |"
                  + " catch stitch)",
              "usual stitch backstitch",
              "A stitch for one purpose; the last three are made by hand.",
              MakeForms::plain),
          row(
              "raw",
              STITCH,
              "raw [<when:text>]",
              "usual stitch zigzag or raw \"on cloth that does not fray\"",
              "It may also stay as it is cut.",
              m -> new StitchRule.Raw(m.maybe("when", String.class), m.span())),
          row(
              "needle",
              NEEDLE,
              "[twin] "
                  + words(Needle.Point.values())
                  + " <from:count> [to <to:count>] [<apart:literal> apart]",
              "needle twin stretch 75 to 90 4 mm apart",
              "A needle by its point and its size; a twin needle with the distance of its points.",
              MakeForms::needle),
          row(
              "press toward",
              PRESS_WAY,
              "toward <piece:work> [seen from the (right | wrong) side]",
              "press side_seams toward back seen from the wrong side",
              "To the side of a piece, or of one of its named copies; seen from the wrong side if you"
                  + " do not say.",
              m -> new StepRule.PressRule.Toward(m.one("piece", WorkName.class), m.said("right"))),
          row(
              "press way",
              PRESS_WAY,
              "(open | up | down | flat)",
              "press side_seams open",
              "The allowances apart, both up or down, or as they lie.",
              m ->
                  new StepRule.PressRule.Way(
                      List.of("open", "up", "down", "flat").stream()
                          .filter(m::said)
                          .findFirst()
                          .orElseThrow())));

  private MakeForms() {}

  private static String words(Enum<?>[] values) {
    return Arrays.stream(values)
        .map(value -> value.name().toLowerCase(Locale.ROOT))
        .collect(Collectors.joining(" | ", "(", ")"));
  }

  private static <E extends Enum<E>> E said(Match m, E[] values) {
    return Arrays.stream(values)
        .filter(value -> m.said(value.name().toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow();
  }

  static List<StitchRule> stitches(Match m) {
    return m.all("stitch", StitchRule.class);
  }

  private static StitchRule plain(Match m) {
    Stitch.Kind kind =
        m.said("straight")
            ? Stitch.Kind.STRAIGHT
            : m.said("stretch")
                ? Stitch.Kind.STRETCH
                : m.said("twin")
                    ? Stitch.Kind.TWIN_NEEDLE
                    : m.said("cover")
                        ? Stitch.Kind.COVER
                        : m.said("chain")
                            ? Stitch.Kind.CHAIN
                            : m.said("basting") ? Stitch.Kind.BASTING : special(m);
    return made(m, kind);
  }

  private static Stitch.Kind special(Match m) {
    return m.said("blind")
        ? Stitch.Kind.BLIND_HEM
        : m.said("box")
            ? Stitch.Kind.BOX
            : m.said("buttonhole")
                ? Stitch.Kind.BUTTONHOLE
                : m.said("backstitch")
                    ? Stitch.Kind.BACKSTITCH
                    : m.said("slip") ? Stitch.Kind.SLIP_STITCH : Stitch.Kind.CATCH_STITCH;
  }

  private static StitchRule made(Match m, Stitch.Kind kind) {
    return new StitchRule.Made(kind, positive(m, "length"), positive(m, "width"), m.span());
  }

  /** A length above 0. */
  private static Optional<Expression.Literal> positive(Match m, String label) {
    Optional<Expression.Literal> length = m.maybe(label, Expression.Literal.class);
    length.ifPresent(MakeForms::positive);
    return length;
  }

  static void positive(Expression.Literal length) {
    LiteralKinds.need(length, Unit.MM);
    if (!(length.value() > 0)) {
      throw new Refusal("length-nothing", length.span());
    }
  }

  /** A length of a step: one with its unit, or the name of a number. */
  static Optional<Expression> amount(Match m, String label) {
    Optional<Expression> amount = m.maybe(label, Expression.class);
    amount.ifPresent(
        expression -> {
          if (expression instanceof Expression.Literal literal) {
            positive(literal);
          } else if (!(expression instanceof Expression.Named)) {
            throw new Refusal("step-sum", expression.span());
          }
        });
    return amount;
  }

  private static Object needle(Match m) {
    int from = m.count("from");
    Optional<Integer> to = m.maybe("to", Integer.class);
    if (from < 50 || to.orElse(from) < from || to.orElse(from) > 130) {
      throw new Refusal("needle-size", m.span());
    }
    Optional<Expression.Literal> apart = positive(m, "apart");
    return new StepRule.NeedleRule(
        m.said("twin"), said(m, Needle.Point.values()), from, to, apart, m.span());
  }

  private static Statement cord(Match m) {
    return new Statement.CordLine(
        m.name("name"),
        m.name("piece"),
        said(m, Cord.Place.values()),
        amount(m, "length").orElseThrow(),
        amount(m, "free"),
        m.said("toggles"),
        m.said("tacked"),
        m.span());
  }
}
