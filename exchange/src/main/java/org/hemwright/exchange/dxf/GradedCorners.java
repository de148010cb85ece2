package org.hemwright.exchange.dxf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.AddedAllowance;
import org.hemwright.pattern.piece.CutLine;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.traced.OutlineRequest;

/** The corners of every cut line, and the rules by which they move from the base size. */
final class GradedCorners {
  /** Rules apart by no more than this are one (mm): what a file's four decimals can tell. */
  private static final double SAME = 1e-4;

  /** Which line of a piece is meant. */
  static final String CUT = "";

  static final String STITCH = " stitch";

  private final SizeRun run;
  private final List<List<Vector>> rules = new ArrayList<>();
  private final Map<String, List<Integer>> numbers = new LinkedHashMap<>();
  private final List<String> without = new ArrayList<>();

  GradedCorners(SizeRun run, SizedPattern base) {
    this.run = run;
    for (Piece piece : base.pieces()) {
      number(piece, CUT, GradedCorners::cut);
      number(piece, STITCH, each -> Optional.of(each.stitchLine().path()));
    }
  }

  /** For each rule the moves from the base size, a size after another. */
  List<List<Vector>> rules() {
    return rules;
  }

  /** The pieces that have no rules, since their corners are not the same in all sizes. */
  List<String> without() {
    return without.stream().distinct().toList();
  }

  /**
   * The rule number of each corner of one of a piece's lines, from 1; none where it has no rules.
   */
  List<Integer> numbers(String piece, String line) {
    return numbers.getOrDefault(piece + line, List.of());
  }

  /** Where a closed line turns. */
  static List<Point> corners(Path path) {
    List<Point> corners = new ArrayList<>();
    List<Curve> curves = path.curves();
    for (int i = 0; i < curves.size(); i++) {
      Curve before = curves.get((i + curves.size() - 1) % curves.size());
      double turn = before.direction(1).angleTo(curves.get(i).direction(0));
      if (Math.abs(turn) >= OutlineRequest.USUAL_CORNER) {
        corners.add(curves.get(i).start());
      }
    }
    return corners;
  }

  static Optional<Path> cut(Piece piece) {
    return AddedAllowance.to(piece).cutLine().map(CutLine::outline).map(outline -> outline.path());
  }

  private void number(Piece piece, String which, Function<Piece, Optional<Path>> line) {
    List<Point> base = line.apply(piece).map(GradedCorners::corners).orElse(List.of());
    List<List<Vector>> moves = new ArrayList<>();
    base.forEach(corner -> moves.add(new ArrayList<>()));
    for (SizedPattern sized : run.sizes()) {
      Optional<Piece> other = sized.piece(piece.name());
      List<Point> corners = other.flatMap(line).map(GradedCorners::corners).orElse(List.of());
      if (other.isPresent() && corners.size() != base.size()) {
        without.add(piece.name());
        return;
      }
      for (int i = 0; i < base.size(); i++) {
        moves.get(i).add(other.isPresent() ? corners.get(i).minus(base.get(i)) : Vector.ZERO);
      }
    }
    List<Integer> own = new ArrayList<>();
    for (List<Vector> rule : moves) {
      own.add(numberOf(rule));
    }
    numbers.put(piece.name() + which, own);
  }

  private int numberOf(List<Vector> rule) {
    for (int i = 0; i < rules.size(); i++) {
      if (same(rules.get(i), rule)) {
        return i + 1;
      }
    }
    rules.add(List.copyOf(rule));
    return rules.size();
  }

  private static boolean same(List<Vector> one, List<Vector> other) {
    for (int i = 0; i < one.size(); i++) {
      if (one.get(i).minus(other.get(i)).length() > SAME) {
        return false;
      }
    }
    return true;
  }
}
