package org.hemwright.pattern.compare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;

/** What else is drawn on a piece: points, lines, words, levels, found again by kind and name. */
record MarkComparing(String name, Map<String, PieceMatch.Both> sizes, List<Change> changes) {
  void compare() {
    BySize found = new BySize(sizes.size());
    sizes.forEach(
        (size, both) -> {
          Map<String, Mark> was = marks(both.old());
          Map<String, Mark> is = marks(both.now());
          was.forEach(
              (subject, mark) -> {
                if (!is.containsKey(subject)) {
                  found.add(size, Changed.MARK_REMOVED, name + " " + subject);
                }
              });
          is.forEach(
              (subject, mark) -> {
                Mark before = was.get(subject);
                if (before == null) {
                  found.add(size, Changed.MARK_ADDED, name + " " + subject);
                } else {
                  mark(size, name + " " + subject, before, mark, both.onto(), found);
                }
              });
        });
    changes.addAll(found.changes());
  }

  /** The marks by what they are called, those without a name by number. */
  private static Map<String, Mark> marks(Piece piece) {
    Map<String, Mark> marks = new LinkedHashMap<>();
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (Mark mark : piece.marks()) {
      String called = called(mark);
      int count = counts.merge(called, 1, Integer::sum);
      marks.put(count == 1 ? called : called + " " + count, mark);
    }
    return marks;
  }

  private static String called(Mark mark) {
    if (mark instanceof Mark.Drill drill) {
      return "drill " + drill.name();
    } else if (mark instanceof Mark.Inner inner) {
      return "inner " + inner.name();
    } else if (mark instanceof Mark.Placement placement) {
      return "placement " + placement.name();
    } else if (mark instanceof Mark.Level level) {
      return "level " + level.name();
    } else if (mark instanceof Mark.Lengthen) {
      return "lengthen line";
    } else if (mark instanceof Mark.Split split) {
      return "split " + split.name();
    }
    return mark instanceof Mark.Stretch ? "stretch" : "label";
  }

  private static void mark(
      String size, String subject, Mark was, Mark is, Motion onto, BySize found) {
    found.add(size, Changed.MARK_WORDS, subject, Optional.of(words(was)), Optional.of(words(is)));
    Optional<LineDistance> apart = apart(was, is, onto);
    if (apart.isPresent() && apart.get().mm() > Tolerance.PRINTED_AS_ONE) {
      Point at = onto.inverse().apply(apart.get().to());
      found.add(
          size,
          Changed.MARK_MOVED,
          subject,
          new Change.Values(0, apart.get().mm(), apart.get().mm(), Optional.of(at)));
    }
    if (was instanceof Mark.Stretch before && is instanceof Mark.Stretch now) {
      Vector turned = onto.apply(now.direction());
      if (Math.abs(before.direction().cross(turned)) > Tolerance.SAME_DIRECTION) {
        found.add(
            size,
            Changed.GRAIN_TURNED,
            subject,
            Optional.of(Directions.of(before.direction())),
            Optional.of(Directions.of(turned)));
      }
    }
  }

  private static Argument words(Mark mark) {
    Optional<String> text = Optional.empty();
    if (mark instanceof Mark.Drill drill) {
      text = drill.text();
    } else if (mark instanceof Mark.Inner inner) {
      text = inner.text();
    } else if (mark instanceof Mark.Placement placement) {
      text = placement.text();
    } else if (mark instanceof Mark.Label label) {
      text = Optional.of(label.text());
    } else if (mark instanceof Mark.Split split && !split.parts().isEmpty()) {
      text = Optional.of(String.join(", ", split.parts()));
    }
    return text.map(Argument::of).orElse(new Argument.Term("none"));
  }

  private static Optional<LineDistance> apart(Mark was, Mark is, Motion onto) {
    Optional<Point> from = point(was);
    Optional<Point> to = point(is).map(onto::apply);
    if (from.isPresent() && to.isPresent()) {
      return Optional.of(new LineDistance(from.get().distanceTo(to.get()), from.get(), to.get()));
    }
    Optional<Path> line = line(was);
    Optional<Path> now = line(is).map(path -> path.moved(onto));
    return line.isPresent() && now.isPresent()
        ? Optional.of(LineDistance.between(line.get(), now.get()))
        : Optional.empty();
  }

  private static Optional<Point> point(Mark mark) {
    if (mark instanceof Mark.Drill drill) {
      return Optional.of(drill.at());
    } else if (mark instanceof Mark.Label label) {
      return Optional.of(label.at());
    } else if (mark instanceof Mark.Level level) {
      return Optional.of(level.at());
    }
    return Optional.empty();
  }

  private static Optional<Path> line(Mark mark) {
    if (mark instanceof Mark.Inner inner) {
      return Optional.of(inner.path());
    } else if (mark instanceof Mark.Placement placement) {
      return Optional.of(placement.path());
    } else if (mark instanceof Mark.Lengthen lengthen) {
      return Optional.of(lengthen.line());
    } else if (mark instanceof Mark.Split split && !split.onFold()) {
      return Optional.of(split.lines().get(0));
    }
    return Optional.empty();
  }
}
