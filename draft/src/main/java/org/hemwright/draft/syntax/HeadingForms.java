package org.hemwright.draft.syntax;

import static org.hemwright.draft.syntax.Form.row;
import static org.hemwright.draft.syntax.Where.FABRIC;
import static org.hemwright.draft.syntax.Where.LEFT_EDGE;
import static org.hemwright.draft.syntax.Where.PAPER;
import static org.hemwright.draft.syntax.Where.PART;
import static org.hemwright.draft.syntax.Where.PIECE;
import static org.hemwright.draft.syntax.Where.SEAM;
import static org.hemwright.draft.syntax.Where.VIEW;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.hemwright.pattern.body.Wearers;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Argument;

/**
 * Forms of the document's head, of the section lines, and of what stands in fabric, view, paper: a
 * table, one entry for each form, in the order of the language's reference.
 */
final class HeadingForms {
  static final List<Form> ROWS =
      List.of(
          row(
                  "language",
                  LEFT_EDGE,
                  "language <edition:count>",
                  "language 1",
                  "The edition of this language that the document is written in. It stands first.",
                  HeadingForms::language)
              .onlyOnce(),
          row(
                  "pattern",
                  LEFT_EDGE,
                  "pattern <title:text>",
                  "pattern \"Sandling skirt\"",
                  "The pattern's name, as makers know it.",
                  m -> new Statement.Title(m.text("title"), m.span()))
              .onlyOnce(),
          row(
                  "version",
                  LEFT_EDGE,
                  "version <version>",
                  "version 1.0",
                  "The version that every page and booklet carries.",
                  m -> new Statement.Version(m.text("version"), m.span()))
              .onlyOnce(),
          row(
                  "dated",
                  LEFT_EDGE,
                  "dated <day:date>",
                  "dated 2026-11-25",
                  "The day of this version: year, month, day.",
                  m -> new Statement.Dated(m.one("day", LocalDate.class), m.span()))
              .onlyOnce(),
          row(
                  "by",
                  LEFT_EDGE,
                  "by <house:text>",
                  "by \"Tern Cove Patterns\"",
                  "The pattern house.",
                  m -> new Statement.By(m.text("house"), m.span()))
              .onlyOnce(),
          row(
                  "sizes",
                  LEFT_EDGE,
                  "sizes from <chart:text> base <base:size>",
                  "sizes from \"sizes.csv\" base 14",
                  "The size chart, and the size you draft in.",
                  m ->
                      new Statement.SizesFrom(
                          m.text("chart"), m.one("base", NumberRule.SizeWord.class), m.span()))
              .onlyOnce(),
          row(
                  "units",
                  LEFT_EDGE,
                  "units (centimetres | centimeters | inches)",
                  "units centimetres",
                  "Which unit stands first on paper; both are always shown.",
                  m -> new Statement.Units(m.said("inches"), m.span()))
              .onlyOnce(),
          row(
                  "spelling",
                  LEFT_EDGE,
                  "spelling (British | American)",
                  "spelling British",
                  "How the maker's words are spelled.",
                  m -> new Statement.Spelling(m.said("British"), m.span()))
              .onlyOnce(),
          row(
                  "for",
                  LEFT_EDGE,
                  "for (women | men | adults | teenagers | children | babies)"
                      + " {, (plus | petite | tall | maternity)}",
                  "for women",
                  "Whom the size chart is for; `check` tells what share of such people it serves.",
                  HeadingForms::wearers)
              .onlyOnce(),
          row(
                  "logo",
                  LEFT_EDGE,
                  "logo <picture:text>",
                  "logo \"tern.svg\"",
                  "Your logo, a file in the folder’s `pictures`: SVG, PNG or JPEG.",
                  m -> new Statement.Logo(m.text("picture"), m.span()))
              .onlyOnce(),
          row(
              "font",
              LEFT_EDGE,
              "font <file:text> [for (bold | italic | titles)]",
              "font \"tern.ttf\"",
              "A font of your own for makers’ papers, a file in the folder’s `fonts`: for all"
                  + " words, or for bold ones, asides or titles alone.",
              m -> new Statement.Font(m.text("file"), fontUse(m), m.span())),
          row(
                  "footer",
                  LEFT_EDGE,
                  "footer <line:text>",
                  "footer \"terncove.example, for your own sewing\"",
                  "A line at the foot of each page that a maker sees.",
                  m -> new Statement.Footer(m.text("line"), m.span()))
              .onlyOnce(),
          row(
                  "fabric",
                  LEFT_EDGE,
                  "fabric <name> (knit | woven) [<title:text>]",
                  "fabric main knit \"Cotton or viscose jersey\"",
                  "A cloth that the pattern needs; the lines below say more of it.",
                  m ->
                      new Statement.FabricSection(
                          m.name("name"),
                          m.said("knit") ? Fabric.Kind.KNIT : Fabric.Kind.WOVEN,
                          m.maybe("title", String.class),
                          List.of(),
                          m.span()))
              .opens(FABRIC),
          row(
                  "widths",
                  FABRIC,
                  "widths <width:literal> {, <width:literal>}",
                  "widths 115 cm, 150 cm",
                  "The widths it is sold in, as the shop labels them.",
                  HeadingForms::widths)
              .onlyOnce(),
          row(
              "fabric stretch",
              FABRIC,
              "stretch (across | along) at least <least:literal>",
              "stretch across at least 35%",
              "The least stretch it must have, across from selvedge to selvedge or along them.",
              HeadingForms::stretch),
          row(
                  "nap",
                  FABRIC,
                  "nap (one way | either way | none)",
                  "nap one way",
                  "Whether every piece must point the same way on the cloth; none where it never"
                      + " has a nap, as a lining.",
                  m ->
                      new Statement.FabricNap(
                          m.said("one") ? Fabric.Nap.ONE_WAY : Fabric.Nap.EITHER_WAY,
                          m.said("none"),
                          m.span()))
              .onlyOnce(),
          row(
                  "both sides alike",
                  FABRIC,
                  "both sides alike",
                  "both sides alike",
                  "It has no right side and no wrong one: pieces may be laid face down.",
                  m -> new Statement.FabricSides(m.span()))
              .onlyOnce(),
          row(
              "repeat",
              FABRIC,
              "repeat (along | across) <length:literal> [, uneven]",
              "repeat across 9 cm, uneven",
              "From bar to like bar of its stripes or checks, along the selvedge or across the"
                  + " cloth; uneven where the bars do not follow each other alike from either end.",
              HeadingForms::repeat),
          row(
                  "match",
                  FABRIC,
                  "match <notch:name> {, <notch:name>}",
                  "match hip_notch",
                  "Notches that lie on the same bar in every piece of this cloth that has them.",
                  m -> new Statement.FabricMatch(m.all("notch", Name.class), m.span()))
              .onlyOnce(),
          row(
                  "part",
                  LEFT_EDGE,
                  "part <name>",
                  "part bodice",
                  "A draft that is not cut itself: pieces bring its points and lines in.",
                  m -> new Statement.PartSection(m.name("name"), List.of(), m.span()))
              .opens(PART),
          row(
                  "piece",
                  LEFT_EDGE,
                  "piece <name> <title:text> number <number:count> [in sizes <sizes>]",
                  "piece panel \"Skirt front and back\" number 1",
                  "A pattern piece: its name in the document, what the maker reads, its number.",
                  m ->
                      new Statement.PieceSection(
                          m.name("name"),
                          m.text("title"),
                          m.count("number"),
                          m.maybe("sizes", Statement.Sizes.class),
                          Optional.empty(),
                          List.of(),
                          m.span()))
              .opens(PIECE),
          row(
                  "seam",
                  LEFT_EDGE,
                  "seam <name> <layer:run> with <layer:run> {with <layer:run>} {, <clause:seam"
                      + " clause>}",
                  "seam waist_seam band.lower with every panel.waist, quarters at sides and"
                      + " centres",
                  "What is sewn together in one pass: edges, or several end to end with `then`;"
                      + " `every` takes all copies of an edge in a round.",
                  m ->
                      new Statement.SeamSection(
                          m.name("name"),
                          m.all("layer", Statement.Run.class),
                          m.all("clause", Statement.SeamClause.class),
                          List.of(),
                          m.span()))
              .opens(SEAM),
          row(
                  "view",
                  LEFT_EDGE,
                  "view <name> <title:text>",
                  "view A \"Elastic waist\"",
                  "One garment of the pattern; the lines below say which pieces it takes.",
                  m ->
                      new Statement.ViewSection(
                          m.name("name"), m.text("title"), List.of(), m.span()))
              .opens(VIEW),
          row(
              "pieces",
              VIEW,
              "pieces <piece:name> {, <piece:name>}",
              "pieces panel, band",
              "The pieces that this view takes.",
              m -> new Statement.Pieces(m.all("piece", Name.class), m.span())),
          row(
              "accept",
              LEFT_EDGE,
              "accept <check:check> on <subject:subject> [in sizes <sizes>] because <reason:text>",
              "accept seam-length on seam waist_seam because \"The band is steamed to the curve\"",
              "Keeps a finding that you have judged out of the way; reports show it with your"
                  + " reason. Check and subject are written as the report names them.",
              HeadingForms::accept),
          row(
                  "paper",
                  LEFT_EDGE,
                  "paper",
                  "paper",
                  "What you decide about the printed pattern, in the lines below.",
                  m -> new Statement.PaperSection(List.of(), m.span()))
              .opens(PAPER)
              .onlyOnce(),
          row(
                  "groups",
                  PAPER,
                  "groups <group:sizes> {, <group:sizes>}",
                  "groups 8 to 20, 18 to 30",
                  "The sizes printed on each other; nine at most, and groups may share sizes.",
                  m -> new Statement.Groups(m.all("group", Statement.Sizes.class), m.span()))
              .onlyOnce(),
          row(
                  "stitch lines",
                  PAPER,
                  "stitch lines (shown | hidden)",
                  "stitch lines hidden",
                  "Whether the stitch line is drawn inside the cut line.",
                  m -> new Statement.StitchLines(m.said("shown"), m.span()))
              .onlyOnce(),
          row(
                  "fold pieces",
                  PAPER,
                  "fold pieces (whole | half)",
                  "fold pieces whole",
                  "Whether pieces cut on the fold are drawn opened out.",
                  m -> new Statement.FoldPieces(m.said("whole"), m.span()))
              .onlyOnce(),
          row(
                  "rectangles",
                  PAPER,
                  "rectangles (as table | drawn)",
                  "rectangles as table",
                  "Whether plain rectangles are listed with their measurements and not drawn.",
                  m -> new Statement.Rectangles(m.said("table"), m.span()))
              .onlyOnce(),
          row(
                  "views",
                  PAPER,
                  "views (apart | together)",
                  "views apart",
                  "Whether each view has files of its own, beside the files with all pieces.",
                  m -> new Statement.Views(m.said("apart"), m.span()))
              .onlyOnce());

