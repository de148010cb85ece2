package org.hemwright.pattern.construction;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hemwright.pattern.construction.Trouble.Kind;
import org.hemwright.pattern.make.PressDirection;
import org.hemwright.pattern.make.Step;

/** Which way allowances lie once they are pressed. */
final class Pressing {
  /** An edge faces up or down where it lies less than about 73 degrees off. */
  private static final double FACES = 0.3;

  private final Table table;

  Pressing(Table table) {
    this.table = table;
  }

  /** The parts of a pass toward which a direction presses; none where that is to no one side. */
  Set<Part> side(Pass pass, PressDirection direction) {
    if (direction instanceof PressDirection.Toward toward) {
      return pass.parts().stream()
          .filter(part -> toward.lies(part.piece(), part.copy()))
          .collect(Collectors.toSet());
    } else if (direction instanceof PressDirection.Up) {
      return facing(pass, -1);
    } else if (direction instanceof PressDirection.Down) {
      return facing(pass, 1);
    }
    return Set.of();
  }

  /** The parts that lie above a seam, whose edges there face down, or those that lie below. */
  private Set<Part> facing(Pass pass, int sign) {
    return pass.strips().stream()
        .filter(strip -> !table.cloth.isLine(strip))
        .filter(strip -> sign * table.cloth.outward(strip).dy() > FACES)
        .map(Strip::part)
        .collect(Collectors.toSet());
  }

  void press(Pass pass, PressDirection direction, Step step) {
    Table.PassState state = table.state(pass);
    if (direction instanceof PressDirection.Open && state.joinedAsOne != null) {
      table.tell(Trouble.seam(Kind.CANNOT_OPEN, pass).in(step).after(state.joinedAsOne));
    }
    if (direction instanceof PressDirection.Toward
        && !table.cloth.isPlaced(pass)
        && !pass.isWithinOnePart()) {
      Set<Part> side = side(pass, direction);
      if (side.isEmpty() || (side.size() == pass.parts().size() && side.size() > 1)) {
        table.tell(Trouble.seam(Kind.PRESS_UNCLEAR, pass).in(step));
      }
    }
    otherWay(pass, direction, step);
    state.pressed = step;
    state.direction = Optional.of(direction);
    state.own.clear();
  }

  /** Allowances that lie to one side are not pressed to the other later. */
  private void otherWay(Pass pass, PressDirection direction, Step step) {
    Table.PassState state = table.state(pass);
    Set<Part> before = state.direction.map(way -> side(pass, way)).orElse(Set.of());
    Set<Part> after = side(pass, direction);
    boolean turned =
        !before.isEmpty() && !after.isEmpty() && before.stream().noneMatch(after::contains);
    if (turned && state.pressed != null) {
      table.tell(Trouble.seam(Kind.PRESSED_OTHER_WAY, pass).in(step).after(state.pressed));
    }
  }

  /** Turns one strip's allowance another way than the rest of its seam. */
  void pressAlone(Strip strip, PressDirection direction) {
    for (Pass pass : table.sewnAlong(strip)) {
      table.state(pass).own.put(strip, direction);
    }
  }

  /** Which way a pass lies at one of its ends or joints, given the strips that meet there. */
  Optional<PressDirection> direction(Pass pass, List<Strip> there) {
    Table.PassState state = table.state(pass);
    return there.stream()
        .filter(state.own::containsKey)
        .findFirst()
        .map(state.own::get)
        .or(() -> state.direction);
  }
}
