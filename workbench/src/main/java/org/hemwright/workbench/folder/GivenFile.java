package org.hemwright.workbench.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
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
