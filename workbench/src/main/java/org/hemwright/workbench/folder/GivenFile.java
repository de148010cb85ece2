package org.hemwright.workbench.folder;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.exchange.text.FileText;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;

/**
 * One file that a person names on the command line, wherever it lies; she may read what she may
 * read, so links are followed.
 *
 * @param path as it was given
 */
public record GivenFile(Path path) {
  private static final Charset WINDOWS = Charset.forName("windows-1252");

  /**
   * Its text; absent where there is none that can be read.
   *
   * @param problems where the reason is then added
   */
  public Optional<String> text(List<Finding> problems) {
    String name = path.toString();
    Optional<FileText> text = bytes(problems).map(bytes -> FileText.of(name, bytes));
    text.flatMap(FileText::unreadable)
        .ifPresent(place -> problems.add(Finding.fail("given-encoding", name).at(place).build()));
    return text.filter(read -> read.unreadable().isEmpty()).map(FileText::text);
  }

  /**
   * Its text as a form that somebody filled in: where it is in neither UTF-8 nor UTF-16, what
   * spreadsheets on Windows write is taken, and told.
   *
   * @param problems where that, or the reason why there is no text, is then added
   */
  public Optional<String> form(List<Finding> problems) {
    List<Finding> own = new ArrayList<>();
    Optional<String> text = text(own);
    Optional<byte[]> bytes = text.isPresent() ? Optional.empty() : bytes(new ArrayList<>());
    if (bytes.isPresent() && isWritten(bytes.get())) {
      String name = path.toString();
      problems.add(Finding.warn("given-windows", name).at(new Origin(name, 1, 1)).build());
      return bytes.map(each -> new String(each, WINDOWS));
    }
    problems.addAll(own);
    return text;
  }

  /** Whether bytes can be letters and lines: no other signs below the blank. */
  private static boolean isWritten(byte[] bytes) {
    for (byte each : bytes) {
      if (each >= 0 && each < ' ' && each != '\n' && each != '\r' && each != '\t') {
        return false;
      }
    }
    return true;
  }

  /**
   * Its bytes; absent where there is none that can be read.
   *
   * @param problems where the reason is then added
   */
  public Optional<byte[]> bytes(List<Finding> problems) {
    String name = path.toString();
    FolderFile file = read();
    if (file instanceof FolderFile.Content content) {
      return Optional.of(content.bytes());
    }
    String code = file instanceof FolderFile.Refused refused ? refused.reason() : "given-absent";
    problems.add(Finding.fail(code, name).at(new Origin(name, 1, 1)).build());
    return Optional.empty();
  }

  private FolderFile read() {
    try {
      if (Files.isDirectory(path)) {
        return new FolderFile.Refused("file-unreadable");
      }
      try (var stream = Files.newInputStream(path)) {
        byte[] bytes = stream.readNBytes(PatternFolder.MOST_BYTES + 1);
        return bytes.length > PatternFolder.MOST_BYTES
            ? new FolderFile.Refused("file-too-large")
            : new FolderFile.Content(bytes);
      }
    } catch (NoSuchFileException absent) {
      return new FolderFile.Absent();
    } catch (IOException unreadable) {
      return new FolderFile.Refused("file-unreadable");
    }
  }
}
