package org.hemwright.pattern.compare;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.piece.AddedAllowance;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Corner;
import org.hemwright.pattern.piece.CornerFinish;
import org.hemwright.pattern.piece.CutLine;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;

/**
 * The edges of a piece: which there are, their courses, allowances and corners, and the cut line.
 */
record EdgeComparing(String name, Map<String, PieceMatch.Both> sizes, List<Change> changes) {
  void compare() {
    BySize found = new BySize(sizes.size());
    sizes.forEach(
        (size, both) -> {
          cutLine(size, both, found);
          for (Edge edge : both.old().edges()) {
            if (both.now().edge(edge.name()).isEmpty()) {
              found.add(size, Changed.EDGE_REMOVED, name + "." + edge.name());
            }
          }
          for (Edge edge : both.now().edges()) {
            Optional<Edge> before = both.old().edge(edge.name());
            if (before.isEmpty()) {
              found.add(size, Changed.EDGE_ADDED, name + "." + edge.name());
            } else {
              edge(size, before.get(), edge, both, found);
            }
          }
          for (Corner corner : both.now().corners()) {
            both.old().corners().stream()
                .filter(old -> old.before().equals(corner.before()))
                .filter(old -> old.after().equals(corner.after()))
                .findFirst()
                .ifPresent(
                    old ->
                        found.add(
                            size,
                            Changed.CORNER,
                            name + "." + corner.before() + " and " + corner.after(),
                            Optional.of(finish(old.finish())),
                            Optional.of(finish(corner.finish()))));
          }
        });
    changes.addAll(found.changes());
  }

  private void edge(String size, Edge before, Edge edge, PieceMatch.Both both, BySize found) {
    String subject = name + "." + edge.name();
    double was = before.path().length();
    double is = edge.path().length();
    if (Math.abs(was - is) > Tolerance.DRAWN_LENGTH) {
      found.add(size, Changed.EDGE_LENGTH, subject, Change.Values.of(was, is));
    } else if (!LineDistance.same(before.path(), Onto.path(edge, both.onto()))) {
      LineDistance apart = LineDistance.between(before.path(), Onto.path(edge, both.onto()));
      if (apart.mm() > Tolerance.PRINTED_AS_ONE) {
        Point at = both.onto().inverse().apply(apart.to());
        found.add(
            size,
            Changed.EDGE_COURSE,
            subject,
            new Change.Values(was, is, apart.mm(), Optional.of(at)));
      }
    }
    double wide = before.allowance().width();
    double now = edge.allowance().width();
    if (Math.abs(wide - now) > Tolerance.DRAWN_LENGTH) {
      found.add(size, Changed.EDGE_ALLOWANCE, subject, Change.Values.of(wide, now));
    }
    found.add(
        size,
        Changed.EDGE_HEM,
        subject,
        Optional.of(hem(before.allowance())),
        Optional.of(hem(edge.allowance())));
    found.add(size, Changed.EDGE_FOLD, subject, Optional.of(fold(before)), Optional.of(fold(edge)));
  }

  private static Argument hem(Allowance allowance) {
    return new Argument.Term(
        allowance instanceof Allowance.TurnedBack turned
            ? turned.folds().size() == 1 ? "turned-once" : "turned-twice"
            : "not-turned");
  }

  private static Argument fold(Edge edge) {
    return new Argument.Term(edge.onFold() ? "on-fold" : "off-fold");
  }

  private static Argument finish(CornerFinish finish) {
    if (finish instanceof CornerFinish.Square square) {
      return Argument.of("square to " + square.edge());
    } else if (finish instanceof CornerFinish.TurnedBack turned) {
      return Argument.of("turned back over " + turned.edge());
    } else if (finish instanceof CornerFinish.Mitred mitred) {
      return Argument.of("mitred up to " + mitred.limit());
    }
    return Argument.of("stepped");
  }

  /** The cut lines laid on each other; what cannot be drawn is a finding elsewhere. */
  private void cutLine(String size, PieceMatch.Both both, BySize found) {
    Optional<Path> was = line(both.old());
    Optional<Path> is = line(both.now()).map(line -> line.moved(both.onto()));
    if (was.isEmpty() || is.isEmpty()) {
      return;
    }
    LineDistance apart = LineDistance.between(was.get(), is.get());
    if (apart.mm() > Tolerance.PRINTED_AS_ONE) {
      Point at = both.onto().inverse().apply(apart.to());
      found.add(
          size,
          Changed.CUT_LINE,
          name,
          new Change.Values(was.get().length(), is.get().length(), apart.mm(), Optional.of(at)));
    }
  }

  private static Optional<Path> line(Piece piece) {
    return AddedAllowance.to(piece).cutLine().map(CutLine::outline).map(outline -> outline.path());
  }
}
