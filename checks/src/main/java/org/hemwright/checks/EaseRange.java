package org.hemwright.checks;

import org.hemwright.pattern.seam.Seam;

/**
 * By how much a layer may be longer than the other (mm).
 *
 * @param least less than 0 where it may be shorter
 * @param most at or above least
 */
record EaseRange(double least, double most) {
  /** The declared ease over a stretch whose other layer is so long (mm). */
  static EaseRange of(Seam.Ease ease, double length) {
    double unit = ease.share() ? length : 1;
    return new EaseRange(ease.least() * unit, ease.most() * unit);
  }

  /** A share of it, where it is spread evenly. */
  EaseRange share(double share) {
    return new EaseRange(least * share, most * share);
  }

  /** All of it or none: between notches ease may lie here or elsewhere. */
  EaseRange orNone() {
    return new EaseRange(Math.min(0, least), Math.max(0, most));
  }

  /** How far a difference lies beyond the range (mm): above it positive, below it negative. */
  double beyond(double difference) {
    return difference > most ? difference - most : difference < least ? difference - least : 0;
  }
}
