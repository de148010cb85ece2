package org.hemwright.exchange.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.exchange.text.FileText;
import org.hemwright.geometry.GeometryProblem;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Messages;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.traced.TracedDrawing;

/**
 * Reads a drawing in SVG: every line that is shown, with the names it can be called by.
 *
 * <p>A line can be called by its own name (its id, label, title or class), and by those of the
 * groups and layers it lies in.
 */
public final class DrawingReader {
  /** A larger file is refused unread. */
  public static final int MOST_BYTES = 8 << 20;

  private DrawingReader() {}

  /**
   * Reads a drawing.
   *
   * @param file the name that places in findings carry
   * @param content the file's bytes
   */
  public static ReadDrawing read(String file, byte[] content) {
    Origin start = new Origin(file, 1, 1);
    if (content.length > MOST_BYTES) {
      return refused(
          Finding.fail("drawing-too-large", file)
              .with("most", Argument.of((long) MOST_BYTES >> 20))
              .at(start)
              .build());
    }
    FileText text = FileText.of(file, content);
    if (text.unreadable().isPresent()) {
      return refused(Finding.fail("drawing-encoding", file).at(text.unreadable().get()).build());
    }
    List<Finding> findings = new ArrayList<>();
    try {
      SvgElement root = SvgTree.root(file, text.text());
      DrawingWalk walk = new DrawingWalk(file);
      TracedDrawing drawing = walk.walk(root);
      findings.addAll(walk.findings());
      if (drawing.lines().isEmpty()) {
        findings.add(Finding.warn("drawing-empty", file).at(start).build());
      }
      return new ReadDrawing(Optional.of(drawing), findings);
    } catch (DrawingRefused refused) {
      return refused(refused.finding());
    } catch (GeometryProblem problem) {
      return refused(DrawingWalk.broken(file, problem));
    }
  }

  private static ReadDrawing refused(Finding finding) {
    return new ReadDrawing(Optional.empty(), List.of(finding));
  }

  /** The sentences for every finding of a drawing. */
  public static Messages messages() {
    return Messages.beside(DrawingReader.class, "drawing.properties");
  }
}
