package org.hemwright.draft.syntax;

import static org.hemwright.draft.syntax.Form.row;
import static org.hemwright.draft.syntax.Where.CUT_CLAUSE;
import static org.hemwright.draft.syntax.Where.DART_CLAUSE;
import static org.hemwright.draft.syntax.Where.PIECE;
import static org.hemwright.draft.syntax.Where.PLEAT_CLAUSE;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;

/** Forms that shape a piece after it is drafted: darts, slash and spread, pleats, gathers. */
final class ShapeForms {
  private static final String DART =
      "dart waist_dart on waist at 9 cm from start to dart_point, opening 2.5 cm";
  private static final String SLASH =
      "slash hem at 50% from start to waist at 50% from start, spread 6 cm";
  private static final String PLEAT =
      "pleat side_pleat on waist at 8 cm from start to hem at 8 cm from start, depth 3 cm, knife"
          + " toward end";

  static final List<Form> ROWS =
      List.of(
          row(
              "dart",
              PIECE,
              "dart <name> on <edge:name> <along> to <apex:point> {, <clause:dart clause>}",
              DART,
              "A dart from a place on an edge, the middle between its legs, to its apex. The edge is"
                  + " trued with the dart closed, and the cap follows from that.",
              ShapeForms::dart),
          row(
              "pivot",
              PIECE,
              "pivot <dart:name> [by <share:number>] to <edge:name> <along> (as <name> | left open)"
                  + " {, <clause:dart clause>}",
              "pivot waist_dart by 50% to side at 12 cm from start as side_dart",
              "Turns a dart, or a share of it, about its apex into another place: a new dart, or"
                  + " flare where it is left open.",
              ShapeForms::pivot),
          row(
              "merge",
              PIECE,
              "merge <dart:name> into <other:name>",
              "merge side_dart into waist_dart",
              "Closes one dart into another that has the same apex; their angles add.",
              m -> new Statement.Merge(m.name("dart"), m.name("other"), m.span())),
          row(
              "slash",
              PIECE,
              "slash <edge:name> <along> to <other:name> <there:along> {, <clause:cut clause>}",
              SLASH,
              "Cuts the piece from a place on one edge to a place on another and spreads it; the"
                  + " second is a hinge, unless it opens too.",
              ShapeForms::slash),
          row(
              "pleat",
              PIECE,
              "pleat <name> on <edge:name> <along> to <other:name> <there:along> {, <clause:pleat"
                  + " clause>}",
              PLEAT,
              "Widens the piece from a place on one edge to a place on another, and folds what was"
                  + " added at the first.",
              ShapeForms::pleat),
          row(
              "gathers",
              PIECE,
              "gathers <name> on <edge:name> [from <from:point> to <to:point>] drawn to"
                  + " <length:number>",
              "gathers front_gathers on waist drawn to 60%",
              "Draws an edge, or a stretch of it, up to a length or to a share of its own.",
              m ->
                  new Statement.Gathers(
                      m.name("name"),
                      m.name("edge"),
                      m.maybe("from", Reference.class),
                      m.maybe("to", Reference.class),
                      m.number("length"),
                      m.span())),
          row(
              "dart opening",
              DART_CLAUSE,
              "opening <opening:number>",
              DART,
              "How far the legs lie apart at the edge.",
              m -> new ShapeClause.Opening(m.number("opening"))),
          row(
              "dart angle",
              DART_CLAUSE,
              "angle <angle:number>",
              "dart waist_dart on waist at 9 cm from start to dart_point, angle 12 deg",
              "The angle between the legs, instead.",
              m -> new ShapeClause.Angle(m.number("angle"))),
          row(
              "dart stitched short",
              DART_CLAUSE,
              "stitched <short:number> short",
              "dart waist_dart on waist at 9 cm from start to dart_point, opening 2.5 cm, stitched"
                  + " 1 cm short",
              "How far short of the apex the stitching ends.",
              m -> new ShapeClause.Stitched(m.number("short"))),
          row(
              "dart pressed",
              DART_CLAUSE,
              "pressed toward (start | end)",
              "dart waist_dart on waist at 9 cm from start to dart_point, opening 2.5 cm, pressed"
                  + " toward end",
              "Which way it is pressed: toward the start of the edge, as usual, or toward its end.",
              m -> new ShapeClause.Pressed(m.said("start"))),
          row(
              "trued over",
              EnumSet.of(DART_CLAUSE, CUT_CLAUSE),
              "trued over <reach:number>",
              "slash hem at 50% from start to waist at 50% from start, spread 6 cm, trued over 4 cm",
              "How far on both sides the edge is redrawn; farther off it stays as drafted.",
              m -> new ShapeClause.Trued(m.number("reach"))),
          row(
              "cut spread",
              CUT_CLAUSE,
              "spread <spread:number> [and <near:number>]",
              SLASH,
              "How far the cut opens at the first edge, and at the other if it opens there too.",
              m -> new ShapeClause.Spread(m.number("spread"), m.maybe("near", Expression.class))),
          row(
              "cut turned",
              CUT_CLAUSE,
              "turned <angle:number>",
              "slash hem at 50% from start to waist at 50% from start, turned 8 deg",
              "The angle by which it opens about its end at the other edge, instead.",
              m -> new ShapeClause.Turned(m.number("angle"))),
          row(
              "left as cut",
              CUT_CLAUSE,
              "left as cut",
              "slash hem at 50% from start to waist at 50% from start, spread 6 cm, left as cut",
              "The edges are joined straight and not redrawn.",
              m -> new ShapeClause.AsCut()),
          row(
              "pleat depth",
              PLEAT_CLAUSE,
              "depth <depth:number>",
              PLEAT,
              "How far the cloth beneath a fold reaches; the piece grows by twice as much.",
              m -> new ShapeClause.Depth(m.number("depth"))),
          row(
              "knife pleat",
              PLEAT_CLAUSE,
              "knife toward (start | end)",
              PLEAT,
              "One fold, which points toward the start of the edge or toward its end.",
              m ->
                  new ShapeClause.Fold(
                      m.said("start")
                          ? ShapeClause.Fold.Kind.KNIFE_TOWARD_START
                          : ShapeClause.Fold.Kind.KNIFE_TOWARD_END)),
          row(
              "box pleat",
              PLEAT_CLAUSE,
              "box",
              "pleat middle_pleat on waist at 50% from start to hem at 50% from start, depth 3 cm,"
                  + " box",
              "Two folds that point away from each other and meet beneath.",
              m -> new ShapeClause.Fold(ShapeClause.Fold.Kind.BOX)),
          row(
              "inverted pleat",
              PLEAT_CLAUSE,
              "inverted",
              "pleat middle_pleat on waist at 50% from start to hem at 50% from start, depth 3 cm,"
                  + " inverted",
              "Two folds that point toward each other and meet on top.",
              m -> new ShapeClause.Fold(ShapeClause.Fold.Kind.INVERTED)),
          row(
              "fading pleat",
              PLEAT_CLAUSE,
              "fading",
              "pleat soft_pleat on waist at 8 cm from start to hem at 8 cm from start, depth 2 cm,"
                  + " knife toward end, fading",
              "It runs out to nothing at the other edge.",
              m -> new ShapeClause.Fading()),
          row(
              "pleats repeated",
              PLEAT_CLAUSE,
              "repeated <times:count> times every <apart:number>",
              "pleat front_pleats on waist at 4 cm from start to hem at 4 cm from start, depth 2 cm,"
                  + " knife toward end, repeated 3 times every 5 cm",
              "So many of them in all, side by side toward the end of the edge.",
              m -> new ShapeClause.Repeated(m.count("times"), m.number("apart"))));

