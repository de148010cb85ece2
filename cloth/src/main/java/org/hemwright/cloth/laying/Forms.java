package org.hemwright.cloth.laying;

import java.util.ArrayList;
import java.util.List;

/**
 * The different outlines that a problem's shapes show in their turns, each once, and the cuts made
 * of them. Turns in which a shape looks the same and shapes of equal outline share a form.
 */
final class Forms {

  private final List<GridOutline> outlines = new ArrayList<>();
  private final List<List<Cut>> cutsOfShape = new ArrayList<>();
  private final List<Cut> cuts = new ArrayList<>();

  Forms(StripProblem problem, StripGrid grid) {
    for (int shape = 0; shape < problem.shapes().size(); shape++) {
      LooseShape loose = problem.shapes().get(shape);
      List<Cut> own = new ArrayList<>();
      for (Turn turn : loose.turns()) {
        GridOutline placed = GridOutline.of(loose.outline(), turn, grid);
        List<LaneRange> lanes = new ArrayList<>();
        for (LaneRange range : LaneRange.of(loose.lanes(), placed, grid)) {
          lanes.add(new LaneRange(range.low() + placed.minY(), range.high() + placed.minY()));
        }
        int form = formOf(placed.standing());
        boolean seen = own.stream().anyMatch(c -> c.form() == form && c.lanes().equals(lanes));
        if (!lanes.isEmpty() && !seen) {
          Cut cut =
              new Cut(
                  shape,
                  turn,
                  form,
                  -placed.minX(),
                  -placed.minY(),
                  placed.maxX() - placed.minX(),
                  placed.maxY() - placed.minY(),
                  lanes);
          own.add(cut);
          cuts.add(cut);
        }
      }
      cutsOfShape.add(List.copyOf(own));
    }
  }

  private int formOf(GridOutline outline) {
    int form = indexOf(outline);
    if (form >= 0) {
      return form;
    }
    outlines.add(outline);
    return outlines.size() - 1;
  }

  private int indexOf(GridOutline outline) {
    for (int i = 0; i < outlines.size(); i++) {
      if (outlines.get(i).equals(outline)) {
        return i;
      }
    }
    return -1;
  }

  int count() {
    return outlines.size();
  }

  GridOutline outline(int form) {
    return outlines.get(form);
  }

  /** The form that this one becomes when turned half round, or −1. */
  int halfTurned(int form) {
    return indexOf(outlines.get(form).halfTurned());
  }

  /** Every cut, those of one shape together; a cut's number is its place here. */
  List<Cut> cuts() {
    return cuts;
  }

  /** The cuts of one shape, at least one. */
  List<Cut> cutsOf(int shape) {
    return cutsOfShape.get(shape);
  }
}
