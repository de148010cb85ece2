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
          NotchFaults.DOUBLED,
          CornerFaults.HEM_CORNER_LOST,
          CornerFaults.HEM_DEEPER,
          CornerFaults.HEM_ASTRAY,
          CornerFaults.CORNER_CUT_OTHERWISE,
          CardFaults.CUT_LOST,
          CardFaults.ONE_COPY_MORE,
          CardFaults.COPY_LOST,
          CardFaults.COPY_NOT_MIRRORED,
          CardFaults.CUT_NOT_MIRRORED,
          CardFaults.FOLD_NOT_SAID,
          CardFaults.FOLD_SAID,
          CardFaults.FOLD_EDGE_LOST,
          CardFaults.FOLD_LOST,
          CardFaults.TITLE_LOST,
          CardFaults.NUMBER_TAKEN,
          CardFaults.NUMBER_SKIPPED,
          CardFaults.GRAIN_LOST,
          CardFaults.GRAIN_TURNED,
          CardFaults.GRAIN_ACROSS_FOLD,
          CardFaults.GRAIN_UNLIKE_MATE,
          CardFaults.STRETCH_LOST,
          CardFaults.STRETCH_ALONG,
          CardFaults.KNIT_TURNED,
          CardFaults.LENGTHEN_LOST,
          SeamFaults.DELETED,
          SeamFaults.JOIN_LOST,
          SeamFaults.WRONG_HALF,
          SeamFaults.WRONG_COPY,
          SeamFaults.PARTNERS_SWAPPED,
          SeamFaults.TURNED,
          SeamFaults.RUN_OUT_OF_ORDER);
}
