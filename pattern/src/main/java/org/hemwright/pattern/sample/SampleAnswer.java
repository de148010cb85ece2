package org.hemwright.pattern.sample;

import java.util.OptionalDouble;

/**
 * Whether the document has changed where a sample was altered.
 *
 * @param entry the note
 * @param now how long the place is drafted now (mm)
 * @param standing what has come of it
 */
public record SampleAnswer(SampleEntry entry, double now, Standing standing) {
  /** A length copied from a table is this true (mm); what differs by less has not changed. */
  static final double SAME = 0.5;

  /** A change within this of what was asked follows it (mm): as near as pins can tell. */
  static final double AS_ASKED = 2;

  /** What has come of a note. */
  public enum Standing {
    /** The note does not say how long the place was drafted then. */
    NOT_KNOWN,
    /** The place is drafted as it was. */
    AS_IT_WAS,
    /** It has changed as the sample asked. */
    AS_ASKED,
    /** It has changed the way that was asked, and by less. */
    LESS,
    /** It has changed the way that was asked, and by more. */
    MORE,
    /** It has changed the other way. */
    OTHER_WAY,
    /** It has changed, and the sample had asked for nothing there. */
    CHANGED
  }

  /** Answers a note, given how long its place is now (mm). */
  static SampleAnswer of(SampleEntry entry, double now) {
    return new SampleAnswer(entry, now, standing(entry, now));
  }

  private static Standing standing(SampleEntry entry, double now) {
    if (entry.drafted().isEmpty()) {
      return Standing.NOT_KNOWN;
    }
    double changed = now - entry.drafted().getAsDouble();
    double asked = entry.asked();
    if (Math.abs(changed) <= SAME) {
      return Standing.AS_IT_WAS;
    } else if (asked == 0) {
      return Standing.CHANGED;
    } else if (Math.abs(changed - asked) <= Math.min(AS_ASKED, Math.abs(asked) / 2)) {
      return Standing.AS_ASKED;
    } else if (changed * asked < 0) {
      return Standing.OTHER_WAY;
    }
    return Math.abs(changed) < Math.abs(asked) ? Standing.LESS : Standing.MORE;
  }

  /** By how much the place has changed since (mm); nothing where that is not known. */
  public OptionalDouble changed() {
    return entry.drafted().isPresent()
        ? OptionalDouble.of(now - entry.drafted().getAsDouble())
        : OptionalDouble.empty();
  }
}
