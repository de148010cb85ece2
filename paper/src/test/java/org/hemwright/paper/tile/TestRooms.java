package org.hemwright.paper.tile;

import org.hemwright.geometry.Box;
import org.hemwright.geometry.Path;
import org.hemwright.paper.arrange.Footprint;

final class TestRooms {
  private TestRooms() {}

  static Path outline(Box box) {
    return Path.polyline(Footprint.corners(box));
  }
}
