package org.hemwright.pattern.split;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Meeting;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;

/** What is drawn on a part, in the order of the document; how the piece is split is not drawn. */
record PartMarks(List<Drawn> drawn) {
  /**
   * One thing drawn.
   *
   * @param source of a placement line, which stretch of the whole's it is; of others absent
   */
  record Drawn(Mark mark, Optional<Source> source) {}

  /** A stretch of a drawn line (mm along it). */
  private record Reach(double from, double to) {
    Path of(Path line) {
      return line.part(from, to);
    }
  }

  PartMarks {
    drawn = List.copyOf(drawn);
  }

  /** All that is drawn on the whole piece. */
  static PartMarks whole(Piece piece) {
    List<Drawn> drawn = new ArrayList<>();
    for (Mark mark : piece.marks()) {
      if (mark instanceof Mark.Placement line) {
        drawn.add(new Drawn(line, Optional.of(Source.all(line.name(), line.path()))));
      } else if (!(mark instanceof Mark.Split)) {
        drawn.add(new Drawn(mark, Optional.empty()));
      }
    }
    return new PartMarks(drawn);
  }

  List<Mark> marks() {
    return drawn.stream().map(Drawn::mark).toList();
  }

  /** What of it lies on a smaller part that is made by a cut; lines end at the cut. */
  PartMarks on(PartEdges part, Path cut) {
    List<Drawn> own = new ArrayList<>();
    for (Drawn one : drawn) {
      Mark mark = one.mark();
      if (mark instanceof Mark.Drill drill) {
        if (part.holds(drill.at())) {
          own.add(one);
        }
      } else if (mark instanceof Mark.Label label) {
        if (part.holds(label.at())) {
          own.add(one);
        }
      } else if (mark instanceof Mark.Level level) {
        if (part.holds(level.at())) {
          own.add(one);
        }
      } else if (mark instanceof Mark.Stretch) {
        own.add(one);
      } else if (mark instanceof Mark.Inner inner) {
        for (Reach on : reaches(inner.path(), part, cut)) {
          own.add(
              new Drawn(
                  new Mark.Inner(inner.name(), on.of(inner.path()), inner.text(), inner.origin()),
                  Optional.empty()));
        }
      } else if (mark instanceof Mark.Placement line) {
        for (Reach on : reaches(line.path(), part, cut)) {
          own.add(
              new Drawn(
                  new Mark.Placement(line.name(), on.of(line.path()), line.text(), line.origin()),
                  one.source().map(source -> source.part(on.from(), on.to()))));
        }
      } else if (mark instanceof Mark.Lengthen lengthen) {
        for (Reach on : reaches(lengthen.line(), part, cut)) {
          own.add(
              new Drawn(
                  new Mark.Lengthen(on.of(lengthen.line()), lengthen.origin()), Optional.empty()));
        }
      }
    }
    return new PartMarks(own);
  }

  /** The stretches of a line that lie on a part, once it is cut. */
  private static List<Reach> reaches(Path line, PartEdges part, Path cut) {
    List<Double> ends = new ArrayList<>(List.of(0.0, line.length()));
    for (Meeting meeting : line.meetings(cut)) {
      double at = meeting.distanceOnThis();
      if (at > Tolerance.DRAWN_LENGTH && at < line.length() - Tolerance.DRAWN_LENGTH) {
        ends.add(at);
      }
    }
    Collections.sort(ends);
    List<Reach> on = new ArrayList<>();
    for (int i = 0; i + 1 < ends.size(); i++) {
      double from = ends.get(i);
      double to = ends.get(i + 1);
      if (to - from > Tolerance.DRAWN_LENGTH && part.holds(line.at((from + to) / 2).point())) {
        on.add(new Reach(from, to));
      }
    }
    return on;
  }
}
