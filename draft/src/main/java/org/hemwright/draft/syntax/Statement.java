package org.hemwright.draft.syntax;

import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.body.Wearers;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.make.Cord;
import org.hemwright.pattern.piece.BodyOpening;
import org.hemwright.pattern.piece.Notch;

/**
 * One statement: what one line of the document says.
 *
 * <p>Each record names the form it is written in; {@code NAME} is a new name, {@code EXPR} a
 * number, the rest as in the records of this package. All kinds stand in this one file, as a table
 * does, so that the language is seen at one look and nothing else can be a statement.
 */
public sealed interface Statement {
  /** The whole statement's text, without the blank before it and the comment after it. */
  Span span();

  /** A statement that stands at the left edge and owns no others. */
  sealed interface Heading extends Statement {}

  /** A statement that gives a number or draws something, at the left edge or in a section. */
  sealed interface Definition extends Statement {
    /** The name it gives. */
    Name name();
  }

  /**
   * A line that could not be read; the document's findings say why.
   *
   * <p>What would follow from it alone is not told again: a name that it would have given is known
   * to be missing, and so are the names of its body.
   *
   * @param word its first word, {@code point} or {@code piece}; empty when it starts with none
   * @param name the name it would have given, where that much was read
   * @param body the lines below it, where it would have owned them
   */
  record Unread(String word, Optional<Name> name, List<Statement> body, Span span)
      implements Section {
    public Unread {
      body = List.copyOf(body);
    }
  }

  // --- headings -------------------------------------------------------------------------------

  /** {@code language 1}. */
  record Language(int version, Span span) implements Heading {}

  /** {@code pattern "Sandling skirt"}. */
  record Title(String text, Span span) implements Heading {}

  /** {@code version 1.0}. */
  record Version(String text, Span span) implements Heading {}

  /** {@code dated 2026-11-25}. */
  record Dated(java.time.LocalDate date, Span span) implements Heading {}

  /** {@code by "Tern Cove Patterns"}. */
  record By(String house, Span span) implements Heading {}

  /** {@code logo "tern.svg"}: one of the designer's pictures. */
  record Logo(String file, Span span) implements Heading {}

  /** {@code font "Tern.ttf"}, {@code font "Tern-Bold.ttf" for bold}. */
  record Font(String file, Use use, Span span) implements Heading {
    /** What a font is for. */
    public enum Use {
      WORDS,
      BOLD,
      ITALIC,
      TITLES
    }
  }

  /** {@code footer "For your own sewing"}: at the foot of each page. */
  record Footer(String text, Span span) implements Heading {}

  /** {@code sizes from "sizes.csv" base 14}. */
  record SizesFrom(String file, NumberRule.SizeWord base, Span span) implements Heading {}

  /** {@code units centimetres}, {@code units inches}: which stands first on paper. */
  record Units(boolean inches, Span span) implements Heading {}

  /** {@code spelling British}, {@code spelling American}. */
  record Spelling(boolean british, Span span) implements Heading {}

  /** {@code for women}, {@code for women, petite}: whom the chart is for. */
  record For(Wearers.People people, List<Wearers.Build> builds, Span span) implements Heading {
    public For {
      builds = List.copyOf(builds);
    }
  }

  // --- numbers --------------------------------------------------------------------------------

  /** {@code dial NAME = EXPR from EXPR to EXPR "text"}; the three are literals. */
  record Dial(
      Name name,
      Expression.Literal value,
      Expression.Literal from,
      Expression.Literal to,
      String text,
      Span span)
      implements Heading, Definition {}

  /** {@code let NAME = RULE}. */
  record Let(Name name, NumberRule rule, Span span) implements Heading, Definition {}

  /** {@code solve NAME so that EXPR = EXPR within EXPR and EXPR}. */
  record Solve(
      Name name, Expression left, Expression right, Expression low, Expression high, Span span)
      implements Heading, Definition {}

  // --- drawn things ---------------------------------------------------------------------------

  /** {@code point NAME RULE}. */
  record Point(Name name, PointRule rule, Span span) implements Definition {}

  /** {@code line|curve|arc|path NAME RULE}. */
  record Path(Name name, PathRule rule, Span span) implements Definition {}

