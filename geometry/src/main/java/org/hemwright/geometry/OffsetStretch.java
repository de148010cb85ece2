package org.hemwright.geometry;

/** A stretch of an offset sketch between two cuts, and what is known of it while it is trimmed. */
final class OffsetStretch {
  final double from;
  final double to;
  final Path path;

  /** Whether right may turn to wrong at its start; if not, it starts with an overrun curve. */
  boolean firmStart;

  boolean firmEnd;
  boolean overrun;
  boolean wrong;
  boolean linked;

  OffsetStretch(Path raw, double from, double to) {
    this.from = from;
    this.to = to;
    this.path = raw.part(from, to);
  }

  double length() {
    return to - from;
  }

  /** By how much the way turns from the end of this into another (radians). */
  double turnInto(OffsetStretch next) {
    return path.endDirection().angleTo(next.path.startDirection());
  }

  /** Whether an end of this lies by an end of another. */
  boolean touches(OffsetStretch other, double tolerance) {
    return path.start().distanceTo(other.path.start()) <= tolerance
        || path.start().distanceTo(other.path.end()) <= tolerance
        || path.end().distanceTo(other.path.start()) <= tolerance
        || path.end().distanceTo(other.path.end()) <= tolerance;
  }
}
