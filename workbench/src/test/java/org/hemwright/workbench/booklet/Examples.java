package org.hemwright.workbench.booklet;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.hemwright.booklet.BookletMaking;
import org.hemwright.pattern.SizeRun;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.EditedFolder;
import org.hemwright.workbench.folder.FolderFile;
import org.hemwright.workbench.folder.PackedFolder;
import org.hemwright.workbench.folder.PatternFolder;

/** The booklets of the examples, each made once for all tests. */
final class Examples {
  private static final Map<String, BookletMaking> MADE = new ConcurrentHashMap<>();

  private Examples() {}

  static BookletMaking booklet(String example) {
    return MADE.computeIfAbsent(example, name -> booklet(new PackedFolder(name), ""));
  }

  static BookletMaking booklet(PatternFolder folder, String language) {
    Evaluated evaluated = Workbench.evaluate(folder);
    SizeRun run = evaluated.run().orElseThrow();
    return Workbench.booklet(evaluated, run, Optional.empty(), List.of(), language);
  }

  /** An example with one stretch of its document replaced. */
  static BookletMaking changed(String example, String before, String after) {
    return changed(example, Map.of(before, after));
  }

  static BookletMaking changed(String example, Map<String, String> changes) {
    PackedFolder folder = new PackedFolder(example);
    FolderFile.Content content = (FolderFile.Content) folder.file(PatternFolder.DOCUMENT);
    String text = new String(content.bytes(), StandardCharsets.UTF_8);
    for (Map.Entry<String, String> change : changes.entrySet()) {
      if (!text.contains(change.getKey())) {
        throw new IllegalArgumentException(example + " does not say " + change.getKey());
      }
      text = text.replace(change.getKey(), change.getValue());
    }
    Map<String, String> texts = Map.of(PatternFolder.DOCUMENT, text);
    return booklet(new EditedFolder(folder, new TreeMap<>(texts)), "");
  }
}
