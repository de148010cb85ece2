package org.hemwright.workroom.start;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.workbench.folder.FolderFile;
import org.hemwright.workbench.folder.PatternFolder;

/**
 * What a document says of itself before it is drafted.
 *
 * @param title of the garment; blank where it names none
 * @param words the comment at its head
 */
record Cover(String title, String words) {
  /** The cover of a folder; absent where it holds no document that can be read. */
  static Optional<Cover> of(PatternFolder folder) {
    return folder.file(PatternFolder.DOCUMENT) instanceof FolderFile.Content content
        ? Optional.of(of(new String(content.bytes(), StandardCharsets.UTF_8)))
        : Optional.empty();
  }

  private static Cover of(String text) {
    String title =
        DocumentReader.read(PatternFolder.DOCUMENT, text).statements().stream()
            .filter(Statement.Title.class::isInstance)
            .map(each -> ((Statement.Title) each).text())
            .findFirst()
            .orElse("");
    String words =
        text.lines()
            .takeWhile(line -> line.startsWith("#"))
            .map(line -> line.substring(1).strip())
            .collect(Collectors.joining(" "));
    return new Cover(title, words);
  }
}
