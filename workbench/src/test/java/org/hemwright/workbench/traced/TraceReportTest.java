package org.hemwright.workbench.traced;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.hemwright.workbench.report.TraceReport;
import org.junit.jupiter.api.Test;

class TraceReportTest {
  @Test
  void namesCornersAndWhatIsNotReadAreListed() {
    String svg =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100mm\" height=\"100mm\" viewBox=\"0 0"
            + " 100 100\"><path id=\"front\" d=\"M0 0H50V100H0Z\"/><line id=\"grain\" y2=\"40\"/><g"
            + " id=\"notches\"><line x2=\"3\"/><line x2=\"4\"/></g><text>Front</text></svg>";
    TraceReport report = TraceReport.of("a.svg", svg.getBytes(StandardCharsets.UTF_8));
    assertThat(report.findings()).isEmpty();
    assertThat(report.text())
        .isEqualTo(
            """
            In true size.
              "front": closed, 30.0 cm long, 4 corners at (0, 0) (50, 0) (50, -100) (0, -100) mm
              "grain": open, 4.0 cm long
              "notches": 2 lines
            Not read: text "Front".
            """);
  }

  @Test
  void whatIsRefusedIsTold() {
    TraceReport report = TraceReport.of("a.dxf", new byte[] {1, 2, 3});
    assertThat(report.text()).isEmpty();
    assertThat(report.findings()).extracting("code").containsExactly("dxf-not");
  }
}