  private ShapeForms() {}

  private static List<ShapeClause> clauses(Match m) {
    List<ShapeClause> clauses = m.all("clause", ShapeClause.class);
    for (int i = 0; i < clauses.size(); i++) {
      for (ShapeClause before : clauses.subList(0, i)) {
        if (before.getClass().equals(clauses.get(i).getClass())) {
          throw new Refusal("clause-twice", m.span());
        }
      }
    }
    return clauses;
  }

  private static boolean has(List<ShapeClause> clauses, Class<? extends ShapeClause> kind) {
    return clauses.stream().anyMatch(kind::isInstance);
  }

  private static Statement dart(Match m) {
    List<ShapeClause> clauses = clauses(m);
    if (has(clauses, ShapeClause.Opening.class) == has(clauses, ShapeClause.Angle.class)) {
      throw new Refusal("dart-one-opening", m.span());
    }
    return new Statement.Dart(
        m.name("name"),
        m.name("edge"),
        m.one("along", Along.class),
        m.reference("apex"),
        clauses,
        m.span());
  }

  private static Statement pivot(Match m) {
    List<ShapeClause> clauses = clauses(m);
    if (has(clauses, ShapeClause.Opening.class) || has(clauses, ShapeClause.Angle.class)) {
      throw new Refusal("pivot-keeps-angle", m.span());
    }
    return new Statement.Pivot(
        m.maybe("share", Expression.class),
        m.name("dart"),
        m.name("edge"),
        m.one("along", Along.class),
        m.maybe("name", Name.class),
        clauses,
        m.span());
  }

  private static Statement slash(Match m) {
    List<ShapeClause> clauses = clauses(m);
    if (has(clauses, ShapeClause.Spread.class) == has(clauses, ShapeClause.Turned.class)) {
      throw new Refusal("slash-one-spread", m.span());
    }
    return new Statement.Slash(
        m.name("edge"),
        m.one("along", Along.class),
        m.name("other"),
        m.one("there", Along.class),
        clauses,
        m.span());
  }

  private static Statement pleat(Match m) {
    List<ShapeClause> clauses = clauses(m);
    if (!has(clauses, ShapeClause.Depth.class) || !has(clauses, ShapeClause.Fold.class)) {
      throw new Refusal("pleat-incomplete", m.span());
    }
    Optional<ShapeClause.Repeated> repeated =
        clauses.stream()
            .filter(ShapeClause.Repeated.class::isInstance)
            .map(ShapeClause.Repeated.class::cast)
            .findFirst();
    if (repeated.filter(times -> times.times() < 1).isPresent()) {
      throw new Refusal("pleat-incomplete", m.span());
    }
    return new Statement.Pleat(
        m.name("name"),
        m.name("edge"),
        m.one("along", Along.class),
        m.name("other"),
        m.one("there", Along.class),
        clauses,
        m.span());
  }
}
