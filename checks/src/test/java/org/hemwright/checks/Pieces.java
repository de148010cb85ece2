package org.hemwright.checks;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.PaperChoices;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.Corner;
import org.hemwright.pattern.piece.CornerFinish;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Grain;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.seam.Seam;
import org.hemwright.pattern.seam.SeamRequest;
import org.hemwright.pattern.seam.SeamResolution;

/**
 * Straight-edged pieces for tests of checks: edges by name, counter-clockwise from their starts.
 */
final class Pieces {
  static final Origin ORIGIN = new Origin("pattern.hem", 9, 1);
  private final String name;
  private final Map<String, Point> starts = new LinkedHashMap<>();
  private final List<Notch> notches = new ArrayList<>();
  private final List<String> against = new ArrayList<>();
  private final Map<String, Allowance> allowances = new LinkedHashMap<>();
  private String title;
  private int number = 1;
  private int copies = 1;
  private boolean mirrored;
  private boolean onFold;
  private String fold = "";
  private boolean grain = true;

  private Pieces(String name) {
    this.name = name;
    this.title = "Piece " + name;
  }

  static Pieces piece(String name) {
    return new Pieces(name);
  }

  /** A rectangle; its upper and left edges are drawn rightward and upward. */
  static Pieces rectangle(String name, double width, double height, String... edges) {
    return piece(name)
        .edge(edges[0], 0, 0)
        .edge(edges[1], width, 0)
        .edge(edges[2], width, height)
        .edge(edges[3], 0, height)
        .against(edges[2])
        .against(edges[3]);
  }

  Pieces edge(String edge, double x, double y) {
    starts.put(edge, new Point(x, y));
    return this;
  }

  Pieces against(String edge) {
    against.add(edge);
    return this;
  }

  Pieces notch(String edge, double fromItsStart, String notch) {
    notches.add(
        new Notch(
            edge,
            fromItsStart,
            Notch.Kind.SINGLE,
            Optional.of(notch).filter(word -> !word.isEmpty()),
            ORIGIN));
    return this;
  }

  Pieces doubleNotch(String edge, double fromItsStart) {
    notches.add(new Notch(edge, fromItsStart, Notch.Kind.DOUBLE, Optional.empty(), ORIGIN));
    return this;
  }

  Pieces allowance(String edge, Allowance allowance) {
    allowances.put(edge, allowance);
    return this;
  }

  Pieces cut(int count, boolean everySecondMirrored) {
    copies = count;
    mirrored = everySecondMirrored;
    return this;
  }

  Pieces onFold(boolean cutOnFold, String edge) {
    onFold = cutOnFold;
    fold = edge;
    return this;
  }

  Pieces titled(String words, int numbered) {
    title = words;
    number = numbered;
    return this;
  }

  Pieces withoutGrain() {
    grain = false;
    return this;
  }

  Piece draw() {
    List<String> names = List.copyOf(starts.keySet());
    List<Edge> edges = new ArrayList<>();
    List<Corner> corners = new ArrayList<>();
    List<Point> round = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      String edge = names.get(i);
      Point from = requireNonNull(starts.get(edge));
      Point to = requireNonNull(starts.get(names.get((i + 1) % names.size())));
      boolean folded = edge.equals(fold);
      edges.add(
          new Edge(
              edge,
              Path.straight(from, to),
              folded,
              folded ? Allowance.NONE : allowances.getOrDefault(edge, new Allowance.Plain(10)),
              against.contains(edge),
              ORIGIN));
      String before = names.get((i + names.size() - 1) % names.size());
      corners.add(new Corner(before, edge, from, CornerFinish.USUAL));
      round.add(from);
    }
    round.add(round.get(0));
    List<Copy> cut = new ArrayList<>();
    for (int i = 0; i < copies; i++) {
      cut.add(new Copy(Integer.toString(i + 1), mirrored && i % 2 == 1));
    }
    PieceCard card =
        new PieceCard(
            name,
            title,
            number,
            copies == 0 ? List.of() : List.of(new Cut(copies, "main", onFold, mirrored, ORIGIN)),
            cut,
            false,
            Optional.empty(),
            ORIGIN);
    return new Piece(
        card,
        Outline.of(Path.polyline(round)),
        edges,
        corners,
        notches,
        grain
            ? Optional.of(new Grain(new Point(1, 1), new Point(1, 20), ORIGIN))
            : Optional.empty(),
        List.of(),
        List.of(),
        round.get(0));
  }

  /** {@code front.side} with ease and even marks, for {@link #run}. */
  static SeamRequest seam(
      String name, Seam.Ease ease, Optional<SeamRequest.Even> even, String... layers) {
    List<SeamRequest.Run> runs = new ArrayList<>();
    for (String layer : layers) {
      List<SeamRequest.Term> terms = new ArrayList<>();
      for (String text : layer.split(" then ", -1)) {
        boolean every = text.startsWith("every ");
        List<String> names = List.of(text.replace("every ", "").split("\\.", -1));
        terms.add(SeamRequest.Term.of(names.get(0), names.get(1), ORIGIN).taken(every));
      }
      runs.add(new SeamRequest.Run(terms));
    }
    return new SeamRequest(name, runs, ease, even, ORIGIN);
  }

  static SeamRequest seam(String name, String... layers) {
    return seam(name, Seam.Ease.NONE, Optional.empty(), layers);
  }

  /** A run of sizes 8, 10, 12 and so on, with these pieces in each. */
  static SizeRun run(List<SeamRequest> seams, List<List<Piece>> bySize) {
    List<Size> sizes = new ArrayList<>();
    List<SizedPattern> sized = new ArrayList<>();
    for (int i = 0; i < bySize.size(); i++) {
      Size size = new Size(i, Integer.toString(8 + 2 * i));
      SeamResolution resolution = SeamResolution.resolve(seams, bySize.get(i));
      if (!resolution.findings().isEmpty()) {
        throw new AssertionError(resolution.findings().toString());
      }
      sizes.add(size);
      sized.add(new SizedPattern(size, bySize.get(i), resolution.seams(), List.of(), Map.of()));
    }
    Details details =
        new Details(
            "Sandling skirt",
            "1.0",
            LocalDate.of(2026, 11, 25),
            "Tern Cove Patterns",
            Details.Units.CENTIMETRES,
            Details.Spelling.BRITISH);
    return new SizeRun(
        new Pattern(
            details,
            new SizeChart("sizes.csv", sizes, List.of()),
            sizes.get(0),
            List.of(),
            List.of(),
            List.of(),
            bySize.get(0).stream().map(Piece::card).toList(),
            new PaperChoices(List.of(), false, false, false)),
        sized);
  }

  /** A run of one size without seams. */
  static SizeRun run(Pieces... pieces) {
    return run(List.of(), List.of(List.of(pieces).stream().map(Pieces::draw).toList()));
  }
}
