package org.hemwright.exchange.dxf;

import java.util.Arrays;
import java.util.Optional;

/**
 * What stands on which layer (handbook section 9, from memory, as second-hand descriptions have
 * it).
 */
enum DxfLayer {
  BOUNDARY(1, "boundary"),
  TURN_POINTS(2, "turn points"),
  CURVE_POINTS(3, "curve points"),
  NOTCHES(4, "notches"),
  GRADE_REFERENCE(5, "grade reference"),
  MIRROR_LINE(6, "mirror line"),
  GRAIN_LINE(7, "grain line"),
  INTERNAL_LINES(8, "internal lines"),
  STRIPE_REFERENCE(9, "stripe reference"),
  PLAID_REFERENCE(10, "plaid reference"),
  CUTOUTS(11, "cutouts"),
  DRILL_HOLES(13, "drill holes"),
  SEW_LINES(14, "sew lines"),
  ANNOTATION(15, "annotation"),
  T_NOTCHES(80, "notches"),
  CASTLE_NOTCHES(81, "notches"),
  CHECK_NOTCHES(82, "notches"),
  U_NOTCHES(83, "notches");

  private final int number;
  private final String words;

  DxfLayer(int number, String words) {
    this.number = number;
    this.words = words;
  }

  String number() {
    return Integer.toString(number);
  }

  String words() {
    return words;
  }

  static Optional<DxfLayer> of(String name) {
    return Arrays.stream(values()).filter(layer -> layer.number().equals(name)).findFirst();
  }
}