  /**
   * {@code bring PART}, {@code bring PART mirrored across a to b}: every point and path of a part
   * or piece, moved, under its own names.
   */
  record Bring(Name part, List<Move> moves, Span span) implements Statement {
    public Bring {
      moves = List.copyOf(moves);
    }
  }

  // --- sections -------------------------------------------------------------------------------

  /** A left-edge word that owns the indented lines below it; its span is its own line. */
  sealed interface Section extends Statement {
    /** The indented lines, in order. */
    List<Statement> body();
  }

  /** {@code fabric NAME knit "Cotton jersey"}. */
  record FabricSection(
      Name name, Fabric.Kind kind, Optional<String> title, List<Statement> body, Span span)
      implements Section {
    public FabricSection {
      body = List.copyOf(body);
    }
  }

  /** {@code part NAME}: a draft that pieces use. */
  record PartSection(Name name, List<Statement> body, Span span) implements Section {
    public PartSection {
      body = List.copyOf(body);
    }
  }

  /** {@code piece NAME "title" number N [in sizes A to B]}. */
  record PieceSection(
      Name name,
      String title,
      int number,
      Optional<Sizes> sizes,
      Optional<TracedFrom> traced,
      List<Statement> body,
      Span span)
      implements Section {
    public PieceSection {
      body = List.copyOf(body);
    }
  }

  /** {@code seam NAME RUN with RUN [with RUN] [, CLAUSE …]}. */
  record SeamSection(
      Name name, List<Run> layers, List<SeamClause> clauses, List<Statement> body, Span span)
      implements Section {
    public SeamSection {
      layers = List.copyOf(layers);
      clauses = List.copyOf(clauses);
      body = List.copyOf(body);
    }
  }

  /** {@code view NAME "title"}. */
  record ViewSection(Name name, String title, List<Statement> body, Span span) implements Section {
    public ViewSection {
      body = List.copyOf(body);
    }
  }

  /** {@code paper}. */
  record PaperSection(List<Statement> body, Span span) implements Section {
    public PaperSection {
      body = List.copyOf(body);
    }
  }

  /** {@code make}. */
  record MakeSection(List<Statement> body, Span span) implements Section {
    public MakeSection {
      body = List.copyOf(body);
    }
  }

  /** {@code in sizes A to B}. */
  record Sizes(NumberRule.SizeWord from, NumberRule.SizeWord to, Span span) {}

  // --- in a fabric ----------------------------------------------------------------------------

  /** {@code widths 115 cm, 150 cm}. */
  record Widths(List<Expression.Literal> widths, Span span) implements Statement {
    public Widths {
      widths = List.copyOf(widths);
    }
  }

  /** {@code stretch across at least 35%}, {@code stretch along at least 10%}. */
  record FabricStretch(boolean across, Expression.Literal least, Span span) implements Statement {}

  /**
   * {@code nap one way}, {@code nap either way}, {@code nap none}.
   *
   * @param none whether it never has a nap; its pieces may then lie either way
   */
  record FabricNap(Fabric.Nap nap, boolean none, Span span) implements Statement {}

  /** {@code both sides alike}. */
  record FabricSides(Span span) implements Statement {}

  /** {@code repeat along 10 cm}, {@code repeat across 4 in, uneven}. */
  record FabricRepeat(boolean along, Expression.Literal length, boolean uneven, Span span)
      implements Statement {}

  /** {@code match hip_notch, hem_notch}. */
  record FabricMatch(List<Name> notches, Span span) implements Statement {
    public FabricMatch {
      notches = List.copyOf(notches);
    }
  }

  // --- in a piece -----------------------------------------------------------------------------

  /** {@code cut 2 of main, mirrored, on the fold}. */
  record Cut(int count, Name fabric, boolean mirrored, boolean onFold, Span span)
      implements Statement {}

  /** {@code copies left, right}: names for the cut copies of the first fabric. */
  record Copies(List<Name> names, Span span) implements Statement {
    public Copies {
      names = List.copyOf(names);
    }
  }

  /** {@code right side up}. */
  record RightSideUp(Span span) implements Statement {}

  /** {@code outline EDGE is PATHTERM, EDGE is PATHTERM, …}. */
  record Outline(List<OutlineEdge> edges, Span span) implements Statement {
    public Outline {
      edges = List.copyOf(edges);
    }
  }

