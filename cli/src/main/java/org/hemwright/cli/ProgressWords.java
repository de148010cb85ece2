package org.hemwright.cli;

import java.time.Duration;
import java.util.Optional;
import me.tongfei.progressbar.ProgressBarRenderer;
import me.tongfei.progressbar.ProgressState;

/**
 * One line that says how far some work has come, how long it has taken, about how long it will yet
 * take, and what it is at: {@code Publishing [=====> ] 37% 1:48 so far, about 3:04 left laying on
 * cloth}.
 */
final class ProgressWords implements ProgressBarRenderer {
  /** How wide the bar is. */
  private static final int BAR = 24;

  /** Before so much is behind, what is left is a guess (share). */
  private static final double TELLING = 0.05;

  @Override
  public String render(ProgressState state, int most) {
    double share =
        state.isIndefinite() || state.getMax() <= 0
            ? 0
            : Math.min(1, (double) state.getCurrent() / state.getMax());
    return line(state.getTaskName(), state.getExtraMessage(), share, state.getTotalElapsed(), most);
  }

  /**
   * @param share of the work that is behind, 0 to 1
   * @param most letters that fit on a line
   */
  static String line(String task, String doing, double share, Duration soFar, int most) {
    int full = (int) (BAR * share);
    String bar =
        "=".repeat(full) + (full < BAR ? ">" : "") + " ".repeat(Math.max(0, BAR - full - 1));
    StringBuilder line = new StringBuilder(task).append(" [").append(bar).append("] ");
    line.append((int) (100 * share)).append("%  ").append(clock(soFar)).append(" so far");
    left(share, soFar)
        .ifPresent(left -> line.append(", about ").append(clock(left)).append(" left"));
    if (!doing.isBlank()) {
      line.append("  ").append(doing.strip());
    }
    return line.length() <= most ? line.toString() : line.substring(0, Math.max(0, most));
  }

  private static Optional<Duration> left(double share, Duration soFar) {
    return share < TELLING || share >= 1
        ? Optional.empty()
        : Optional.of(Duration.ofSeconds(Math.round(soFar.toSeconds() * (1 - share) / share)));
  }

  private static String clock(Duration time) {
    long seconds = time.toSeconds();
    return seconds / 60 + ":" + (seconds % 60 < 10 ? "0" : "") + seconds % 60;
  }
}
