package org.hemwright.checks.steps;

import java.util.List;
import java.util.stream.Stream;

/** Every way to go wrong in the steps that the bench knows. */
final class StepMistakes {
  private StepMistakes() {}

  static final List<StepMistake> ALL =
      Stream.of(
              EdgeMistakes.ALL,
              OrderMistakes.ALL,
              BandMistakes.ALL,
              PatchMistakes.ALL,
              FastenerMistakes.ALL,
              TurningMistakes.ALL,
              OpeningMistakes.ALL,
              PressingMistakes.ALL,
              StitchMistakes.ALL,
              MarkMistakes.ALL)
          .flatMap(List::stream)
          .toList();
}
