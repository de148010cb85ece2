package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;

/**
 * A lining does not show: its hem ends above the hem of the piece that it is drafted on, and it is
 * no wider there (common practice, no source). A lining is a piece of another cloth that lies on
 * the other with its long edges, each of the same name, as one that was derived from it does.
 */
record LiningHemCheck(CheckSettings settings) implements EachSizeCheck {
  /** Edges this far apart lie on each other (mm). */
  private static final double ON = 3;

  /** The share of an edge that lies on the other. */
  private static final double MOST = 0.8;

  private static final int LOOKS = 12;

  @Override
  public String id() {
    return "lining-hem";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (Piece lining : sized.pieces()) {
      for (Edge hem : lining.edges()) {
        if (hem.allowance() instanceof Allowance.TurnedBack) {
          for (Piece shell : sized.pieces()) {
            Optional<Edge> other = shell.edge(hem.name());
            if (other.isPresent()
                && other.get().allowance() instanceof Allowance.TurnedBack
                && lies(lining, shell, hem, pattern)) {
              judge(lining, hem, shell, other.get()).ifPresent(findings::add);
            }
          }
        }
      }
    }
    return findings;
  }

  private boolean lies(Piece lining, Piece shell, Edge hem, Pattern pattern) {
    List<String> own = lining.card().cuts().stream().map(cut -> cut.fabric()).toList();
    List<String> outer = shell.card().cuts().stream().map(cut -> cut.fabric()).toList();
    boolean together =
        pattern.views().stream()
            .anyMatch(
                view ->
                    view.pieces().contains(lining.name()) && view.pieces().contains(shell.name()));
    boolean later =
        lining.card().number() > shell.card().number()
            && !own.isEmpty()
            && !outer.isEmpty()
            && !own.get(0).equals(outer.get(0));
    List<Edge> longEdges =
        lining.edges().stream()
            .filter(edge -> !edge.onFold() && !edge.name().equals(hem.name()))
            .filter(edge -> edge.path().length() >= settings.making().lengthenFrom())
            .toList();
    return together
        && later
        && !longEdges.isEmpty()
        && longEdges.stream()
            .allMatch(edge -> shell.edge(edge.name()).filter(to -> isOn(edge, to)).isPresent());
  }

  private static boolean isOn(Edge edge, Edge other) {
    int on = 0;
    for (int i = 0; i <= LOOKS; i++) {
      Point at = at(edge.path(), i);
      if (other.path().nearest(at).point().distanceTo(at) <= ON) {
        on++;
      }
    }
    return on >= MOST * (LOOKS + 1);
  }

  private static Point at(Path path, int step) {
    return path.at(path.length() * step / LOOKS).point();
  }

  private Optional<Finding> judge(Piece lining, Edge hem, Piece shell, Edge outer) {
    double above = Double.POSITIVE_INFINITY;
    Point where = at(hem.path(), LOOKS / 2);
    for (int i = 0; i <= LOOKS; i++) {
      Point at = at(hem.path(), i);
      Point nearest = outer.path().nearest(at).point();
      double distance = nearest.distanceTo(at);
      boolean inside = shell.stitchLine().contains(at) || isOnOutline(shell, outer, at, nearest);
      double signed = inside ? distance : -distance;
      if (signed < above) {
        above = signed;
        where = at;
      }
    }
    double least = settings.making().liningAbove();
    if (above >= least - Tolerance.DRAWN_LENGTH) {
      return Optional.empty();
    }
    boolean shows = above < Tolerance.DRAWN_LENGTH;
    Finding.Builder finding =
        Finding.fail(shows ? "lining-shows" : "lining-near", lining.name() + "." + hem.name())
            .with("piece", lining.name())
            .with("edge", hem.name())
            .with("other", shell.name())
            .with("outer", outer.name())
            .with("by", Argument.mm(Math.abs(above)))
            .with("least", Argument.mm(least))
            .values(above, least, "mm")
            .at(Place.on(hem.origin(), lining.name(), where))
            .at(Place.on(outer.origin(), shell.name(), outer.path().nearest(where).point()));
    if (Math.abs(above) < Tolerance.DRAWN_LENGTH) {
      finding.with("level", outer.name());
    }
    return Optional.of(finding.build().as(shows ? Status.FAIL : Status.WARN));
  }

  /** A corner of the lining on the shell's side or centre counts by its height over the hem. */
  private static boolean isOnOutline(Piece shell, Edge outer, Point at, Point nearest) {
    boolean onEdge =
        shell.edges().stream()
            .filter(edge -> !edge.name().equals(outer.name()))
            .anyMatch(edge -> edge.path().nearest(at).point().distanceTo(at) <= ON);
    return onEdge && nearest.distanceTo(at) > ON;
  }
}
