package org.hemwright.workbench.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hemwright.exchange.drawing.ReadDrawing;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.traced.OutlineRequest;
import org.hemwright.pattern.traced.OutlineTracing;
import org.hemwright.pattern.traced.TracedDrawing;
import org.hemwright.pattern.traced.TracedLine;
import org.hemwright.workbench.traced.DrawingFile;

/**
 * What a drawing holds, so that its lines can be named in a document.
 *
 * @param text a line for each name, then what was not read; empty where the drawing was refused
 * @param findings why it was refused, and what in it is amiss
 */
public record TraceReport(String text, List<Finding> findings) {
  public TraceReport {
    findings = List.copyOf(findings);
  }

  /** Reads a drawing and tells what it holds. */
  public static TraceReport of(String file, byte[] content) {
    ReadDrawing read = DrawingFile.read(file, content);
    return new TraceReport(read.drawing().map(TraceReport::text).orElse(""), read.findings());
  }

  private static String text(TracedDrawing drawing) {
    StringBuilder text = new StringBuilder();
    text.append(
        drawing.inTrueSize()
            ? "In true size.\n"
            : "It does not say its size; name a line of known length for the scale.\n");
    for (String name : drawing.names()) {
      List<TracedLine> lines = drawing.called(name);
      text.append("  \"").append(name).append("\": ");
      if (lines.size() == 1) {
        text.append(line(lines.get(0).path()));
      } else {
        text.append(lines.size()).append(" lines");
      }
      text.append('\n');
    }
    long bare = drawing.lines().stream().filter(line -> line.names().isEmpty()).count();
    if (bare > 0) {
      text.append("  without a name: ").append(bare).append(bare == 1 ? " line\n" : " lines\n");
    }
    if (!drawing.unread().isEmpty()) {
      text.append("Not read: ").append(String.join("; ", drawing.unread())).append(".\n");
    }
    return text.toString();
  }

  static String line(Path path) {
    String length = String.format(Locale.ROOT, "%.1f cm long", path.length() / 10);
    if (!path.isClosed()) {
      return "open, " + length;
    }
    List<String> corners = new ArrayList<>();
    for (double corner : OutlineTracing.corners(path, OutlineRequest.USUAL_CORNER)) {
      Point point = path.at(corner).point();
      corners.add(String.format(Locale.ROOT, "(%.0f, %.0f)", point.x(), point.y()));
    }
    return "closed, %s, %d corners%s"
        .formatted(
            length,
            corners.size(),
            corners.isEmpty() ? "" : " at " + String.join(" ", corners) + " mm");
  }
}
