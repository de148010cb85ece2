package org.hemwright.cloth.rule;

import java.util.List;
import org.hemwright.pattern.fabric.Fabric;

/**
 * How a piece is held to the bars of its cloth.
 *
 * @param repeat the stripes or checks
 * @param notches its notches that lie on a bar, by name
 * @param phase how far along the cloth its own origin lies behind a bar when they do (mm)
 * @param group the pieces of one group match each other, those of different groups need not
 */
public record Striped(Fabric.Repeat repeat, List<String> notches, double phase, int group) {
  public Striped {
    notches = List.copyOf(notches);
  }

  Striped shifted(double along) {
    return new Striped(repeat, notches, phase + along, group);
  }
}