  /** {@code side is side_line}. */
  record OutlineEdge(Name name, PathTerm path, Span span) {}

  /**
   * {@code rectangle EXPR by EXPR, edges A, B, C, D}: from the origin, right then up; the edges are
   * the lower, the right, the upper and the left, in that order. As drawn, the lower and the upper
   * run to the right and the two ends run up, so that opposite edges start beside each other.
   */
  record Rectangle(Expression width, Expression height, List<Name> edges, Span span)
      implements Statement {
    public Rectangle {
      edges = List.copyOf(edges);
    }
  }

  /**
   * {@code outline as [drafted] PIECE [, EDGE taken in EXPR, EDGE let out EXPR, …]}: the outline of
   * another piece, under the same names.
   *
   * @param drafted whether it is taken as drafted, before darts, cuts and pleats
   */
  record OutlineAs(boolean drafted, Name piece, List<OutlineChange> changes, Span span)
      implements Statement {
    public OutlineAs {
      changes = List.copyOf(changes);
    }
  }

  /** {@code hem taken in 3 cm}, {@code centre let out 1 cm}. */
  record OutlineChange(Name edge, boolean in, Expression amount, Span span) {}

  /**
   * {@code facing of PIECE along EDGE [and EDGE …], depth EXPR, edges A, …, B, C, D}: a strip
   * inside another piece along some of its edges, darts and pleats closed. Its edges are named in
   * order: those along the piece's, the end where they end, the inner edge, the end where they
   * start. The inner edge runs as those along the piece do, both ends run inward.
   */
  record Facing(Name piece, List<Name> along, Expression depth, List<Name> edges, Span span)
      implements Statement {
    public Facing {
      along = List.copyOf(along);
      edges = List.copyOf(edges);
    }
  }

  /** {@code fold EDGE}. */
  record Fold(Name edge, Span span) implements Statement {}

  /**
   * {@code allowance 1 cm, hem 2.5 cm turned back, top 3 cm then 1 cm turned back, centre none};
   * the first amount may be missing.
   */
  record Allowances(Optional<NumberRule> usual, List<EdgeAllowance> edges, Span span)
      implements Statement {
    public Allowances {
      edges = List.copyOf(edges);
    }
  }

  /**
   * One edge's allowance.
   *
   * @param folds one amount, or two for a hem turned twice; none for {@code none}
   * @param turnedBack whether it is folded back along the edge
   */
  record EdgeAllowance(Name edge, List<NumberRule> folds, boolean turnedBack, Span span) {
    public EdgeAllowance {
      folds = List.copyOf(folds);
    }
  }

  /**
   * {@code corner A and B mitred up to 2.5}, {@code square to A}, {@code turned back over B},
   * {@code stepped}.
   */
  record Corner(Name first, Name second, Finish finish, Span span) implements Statement {}

  /** The finish of a corner as written; see {@link org.hemwright.pattern.piece.CornerFinish}. */
  sealed interface Finish {
    record Mitred(Optional<Expression.Literal> limit) implements Finish {}

    record Square(Name edge) implements Finish {}

    record TurnedBack(Name edge) implements Finish {}

    record Stepped() implements Finish {}
  }

  /** {@code [double] notch EDGE ALONG [as NAME] [when CONDITION] [in sizes A to B]}. */
  record NotchAt(
      Notch.Kind kind,
      Name edge,
      Along along,
      Optional<Name> as,
      Optional<Condition> when,
      Optional<Sizes> sizes,
      Span span)
      implements Statement {}

  /** {@code grain along PATHTERM}, {@code grain DIRECTION}, {@code grain from a to b}. */
  record Grain(GrainRule rule, Span span) implements Statement {}

  /** How the grain lies. */
  sealed interface GrainRule {
    record Along(PathTerm path) implements GrainRule {}

    record Way(Direction direction) implements GrainRule {}

    record FromTo(Reference from, Reference to) implements GrainRule {}

    /** {@code grain traced "grain"}. */
    record Traced(String line) implements GrainRule {}
  }

  /** {@code stretch across}, {@code stretch along}: to the grain of this piece. */
  record PieceStretch(boolean across, Span span) implements Statement {}

