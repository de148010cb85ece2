package org.hemwright.geometry;

/** The one home of every tolerance; lengths in millimetres, angles in radians. */
public final class Tolerance {
  /**
   * Two points this close are one point: joints are welded, touching curves meet (a hundredth of
   * what a drawn length promises).
   */
  public static final double SAME_POINT = 1e-4;

  /**
   * A stretch shorter than this has no direction that could be trusted, and is left out of paths.
   */
  public static final double NO_LENGTH = 1e-7;

  /** Lengths of curves are integrated to this share of the curve's size. */
  public static final double LENGTH_SHARE = 1e-10;

  /** A place found at a length along a curve lies within this of that length. */
  public static final double PLACE = 1e-9;

  /** Roots of polynomials on the parameter range 0 to 1 are found to this width. */
  public static final double PARAMETER = 1e-13;

  /** Two directions whose angle is smaller than this are one direction. */
  public static final double SAME_DIRECTION = 1e-7;

  /**
   * What a drawn length promises; two lengths this close are drawn as one, and a point this close
   * to a path lies on it for a designer who says that it does.
   */
  public static final double DRAWN_LENGTH = 0.01;

  /** A circular arc drawn with cubics strays from the true circle by no more than this. */
  public static final double ARC = 0.0002;

  /** An offset path lies within this of its true distance from the source path. */
  public static final double OFFSET = 0.02;

  /**
   * A single cubic of an offset is fitted to this, so that the trimmed whole stays well within
   * {@link #OFFSET}.
   */
  public static final double OFFSET_FIT = 0.002;

  /** The drawn place of a number that is solved for is closed in to this width, for lengths. */
  public static final double SOLVED_LENGTH = 1e-6;

  /** The same for angles (radians), ratios and plain numbers. */
  public static final double SOLVED_SHARE = 1e-9;

  /**
   * What is left between two lengths that were solved to be equal; more is a jump and no meeting.
   */
  public static final double JUMP_LENGTH = 1e-3;

  /** The same for angles (radians), ratios and plain numbers. */
  public static final double JUMP_SHARE = 1e-6;

  /**
   * A curve laid through places seen in a photograph passes within this of each, so that few curves
   * do: about the width of a pencil line.
   */
  public static final double SEEN_CURVE = 0.3;

  /** A mitre reaches no farther from its corner than this many times the offset distance. */
  public static final double MITRE_LIMIT = 2.5;

  /** Two printed lines this close are seen and cut as one. */
  public static final double PRINTED_AS_ONE = 0.05;

  /**
   * Less than this nobody cuts by hand: a printed line is as thick (common practice, no source).
   */
  public static final double CUT_BY_HAND = 0.5;

  /** Printed curves are made flat to this where only their place and not their look matters. */
  public static final double PRINTED_FLAT = 0.05;

  /**
   * No coordinate lies farther out than this (ten kilometres): within it neighbouring doubles lie
   * no more than 2e-9 mm apart, far finer than {@link #SAME_POINT}.
   */
  public static final double FARTHEST = 1e7;

  /** Curves that come this close meet exactly, but for rounding. */
  static final double EXACT = 1e-8;

  /** A curve this close to another lies on no side of it. */
  static final double ON_CURVE = 1e-10;

  /** The squares of a sine and a cosine add up to 1 within this. */
  static final double ROUNDED_UNIT = 1e-9;

  private Tolerance() {}
}
