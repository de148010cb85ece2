package org.hemwright.draft.syntax;

/** What follows a comma in a line that shapes a piece. */
public sealed interface ShapeClause {
  /** {@code opening 2.5 cm}: how far a dart's legs lie apart at the edge. */
  record Opening(Expression wide) implements ShapeClause {}

  /** {@code angle 12 deg}: the angle between a dart's legs. */
  record Angle(Expression wide) implements ShapeClause {}

  /** {@code stitched 1 cm short}: of the apex. */
  record Stitched(Expression shortOf) implements ShapeClause {}

  /** {@code pressed toward start}: of the edge. */
  record Pressed(boolean towardStart) implements ShapeClause {}

  /** {@code trued over 4 cm}: how far beside it the edge is redrawn. */
  record Trued(Expression reach) implements ShapeClause {}

  /** {@code spread 6 cm}, {@code spread 6 cm and 2 cm}: at the first edge, and at the other. */
  record Spread(Expression far, java.util.Optional<Expression> near) implements ShapeClause {}

  /** {@code turned 8 deg}: about the end at the other edge. */
  record Turned(Expression angle) implements ShapeClause {}

  /** {@code left as cut}: the edges are not redrawn. */
  record AsCut() implements ShapeClause {}

  /** {@code depth 3 cm}: how far the cloth beneath a fold reaches. */
  record Depth(Expression depth) implements ShapeClause {}

  /** {@code knife toward start}, {@code knife toward end}, {@code box}, {@code inverted}. */
  record Fold(Kind kind) implements ShapeClause {
    /** How a pleat is folded. */
    public enum Kind {
      KNIFE_TOWARD_START,
      KNIFE_TOWARD_END,
      BOX,
      INVERTED
    }
  }

  /** {@code fading}: a pleat runs out to nothing at the other edge. */
  record Fading() implements ShapeClause {}

  /** {@code repeated 3 times every 4 cm}. */
  record Repeated(int times, Expression apart) implements ShapeClause {}
}