  /** {@code drill NAME at POINT ["text"]}. */
  record Drill(Name name, Reference at, Optional<String> text, Optional<Sizes> sizes, Span span)
      implements Statement {}

  /** {@code inner NAME is PATHTERM ["text"]}. */
  record Inner(Name name, PathTerm path, Optional<String> text, Span span) implements Definition {}

  /** {@code placement NAME is PATHTERM ["text"]}. */
  record Placement(Name name, PathTerm path, Optional<String> text, Span span)
      implements Definition {}

  /** {@code label "text" at POINT [in sizes A to B]}. */
  record Label(String text, Reference at, Optional<Sizes> sizes, Span span) implements Statement {}

  /** {@code lengthen at POINT}: a line through it, square to the grain, from side to side. */
  record Lengthen(Reference at, Span span) implements Statement {}

  /**
   * {@code split NAME is PATH and PATH, allowance EXPR into NAME, NAME} or {@code split NAME on the
   * fold, …}: how the piece is cut apart where the cloth is too narrow for the whole.
   *
   * @param lines from edge to edge; none: along the fold
   * @param parts names of the parts; none: they are numbered
   */
  record Split(Name name, List<PathTerm> lines, Expression allowance, List<Name> parts, Span span)
      implements Statement {
    public Split {
      lines = List.copyOf(lines);
      parts = List.copyOf(parts);
    }
  }

  /** {@code level NAME at POINT}. */
  record Level(Name name, Reference at, Span span) implements Definition {}

  /** {@code opening EDGE [over MEASUREMENT] [, closed by zip EXPR]}. */
  record Opening(Name edge, Optional<Name> over, Optional<Closure> closure, Span span)
      implements Statement {}

  /** {@code closed by zip 20 cm}. */
  record Closure(BodyOpening.Kind kind, Expression length) {}

  /** {@code stack at POINT}. */
  record Stack(Reference at, Span span) implements Statement {}

  // --- in a traced piece ------------------------------------------------------------------------

  /**
   * {@code traced "traced/front.svg" [in size 14] [, where "ruler" is 10 cm]}.
   *
   * @param size which size it is, if not the base size
   * @param scale a line of the drawing and how long it truly is
   */
  record TracedFrom(
      String file, Optional<NumberRule.SizeWord> size, Optional<ScaleLine> scale, Span span) {}

  /** {@code where "ruler" is 10 cm}. */
  record ScaleLine(String line, Expression.Literal length) {}

  /** {@code also traced "traced/front-20.svg" [outline "line"] in size 20}. */
  record AlsoTraced(String file, Optional<String> outline, NumberRule.SizeWord size, Span span)
      implements Statement {}

  /**
   * {@code outline traced "line" from the top left clockwise [, corners over 20 deg] [, less 1 cm],
   * edges A, B to "dot", C less 2 cm, left out, …}.
   *
   * @param corner what counts as a corner, if not the usual
   * @param usual the allowance that is taken off where an edge does not say otherwise
   */
  record OutlineTraced(
      String line,
      TracedStart start,
      boolean clockwise,
      Optional<Expression.Literal> corner,
      Optional<Expression.Literal> usual,
      List<TracedEdge> edges,
      Span span)
      implements Statement {
    public OutlineTraced {
      edges = List.copyOf(edges);
    }

    /** The names of the edges that stay. */
    public List<Name> names() {
      return edges.stream().flatMap(edge -> edge.name().stream()).toList();
    }
  }

  /** Where the first edge of a traced outline starts. */
  sealed interface TracedStart {
    /** {@code the top left} and its like: the corner that lies farthest that way. */
    record Farthest(boolean top, boolean left) implements TracedStart {}

    /** {@code "dot"}. */
    record Dot(String name) implements TracedStart {}
  }

  /** {@code side to "dot" less 1.5 cm}; without a name a stretch that is {@code left out}. */
  record TracedEdge(
      Optional<Name> name,
      Optional<String> until,
      Optional<Expression.Literal> allowance,
      Span span) {}

  /** {@code grade EDGE at PLACE WAY, WAY}: a rule; without ways the point stays. */
  record Grade(Name edge, GradePlace place, List<GradeWay> ways, Span span) implements Statement {
    public Grade {
      ways = List.copyOf(ways);
    }
  }

