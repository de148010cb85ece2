package org.hemwright.paper;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.SmoothCurve;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.PaperChoices;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.body.SizeRange;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.Corner;
import org.hemwright.pattern.piece.CornerFinish;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Grain;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;

/**
 * The skirt of the language guide, drafted by hand in nine sizes or more, with every mark on it.
 */
public final class SandlingSkirt {
  static final Origin ORIGIN = new Origin("pattern.hem", 1, 1);
  private static final double HIP_8 = 920;
  private static final double EASE = 40;

  private SandlingSkirt() {}

  /** Nine sizes, 8 to 24, in one group. */
  public static SizeRun run() {
    return run(9, new PaperChoices(List.of(), false, false, false));
  }

  /** So many sizes, 8 upward, with the given choices; groups are made where there are none. */
  public static SizeRun run(int count, PaperChoices choices) {
    List<Size> sizes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      sizes.add(new Size(i, Integer.toString(8 + 2 * i)));
    }
    List<SizeRange> groups = new ArrayList<>(choices.groups());
    for (int i = 0; groups.isEmpty() || (choices.groups().isEmpty() && i < count - 1); i += 8) {
      groups.add(new SizeRange(sizes.get(i), sizes.get(Math.min(i + 8, count - 1))));
    }
    PaperChoices paper =
        new PaperChoices(
            groups,
            choices.stitchLines(),
            choices.wholePieces(),
            choices.rectangleTable(),
            choices.viewsApart());
    Details details =
        new Details(
            "Sandling skirt",
            "1.0",
            LocalDate.of(2026, 11, 25),
            "Tern Cove Patterns",
            Details.Units.CENTIMETRES,
            Details.Spelling.BRITISH);
    Fabric main =
        new Fabric(
            "main",
            "Cotton or viscose jersey",
            Fabric.Kind.KNIT,
            List.of(1150.0, 1500.0),
            OptionalDouble.of(0.5),
            OptionalDouble.empty(),
            Fabric.Nap.ONE_WAY,
            ORIGIN);
    Pattern pattern =
        new Pattern(
            details,
            new SizeChart("sizes.csv", sizes, List.of()),
            sizes.get(Math.min(3, count - 1)),
            List.of(main),
            List.of(),
            List.of(new View("A", "Elastic waist", List.of("panel", "band"), ORIGIN)),
            List.of(panelCard(), bandCard()),
            paper);
    List<SizedPattern> sized =
        sizes.stream()
            .map(
                size ->
                    new SizedPattern(
                        size, List.of(panel(size), band(size)), List.of(), List.of(), Map.of()))
            .toList();
    return new SizeRun(pattern, sized);
  }

  /** The skirt as a pattern of two views: with its waistband, and without. */
  public static SizeRun inViews(boolean apart) {
    SizeRun skirt = run(9, new PaperChoices(List.of(), false, false, false, apart));
    Pattern whole = skirt.pattern();
    Pattern pattern =
        new Pattern(
            whole.details(),
            whole.chart(),
            whole.base(),
            whole.fabrics(),
            whole.dials(),
            List.of(
                new View("A", "Elastic waist", List.of("panel", "band"), ORIGIN),
                new View("B", "Bound waist", List.of("panel"), ORIGIN)),
            whole.pieces(),
            whole.paper());
    return new SizeRun(pattern, skirt.sizes());
  }

  /** The skirt in a cloth with stripes. */
  public static SizeRun striped(Fabric.Repeat repeat) {
    SizeRun skirt = run(2, new PaperChoices(List.of(), false, false, false));
    Pattern whole = skirt.pattern();
    Pattern pattern =
        new Pattern(
            whole.details(),
            whole.chart(),
            whole.base(),
            whole.fabrics().stream().map(fabric -> fabric.with(repeat)).toList(),
            whole.dials(),
            whole.views(),
            whole.pieces(),
            whole.paper());
    return new SizeRun(pattern, skirt.sizes());
  }

  /** The skirt under another title. */
  public static SizeRun titled(String title) {
    SizeRun skirt = run(2, new PaperChoices(List.of(), false, false, false));
    Pattern whole = skirt.pattern();
    Details old = whole.details();
    Details details =
        new Details(title, old.version(), old.dated(), old.by(), old.units(), old.spelling());
    Pattern pattern =
        new Pattern(
            details,
            whole.chart(),
            whole.base(),
            whole.fabrics(),
            whole.dials(),
            whole.views(),
            whole.pieces(),
            whole.paper());
    return new SizeRun(pattern, skirt.sizes());
  }

  /** A pattern of one piece, a tab of 24 × 30 mm, too small for its words. */
  public static SizeRun tiny() {
    SizeRun skirt = run(2, new PaperChoices(List.of(), false, false, false));
    PieceCard card =
        new PieceCard(
            "tab",
            "Belt tab",
            1,
            List.of(new Cut(2, "main", false, true, ORIGIN)),
            List.of(new Copy("1", false), new Copy("2", true)),
            true,
            Optional.empty(),
            ORIGIN);
    Map<String, Path> paths = new LinkedHashMap<>();
    Point a = Point.ORIGIN;
    Point b = new Point(24, 0);
    Point c = new Point(24, 30);
    Point d = new Point(0, 30);
    paths.put("lower", Path.straight(a, b));
    paths.put("right", Path.straight(b, c));
    paths.put("upper", Path.straight(c, d));
    paths.put("left", Path.straight(d, a));
    Piece tab = piece(card, paths, Map.of(), "", List.of(), new Grain(a, d, ORIGIN), List.of(), a);
    Pattern whole = skirt.pattern();
    Pattern pattern =
        new Pattern(
            whole.details(),
            whole.chart(),
            whole.base(),
            whole.fabrics(),
            whole.dials(),
            whole.views(),
            List.of(card),
            whole.paper());
    return new SizeRun(
        pattern,
        skirt.sizes().stream()
            .map(
                sized ->
                    new SizedPattern(sized.size(), List.of(tab), List.of(), List.of(), Map.of()))
            .toList());
  }

  private static PieceCard panelCard() {
    return new PieceCard(
        "panel",
        "Skirt front and back",
        1,
        List.of(new Cut(2, "main", true, false, ORIGIN)),
        List.of(new Copy("1", false), new Copy("2", false)),
        false,
        Optional.empty(),
        ORIGIN);
  }

  private static PieceCard bandCard() {
    return new PieceCard(
        "band",
        "Waistband",
        2,
        List.of(new Cut(1, "main", false, false, ORIGIN)),
        List.of(new Copy("1", false)),
        false,
        Optional.empty(),
        ORIGIN);
  }

  /** A quarter of the hip with its ease (mm): 40 mm from size to size, round the body. */
  public static double quarter(Size size) {
    return (HIP_8 + 40 * size.position() + EASE) / 4;
  }

  static Piece panel(Size size) {
    double quarter = quarter(size);
    double rise = size.position() < 7 ? 10 : 13;
    double hipDepth = 195 + 2 * size.position();
    Point centreWaist = Point.ORIGIN;
    Point centreHem = new Point(0, -580);
    Point sideHip = new Point(quarter, -hipDepth);
    Point sideWaist = new Point(quarter - 4, rise);
    Point sideHem = new Point(quarter + 60, -570);
    Path waist =
        SmoothCurve.from(centreWaist).leaving(new Vector(1, 0)).to(sideWaist).path().reversed();
    Path upper = SmoothCurve.from(sideWaist).to(sideHip).arriving(new Vector(0, -1)).path();
    Path side = upper.then(Path.straight(sideHip, sideHem)).reversed();
    Path hem =
        SmoothCurve.from(sideHem).to(centreHem).arriving(new Vector(-1, 0)).path().reversed();
    Map<String, Path> paths = new LinkedHashMap<>();
    paths.put("centre", Path.straight(centreWaist, centreHem));
    paths.put("hem", hem);
    paths.put("side", side);
    paths.put("waist", waist);
    Point pocket = new Point(quarter * 0.35, -120);
    Path pocketLine =
        Path.polyline(
            List.of(
                pocket,
                new Point(pocket.x(), pocket.y() - 140),
                new Point(pocket.x() + 120, pocket.y() - 140),
                new Point(pocket.x() + 120, pocket.y())));
    List<Mark> marks =
        List.of(
            new Mark.Stretch(new Vector(1, 0), ORIGIN),
            new Mark.Level("hip", sideHip, ORIGIN),
            new Mark.Lengthen(
                Path.straight(new Point(0, -420), new Point(quarter + 38, -420)), ORIGIN),
            new Mark.Placement("pocket", pocketLine, Optional.of("Pocket"), ORIGIN),
            new Mark.Drill("pocket_corner", pocket, Optional.of("Pocket corner"), ORIGIN),
            new Mark.Inner(
                "topstitching",
                Path.straight(new Point(0, -555), new Point(quarter * 0.6, -555)),
                Optional.of("Topstitch"),
                ORIGIN));
    double hipNotch = Path.straight(sideHem, sideHip).length();
    List<Notch> notches =
        List.of(
            new Notch("side", hipNotch, Notch.Kind.SINGLE, Optional.empty(), ORIGIN),
            new Notch("waist", waist.length() / 2, Notch.Kind.DOUBLE, Optional.empty(), ORIGIN));
    return piece(
        panelCard(),
        paths,
        Map.of("hem", new Allowance.TurnedBack(List.of(25.0)), "centre", Allowance.NONE),
        "centre",
        notches,
        new Grain(new Point(0, -520), new Point(0, -60), ORIGIN),
        marks,
        centreWaist);
  }

  /** The waistband's length at the stitch line (mm). */
  public static double bandLength(Size size) {
    return 4 * panel(size).edge("waist").orElseThrow().path().length() * 0.9;
  }

  static Piece band(Size size) {
    double length = bandLength(size);
    double depth = 66;
    Point a = Point.ORIGIN;
    Point b = new Point(length, 0);
    Point c = new Point(length, depth);
    Point d = new Point(0, depth);
    Map<String, Path> paths = new LinkedHashMap<>();
    paths.put("lower", Path.straight(a, b));
    paths.put("end_right", Path.straight(b, c));
    paths.put("upper", Path.straight(c, d));
    paths.put("end_left", Path.straight(d, a));
    List<Notch> notches = new ArrayList<>();
    for (int i = 1; i < 4; i++) {
      notches.add(new Notch("lower", length * i / 4, Notch.Kind.SINGLE, Optional.empty(), ORIGIN));
    }
    return piece(
        bandCard(),
        paths,
        Map.of(),
        "",
        notches,
        new Grain(new Point(0, 0), new Point(0, depth), ORIGIN),
        List.of(new Mark.Stretch(new Vector(1, 0), ORIGIN)),
        a);
  }

  static Piece piece(
      PieceCard card,
      Map<String, Path> paths,
      Map<String, Allowance> allowances,
      String fold,
      List<Notch> notches,
      Grain grain,
      List<Mark> marks,
      Point stack) {
    List<Edge> edges = new ArrayList<>();
    List<Curve> round = new ArrayList<>();
    paths.forEach(
        (name, path) -> {
          Allowance allowance = allowances.getOrDefault(name, new Allowance.Plain(10));
          edges.add(new Edge(name, path, name.equals(fold), allowance, false, ORIGIN));
          round.addAll(path.curves());
        });
    List<Corner> corners = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      Edge before = edges.get((i + edges.size() - 1) % edges.size());
      Edge edge = edges.get(i);
      corners.add(new Corner(before.name(), edge.name(), edge.path().start(), CornerFinish.USUAL));
    }
    return new Piece(
        card,
        Outline.of(Path.of(round)),
        edges,
        corners,
        notches,
        Optional.of(grain),
        marks,
        List.of("waist"),
        stack);
  }
}
