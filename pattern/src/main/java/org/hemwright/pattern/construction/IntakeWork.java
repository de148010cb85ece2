package org.hemwright.pattern.construction;

import java.util.List;
import org.hemwright.pattern.construction.Trouble.Kind;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.piece.Intake;

/** Darts, pleats and gathers, and what marks them: marked, taken in, held. */
record IntakeWork(Table table, StitchWork stitches) {
  /** Each intake that a step works on is closed or held. */
  void takeIn(List<Work> work, Step step) {
    for (Work each : work) {
      if (each instanceof Work.OfIntake intake) {
        takeIn(intake.piece(), intake.intake(), step);
      }
    }
  }

  /** A dart closed, a pleat or gathers held. */
  void takeIn(String piece, String name, Step step) {
    Step before = table.takenIn.putIfAbsent(piece + "." + name, step);
    if (before != null) {
      table.tell(Trouble.about(Kind.SEWN_ALREADY, "", piece + "." + name).in(step).after(before));
    }
    boolean dart =
        table.cloth.piece(piece).stream()
            .flatMap(each -> each.intakes(Intake.Dart.class).stream())
            .anyMatch(each -> each.name().equals(name));
    if (dart && !table.markedIntakes.contains(piece + "." + name)) {
      table.tell(Trouble.about(Kind.DART_UNMARKED, "", piece + "." + name).in(step));
    }
  }

  /** A pleat is held where it is pressed in. */
  void press(Work.OfIntake intake, Step step) {
    if (isPleat(intake)) {
      table.takenIn.putIfAbsent(intake.piece() + "." + intake.intake(), step);
    }
  }

  private boolean isPleat(Work.OfIntake intake) {
    return table.cloth.piece(intake.piece()).stream()
        .flatMap(piece -> piece.intakes(Intake.Pleat.class).stream())
        .anyMatch(pleat -> pleat.name().equals(intake.intake()));
  }

  /** The gathers of an edge are held by the rows along it. */
  void gathered(Strip strip, Step step) {
    for (Intake.Gathers gathers :
        table.cloth.piece(strip.piece()).stream()
            .flatMap(piece -> piece.intakes(Intake.Gathers.class).stream())
            .filter(each -> each.edge().equals(strip.edge()))
            .toList()) {
      table.takenIn.putIfAbsent(strip.piece() + "." + gathers.name(), step);
    }
  }

  /** What is gathered has something to draw up: gathers, or more length than its mate. */
  void hasMore(Strip strip, Step step) {
    boolean gathers =
        table.cloth.piece(strip.piece()).stream()
            .flatMap(piece -> piece.intakes(Intake.Gathers.class).stream())
            .anyMatch(each -> each.edge().equals(strip.edge()));
    if (!gathers && !stitches.isLonger(strip)) {
      table.tell(Trouble.edge(Kind.NOTHING_GATHERED, strip).in(step));
    }
  }

  /** Intakes are marked before they are closed, placement lines before something covers them. */
  void mark(List<Work> work, Step step) {
    for (Work each : work) {
      if (each instanceof Work.OfIntake) {
        table.markedIntakes.add(each.text());
      } else if (each instanceof Work.OfPiece piece) {
        table.cloth.piece(piece.piece()).stream()
            .flatMap(whole -> whole.intakes().stream())
            .forEach(intake -> table.markedIntakes.add(piece.piece() + "." + intake.name()));
      }
      for (Pass pass : table.cloth.passes()) {
        for (Strip strip : pass.strips()) {
          boolean meant =
              table.cloth.isLine(strip)
                  && (each.text().equals(strip.text()) || each.text().equals(strip.piece()));
          if (meant) {
            table.marked.add(strip);
            if (table.isSewn(pass)) {
              table.late(Kind.SEWN_ALREADY, strip, step, table.state(pass).sewn);
            }
          }
        }
      }
    }
  }
}