  /** The places in which things are drawn. */
  static final Set<Where> DRAWING = java.util.EnumSet.of(PART, PIECE);

  private HeadingForms() {}

  private static Statement language(Match m) {
    int edition = m.count("edition");
    if (edition != 1) {
      throw new Refusal("language-edition", m.span()).with("edition", Argument.of(edition));
    }
    return new Statement.Language(edition, m.span());
  }

  private static Statement accept(Match m) {
    String reason = m.text("reason");
    if (reason.isBlank()) {
      throw new Refusal("accept-without-reason", m.span());
    }
    return new Statement.Accept(
        m.text("check"), m.text("subject"), sizes(m), reason.strip(), m.span());
  }

  private static Statement.Font.Use fontUse(Match m) {
    return m.said("bold")
        ? Statement.Font.Use.BOLD
        : m.said("italic")
            ? Statement.Font.Use.ITALIC
            : m.said("titles") ? Statement.Font.Use.TITLES : Statement.Font.Use.WORDS;
  }

  private static Statement wearers(Match m) {
    Wearers.People people =
        Arrays.stream(Wearers.People.values())
            .filter(who -> said(m, who))
            .findFirst()
            .orElseThrow();
    List<Wearers.Build> builds =
        Arrays.stream(Wearers.Build.values()).filter(build -> said(m, build)).toList();
    return new Statement.For(people, builds, m.span());
  }

  private static boolean said(Match m, Enum<?> word) {
    return m.said(word.name().toLowerCase(Locale.ROOT));
  }

  private static Statement widths(Match m) {
    List<Expression.Literal> widths = m.all("width", Expression.Literal.class);
    Unit usual =
        widths.stream().map(Expression.Literal::unit).anyMatch(unit -> unit == Unit.IN)
            ? Unit.IN
            : Unit.CM;
    widths.forEach(width -> LiteralKinds.need(width, usual));
    return new Statement.Widths(widths, m.span());
  }

  private static Statement stretch(Match m) {
    Expression.Literal least = m.literal("least");
    LiteralKinds.need(least, Unit.PERCENT);
    return new Statement.FabricStretch(m.said("across"), least, m.span());
  }

  private static Statement repeat(Match m) {
    Expression.Literal length = m.literal("length");
    LiteralKinds.need(length, length.unit().equals(Unit.IN) ? Unit.IN : Unit.CM);
    return new Statement.FabricRepeat(m.said("along"), length, m.said("uneven"), m.span());
  }

  static Optional<Statement.Sizes> sizes(Match m) {
    return m.maybe("sizes", Statement.Sizes.class);
  }
}
