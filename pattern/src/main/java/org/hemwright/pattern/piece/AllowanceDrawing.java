package org.hemwright.pattern.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.GeometryProblem;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Meeting;
import org.hemwright.geometry.OffsetPath;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;

/**
 * Draws the cut line of one piece: the line beside each edge, the way round each corner, the two
 * put together, and last the loops cut off. Each part is drawn only where nothing failed before it.
 */
final class AllowanceDrawing {
  private final Piece piece;
  private final AllowanceFindings findings;

  AllowanceDrawing(Piece piece) {
    this.piece = piece;
    this.findings = new AllowanceFindings(piece);
  }

  AddedAllowance result() {
    Optional<CutLine> drawn = Optional.empty();
    List<Path> beside = beside();
    if (!findings.anyFails()) {
      List<CornerTurn> turns = turns(beside);
      if (!findings.anyFails()) {
        drawn = drawn(beside, turns);
      }
    }
    return new AddedAllowance(findings.anyFails() ? Optional.empty() : drawn, findings.all());
  }

  /** The line beside each edge, from the point beside its start to that beside its end. */
  private List<Path> beside() {
    List<Path> beside = new ArrayList<>();
    for (Edge edge : piece.edges()) {
      try {
        beside.add(beside(edge));
      } catch (GeometryProblem problem) {
        findings.cannotDraw(edge, problem);
      }
    }
    return beside;
  }

  private Path beside(Edge edge) {
    double width = edge.allowance().width();
    Path path = edge.path();
    Path line = OffsetPath.of(path, -width);
    Point start = path.start().plus(path.startDirection().right().times(width));
    Point end = path.end().plus(path.endDirection().right().times(width));
    if (line.start().distanceTo(start) > Tolerance.OFFSET
        || line.end().distanceTo(end) > Tolerance.OFFSET) {
      TightCurve.of(edge)
          .ifPresentOrElse(
              tight -> findings.tooTightForAllowance(edge, tight.radius(), tight.at()),
              () ->
                  findings.cannotDraw(
                      edge, new GeometryProblem("its allowance leaves no line beside its end")));
    }
    return line;
  }

  /** The way round each corner; corner i is where edge i begins. */
  private List<CornerTurn> turns(List<Path> beside) {
    List<Edge> edges = piece.edges();
    List<CornerTurn> turns = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      int before = (i + edges.size() - 1) % edges.size();
      try {
        turns.add(
            CornerDrawing.of(
                AllowanceArm.arriving(edges.get(before), beside.get(before)),
                AllowanceArm.leaving(edges.get(i), beside.get(i)),
                piece.corners().get(i).finish(),
                findings));
      } catch (GeometryProblem problem) {
        findings.cannotDraw(edges.get(i), problem);
      }
    }
    return turns;
  }

  private Optional<CutLine> drawn(List<Path> beside, List<CornerTurn> turns) {
    try {
      RawCutLine raw = raw(beside, turns);
      return findings.anyFails() ? Optional.empty() : simple(raw.closed().trimmed());
    } catch (GeometryProblem problem) {
      findings.cannotDraw(piece.edges().get(0), problem);
      return Optional.empty();
    }
  }

  private RawCutLine raw(List<Path> beside, List<CornerTurn> turns) {
    RawCutLine raw = RawCutLine.empty();
    for (int i = 0; i < beside.size(); i++) {
      CornerTurn start = turns.get(i);
      CornerTurn end = turns.get((i + 1) % turns.size());
      Path line = beside.get(i);
      double taken = Math.max(0, start.after()) + Math.max(0, end.before());
      if (line.length() - taken <= Tolerance.SAME_POINT) {
        Edge edge = piece.edges().get(i);
        findings.withoutRoom(edge, edge, edge.path().start());
      } else {
        raw.add(start.between(), RawCutLine.NO_EDGE);
        raw.add(stretch(line, start.after(), end.before()), i);
      }
    }
    return raw;
  }

  private Optional<CutLine> simple(RawCutLine.Trimmed trimmed) {
    for (Meeting crossing : trimmed.crossings()) {
      findings.crosses(nearestEdge(crossing.point()), crossing.point());
    }
    List<Path> stretches = new ArrayList<>();
    for (int i = 0; i < piece.edges().size(); i++) {
      Edge edge = piece.edges().get(i);
      Path stretch = trimmed.line().stretch(i).orElse(edge.path());
      TightCurve.of(edge).ifPresent(tight -> tellOf(tight, edge, stretch));
      stretches.add(stretch);
    }
    return Optional.of(new CutLine(trimmed.outline(), stretches));
  }

  /** A tight curve may be trimmed well, or leave a hook where it runs into a corner. */
  private void tellOf(TightCurve tight, Edge edge, Path stretch) {
    if (tight.isClearedBy(stretch)) {
      findings.tighterThanAllowance(edge, tight.radius(), tight.at());
    } else {
      findings.tooTightForAllowance(edge, tight.radius(), tight.at());
    }
  }

  private Edge nearestEdge(Point point) {
    Edge nearest = piece.edges().get(0);
    double best = Double.POSITIVE_INFINITY;
    for (Edge edge : piece.edges()) {
      double distance = edge.path().nearest(point).point().distanceTo(point);
      if (distance < best) {
        best = distance;
        nearest = edge;
      }
    }
    return nearest;
  }

  /** A line trimmed at an end where the amount is more than 0, run on straight where less. */
  private static List<Curve> stretch(Path line, double trimStart, double trimEnd) {
    Path kept = line.part(Math.max(0, trimStart), line.length() - Math.max(0, trimEnd));
    List<Curve> curves = new ArrayList<>(kept.curves());
    if (trimStart < -Tolerance.NO_LENGTH) {
      runOnStart(curves, kept.start().plus(kept.startDirection().times(trimStart)));
    }
    if (trimEnd < -Tolerance.NO_LENGTH) {
      runOnEnd(curves, kept.end().minus(kept.endDirection().times(trimEnd)));
    }
    return curves;
  }

  private static void runOnStart(List<Curve> curves, Point from) {
    if (curves.get(0) instanceof Line first) {
      curves.set(0, new Line(from, first.end()));
    } else {
      curves.add(0, new Line(from, curves.get(0).start()));
    }
  }

  private static void runOnEnd(List<Curve> curves, Point to) {
    int last = curves.size() - 1;
    if (curves.get(last) instanceof Line line) {
      curves.set(last, new Line(line.start(), to));
    } else {
      curves.add(new Line(curves.get(last).end(), to));
    }
  }
}
