package org.hemwright.draft.syntax;

import static org.hemwright.draft.syntax.Form.row;
import static org.hemwright.draft.syntax.HeadingForms.DRAWING;
import static org.hemwright.draft.syntax.HeadingForms.sizes;
import static org.hemwright.draft.syntax.Where.EDGE_ALLOWANCE;
import static org.hemwright.draft.syntax.Where.FINISH;
import static org.hemwright.draft.syntax.Where.GRAIN_RULE;
import static org.hemwright.draft.syntax.Where.PIECE;
import static org.hemwright.draft.syntax.Where.SEAM;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.piece.BodyOpening;
import org.hemwright.pattern.piece.Notch;

/**
 * Forms of what stands in a piece besides its drawing, and of notches in a seam: a table, one entry
 * for each form, in the order of the language's reference.
 */
final class PieceForms {
  static final List<Form> ROWS =
      List.of(
          row(
              "cut",
              PIECE,
              "cut <count> of <fabric:name> {, (mirrored | on the fold)}",
              "cut 2 of main, on the fold",
              "How many to cut of which fabric; mirrored gives lefts and rights.",
              m ->
                  new Statement.Cut(
                      m.count("count"),
                      m.name("fabric"),
                      m.said("mirrored"),
                      m.said("fold"),
                      m.span())),
          row(
                  "copies",
                  PIECE,
                  "copies <copy:name> {, <copy:name>}",
                  "copies left, right",
                  "Names for the cut copies, so that a seam can tell them apart.",
                  m -> new Statement.Copies(m.all("copy", Name.class), m.span()))
              .onlyOnce(),
          row(
                  "right side up",
                  PIECE,
                  "right side up",
                  "right side up",
                  "The piece is laid with the right side of the cloth up, never turned over.",
                  m -> new Statement.RightSideUp(m.span()))
              .onlyOnce(),
          row(
                  "outline",
                  PIECE,
                  "outline <edge:outline edge> {, <edge:outline edge>}",
                  "outline waist is waist_line, side is side_line, hem is hem_line, centre is"
                      + " straight",
                  "The stitch line, edge by edge round the piece; each edge gets its name here.",
                  m -> new Statement.Outline(m.all("edge", Statement.OutlineEdge.class), m.span()))
              .onlyOnce(),
          row(
              "outline edge",
              Where.OUTLINE_EDGE,
              "<name> is <path:chain>",
              "outline top is a to b, side is b to c, hem is c to a",
              "An edge's name and the path it takes.",
              m -> new Statement.OutlineEdge(m.name("name"), m.path("path"), m.span())),
          row(
                  "rectangle",
                  PIECE,
                  "rectangle <width:number> by <height:number>, edges <edge:name>, <edge:name>,"
                      + " <edge:name>, <edge:name>",
                  "rectangle 60 cm by 8 cm, edges lower, end_right, upper, end_left",
                  "A plain rectangle and the names of its lower, right, upper and left edge.",
                  m ->
                      new Statement.Rectangle(
                          m.number("width"),
                          m.number("height"),
                          m.all("edge", Name.class),
                          m.span()))
              .onlyOnce(),
          row(
                  "outline as",
                  PIECE,
                  "outline as [drafted] <piece:name> {, <change:outline change>}",
                  "outline as front, hem taken in 3 cm",
                  "The outline of another piece under the same names, for a lining or a facing cut"
                      + " whole; as drafted, it is taken before its darts, cuts and pleats.",
                  m ->
                      new Statement.OutlineAs(
                          m.said("drafted"),
                          m.name("piece"),
                          m.all("change", Statement.OutlineChange.class),
                          m.span()))
              .onlyOnce(),
          row(
              "edge moved",
              Where.OUTLINE_CHANGE,
              "<edge:name> (taken in | let out) <amount:number>",
              "outline as front, hem taken in 3 cm",
              "The edge lies so far inside, or outside, and its neighbours follow.",
              m ->
                  new Statement.OutlineChange(
                      m.name("edge"), m.said("taken"), m.number("amount"), m.span())),
          row(
                  "facing",
                  PIECE,
                  "facing of <piece:name> along <along:name> {and <along:name>}, depth"
                      + " <depth:number>, edges <edge:name> {, <edge:name>}",
                  "facing of front along waist, depth 6 cm, edges waist, side, lower, centre",
                  "A strip inside another piece along some of its edges, its darts and pleats"
                      + " closed. Its edges: those along, the end there, the inner edge, the end at"
                      + " the start.",
                  PieceForms::facing)
              .onlyOnce(),
          row(
              "fold",
              PIECE,
              "fold <edge:name>",
              "fold centre",
              "The edge that lies on the fold of the cloth.",
              m -> new Statement.Fold(m.name("edge"), m.span())),
          row(
              "allowance",
              PIECE,
              "allowance <usual:rule> {, <edge:edge allowance>}",
              "allowance 1 cm, hem 2.5 cm turned back",
              "The seam allowance all round, and the edges that differ.",
              PieceForms::allowances),
          row(
              "allowance by edge",
              PIECE,
              "allowance <edge:edge allowance> {, <edge:edge allowance>}",
              "allowance hem 2.5 cm turned back",
              "The allowance of single edges, where no other is usual.",
              PieceForms::allowances),
          row(
              "no allowance",
              EDGE_ALLOWANCE,
              "<edge:name> none",
              "allowance 1 cm, centre none",
              "The edge is cut on the stitch line.",
              PieceForms::edgeAllowance),
          row(
              "turned twice",
              EDGE_ALLOWANCE,
              "<edge:name> <fold:rule> then <fold:rule> turned back",
              "allowance 1 cm, top 3 cm then 1 cm turned back",
              "Turned back twice: the hem and its turn-under.",
              PieceForms::edgeAllowance),
          row(
              "edge allowance",
              EDGE_ALLOWANCE,
              "<edge:name> <fold:rule> [turned back]",
              "allowance 1 cm, hem 2.5 cm turned back",
              "Its own width; turned back it is folded along the edge and its ends follow.",
              PieceForms::edgeAllowance),
          row(
              "corner",
              PIECE,
              "corner <first:name> and <second:name> <finish>",
              "corner side and hem turned back over hem",
              "How the cut line goes round the corner between two edges.",
              m ->
                  new Statement.Corner(
                      m.name("first"),
                      m.name("second"),
                      m.one("finish", Statement.Finish.class),
                      m.span())),
          row(
              "mitred",
              FINISH,
              "mitred [up to <limit:literal>]",
              "corner side and hem mitred up to 2.5",
              "Both cut lines run on until they meet, cut short beyond that many allowances.",
              PieceForms::mitred),
          row(
              "square corner",
              FINISH,
              "square to <edge:name>",
              "corner side and hem square to side",
              "The allowance of that edge, sewn first, ends square to it.",
              m -> new Statement.Finish.Square(m.name("edge"))),
          row(
              "turned back corner",
              FINISH,
              "turned back over <edge:name>",
              "corner side and hem turned back over hem",
              "The cut line is mirrored over that edge, so that the folded hem lies flat.",
              m -> new Statement.Finish.TurnedBack(m.name("edge"))),
          row(
              "stepped corner",
              FINISH,
              "stepped",
              "corner side and vent stepped",
              "Each allowance ends square to its own edge, with a step between.",
              m -> new Statement.Finish.Stepped()),
          row(
              "notch",
              PIECE,
              "[double] notch <edge:name> <along> [as <name>] [when <condition>] [in sizes"
                  + " <sizes>]",
              "double notch side at 12 cm from start as pocket_notch",
              "A notch at a place on an edge, single or double, with a name if a seam needs it.",
              PieceForms::notch),
          row(
              "seam notch",
              SEAM,
              "[double] notch <along> [as <name>]",
              "notch at 40% from start",
              "A notch on every edge of the seam at once, measured along the first.",
              m ->
                  new Statement.SeamNotch(
                      kind(m), m.one("along", Along.class), m.maybe("name", Name.class), m.span())),
          row(
                  "grain",
                  PIECE,
                  "grain <rule:grain rule>",
                  "grain along centre",
                  "How the piece lies to the selvedge.",
                  m -> new Statement.Grain(m.one("rule", Statement.GrainRule.class), m.span()))
              .onlyOnce(),
          row(
              "grain along",
              GRAIN_RULE,
              "along <path>",
              "grain along centre",
              "Along a straight path or edge.",
              m -> new Statement.GrainRule.Along(m.path("path"))),
          row(
              "grain from",
              GRAIN_RULE,
              "from <from:point> to <to:point>",
              "grain from centre_hem to centre_waist",
              "As from one point to another.",
              m -> new Statement.GrainRule.FromTo(m.reference("from"), m.reference("to"))),
          row(
              "grain way",
              GRAIN_RULE,
              "<direction>",
              "grain up",
              "One way.",
              m -> new Statement.GrainRule.Way(m.one("direction", Direction.class))),
          row(
                  "stretch",
                  PIECE,
                  "stretch (across | along)",
                  "stretch across",
                  "Which way the cloth must stretch most, across the grain or along it.",
                  m -> new Statement.PieceStretch(m.said("across"), m.span()))
              .onlyOnce(),
          row(
              "drill",
              PIECE,
              "drill <name> at <point> [<words:text>] [in sizes <sizes>]",
              "drill dart_tip at dart_point \"Dart point\"",
              "A mark inside the piece to carry over to the cloth.",
              m ->
                  new Statement.Drill(
                      m.name("name"), m.reference("point"), words(m), sizes(m), m.span())),
          row(
              "inner",
              DRAWING,
              "inner <name> is <path:chain> [<words:text>]",
              "inner fold_line is hem_left to hem_right \"Fold\"",
              "A line drawn inside the piece and not sewn to anything.",
              m -> new Statement.Inner(m.name("name"), m.path("path"), words(m), m.span())),
          row(
              "placement",
              DRAWING,
              "placement <name> is <path:chain> [<words:text>]",
              "placement pocket_line is pocket_left to pocket_right \"Pocket\"",
              "A line that another piece's edge is sewn to.",
              m -> new Statement.Placement(m.name("name"), m.path("path"), words(m), m.span())),
          row(
              "label",
              PIECE,
              "label <words:text> at <point> [in sizes <sizes>]",
              "label \"Centre front\" at centre_waist",
              "Your own words at a place on the piece.",
              m -> new Statement.Label(m.text("words"), m.reference("point"), sizes(m), m.span())),
          row(
              "lengthen",
              PIECE,
              "lengthen at <point>",
              "lengthen at side_hip",
              "Where the piece is lengthened or shortened, square to the grain.",
              m -> new Statement.Lengthen(m.reference("point"), m.span())),
          row(
              "split",
              PIECE,
              "split <name> is <line:chain> {and <line:chain>}, allowance <allowance:number>"
                  + " [into <part:name> {, <part:name>}]",
              "split halves is fold_left to fold_right, allowance 1 cm into left_band, right_band",
              "How the piece is cut apart, and sewn together again, where a cloth is too narrow for"
                  + " the whole.",
              PieceForms::split),
          row(
              "split on the fold",
              PIECE,
              "split <name> on the fold, allowance <allowance:number> [into <part:name>]",
              "split centre_seam on the fold, allowance 1.5 cm",
              "Where a cloth is too narrow, the piece is cut in halves, with a seam in place of the"
                  + " fold.",
              PieceForms::split),
          row(
              "level",
              PIECE,
              "level <name> at <point>",
              "level hip at side_hip",
              "The height of a body level on this piece.",
              m -> new Statement.Level(m.name("name"), m.reference("point"), m.span())),
          row(
              "opening",
              PIECE,
              "opening <edge:name> [over <measurement:name>] [, closed by (zip | buttons | hooks |"
                  + " snaps | ties) <length:number>]",
              "opening waist over hip, closed by zip 20 cm",
              "An edge that must go over the body: over which measurement, and what closes a slit"
                  + " beside it.",
              PieceForms::opening),
          row(
                  "stack",
                  PIECE,
                  "stack at <point>",
                  "stack at centre_waist",
                  "The point at which the sizes lie on each other when drawn together.",
                  m -> new Statement.Stack(m.reference("point"), m.span()))
              .onlyOnce(),
          row(
              "ease",
              Where.SEAM_CLAUSE,
              "ease <least:number> [to <most:number>]",
              "seam sleeve_cap sleeve.cap with front.armhole then back.armhole, ease 1 cm to 2 cm",
              "How much longer the first layer is than the others, as a length or a share.",
              m ->
                  new Statement.SeamClause.Ease(
                      m.number("least"), m.maybe("most", Expression.class))),
          row(
              "stretched",
              Where.SEAM_CLAUSE,
              "stretched <by:number>",
              "seam neck neckband.edge with front.neck, stretched 15%",
              "The first layer is shorter by this and stretched on.",
              m -> new Statement.SeamClause.Stretched(m.number("by"))),
          row(
              "even marks",
              Where.SEAM_CLAUSE,
              DrawingForms.EVEN + " at <mark:name> {and <mark:name>}",
              "seam waist_seam band.lower with every panel.waist, quarters at sides and centres",
              "Notches at even parts of the first layer, which meet these places of the others.",
              m -> new Statement.SeamClause.Even(DrawingForms.parts(m), m.all("mark", Name.class))),
          row(
              "elastic",
              Where.LEFT_EDGE,
              "elastic <name> in <place:piece>, width <width:number>, length <length:number>,"
                  + " overlap <overlap:number> {, <clause:elastic clause>}",
              "elastic waist_elastic in band, width elastic_width, length 90% of waist, overlap 2.5"
                  + " cm",
              "An elastic in a casing, a piece or an edge that is turned back: its width, its"
                  + " length when sewn, and its overlap.",
              PieceForms::elastic),
          row(
              "elastic round",
              Where.ELASTIC_CLAUSE,
              "round <measurement:name>",
              "elastic waist_elastic in band, width 3 cm, length 90% of waist, overlap 2.5 cm,"
                  + " round waist",
              "The measurement that it is to hold.",
              m -> new Statement.ElasticClause.Round(m.name("measurement"))),
          row(
              "elastic over",
              Where.ELASTIC_CLAUSE,
              "over <measurement:name>",
              "elastic waist_elastic in band, width 3 cm, length 90% of waist, overlap 2.5 cm, over"
                  + " hip",
              "The measurement that it must pass.",
              m -> new Statement.ElasticClause.Over(m.name("measurement"))),
          row(
              "elastic stretching",
              Where.ELASTIC_CLAUSE,
              "stretching <by:number>",
              "elastic waist_elastic in band, width 3 cm, length 90% of waist, overlap 2.5 cm,"
                  + " stretching 80%",
              "How far it stretches.",
              m -> new Statement.ElasticClause.Stretching(m.number("by"))));

