package org.hemwright.draft.syntax;

import static org.hemwright.draft.syntax.Form.row;
import static org.hemwright.draft.syntax.HeadingForms.DRAWING;
import static org.hemwright.draft.syntax.Where.ALONG;
import static org.hemwright.draft.syntax.Where.DIRECTION;
import static org.hemwright.draft.syntax.Where.MOVE;
import static org.hemwright.draft.syntax.Where.PICK;
import static org.hemwright.draft.syntax.Where.POINT_RULE;

import java.util.List;
import java.util.Optional;

/** Forms that find a point, and the ways, places and moves that points and paths share. */
final class DrawingForms {
  private static final List<String> EVEN_WORDS =
      List.of("halves", "thirds", "quarters", "fifths", "sixths", "sevenths", "eighths");

  /** The notation of even parts. */
  static final String EVEN = "(" + String.join(" | ", EVEN_WORDS) + ")";

  static final List<Form> ROWS =
      List.of(
          row(
              "point",
              DRAWING,
              "point <name> <rule:point rule>",
              "point side_hip from centre_waist down hip_depth then right quarter",
              "Finds a point and gives it a name.",
              m -> new Statement.Point(m.name("name"), m.one("rule", PointRule.class), m.span())),
          row(
              "at",
              POINT_RULE,
              "at <x:number>, <y:number>",
              "point centre_waist at 0 cm, 0 cm",
              "So far right and so far up from the piece's origin.",
              m -> new PointRule.At(m.number("x"), m.number("y"), m.span())),
          row(
              "from",
              POINT_RULE,
              "from <start:point> <way> {[,] then <way>}",
              "point side_waist from centre_waist right quarter then up waist_rise",
              "From another point, one way after another.",
              m ->
                  new PointRule.From(
                      m.reference("start"), m.all("way", PointRule.Leg.class), m.span())),
          row(
              "way",
              Where.WAY,
              "<direction> <distance:number>",
              "point side_waist from centre_waist right quarter then up waist_rise",
              "A way to go, and how far.",
              m ->
                  new PointRule.Leg(
                      m.one("direction", Direction.class), m.number("distance"), m.span())),
          row(
              "on where",
              POINT_RULE,
              "on <path> where <radius:number> from <centre:point> [[,] <pick>]",
              "point dart_end on shoulder_line where 7 cm from neck",
              "Where a pair of compasses set on a point crosses a path.",
              m ->
                  new PointRule.Compass(
                      m.path("path"),
                      m.number("radius"),
                      m.reference("centre"),
                      pick(m),
                      m.span())),
          row(
              "on",
              POINT_RULE,
              "on <path> <along>",
              "point pocket_top on side_line at 12 cm from start",
              "On a path, at a length or a share of it.",
              m -> new PointRule.On(m.path("path"), m.one("along", Along.class), m.span())),
          row(
              "midway",
              POINT_RULE,
              "midway from <from:point> to <to:point>",
              "point middle midway from neck to shoulder",
              "Halfway on the straight line between two points.",
              m ->
                  new PointRule.Share(
                      new Expression.Literal(
                          0.5, Unit.NONE, new Span(m.span().start(), m.span().start())),
                      m.reference("from"),
                      m.reference("to"),
                      m.span())),
          row(
              "meets",
              POINT_RULE,
              "where <path> meets <other:path> [[,] <pick>]",
              "point corner where side_line meets hem_line",
              "Where two paths cross or touch.",
              m -> new PointRule.Meeting(m.path("path"), m.path("other"), pick(m), m.span())),
          row(
              "square from",
              POINT_RULE,
              "square from <from:point> to <onto:path>",
              "point foot square from bust to centre_line",
              "The place on a path that is straight across from a point.",
              m -> new PointRule.Foot(m.reference("from"), m.path("onto"), m.span())),
          row(
              "is moved",
              POINT_RULE,
              "is <point> {<move>}",
              "point back_neck is front.neck mirrored across front.top to front.hem",
              "Another point, as it is or moved.",
              m -> new PointRule.Moved(m.reference("point"), m.all("move", Move.class), m.span())),
          row(
              "share",
              POINT_RULE,
              "<share:number> from <from:point> to <to:point>",
              "point third 1/3 from neck to shoulder",
              "That share of the straight way between two points.",
              m ->
                  new PointRule.Share(
                      m.number("share"), m.reference("from"), m.reference("to"), m.span())),
          row(
              "two compasses",
              POINT_RULE,
              "<radius:number> from <first:point> and <other radius:number> from <second:point>,"
                  + " (left | right) of <start:point> to <end:point>",
              "point tip 12 cm from a and 8 cm from b, left of a to b",
              "Where two pairs of compasses meet, on one side of the line between them.",
              DrawingForms::twoCompasses),
          row(
              "pick end",
              PICK,
              "(first | last)",
              "point corner where side_line meets hem_line, first",
              "The first or last place along the first path.",
              m ->
                  new PointRule.Pick(
                      m.said("first") ? PointRule.Which.FIRST : PointRule.Which.LAST,
                      Optional.empty())),
          row(
              "pick nearest",
              PICK,
              "nearest <point>",
              "point corner where side_line meets hem_line, nearest side_hem",
              "The place nearest to a point.",
              m -> new PointRule.Pick(PointRule.Which.NEAREST, Optional.of(m.reference("point")))),
          row(
              "compass way",
              DIRECTION,
              "(up | down | left | right)",
              "point centre_hem from centre_waist down skirt_length",
              "One of the four ways on the table.",
              m ->
                  new Direction.Compass(
                      m.said("up")
                          ? Direction.Way.UP
                          : m.said("down")
                              ? Direction.Way.DOWN
                              : m.said("left") ? Direction.Way.LEFT : Direction.Way.RIGHT,
                      m.span())),
          row(
              "at angle",
              DIRECTION,
              "at <angle:number>",
              "point tip from neck at 30 deg 12 cm",
              "At an angle from the right, turning left.",
              m -> new Direction.AtAngle(m.number("angle"), m.span())),
          row(
              "toward",
              DIRECTION,
              "toward <point>",
              "point tip from neck toward shoulder 4 cm",
              "Straight toward a point.",
              m -> new Direction.Toward(m.reference("point"), m.span())),
          row(
              "away from",
              DIRECTION,
              "away from <point>",
              "point tip from neck away from shoulder 4 cm",
              "Straight away from a point.",
              m -> new Direction.AwayFrom(m.reference("point"), m.span())),
          row(
              "as from",
              DIRECTION,
              "as from <from:point> to <to:point>",
              "point tip from hem as from neck to shoulder 4 cm",
              "The way that leads from one point to another.",
              m -> new Direction.AsFromTo(m.reference("from"), m.reference("to"), m.span())),
          row(
              "along way",
              DIRECTION,
              "along <path>",
              "point tip from hem along side_line 4 cm",
              "The way a path runs at the place nearest.",
              m -> new Direction.Along(m.path("path"), m.span())),
          row(
              "square to",
              DIRECTION,
              "square (to | right of) <path>",
              "point tip from hem square to side_line 4 cm",
              "A quarter turn to the left of the way a path runs there, or to the right of it.",
              m -> new Direction.SquareTo(m.path("path"), m.said("right"), m.span())),
          row(
              "turned way",
              DIRECTION,
              "turned <angle:number> from <direction>",
              "point tip from hem turned 10 deg from up 4 cm",
              "Another way, turned left by an angle.",
              m ->
                  new Direction.Turned(
                      m.number("angle"), m.one("direction", Direction.class), m.span())),
          row(
              "mirrored",
              MOVE,
              "mirrored across <axis>",
              "point left_tip is right_tip mirrored across centre_top to centre_hem",
              "Across a straight line.",
              m -> new Move.Mirrored(m.path("axis"), m.span())),
          row(
              "moved from",
              MOVE,
              "moved from <from:point> to <to:point>",
              "point tip is neck moved from waist to hem",
              "By the step from one point to another.",
              m -> new Move.MovedFromTo(m.reference("from"), m.reference("to"), m.span())),
          row(
              "moved",
              MOVE,
              "moved <direction> <distance:number>",
              "point tip is neck moved right 3 cm",
              "One way, by a length.",
              m ->
                  new Move.Moved(
                      m.one("direction", Direction.class), m.number("distance"), m.span())),
          row(
              "turned",
              MOVE,
              "turned <angle:number> about <point>",
              "point tip is neck turned 10 deg about waist",
              "Turned left by an angle about a point.",
              m -> new Move.Turned(m.number("angle"), m.reference("point"), m.span())),
          row(
              "along length",
              ALONG,
              "at <amount:number> from (start | end)",
              "notch side at 12 cm from start",
              "A length or a share of it from its start or end.",
              m -> new Along.Measured(m.number("amount"), m.said("end"), m.span())),
          row(
              "along even",
              ALONG,
              "at " + EVEN,
              "notch lower at quarters",
              "At even parts, without the ends: halves, thirds, quarters and so on to eighths.",
              m -> new Along.Even(parts(m), m.span())),
          row(
              "along point",
              ALONG,
              "at <point>",
              "notch side at side_hip",
              "At a point that lies on it.",
              m -> new Along.AtPoint(m.reference("point"), m.span())),
          row(
              "bring",
              DRAWING,
              "bring <part:name> {<move>}",
              "bring bodice mirrored across centre_top to centre_hem",
              "All points and paths of a part or piece, as they are or moved, under their names.",
              m -> new Statement.Bring(m.name("part"), m.all("move", Move.class), m.span())));

  private DrawingForms() {}

  /** Into how many even parts. */
  static int parts(Match m) {
    for (int i = 0; i < EVEN_WORDS.size(); i++) {
      if (m.said(EVEN_WORDS.get(i))) {
        return i + 2;
      }
    }
    throw new IllegalStateException("no parts were said");
  }

  private static PointRule.Pick pick(Match m) {
    return m.maybe("pick", PointRule.Pick.class).orElse(PointRule.Pick.ONLY);
  }

  private static PointRule twoCompasses(Match m) {
    Reference first = m.reference("first");
    Reference second = m.reference("second");
    Reference start = m.reference("start");
    Reference end = m.reference("end");
    boolean same = start.text().equals(first.text()) && end.text().equals(second.text());
    boolean turned = start.text().equals(second.text()) && end.text().equals(first.text());
    if (!same && !turned) {
      throw new Refusal("compass-side", start.span().to(end.span()))
          .with("first", first.text())
          .with("second", second.text())
          .mendedBy(first.text() + " to " + second.text());
    }
    return new PointRule.TwoCompasses(
        m.number("radius"),
        first,
        m.number("other radius"),
        second,
        m.said("left") == same,
        m.span());
  }
}
