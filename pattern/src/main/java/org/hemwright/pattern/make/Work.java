package org.hemwright.pattern.make;

import java.util.Optional;

/** What a step is done to, by the document's names. */
public sealed interface Work {
  /** As the document writes it. */
  String text();

  /** What lies on one piece. */
  sealed interface OnPiece extends Work {
    /** The piece's name. */
    String piece();
  }

  /** All that a seam brings together. */
  record OfSeam(String seam) implements Work {
    @Override
    public String text() {
      return seam;
    }
  }

  /**
   * An edge of a piece.
   *
   * @param copy the one cut copy that is meant; every copy when absent
   */
  record OfEdge(String piece, Optional<String> copy, String edge) implements OnPiece {
    @Override
    public String text() {
      return piece + copy.map(name -> "." + name).orElse("") + "." + edge;
    }
  }

  /**
   * A whole piece.
   *
   * @param copy the one cut copy that is meant; every copy when absent
   */
  record OfPiece(String piece, Optional<String> copy) implements OnPiece {
    @Override
    public String text() {
      return piece + copy.map(name -> "." + name).orElse("");
    }
  }

  /** Something drawn on a piece: a placement line, an inner line, a drill mark. */
  record OfMark(String piece, String mark) implements OnPiece {
    @Override
    public String text() {
      return piece + "." + mark;
    }
  }

  /** A dart, a pleat or gathers on a piece. */
  record OfIntake(String piece, String intake) implements OnPiece {
    @Override
    public String text() {
      return piece + "." + intake;
    }
  }

  /** An elastic. */
  record OfElastic(String elastic) implements Work {
    @Override
    public String text() {
      return elastic;
    }
  }

  /** A cord or drawstring. */
  record OfCord(String cord) implements Work {
    @Override
    public String text() {
      return cord;
    }
  }

  /** An opening that an earlier step left. */
  record OfOpening(String opening) implements Work {
    @Override
    public String text() {
      return opening;
    }
  }
}
