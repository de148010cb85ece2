package org.hemwright.draft.syntax;

import static org.hemwright.draft.syntax.Form.row;
import static org.hemwright.draft.syntax.HeadingForms.DRAWING;
import static org.hemwright.draft.syntax.Where.ARC_RULE;
import static org.hemwright.draft.syntax.Where.CURVE_RULE;
import static org.hemwright.draft.syntax.Where.LINE_RULE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.hemwright.draft.syntax.PathRule.Leg;

/** Forms that draw lines, curves and arcs. */
final class PathForms {
  /** The rows that {@link PathReading} leaves out where a path cannot be written so. */
  static final String STRAIGHT_ON = "straight on";

  static final String STRAIGHT_TO = "straight line";
  static final List<Form> ROWS =
      List.of(
          row(
              "line",
              DRAWING,
              "line <name> <rule:line rule>",
              "line hem_line from centre_hem to side_hem",
              "A straight line, or several end to end.",
              PathForms::path),
          row(
              "line to",
              LINE_RULE,
              "from <point> to <point> {to <point>}",
              "line hem_line from centre_hem to vent to side_hem",
              "From point to point.",
              m -> new PathRule.Through(m.all("point", Reference.class), m.span())),
          row(
              "line toward",
              LINE_RULE,
              "from <from:point> <direction> <distance:number>",
              "line grain_line from centre_hem up 20 cm",
              "From a point, one way, so far.",
              m ->
                  new PathRule.Toward(
                      m.reference("from"),
                      m.one("direction", Direction.class),
                      m.number("distance"),
                      m.span())),
          row(
              "curve",
              DRAWING,
              "curve <name> <rule:curve rule>",
              "curve side_line from side_waist to side_hip arriving down, then straight to"
                  + " side_hem",
              "A smooth curve through points.",
              PathForms::path),
          row(
              "curve from",
              CURVE_RULE,
              "from <start:point> <stretch> {[,] then <stretch>}",
              "curve armhole from shoulder leaving down through notch_point to underarm arriving"
                  + " right",
              "From a point on; `then` starts afresh at a corner.",
              PathForms::curve),
          row(
              "straight stretch",
              Where.STRETCH,
              "straight to <knot:point>",
              "curve side_line from side_waist to side_hip, then straight to side_hem",
              "Straight to a point; the curve beside it runs smoothly into the line.",
              m ->
                  new Stretch(
                      Optional.empty(),
                      List.of(new Leg.Straight(m.reference("knot"), m.span())),
                      m.span())),
          row(
              "curved stretch",
              Where.STRETCH,
              "[leaving <leaving:direction>] {<through>} <last:arrival>",
              "curve waist_line from centre_waist leaving right to side_waist",
              "Smoothly to a point, leaving and arriving in the directions given.",
              PathForms::stretch),
          row(
              "through",
              Where.THROUGH,
              "[tension <tension:number>] through <knot:point> [heading <direction>]",
              "curve armhole from shoulder through notch_point heading down to underarm",
              "Runs smoothly on through a point, in a direction if one is given. A tension above 1"
                  + " pulls the curve tighter.",
              m -> leg(m, true)),
          row(
              "arrival",
              Where.ARRIVAL,
              "[tension <tension:number>] to <knot:point> [arriving <direction>]",
              "curve hem_line from side_hem tension 1.2 to centre_hem arriving left",
              "Ends at a point.",
              m -> leg(m, false)),
          row(
              "arc",
              DRAWING,
              "arc <name> <rule:arc rule>",
              "arc waist_line about centre from waist_start turning 90 deg",
              "Part of a circle.",
              PathForms::path),
          row(
              "arc about",
              ARC_RULE,
              "about <centre:point> from <from:point> turning <turning:number>",
              "arc waist_line about centre from waist_start turning 90 deg",
              "About a centre, turning left from a point; a negative angle turns right.",
              m ->
                  new PathRule.ArcAbout(
                      m.reference("centre"), m.reference("from"), m.number("turning"), m.span())),
          row(
              "arc radius",
              ARC_RULE,
              "from <from:point> to <to:point> radius <radius:number>[,] bulging (left | right)"
                  + " [[,] the long way]",
              "arc neck_line from neck_side to neck_front radius 30 cm, bulging left",
              "Between two points with a radius; it bulges to the left or right of the straight"
                  + " way.",
              m ->
                  new PathRule.ArcRadius(
                      m.reference("from"),
                      m.reference("to"),
                      m.number("radius"),
                      m.said("left"),
                      m.said("long"),
                      m.span())),
          row(
              "arc through",
              ARC_RULE,
              "from <from:point> through <through:point> to <to:point>",
              "arc neck_line from neck_side through neck_middle to neck_front",
              "Through three points.",
              m ->
                  new PathRule.ArcThrough(
                      m.reference("from"), m.reference("through"), m.reference("to"), m.span())),
          row(
              "path",
              DRAWING,
              "path <name> is <path:chain>",
              "path outer_leg is side_line then straight then cuff_line reversed",
              "Another path under a name of its own, or several end to end with `then`.",
              m -> new Statement.Path(m.name("name"), new PathRule.Is(m.path("path")), m.span())),
          row(
              "bracketed path",
              Where.PATH,
              "'(' <path:chain> ')'",
              "let seam = length of (hem_line then side_line)",
              "Holds a path together, so that what is done is done to the whole.",
              m -> m.path("path")),
          row(
              STRAIGHT_ON,
              Where.PATH,
              "straight",
              "path outer_leg is side_line then straight then cuff_line",
              "From the end of the path before it straight to the start of the one after it.",
              m -> new PathTerm.StraightOn(m.span())),
          row(
              STRAIGHT_TO,
              Where.PATH,
              "<from:point> to <to:point>",
              "path outer_leg is side_line then hip to knee",
              "The straight line between two points.",
              m -> new PathTerm.Straight(m.reference("from"), m.reference("to"), m.span())),
          row(
              "traced line",
              Where.PATH,
              "traced <line:text>",
              "inner fold_line is traced \"fold\" \"Fold\"",
              "A line of the drawing.",
              m -> new PathTerm.Traced(m.text("line"), m.span())),
          row(
              "named path",
              Where.PATH,
              "<path:point>",
              "path round is hem_line then front.side_line",
              "A line, curve, arc, path or edge by its name.",
              m -> new PathTerm.Named(m.reference("path"), m.span())),
          row(
              "cut path",
              Where.PATH_STEP,
              "from <from:point> [to <to:point>]",
              "path upper_side is side_line from side_waist to side_hip",
              "The stretch between two points on it, or from one on. It stands before other steps.",
              m ->
                  step(
                      (path, span) ->
                          new PathTerm.Part(
                              path,
                              Optional.of(m.reference("from")),
                              m.maybe("to", Reference.class),
                              span))),
          row(
              "cut path to",
              Where.PATH_STEP,
              "to <to:point>",
              "path upper_side is (side_line) to side_hip",
              "The stretch up to a point on it; the path before it stands in brackets.",
              m ->
                  step(
                      (path, span) ->
                          new PathTerm.Part(
                              path, Optional.empty(), Optional.of(m.reference("to")), span))),
          row(
              "reversed",
              Where.PATH_STEP,
              "reversed",
              "path back_way is side_line reversed",
              "Run the other way.",
              m -> step(PathTerm.Reversed::new)),
          row(
              "offset",
              Where.PATH_STEP,
              "offset <distance:number> (left | right)",
              "path facing_line is neck_line offset 5 cm left",
              "Beside it at a distance, to the left or right of the way it runs.",
              m ->
                  step(
                      (path, span) ->
                          new PathTerm.Offset(path, m.number("distance"), m.said("left"), span))),
          row(
              "moved path",
              Where.PATH_STEP,
              "<move>",
              "path left_side is side_line mirrored across centre_line",
              "Mirrored, moved or turned.",
              m ->
                  step((path, span) -> new PathTerm.Moved(path, m.one("move", Move.class), span))));

