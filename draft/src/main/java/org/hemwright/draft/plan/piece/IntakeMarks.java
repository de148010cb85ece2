package org.hemwright.draft.plan.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.piece.DrawnOutline.DrawnEdge;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;

/**
 * What darts, pleats and gathers put on a piece: notches at the ends of their lines, the lines
 * themselves, and a mark at the stitched point of a dart (handbook section 1, Notches).
 */
final class IntakeMarks {
  private IntakeMarks() {}

  static List<Notch> notches(List<DrawnEdge> edges) {
    List<Notch> notches = new ArrayList<>();
    for (DrawnEdge edge : edges) {
      double length = edge.path().length();
      for (Intake intake : edge.intakes()) {
        for (double at : new double[] {intake.from(), intake.to()}) {
          if (at > Tolerance.DRAWN_LENGTH && at < length - Tolerance.DRAWN_LENGTH) {
            notches.add(
                new Notch(intake.edge(), at, Notch.Kind.SINGLE, Optional.empty(), intake.origin()));
          }
        }
      }
    }
    return notches;
  }

  static List<Mark> marks(DrawnOutline outline) {
    List<Mark> marks = new ArrayList<>();
    for (DrawnEdge edge : outline.edges()) {
      for (Intake intake : edge.intakes()) {
        if (intake instanceof Intake.Dart dart) {
          Point first = edge.path().at(dart.from()).point();
          Point second = edge.path().at(dart.to()).point();
          Path legs = Path.polyline(List.of(first, dart.tip(), second));
          marks.add(new Mark.Inner(dart.name(), legs, Optional.empty(), dart.origin()));
          marks.add(new Mark.Drill(dart.name(), dart.tip(), Optional.empty(), dart.origin()));
        } else if (intake instanceof Intake.Pleat pleat) {
          for (Path line : pleat.lines()) {
            marks.add(new Mark.Inner(pleat.name(), line, Optional.empty(), pleat.origin()));
          }
        }
      }
    }
    return marks;
  }
}
