package org.hemwright.checks.fault;

import java.util.List;

/** Every fault of the bench, in the order of the table. */
final class Faults {
  private Faults() {}

  static final List<Fault> ALL =
      List.of(
          EdgeFaults.SEWN_EDGE_LONGER,
          EdgeFaults.FREE_EDGE_LONGER,
          EdgeFaults.CORNER_MOVED,
          EdgeFaults.CURVE_BULGED,
          EdgeFaults.ALLOWANCE_ON_ONE_SIDE,
          EdgeFaults.NOT_SQUARE_AT_FOLD,
          NotchFaults.MOVED,
          NotchFaults.REMOVED,
          NotchFaults.KIND_SWAPPED,
          NotchFaults.DOUBLED);
}
