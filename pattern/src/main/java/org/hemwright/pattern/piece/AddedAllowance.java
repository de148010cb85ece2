package org.hemwright.pattern.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.GeometryProblem;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Meeting;
import org.hemwright.geometry.OffsetPath;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.finding.Finding;

/**
 * A piece's allowances added to its stitch line: the cut line, or what stands in its way (handbook
 * section 3).
 *
 * <p>Each edge's stitch line is moved outward by its allowance, {@link CornerFinish} by {@link
 * CornerFinish} joined to the next. At a fold the neighbour's cut line ends on the fold line, run
 * on. The result is simple and runs counter-clockwise.
 *
 * @param cutLine absent where a finding fails
 * @param findings what fails, and what is worth a look, round the piece; their places are points on
 *     the piece
 */
public record AddedAllowance(Optional<CutLine> cutLine, List<Finding> findings) {
  public AddedAllowance {
    findings = List.copyOf(findings);
  }

  /** The allowances of a piece, added. Never throws: what cannot be drawn is a finding. */
  public static AddedAllowance to(Piece piece) {
    return new Adding(piece).result();
  }

  private static final class Adding {
    private final Piece piece;
    private final AllowanceFindings findings;

    Adding(Piece piece) {
      this.piece = piece;
      this.findings = new AllowanceFindings(piece);
    }

    AddedAllowance result() {
      List<Path> beside = beside();
      if (findings.anyFails()) {
        return new AddedAllowance(Optional.empty(), findings.all());
      }
      List<CornerTurn> turns = turns(beside);
      if (findings.anyFails()) {
        return new AddedAllowance(Optional.empty(), findings.all());
      }
      Optional<CutLine> drawn = drawn(beside, turns);
      return new AddedAllowance(findings.anyFails() ? Optional.empty() : drawn, findings.all());
    }

    /** The line beside each edge, from the point beside its start to that beside its end. */
    private List<Path> beside() {
      List<Path> beside = new ArrayList<>();
      for (Edge edge : piece.edges()) {
        TightCurve.of(edge)
            .ifPresent(tight -> findings.tighterThanAllowance(edge, tight.radius(), tight.at()));
        try {
          beside.add(OffsetPath.of(edge.path(), -edge.allowance().width()));
        } catch (GeometryProblem problem) {
          findings.cannotDraw(edge, problem);
        }
      }
      return beside;
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
      List<Path> stretches = new ArrayList<>();
      List<Curve> round = new ArrayList<>();
      for (int i = 0; i < beside.size(); i++) {
        Edge edge = piece.edges().get(i);
        CornerTurn start = turns.get(i);
        CornerTurn end = turns.get((i + 1) % turns.size());
        Path line = beside.get(i);
        double room = line.length() - Math.max(0, start.after()) - Math.max(0, end.before());
        if (room <= Tolerance.SAME_POINT) {
          findings.swallowed(edge, edge, edge.path().start());
          continue;
        }
        Path stretch = stretch(line, start.after(), end.before());
        stretches.add(stretch);
        append(round, start.between());
        append(round, stretch.curves());
      }
      if (findings.anyFails()) {
        return Optional.empty();
      }
      return closed(round, stretches);
    }

    private Optional<CutLine> closed(List<Curve> round, List<Path> stretches) {
      try {
        List<Curve> loop = new ArrayList<>(round);
        Point last = round.get(round.size() - 1).end();
        Point first = round.get(0).start();
        if (!last.isAt(first)) {
          loop.add(new Line(last, first));
        }
        Outline outline = Outline.of(Path.of(loop));
        for (Meeting crossing : outline.crossings()) {
          findings.crosses(nearestEdge(crossing.point()), crossing.point());
        }
        return Optional.of(new CutLine(outline, stretches));
      } catch (GeometryProblem problem) {
        findings.cannotDraw(piece.edges().get(0), problem);
        return Optional.empty();
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
    private static Path stretch(Path line, double trimStart, double trimEnd) {
      Path kept = line.part(Math.max(0, trimStart), line.length() - Math.max(0, trimEnd));
      List<Curve> curves = new ArrayList<>(kept.curves());
      if (trimStart < -Tolerance.NO_LENGTH) {
        Point from = kept.start().plus(kept.startDirection().times(trimStart));
        runOnStart(curves, from);
      }
      if (trimEnd < -Tolerance.NO_LENGTH) {
        Point to = kept.end().minus(kept.endDirection().times(trimEnd));
        runOnEnd(curves, to);
      }
      return Path.of(curves);
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

    private static void append(List<Curve> round, List<Curve> next) {
      if (next.isEmpty()) {
        return;
      }
      if (!round.isEmpty()) {
        Point reached = round.get(round.size() - 1).end();
        Point wanted = next.get(0).start();
        if (!reached.isAt(wanted)) {
          round.add(new Line(reached, wanted));
        }
      }
      round.addAll(next);
    }
  }
}
