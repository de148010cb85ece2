package org.hemwright.draft.add;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hemwright.draft.syntax.Statement;

/**
 * The way to say one garment of the pattern, by the pieces that were pointed at.
 *
 * @param wanted what it is to be called; a letter where it is empty or taken
 */
record ViewWays(Scene scene, String wanted) {
  /** The name under which it will stand. */
  String name() {
    Set<String> taken = new HashSet<>();
    for (Statement each : scene.document().statements()) {
      if (each instanceof Statement.ViewSection view) {
        taken.add(view.name().text());
      }
    }
    if (!wanted.isEmpty() && !taken.contains(wanted)) {
      return wanted;
    }
    for (char letter = 'A'; letter <= 'Z'; letter++) {
      if (!taken.contains(String.valueOf(letter))) {
        return String.valueOf(letter);
      }
    }
    return scene.free("", "view", taken);
  }

  void find(List<Pick> picks, Ways ways) {
    List<String> pieces =
        picks.stream().map(Pick::piece).filter(each -> !each.isEmpty()).distinct().toList();
    if (!pieces.isEmpty()) {
      ways.add(
          Addition.Way.VIEW,
          new NewLine(
              NewLine.Place.VIEW, "view " + name() + " \"View " + name().replace('_', ' ') + "\""),
          new NewLine(NewLine.Place.UNDER, "pieces " + String.join(", ", pieces)));
    }
  }
}
