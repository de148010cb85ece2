package org.hemwright.workbench.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hemwright.exchange.photograph.OutlineDrawing;
import org.hemwright.exchange.photograph.OutlineDrawing.Named;
import org.hemwright.exchange.photograph.PhotographReader;
import org.hemwright.exchange.photograph.ReadPhotograph;
import org.hemwright.exchange.photograph.ReadPhotograph.SeenPiece;
import org.hemwright.pattern.finding.Finding;

/**
 * What a photograph shows: its pieces in words, and as a drawing to trace.
 *
 * @param text a line for each piece; empty where none was seen
 * @param drawing the same in SVG, true size
 * @param findings why something is missing, and what is doubtful
 */
public record PhotographReport(String text, Optional<byte[]> drawing, List<Finding> findings) {
  public PhotographReport {
    findings = List.copyOf(findings);
  }

  /** Reads a photograph or scan and tells what it shows. */
  public static PhotographReport of(String file, byte[] content, PhotographWords words) {
    ReadPhotograph read = PhotographReader.read(file, content, words.guide());
    StringBuilder text = new StringBuilder();
    List<Named> lines = new ArrayList<>();
    for (SeenPiece piece : read.pieces()) {
      String name = lines.isEmpty() ? "outline" : "outline " + (lines.size() + 1);
      lines.add(new Named(name, piece.outline()));
      text.append("  \"")
          .append(name)
          .append("\": ")
          .append(TraceReport.line(piece.outline()))
          .append(
              String.format(
                  Locale.ROOT,
                  ", drawn with %d lines and curves, may be off by up to %.1f mm\n",
                  piece.outline().curves().size(),
                  // A tenth at least: the paper's own edge is not known better.
                  Math.max(0.1, piece.doubt())));
    }
    return new PhotographReport(
        text.toString(),
        lines.isEmpty() ? Optional.empty() : Optional.of(OutlineDrawing.svg(lines)),
        read.findings());
  }
}
