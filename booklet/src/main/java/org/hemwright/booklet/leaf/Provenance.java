package org.hemwright.booklet.leaf;

import java.util.List;
import java.util.Locale;

/**
 * Where a value that the maker reads comes from, so that a test can fetch it again.
 *
 * @param source what holds it
 * @param keys which of that, from the general to the particular
 */
public record Provenance(Source source, List<String> keys) {
  public Provenance {
    keys = List.copyOf(keys);
  }

  /** What holds a value. */
  public enum Source {
    /** A cell of the size chart: size, measurement. */
    BODY,
    /** A girth of the finished garment: view, level, size. */
    FINISHED,
    /** An elastic: name, {@code width}, {@code finished} or {@code cut}, size. */
    ELASTIC,
    /** A number of the document (measurement, dial, let, solve): name, size. */
    NUMBER,
    /** Cloth to buy: view, fabric, nap, width in mm, size. */
    CLOTH,
    /** What the document says of a fabric: name, what. */
    FABRIC,
    /** An allowance of a piece: piece, edge, fold, size. */
    ALLOWANCE,
    /** What the document says of a piece: name, what. */
    PIECE,
    /** What a step says: id, what. */
    STEP,
    /** The length of a seam as it is sewn: seam, size. */
    SEAM,
    /** What the document says of itself: what. */
    DETAILS,
    /** A name that stands in the document or the chart. */
    NAME,
    /** The place of something in the booklet's own order: what, which. */
    ORDER,
    /** A setting of the printing: which. */
    SETTING,
    /** The number of a published standard. */
    STANDARD,
    /** What the printed files hold: file, what. */
    PRINTED,
    /** What the making needs: which, size. */
    NEEDS
  }

  /** A provenance by its keys. */
  public static Provenance of(Source source, String... keys) {
    return new Provenance(source, List.of(keys));
  }

  @Override
  public String toString() {
    return source.name().toLowerCase(Locale.ROOT) + " " + String.join("/", keys);
  }
}
