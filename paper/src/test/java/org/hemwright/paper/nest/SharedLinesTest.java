package org.hemwright.paper.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.paper.SandlingSkirt;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Size;
import org.junit.jupiter.api.Test;

class SharedLinesTest {
  private static final Size SMALL = new Size(0, "8");
  private static final Size MIDDLE = new Size(1, "10");
  private static final Size LARGE = new Size(2, "12");

  private static SizedPath line(Size size, double x0, double y0, double x1, double y1) {
    return new SizedPath(size, Path.straight(new Point(x0, y0), new Point(x1, y1)));
  }

  @Test
  void longerLinesGoOnAlone() {
    List<SharedLines.Run> runs =
        SharedLines.of(
            List.of(
                line(SMALL, 0, 0, 100, 0), line(MIDDLE, 0, 0, 140, 0), line(LARGE, 0, 0, 200, 0)));
    assertThat(runs.stream().map(SharedLines.Run::sizes))
        .containsExactly(List.of(SMALL, MIDDLE, LARGE), List.of(MIDDLE, LARGE), List.of(LARGE));
    assertThat(runs.get(0).path().length()).isCloseTo(100, within(1.1));
    assertThat(runs.get(1).path().length()).isCloseTo(41, within(1.1));
    assertThat(runs.get(2).path().length()).isCloseTo(61, within(1.1));
  }

  @Test
  void linesThatOnlyCrossShareNothing() {
    List<SharedLines.Run> runs =
        SharedLines.of(List.of(line(SMALL, 0, 0, 100, 30), line(LARGE, 0, 30, 100, 0)));
    assertThat(runs).hasSize(2).allMatch(run -> run.sizes().size() == 1);
  }

  // A law: whatever is shared, every place of every size's cut line lies on a run of that size.
  @Test
  void everySizeIsDrawnInFull() {
    SizeRun run = SandlingSkirt.run();
    for (Nest nest : Nest.of(run, run.pattern().chart().sizes(), false, true)) {
      List<SizedPath> lines = new ArrayList<>();
      nest.shapes().forEach(shape -> lines.add(new SizedPath(shape.size(), shape.cutLine())));
      List<SharedLines.Run> runs = SharedLines.of(lines);
      for (SizedPath line : lines) {
        NearLine drawn =
            new NearLine(
                runs.stream()
                    .filter(part -> part.sizes().contains(line.size()))
                    .map(SharedLines.Run::path)
                    .toList());
        for (double at = 0; at < line.path().length(); at += 0.7) {
          assertThat(drawn.distance(line.path().at(at).point()))
              .as("%s %s at %.1f mm", nest.card().name(), line.size().name(), at)
              .isLessThan(0.15);
        }
      }
    }
  }
}
