package org.hemwright.paper.sheet;

import org.hemwright.geometry.Box;
import org.hemwright.geometry.Vector;

/** Something put down on a sheet. */
public sealed interface Item permits Inked, Clip {
  /** A box that holds all its ink (mm); it may be a little larger. */
  Box bounds();

  /** The same, elsewhere. */
  Item moved(Vector step);
}
