package org.hemwright.pattern.piece;

/**
 * One of the cut copies of a piece, when copies are told apart: a left leg and a right leg.
 *
 * @param name its own name, {@code left}; or its number from 1 where the designer gave none
 * @param mirrored whether it is cut as the mirror image of the drawing
 */
public record Copy(String name, boolean mirrored) {}
