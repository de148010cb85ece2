package org.hemwright.workbench;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.exchange.drawing.ReadDrawing;
import org.hemwright.exchange.dxf.RuleFile;
import org.hemwright.exchange.rule.ReadRules;
import org.hemwright.exchange.rule.RuleTableReader;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.traced.RuleTable;
import org.hemwright.pattern.traced.TracedDrawing;
import org.hemwright.pattern.traced.TracedInputs;
import org.hemwright.workbench.folder.FolderReading;
import org.hemwright.workbench.traced.DrawingFile;

/** Reads the drawings and rule tables that a document names, each once. */
final class TracedReading {
  private final Source source;
  private final FolderReading folder;
  private final List<Finding> problems;
  private final SortedMap<String, Optional<TracedDrawing>> drawings = new TreeMap<>();
  private final SortedMap<String, Optional<RuleTable>> tables = new TreeMap<>();

  private TracedReading(Document document, FolderReading folder, List<Finding> problems) {
    this.source = Source.of(document);
    this.folder = folder;
    this.problems = problems;
  }

  /**
   * All that a document names.
   *
   * @param problems where what cannot be read is added
   */
  static TracedInputs of(Document document, FolderReading folder, List<Finding> problems) {
    TracedReading reading = new TracedReading(document, folder, problems);
    for (Statement statement : document.statements()) {
      if (statement instanceof Statement.PieceSection piece) {
        reading.read(piece);
      }
    }
    return new TracedInputs(reading.drawings, reading.tables);
  }

  private void read(Statement.PieceSection piece) {
    piece.traced().ifPresent(from -> drawing(from.file(), from.span()));
    for (Statement line : piece.body()) {
      if (line instanceof Statement.AlsoTraced also) {
        drawing(also.file(), also.span());
      } else if (line instanceof Statement.GradeFrom grade) {
        table(grade.file(), grade.span());
      }
    }
  }

  private void drawing(String file, Span said) {
    if (drawings.containsKey(file)) {
      return;
    }
    Optional<byte[]> bytes = folder.bytes(file, source.origin(said));
    Optional<TracedDrawing> drawing = Optional.empty();
    if (bytes.isPresent()) {
      ReadDrawing read = DrawingFile.read(file, bytes.get());
      problems.addAll(read.findings());
      drawing = read.drawing();
    }
    drawings.put(file, drawing);
  }

  private void table(String file, Span said) {
    if (tables.containsKey(file)) {
      return;
    }
    Optional<byte[]> bytes = folder.bytes(file, source.origin(said));
    Optional<RuleTable> table = Optional.empty();
    if (bytes.isPresent()) {
      ReadRules read =
          file.toLowerCase(Locale.ROOT).endsWith(".rul")
              ? RuleFile.read(file, bytes.get())
              : RuleTableReader.read(file, bytes.get());
      problems.addAll(read.findings());
      table = read.table();
    }
    tables.put(file, table);
  }
}
