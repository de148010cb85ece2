package org.hemwright.draft.add;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.draft.plan.Evaluation;
import org.hemwright.draft.plan.PlannedThing;
import org.hemwright.draft.plan.name.Drawn;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;

/**
 * Where it is pointed: the values of one size.
 *
 * @param values of the document as it stands
 * @param size the place of the size among the values' sizes
 * @param spelling how new numbers are written
 * @param near how far a place may lie from what it is taken for (mm)
 */
record Scene(Evaluation values, int size, Spelling spelling, double near) {
  Document document() {
    return values.plan().document();
  }

  /** What is drawn of a piece in this size. */
  List<PlannedThing> things(String piece) {
    return values.plan().things().stream()
        .filter(each -> each.owner().equals(piece))
        .filter(each -> values.point(size, each).isPresent() || values.path(size, each).isPresent())
        .toList();
  }

  Optional<Point> point(String piece, String name) {
    return things(piece).stream()
        .filter(each -> each.name().equals(name))
        .flatMap(each -> values.point(size, each).stream())
        .findFirst();
  }

  Optional<Path> path(String piece, String name) {
    return things(piece).stream()
        .filter(each -> each.name().equals(name))
        .flatMap(each -> values.path(size, each).stream())
        .findFirst();
  }

  boolean isEdge(Pick.OfLine line) {
    return things(line.piece()).stream()
        .anyMatch(each -> each.name().equals(line.name()) && each.what() == Drawn.What.EDGE);
  }

  /** The named point of a piece that lies nearest to a place. */
  Optional<PlannedThing> nearest(String piece, Point to) {
    return things(piece).stream()
        .filter(each -> each.what() == Drawn.What.POINT)
        .min(
            Comparator.comparingDouble(
                each -> values.point(size, each).orElseThrow().distanceTo(to)));
  }

  private static void number(Statement statement, Set<String> taken) {
    if (statement instanceof Statement.Let
        || statement instanceof Statement.Dial
        || statement instanceof Statement.Solve) {
      taken.add(((Statement.Definition) statement).name().text());
    }
  }

  /** A name that is free among numbers, the drawn things of a piece, pieces and seams. */
  String free(String piece, String wanted, Set<String> besides) {
    Set<String> taken = new HashSet<>(besides);
    values.plan().things().stream()
        .filter(each -> each.owner().equals(piece))
        .forEach(each -> taken.add(each.name()));
    for (Statement each : document().statements()) {
      number(each, taken);
      if (each instanceof Statement.PieceSection section) {
        section.body().forEach(line -> number(line, taken));
        taken.add(section.name().text());
      } else if (each instanceof Statement.PartSection part) {
        taken.add(part.name().text());
      } else if (each instanceof Statement.SeamSection seam) {
        taken.add(seam.name().text());
      }
    }
    String name = wanted;
    for (int i = 2; taken.contains(name); i++) {
      name = wanted + "_" + i;
    }
    return name;
  }
}
