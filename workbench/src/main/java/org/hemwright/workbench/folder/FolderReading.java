package org.hemwright.workbench.folder;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hemwright.exchange.text.FileText;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Messages;
import org.hemwright.pattern.finding.NearName;
import org.hemwright.pattern.finding.Origin;

/** Reads files of one folder, keeping what was read and telling what was not. */
public final class FolderReading {
  private final PatternFolder folder;
  private final SortedMap<String, byte[]> read = new TreeMap<>();
  private final List<Finding> problems;

  /**
   * Starts reading a folder.
   *
   * @param problems where problems are added
   */
  public FolderReading(PatternFolder folder, List<Finding> problems) {
    this.folder = folder;
    this.problems = problems;
  }

  /** The sentences for what a folder can say. */
  public static Messages messages() {
    return Messages.beside(FolderReading.class, "folder.properties");
  }

  /** The document's text; absent when there is none that can be read. */
  public Optional<String> document() {
    return bytes(PatternFolder.DOCUMENT, new Origin(PatternFolder.DOCUMENT, 1, 1))
        .flatMap(this::text);
  }

  private Optional<String> text(byte[] bytes) {
    FileText text = FileText.of(PatternFolder.DOCUMENT, bytes);
    text.unreadable()
        .ifPresent(
            place ->
                problems.add(
                    Finding.fail("document-encoding", PatternFolder.DOCUMENT).at(place).build()));
    return text.unreadable().isPresent() ? Optional.empty() : Optional.of(text.text());
  }

  /**
   * A file that the document names.
   *
   * @param said where the document names it
   */
  public Optional<byte[]> bytes(String name, Origin said) {
    FolderFile file = folder.file(name);
    if (file instanceof FolderFile.Content content) {
      read.put(name, content.bytes());
      return Optional.of(content.bytes());
    }
    if (file instanceof FolderFile.Refused refused) {
      problems.add(Finding.fail(refused.reason(), name).at(said).build());
      return Optional.empty();
    }
    List<String> there = folder.names();
    Optional<String> near = NearName.to(name, there);
    if (name.equals(PatternFolder.DOCUMENT)) {
      problems.add(Finding.fail("folder-no-document", folder.name()).at(said).build());
    } else if (near.isPresent()) {
      problems.add(Finding.fail("file-near", name).with("near", near.get()).at(said).build());
    } else {
      problems.add(
          Finding.fail("file-absent", name).with("there", Argument.of(there)).at(said).build());
    }
    return Optional.empty();
  }

  /** A file that may lie beside the document; one that is there and cannot be read is told. */
  public void beside(String name) {
    take(name, folder.file(name));
  }

  /** The designer's texts and pictures for the booklet, where there are any. */
  public void forBooklet() {
    beside(PatternFolder.PROSE);
    folder.names().stream()
        .filter(name -> PatternFolder.isProse(name) && !name.equals(PatternFolder.PROSE))
        .forEach(this::beside);
    for (String name : folder.pictures()) {
      take(PatternFolder.PICTURES + "/" + name, folder.picture(name));
    }
  }

  private void take(String name, FolderFile file) {
    if (file instanceof FolderFile.Content content) {
      read.put(name, content.bytes());
    } else if (file instanceof FolderFile.Refused refused) {
      problems.add(Finding.warn(refused.reason(), name).at(new Origin(name, 1, 1)).build());
    }
  }

  /** The files that were read so far, by name. */
  public SortedMap<String, byte[]> read() {
    return read;
  }
}
