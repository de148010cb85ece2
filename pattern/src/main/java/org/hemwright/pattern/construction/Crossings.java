package org.hemwright.pattern.construction;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.pattern.construction.Trouble.Kind;
import org.hemwright.pattern.make.PressDirection;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.measure.LayerWalk;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * Where a line of stitching runs across seams that are sewn already: those must be pressed, and
 * where two meet their allowances are to lie beside each other, not on each other.
 */
final class Crossings {
  /** Two seams meet where their places differ by less than this (mm). */
  private static final double MEET = 8;

  private final Table table;
  private final Pressing pressing;

  Crossings(Table table, Pressing pressing) {
    this.table = table;
    this.pressing = pressing;
  }

  /**
   * A seam under a layer.
   *
   * @param share how far along the layer
   * @param crossed the seam's pass
   * @param along the strip that the stitching follows there
   * @param strip the crossed seam's strip beside it
   * @param before the part that the layer leaves there, or starts on
   * @param after the part that it goes on to; nothing at an end
   */
  private record Crossing(
      double share, Strip along, Pass crossed, Strip strip, Part before, Optional<Part> after) {}

  void cross(Pass pass, Step step) {
    if (table.cloth.isPlaced(pass)) {
      return;
    }
    List<List<Crossing>> layers = new ArrayList<>();
    for (Seam.Layer layer : pass.join().layers()) {
      List<Crossing> crossings = crossings(pass, layer);
      layers.add(crossings);
      crossings.forEach(crossing -> passOver(crossing.crossed(), step, pass.seam().name()));
    }
    double length = LayerWalk.length(pass.join().layers().get(0), table.cloth.sized());
    for (int i = 0; i < layers.size(); i++) {
      for (int j = i + 1; j < layers.size(); j++) {
        for (Crossing one : layers.get(i)) {
          for (Crossing other : layers.get(j)) {
            if (Math.abs(one.share() - other.share()) * length < MEET) {
              nest(pass, step, one, other);
            }
          }
        }
      }
    }
  }

  /** A hem or binding along a strip, too, crosses the seams at its ends. */
  void cross(Strip strip, Step step) {
    for (boolean begins : new boolean[] {true, false}) {
      table
          .cloth
          .beside(strip, begins)
          .ifPresent(
              beside ->
                  table.sewnAlong(beside).stream()
                      .filter(pass -> !table.cloth.isPlaced(pass))
                      .forEach(pass -> passOver(pass, step, strip.text())));
    }
  }

  static boolean isOpen(PressDirection direction) {
    return direction instanceof PressDirection.Open;
  }

  private void passOver(Pass crossed, Step step, String over) {
    Table.PassState state = table.state(crossed);
    if (step.equals(state.sewn)) {
      return;
    }
    if (state.pressed == null && !table.cloth.isPlaced(crossed)) {
      Trouble trouble = Trouble.seam(Kind.UNPRESSED, crossed).in(step).with(over);
      table.tell(state.sewn == null ? trouble : trouble.after(state.sewn));
    }
    if (state.crossed == null) {
      state.crossed = step;
    }
  }

  private List<Crossing> crossings(Pass pass, Seam.Layer layer) {
    List<Crossing> found = new ArrayList<>();
    List<EdgePlace> run = layer.run();
    boolean round = table.cloth.round(layer, table.corners).orElse(false);
    double length = LayerWalk.length(layer, table.cloth.sized());
    double walked = 0;
    for (int i = 0; i < run.size(); i++) {
      EdgePlace place = run.get(i);
      walked += LayerWalk.length(new Seam.Layer(List.of(place)), table.cloth.sized());
      boolean last = i + 1 == run.size();
      if (last && !round) {
        add(found, pass, place, false, 1, Optional.empty());
      } else {
        Part after = Part.of(run.get(last ? 0 : i + 1));
        add(found, pass, place, false, last ? 0 : walked / length, Optional.of(after));
      }
    }
    if (!round) {
      add(found, pass, run.get(0), true, 0, Optional.empty());
    }
    return found;
  }

  private void add(
      List<Crossing> found,
      Pass pass,
      EdgePlace place,
      boolean first,
      double share,
      Optional<Part> after) {
    if (table.cloth.isLine(Strip.of(place))) {
      return;
    }
    // A seam of the same two parts goes on round the corner, as round a collar; none crosses there.
    Set<Part> own = Set.copyOf(pass.parts());
    table
        .cloth
        .beside(place, first)
        .ifPresent(
            beside ->
                table.sewnAlong(beside).stream()
                    .filter(crossed -> !Set.copyOf(crossed.parts()).equals(own))
                    .forEach(
                        crossed ->
                            found.add(
                                new Crossing(
                                    share,
                                    Strip.of(place),
                                    crossed,
                                    beside,
                                    Part.of(place),
                                    after))));
  }

  private void nest(Pass pass, Step step, Crossing one, Crossing other) {
    Optional<Boolean> first = liesBefore(one);
    Optional<Boolean> second = liesBefore(other);
    boolean oneEnd = one.crossed().equals(other.crossed()) && meeting(one).equals(meeting(other));
    if (!oneEnd
        && one.after().isPresent() == other.after().isPresent()
        && first.isPresent()
        && first.equals(second)) {
      Trouble trouble =
          Trouble.seam(Kind.STACKED, pass)
              .in(step)
              .at(one.strip())
              .with(one.crossed().seam().name());
      Step pressed = table.state(one.crossed()).pressed;
      table.tell(pressed == null ? trouble : trouble.after(pressed));
    }
  }

  /**
   * Whether the allowances of a crossed seam lie on the side that the layer comes from; nothing
   * where they lie open, or nothing says.
   */
  private Optional<Boolean> liesBefore(Crossing crossing) {
    Pass crossed = crossing.crossed();
    Optional<PressDirection> direction = pressing.direction(crossed, meeting(crossing));
    Set<Part> side = direction.map(way -> pressing.side(crossed, way)).orElse(Set.of());
    Set<Part> parts = new HashSet<>(crossed.parts());
    boolean onePart = crossing.after().filter(crossing.before()::equals).isPresent();
    if (side.isEmpty() || side.containsAll(parts) || onePart) {
      return Optional.empty();
    }
    return Optional.of(side.contains(crossing.before()));
  }

  /** The strips that meet at that end of a crossed seam at which a part is crossed. */
  private List<Strip> meeting(Crossing crossing) {
    Pass crossed = crossing.crossed();
    for (Seam.Layer layer : crossed.join().layers()) {
      List<EdgePlace> run = layer.run();
      for (boolean first : new boolean[] {true, false}) {
        EdgePlace place = run.get(first ? 0 : run.size() - 1);
        if (Strip.of(place).equals(crossing.strip()) && touches(place, first, crossing.along())) {
          return crossed.join().layers().stream()
              .map(each -> each.run().get(first ? 0 : each.run().size() - 1))
              .map(Strip::of)
              .toList();
        }
      }
    }
    return List.of(crossing.strip());
  }

  /** Whether the edge beside a place's end is the one that the stitching follows there. */
  private boolean touches(EdgePlace place, boolean first, Strip along) {
    return table.cloth.beside(place, first).filter(along::equals).isPresent();
  }
}
