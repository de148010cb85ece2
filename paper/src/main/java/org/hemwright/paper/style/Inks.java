package org.hemwright.paper.style;

import java.util.List;
import org.hemwright.paper.sheet.Ink;

/** The few inks of the printed pattern. */
public final class Inks {
  /** Words and lines: pure black, so that a black-and-white printer draws them without a screen. */
  public static final Ink BLACK = new Ink(0, 0, 0);

  /** Frames and rules that should stay behind the drawing. */
  public static final Ink QUIET = new Ink(0x6f, 0x6f, 0x6f);

  /** Tailor's chalk: the tint of match marks and of what is pointed out. */
  public static final Ink CHALK = new Ink(0x2f, 0x5d, 0x8c);

  /** What is worth a look, in reports; never without a shape or a word that says so too. */
  public static final Ink RUST = new Ink(0x96, 0x4b, 0x14);

  /** What fails, in reports; never without a shape or a word that says so too. */
  public static final Ink RED = new Ink(0x9b, 0x1b, 0x1f);

  /** Bare paper, to lift words off lines beneath them. */
  public static final Ink PAPER = new Ink(255, 255, 255);

  /**
   * The darker half of viridis at every tenth, from its published table (S. van der Walt, N. Smith,
   * E. Firing: mpl-colormaps, CC0): even to the eye, in grey and for colour-blind readers too.
   */
  private static final List<double[]> VIRIDIS =
      List.of(
          new double[] {0.267004, 0.004874, 0.329415},
          new double[] {0.282623, 0.140926, 0.457517},
          new double[] {0.253935, 0.265254, 0.529983},
          new double[] {0.206756, 0.371758, 0.553117},
          new double[] {0.163625, 0.471133, 0.558148},
          new double[] {0.127568, 0.566949, 0.550556});

  private Inks() {}

  /** The ink at a place of the size ramp, 0 for the smallest size to 1 for the largest. */
  public static Ink ramp(double share) {
    double place = Math.max(0, Math.min(1, share)) * (VIRIDIS.size() - 1);
    int below = Math.min((int) place, VIRIDIS.size() - 2);
    double rest = place - below;
    int[] parts = new int[3];
    for (int i = 0; i < 3; i++) {
      double value = (1 - rest) * VIRIDIS.get(below)[i] + rest * VIRIDIS.get(below + 1)[i];
      parts[i] = (int) Math.round(255 * value);
    }
    return new Ink(parts[0], parts[1], parts[2]);
  }
}
