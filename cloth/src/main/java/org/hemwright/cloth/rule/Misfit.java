package org.hemwright.cloth.rule;

/**
 * A piece that a cloth cannot take, however it is turned.
 *
 * @param piece its name
 * @param across how much it needs across the cloth (mm)
 * @param room how much there is (mm), less than that
 */
public record Misfit(String piece, double across, double room) {}