  private PieceForms() {}

  private static Statement split(Match m) {
    List<PathTerm> lines = m.all("line", PathTerm.class);
    List<Name> parts = m.all("part", Name.class);
    int wanted = lines.size() + 1;
    if (!lines.isEmpty() && !parts.isEmpty() && parts.size() != wanted) {
      throw new Refusal("split-parts", m.span())
          .with("wanted", Argument.of(wanted))
          .with("count", Argument.of(parts.size()));
    }
    return new Statement.Split(m.name("name"), lines, m.number("allowance"), parts, m.span());
  }

  private static Statement facing(Match m) {
    List<Name> along = m.all("along", Name.class);
    List<Name> edges = m.all("edge", Name.class);
    if (edges.size() != along.size() + 3) {
      throw new Refusal("facing-edges", m.span())
          .with("wanted", Argument.of(along.size() + 3))
          .with("count", Argument.of(edges.size()));
    }
    return new Statement.Facing(m.name("piece"), along, m.number("depth"), edges, m.span());
  }

  private static Statement opening(Match m) {
    Optional<Statement.Closure> closure =
        m.maybe("length", Expression.class)
            .map(
                length ->
                    new Statement.Closure(
                        Arrays.stream(BodyOpening.Kind.values())
                            .filter(kind -> m.said(kind.name().toLowerCase(Locale.ROOT)))
                            .findFirst()
                            .orElseThrow(),
                        length));
    return new Statement.Opening(
        m.name("edge"), m.maybe("measurement", Name.class), closure, m.span());
  }

