package org.hemwright.workroom.keep;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workbench.out.OutFolder;

/**
 * What is remembered on this machine from one time to the next: the folders that were opened, the
 * newest first, and whether the designer was shown round. A text file of one line for each; one
 * that cannot be read or written costs nothing but the memory.
 *
 * <p>Any thread may call.
 */
public final class Remembered {
  private static final int MOST = 12;
  private static final int MOST_BYTES = 1 << 16;
  private static final String FOLDER = "folder ";
  private static final String SHOWN_ROUND = "shown round";

  private final Path file;
  private final List<String> lines = new ArrayList<>();

  private Remembered(Path file) {
    this.file = file;
    try {
      if (Files.isRegularFile(file) && Files.size(file) < MOST_BYTES) {
        lines.addAll(Files.readAllLines(file));
      }
    } catch (IOException unreadable) {
      lines.clear();
    }
  }

  /** What a file remembers. */
  public static Remembered in(Path file) {
    return new Remembered(file);
  }

  /** What is remembered for whoever is logged in. */
  public static Remembered here() {
    return in(Path.of(System.getProperty("user.home", "."), ".hemwright", "workroom.txt"));
  }

  /** The folders that were opened and still hold a document, the newest first. */
  public synchronized List<Path> folders() {
    List<Path> folders = new ArrayList<>();
    for (String line : lines) {
      if (line.startsWith(FOLDER)) {
        try {
          Path folder = Path.of(line.substring(FOLDER.length()));
          if (Files.isRegularFile(folder.resolve(PatternFolder.DOCUMENT))) {
            folders.add(folder);
          }
        } catch (InvalidPathException nonsense) {
          // A line that names no path is passed over.
        }
      }
    }
    return folders;
  }

  /** Takes note that a folder was opened. */
  public synchronized void opened(Path folder) {
    String line = FOLDER + folder.toAbsolutePath().normalize();
    List<String> folders =
        lines.stream().filter(each -> each.startsWith(FOLDER) && !each.equals(line)).toList();
    lines.removeIf(each -> each.startsWith(FOLDER));
    lines.add(line);
    lines.addAll(folders.subList(0, Math.min(MOST - 1, folders.size())));
    write();
  }

  /** Whether the designer was shown round, or did not want to be. */
  public synchronized boolean shownRound() {
    return lines.contains(SHOWN_ROUND);
  }

  /** Takes note that she was. */
  public synchronized void showRound() {
    if (!lines.contains(SHOWN_ROUND)) {
      lines.add(0, SHOWN_ROUND);
      write();
    }
  }

  private void write() {
    try {
      byte[] text = (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8);
      Path folder = file.toAbsolutePath().getParent();
      new OutFolder(folder == null ? Path.of(".") : folder)
          .replace(String.valueOf(file.getFileName()), text);
    } catch (IOException unwritable) {
      // It is known until the program ends, and forgotten then.
    }
  }
}
