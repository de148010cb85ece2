package org.hemwright.workbench.folder;

import java.util.List;
import java.util.TreeSet;

/**
 * A pattern folder with one file more, to see what would come of it before it is written.
 *
 * @param under the folder itself
 * @param added the file's name; it goes before a file of that name
 * @param content what it would hold
 */
public record WithFile(PatternFolder under, String added, FolderFile.Content content)
    implements PatternFolder {
  /** A folder with one file more, of these bytes. */
  public static WithFile of(PatternFolder under, String added, byte[] bytes) {
    return new WithFile(under, added, new FolderFile.Content(bytes.clone()));
  }

  @Override
  public String name() {
    return under.name();
  }

  @Override
  public List<String> names() {
    TreeSet<String> names = new TreeSet<>(under.names());
    if (PatternFolder.isPlain(added)) {
      names.add(added);
    }
    return List.copyOf(names);
  }

  @Override
  public FolderFile file(String name) {
    return name.equals(added) ? content : under.file(name);
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
