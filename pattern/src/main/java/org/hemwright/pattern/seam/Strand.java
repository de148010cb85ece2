package org.hemwright.pattern.seam;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A layer that could be sewn in one pass: places end to end on certain parts.
 *
 * @param run the places as walked
 * @param parts for each place, the part that it lies on
 * @param hand +1 when walked counter-clockwise round its parts seen face up, −1 when clockwise, 0
 *     along a placement line, which lies inside its part
 * @param ring whether its end is where it starts
 */
record Strand(List<EdgePlace> run, List<CutPart> parts, int hand, boolean ring) {
  Strand {
    run = List.copyOf(run);
    parts = List.copyOf(parts);
  }

  /** The same strand walked from its end. */
  Strand flipped() {
    List<EdgePlace> back = new ArrayList<>();
    run.forEach(place -> back.add(place.turned()));
    Collections.reverse(back);
    List<CutPart> partsBack = new ArrayList<>(parts);
    Collections.reverse(partsBack);
    return new Strand(back, partsBack, -hand, ring);
  }

  /** Whether it runs along a placement line. */
  boolean placed() {
    return hand == 0;
  }

  /** Whether it lies on one half of pieces that are drawn as halves. */
  boolean onHalves() {
    return parts.stream().allMatch(part -> part.half() != EdgePlace.Half.WHOLE);
  }

  /** The names of the copies that it takes, each once. */
  String copies() {
    return run.stream().map(EdgePlace::copy).distinct().sorted().collect(Collectors.joining("+"));
  }

  /** Whether it takes mirrored parts only. */
  boolean mirrored() {
    return parts.stream().allMatch(CutPart::mirrored);
  }

  /** Everything but which of several like copies it takes. */
  String likeness() {
    return run.stream()
        .map(p -> p.piece() + "." + p.edge() + " " + p.half())
        .collect(Collectors.joining(", ", mirrored() + ": ", ""));
  }

  /** Whether its copies have no names of their own, only numbers. */
  boolean numbered() {
    return run.stream().allMatch(p -> p.copy().chars().allMatch(Character::isDigit));
  }

  /** The layer as a seam holds it. */
  Seam.Layer layer() {
    return new Seam.Layer(run);
  }
}