  /** What is done to a path, which spans the path and all that is done to it so far. */
  record PathStep(BiFunction<PathTerm, Span, PathTerm> done) {}

  private static PathStep step(BiFunction<PathTerm, Span, PathTerm> done) {
    return new PathStep(done);
  }

  private PathForms() {}

  /** What stands between {@code then} and {@code then}. */
  record Stretch(Optional<Direction> leaving, List<Leg> legs, Span span) {
    Stretch {
      legs = List.copyOf(legs);
    }
  }

  private static Statement path(Match m) {
    return new Statement.Path(m.name("name"), m.one("rule", PathRule.class), m.span());
  }

  private static Leg leg(Match m, boolean smoothOn) {
    return new Leg.Curve(
        m.reference("knot"),
        m.maybe("direction", Direction.class),
        m.maybe("tension", Expression.class),
        smoothOn,
        m.span());
  }

  private static Stretch stretch(Match m) {
    List<Leg> legs = new ArrayList<>(m.all("through", Leg.class));
    legs.add(m.one("last", Leg.class));
    return new Stretch(m.maybe("leaving", Direction.class), legs, m.span());
  }

  private static PathRule curve(Match m) {
    List<Stretch> stretches = m.all("stretch", Stretch.class);
    List<Leg> legs = new ArrayList<>();
    for (Stretch stretch : stretches) {
      boolean curved = stretch.legs().get(0) instanceof Leg.Curve;
      boolean afterCurve = !legs.isEmpty() && legs.get(legs.size() - 1) instanceof Leg.Curve;
      boolean afresh = stretch.leaving().isPresent() && !legs.isEmpty();
      if (curved && (afterCurve || afresh)) {
        Span corner = stretch.leaving().map(Direction::span).orElse(stretch.span());
        legs.add(new Leg.Corner(stretch.leaving(), corner));
      }
      legs.addAll(stretch.legs());
    }
    return new PathRule.Smooth(m.reference("start"), stretches.get(0).leaving(), legs, m.span());
  }
}
