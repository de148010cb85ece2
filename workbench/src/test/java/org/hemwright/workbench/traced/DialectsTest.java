package org.hemwright.workbench.traced;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hemwright.exchange.drawing.DrawingReader;
import org.hemwright.exchange.drawing.ReadDrawing;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Path;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.traced.TracedDrawing;
import org.hemwright.pattern.traced.TracedLine;
import org.hemwright.workbench.traced.SvgDialect.Drawn;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The pieces of the examples, written in ten dialects of SVG, are read back within 0.01 mm. */
class DialectsTest {
  /** What issue 7 asks of a round trip (mm). */
  private static final double TRUE = 0.01;

  private static List<Drawn> outlines() {
    Map<String, Drawn> outlines = new TreeMap<>();
    for (String example : List.of("eddy-skirt", "marram-trousers", "inlet-tee")) {
      for (Piece piece : Examples.baseSize(example).pieces()) {
        String name = example + " " + piece.name();
        outlines.put(name, new Drawn(name.replace(' ', '.'), piece.stitchLine().path()));
      }
    }
    return new ArrayList<>(outlines.values());
  }

  @ParameterizedTest
  @EnumSource(SvgDialect.class)
  void everyDialectIsReadBack(SvgDialect dialect) {
    List<Drawn> drawn = outlines();
    String svg = dialect.write(drawn);
    ReadDrawing read = DrawingReader.read("traced/all.svg", svg.getBytes(StandardCharsets.UTF_8));
    assertThat(read.findings()).isEmpty();
    TracedDrawing drawing = read.drawing().orElseThrow();
    assertThat(drawn).hasSizeGreaterThan(9);
    for (Drawn line : drawn) {
      List<TracedLine> lines = drawing.called(line.name());
      if (dialect == SvgDialect.LOOSE) {
        assertThat(lines).hasSameSizeAs(line.path().curves());
        continue;
      }
      assertThat(lines).as(line.name()).hasSize(1);
      same(line.path(), lines.get(0).path(), line.name());
    }
    assertThat(drawing.inTrueSize()).isEqualTo(dialect != SvgDialect.PIXELS);
  }

  private static void same(Path drawn, Path read, String name) {
    assertThat(read.isClosed()).isTrue();
    assertThat(read.curves()).as(name).hasSameSizeAs(drawn.curves());
    for (int i = 0; i < drawn.curves().size(); i++) {
      Curve one = drawn.curves().get(i);
      Curve other = read.curves().get(i);
      for (int k = 0; k <= 16; k++) {
        double t = k / 16.0;
        assertThat(other.at(t).distanceTo(one.at(t)))
            .as("%s, curve %d at %s", name, i, t)
            .isLessThan(TRUE);
      }
    }
  }
}
