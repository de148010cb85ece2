package org.hemwright.paper.sheet;

import org.hemwright.geometry.Vector;

/** Something with ink of its own, which belongs to a layer and is about something. */
public sealed interface Inked extends Item permits Stroke, Fill, Hatch, Words, Picture {
  /** The sizes it is drawn for. */
  Layer layer();

  /** What it is about. */
  Subject subject();

  @Override
  Inked moved(Vector step);
}