  /** Where on an edge a rule stands. */
  sealed interface GradePlace {
    /** {@code start}, {@code end}. */
    record End(boolean atEnd) implements GradePlace {}

    /** {@code 12 cm from start}, {@code 40% from end}: as traced. */
    record Measured(Expression.Literal amount, boolean fromEnd) implements GradePlace {}

    /** {@code "dot"}: beside a dot of the drawing. */
    record Dot(String name) implements GradePlace {}
  }

  /**
   * {@code right 5 mm}, {@code down 1/8 of the hip step}.
   *
   * @param upright whether it is up or down
   * @param negative whether it is left or down
   */
  record GradeWay(boolean upright, boolean negative, GradeStep step) {}

  /** How far a point moves from one size to the next. */
  sealed interface GradeStep {
    /** {@code 1/4 of the hip step}. */
    record OfMeasurement(Expression.Literal share, Name measurement) implements GradeStep {}

    /** {@code 5 mm, then 7 mm from size 22}. */
    record Stepped(Expression.Literal first, List<NumberRule.Step> later) implements GradeStep {
      public Stepped {
        later = List.copyOf(later);
      }
    }
  }

  /** {@code grade from "rules.csv"}: the rules that a table has for this piece. */
  record GradeFrom(String file, Span span) implements Statement {}

  /** {@code grade as front}: the rules of another piece, on edges of the same names. */
  record GradeAs(Name piece, Span span) implements Statement {}

  // --- what shapes a piece ----------------------------------------------------------------------

  /** {@code dart NAME on EDGE ALONG to APEX, opening EXPR [, CLAUSE …]}. */
  record Dart(
      Name name, Name edge, Along along, Reference apex, List<ShapeClause> clauses, Span span)
      implements Statement {
    public Dart {
      clauses = List.copyOf(clauses);
    }
  }

  /** {@code pivot DART [by EXPR] to EDGE ALONG as NAME}, {@code … left open}. */
  record Pivot(
      Optional<Expression> share,
      Name dart,
      Name edge,
      Along along,
      Optional<Name> as,
      List<ShapeClause> clauses,
      Span span)
      implements Statement {
    public Pivot {
      clauses = List.copyOf(clauses);
    }
  }

  /** {@code merge DART into DART}. */
  record Merge(Name dart, Name into, Span span) implements Statement {}

  /** {@code slash EDGE ALONG to EDGE ALONG, spread EXPR [and EXPR] [, CLAUSE …]}. */
  record Slash(Name far, Along along, Name near, Along there, List<ShapeClause> clauses, Span span)
      implements Statement {
    public Slash {
      clauses = List.copyOf(clauses);
    }
  }

  /** {@code pleat NAME on EDGE ALONG to EDGE ALONG, depth EXPR, box [, CLAUSE …]}. */
  record Pleat(
      Name name, Name edge, Along along, Name to, Along there, List<ShapeClause> clauses, Span span)
      implements Statement {
    public Pleat {
      clauses = List.copyOf(clauses);
    }
  }

  /** {@code gathers NAME on EDGE [from POINT to POINT] drawn to EXPR}. */
  record Gathers(
      Name name,
      Name edge,
      Optional<Reference> from,
      Optional<Reference> to,
      Expression drawnTo,
      Span span)
      implements Statement {}

  // --- in a seam ------------------------------------------------------------------------------

  /** One layer: edge places end to end, {@code front.armhole then back.armhole}. */
  record Run(List<PlaceTerm> places, Span span) {
    public Run {
      places = List.copyOf(places);
    }
  }

  /**
   * {@code [every] piece[.copy].edge [from NOTCH] [to NOTCH] [reversed]}.
   *
   * @param every whether all copies and halves are taken end to end, as round a waist
   */
  record PlaceTerm(
      boolean every,
      Name piece,
      Optional<Name> copy,
      Name edge,
      Optional<Name> from,
      Optional<Name> to,
      boolean reversed,
      Span span) {}

  /** What follows a comma in a seam. */
  sealed interface SeamClause {
    /** {@code ease 5 mm}, {@code ease 0 cm to 1 cm}, {@code ease 2%}: the first layer is longer. */
    record Ease(Expression least, Optional<Expression> most) implements SeamClause {}

    /** {@code stretched 10%}: the first layer is shorter and stretched onto the other. */
    record Stretched(Expression by) implements SeamClause {}

