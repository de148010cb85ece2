package org.hemwright.workbench.folder;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A pattern folder with some of its files as they stand in an editor, not yet on the disk.
 *
 * @param under the folder itself
 * @param texts by file name; each goes before the file of that name
 */
public record EditedFolder(PatternFolder under, SortedMap<String, String> texts)
    implements PatternFolder {
  public EditedFolder {
    texts = Collections.unmodifiableSortedMap(new TreeMap<>(texts));
  }

  @Override
  public String name() {
    return under.name();
  }

  @Override
  public List<String> names() {
    TreeSet<String> names = new TreeSet<>(under.names());
    names.addAll(texts.keySet());
    return List.copyOf(names);
  }

  @Override
  public FolderFile file(String name) {
    String text = texts.get(name);
    return text == null
        ? under.file(name)
        : new FolderFile.Content(text.getBytes(StandardCharsets.UTF_8));
  }

  @Override
  public List<String> pictures() {
    return under.pictures();
  }

  @Override
  public FolderFile picture(String name) {
    return under.picture(name);
  }
}
