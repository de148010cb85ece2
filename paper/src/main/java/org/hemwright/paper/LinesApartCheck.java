package org.hemwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.PathPlace;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.nest.CloseStitchLines;
import org.hemwright.paper.nest.Nest;
import org.hemwright.paper.style.Pens;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.FindingOrder;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;

/**
 * Lines of neighbouring sizes can be told apart in print: most of an edge runs either where the
 * next size's runs, or clear of it; and stitch lines, where they are shown, keep off other sizes'
 * cut lines. Common practice, no source.
 *
 * @param merged the middles of two cut lines nearer than this print as one line (mm)
 * @param mostOf the share of an edge that must do so; where sizes only part or meet, less does
 * @param from shorter edges are not looked at (mm)
 */
public record LinesApartCheck(double merged, double mostOf, double from) implements Check {
  /** Two cut lines a quarter of their width apart, over most of an edge. */
  public static final LinesApartCheck USUAL = new LinesApartCheck(Pens.CUT.width() / 4, 0.7, 60);

  private static final int STATIONS = 10;

  public LinesApartCheck {
    if (!(merged > Tolerance.PRINTED_AS_ONE) || !(mostOf > 0 && mostOf <= 1) || !(from >= 0)) {
      throw new IllegalArgumentException("lines merge within a distance, over a share of an edge");
    }
  }

  @Override
  public String id() {
    return "lines-apart";
  }

  @Override
  public boolean asksOfParts() {
    return false;
  }

  @Override
  public List<Finding> check(SizeRun run) {
    List<Finding> findings = new ArrayList<>();
    List<SizedPattern> sizes = run.sizes();
    for (int i = 1; i < sizes.size(); i++) {
      neighbours(sizes.get(i - 1), sizes.get(i), findings);
    }
    if (run.pattern().paper().stitchLines()) {
      for (List<Size> group : Edition.groups(run)) {
        Nest.of(run, group, false, false)
            .forEach(nest -> CloseStitchLines.in(nest).ifPresent(findings::add));
      }
    }
    return new FindingOrder(sizes.stream().map(sized -> sized.size().name()).toList()).of(findings);
  }

  private void neighbours(SizedPattern smaller, SizedPattern larger, List<Finding> findings) {
    for (Piece piece : smaller.pieces()) {
      Optional<Piece> next = larger.piece(piece.name());
      for (Edge edge : next.isPresent() ? piece.edges() : List.<Edge>of()) {
        Optional<Edge> mate = next.get().edge(edge.name());
        if (mate.isPresent() && !edge.onFold()) {
          Vector stacked = piece.stackPoint().minus(next.get().stackPoint());
          edge(smaller, larger, piece, edge, mate.get().path(), stacked).ifPresent(findings::add);
        }
      }
    }
  }

  private Optional<Finding> edge(
      SizedPattern smaller,
      SizedPattern larger,
      Piece piece,
      Edge edge,
      Path mate,
      Vector stacked) {
    Path line = edge.path();
    double length = line.length();
    if (length < from) {
      return Optional.empty();
    }
    int near = 0;
    double widest = 0;
    for (int i = 0; i < STATIONS; i++) {
      double share = (i + 0.5) / STATIONS;
      double apart = apart(line, mate, stacked, share);
      if (apart > Tolerance.PRINTED_AS_ONE && apart < merged) {
        near++;
        widest = Math.max(widest, apart);
      }
    }
    if (near < mostOf * STATIONS) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.warn("lines-close", piece.name())
            .sizes(List.of(smaller.size().name(), larger.size().name()))
            .with("piece", piece.name())
            .with("edge", edge.name())
            .with("by", Argument.mm(widest))
            .with("least", Argument.mm(merged))
            .values(widest, merged, "mm")
            .at(Place.on(edge.origin(), piece.name(), line.at(length / 2).point()))
            .build());
  }

  /**
   * How far the mate, stacked on the line, lies from it at a share of its length: square to the
   * line, which is quick, and from its nearest point where that is near.
   */
  private double apart(Path line, Path mate, Vector stacked, double share) {
    PathPlace here = line.at(line.length() * share);
    Point there = mate.at(mate.length() * share).point().plus(stacked);
    double square = Math.abs(there.minus(here.point()).dot(here.tangent().left()));
    if (square > 5 * merged) {
      return square;
    }
    Point unstacked = here.point().minus(stacked);
    return mate.nearest(unstacked).point().distanceTo(unstacked);
  }
}