    /** {@code quarters at sides and centres}: notches at even parts meet seams and folds. */
    record Even(int parts, List<Name> marks) implements SeamClause {
      public Even {
        marks = List.copyOf(marks);
      }
    }
  }

  /** {@code [double] notch ALONG [as NAME]}: on every layer at once, in the first layer's sense. */
  record SeamNotch(Notch.Kind kind, Along along, Optional<Name> as, Span span)
      implements Statement {}

  /**
   * {@code elastic NAME in PIECE[.EDGE], width EXPR, length EXPR, overlap EXPR [, round
   * MEASUREMENT] [, over MEASUREMENT] [, stretching EXPR]}.
   *
   * @param place the piece, or the edge of a piece whose casing holds it
   */
  record Elastic(
      Name name,
      Reference place,
      Expression width,
      Expression length,
      Expression overlap,
      List<ElasticClause> clauses,
      Span span)
      implements Heading, Definition {
    public Elastic {
      clauses = List.copyOf(clauses);
    }
  }

  /** What more is said of an elastic. */
  sealed interface ElasticClause {
    /** {@code round waist}: what it holds. */
    record Round(Name measurement) implements ElasticClause {}

    /** {@code over hip}: what it must pass. */
    record Over(Name measurement) implements ElasticClause {}

    /** {@code stretching 100%}: how far it stretches. */
    record Stretching(Expression by) implements ElasticClause {}
  }

  /**
   * {@code accept CHECK on SUBJECT [in sizes A to B] because "reason"}: a finding that the designer
   * has judged.
   *
   * @param check the name of the check, {@code seam-length}
   * @param subject what the finding is about, as a report names it, single blanks between words
   */
  record Accept(String check, String subject, Optional<Sizes> sizes, String reason, Span span)
      implements Heading {}

  // --- in a view ------------------------------------------------------------------------------

  /** {@code pieces panel, band}. */
  record Pieces(List<Name> pieces, Span span) implements Statement {
    public Pieces {
      pieces = List.copyOf(pieces);
    }
  }

  // --- in make --------------------------------------------------------------------------------

  /** {@code stage "The waistband"}. */
  record Stage(String title, Span span) implements Statement {}

  /** {@code usual stitch STITCH or STITCH}. */
  record UsualStitch(List<StitchRule> stitches, Span span) implements Statement {
    public UsualStitch {
      stitches = List.copyOf(stitches);
    }
  }

  /** {@code usual needle stretch 75}. */
  record UsualNeedle(StepRule.NeedleRule needle, Span span) implements Statement {}

  /** {@code sleepwear}. */
  record Sleepwear(Span span) implements Statement {}

  /** {@code cord NAME in PIECE at waist, length EXPR, free ends EXPR, with toggles, bar tacked}. */
  record CordLine(
      Name name,
      Name piece,
      Cord.Place place,
      Expression length,
      Optional<Expression> freeEnds,
      boolean toggles,
      boolean tacked,
      Span span)
      implements Statement {}

  /** {@code ACT WORK and WORK with STITCH or STITCH, CLAUSE, CLAUSE}. */
  record Step(
      StepRule rule,
      List<WorkName> work,
      List<StitchRule> stitches,
      List<StepClause> clauses,
      Span span)
      implements Statement {
    public Step {
      work = List.copyOf(work);
      stitches = List.copyOf(stitches);
      clauses = List.copyOf(clauses);
    }
  }

  // --- in paper -------------------------------------------------------------------------------

  /** {@code groups 00 to 14, 12 to 26}: the sizes of each nest. */
  record Groups(List<Sizes> groups, Span span) implements Statement {
    public Groups {
      groups = List.copyOf(groups);
    }
  }

  /** {@code stitch lines shown}, {@code stitch lines hidden}. */
  record StitchLines(boolean shown, Span span) implements Statement {}

  /** {@code fold pieces whole}, {@code fold pieces half}. */
  record FoldPieces(boolean whole, Span span) implements Statement {}

  /** {@code views apart}, {@code views together}. */
  record Views(boolean apart, Span span) implements Statement {}

  /** {@code rectangles as table}, {@code rectangles drawn}. */
  record Rectangles(boolean asTable, Span span) implements Statement {}
}
