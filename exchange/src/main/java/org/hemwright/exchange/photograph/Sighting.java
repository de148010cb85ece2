package org.hemwright.exchange.photograph;

import org.hemwright.geometry.Point;

/**
 * A point whose true place is known, seen in a picture.
 *
 * @param place where it truly is (mm)
 * @param seen where the picture shows it
 */
public record Sighting(Point place, Pixel seen) {}