  private static Statement elastic(Match m) {
    List<Statement.ElasticClause> clauses = m.all("clause", Statement.ElasticClause.class);
    if (clauses.stream().map(Object::getClass).distinct().count() < clauses.size()) {
      throw new Refusal("clause-twice", m.span());
    }
    return new Statement.Elastic(
        m.name("name"),
        m.reference("place"),
        m.number("width"),
        m.number("length"),
        m.number("overlap"),
        clauses,
        m.span());
  }

  private static Optional<String> words(Match m) {
    return m.maybe("words", String.class);
  }

  private static Notch.Kind kind(Match m) {
    return m.said("double") ? Notch.Kind.DOUBLE : Notch.Kind.SINGLE;
  }

  private static Statement.Finish mitred(Match m) {
    Optional<Expression.Literal> limit = m.maybe("limit", Expression.Literal.class);
    limit.ifPresent(LiteralKinds::plain);
    return new Statement.Finish.Mitred(limit);
  }

  private static Statement allowances(Match m) {
    return new Statement.Allowances(
        m.maybe("usual", NumberRule.class), m.all("edge", Statement.EdgeAllowance.class), m.span());
  }

  private static Statement.EdgeAllowance edgeAllowance(Match m) {
    return new Statement.EdgeAllowance(
        m.name("edge"), m.all("fold", NumberRule.class), m.said("turned"), m.span());
  }

  private static Statement notch(Match m) {
    return new Statement.NotchAt(
        kind(m),
        m.name("edge"),
        m.one("along", Along.class),
        m.maybe("name", Name.class),
        m.maybe("condition", Condition.class),
        sizes(m),
        m.span());
  }
}
