package org.hemwright.checks.fault;

import java.util.List;
import java.util.stream.Stream;

/** Every slip of the pen in a document that the bench knows, in the order of its table. */
final class Slips {
  private Slips() {}

  static final List<Slip> ALL =
      Stream.of(
              EdgeSlips.ALL,
              SeamSlips.ALL,
              NumberSlips.ALL,
              CardSlips.ALL,
              ClothSlips.ALL,
              NotionSlips.ALL)
          .flatMap(List::stream)
          .toList();
}
