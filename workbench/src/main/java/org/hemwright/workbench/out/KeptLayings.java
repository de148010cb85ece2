package org.hemwright.workbench.out;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.hemwright.cloth.yardage.LayingStore;

/**
 * Layings kept in one text file, a line each: the key, then the laying. What is no longer of use is
 * dropped once there is too much of it. A file that is missing or broken costs only the time to lay
 * anew; one that cannot be written is let be.
 */
public final class KeptLayings implements LayingStore {
  /** The file's name within its folder. */
  public static final String FILE = "layings.txt";

  private static final int MOST = 20_000;
  private static final int MOST_BYTES = 64 << 20;

  private final OutFolder folder;
  private final Map<String, String> before = new LinkedHashMap<>();
  private final Map<String, String> used = new ConcurrentHashMap<>();

  private KeptLayings(OutFolder folder) {
    this.folder = folder;
  }

  /** What is kept in a folder. */
  public static KeptLayings in(Path folder) {
    KeptLayings kept = new KeptLayings(new OutFolder(folder));
    Path file = folder.resolve(FILE);
    try {
      if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && Files.size(file) < MOST_BYTES) {
        for (String line : Files.readAllLines(file)) {
          int blank = line.indexOf(' ');
          if (blank > 0) {
            kept.before.put(line.substring(0, blank), line.substring(blank + 1));
          }
        }
      }
    } catch (IOException unreadable) {
      kept.before.clear();
    }
    return kept;
  }

  @Override
  public Optional<String> get(String key) {
    Optional<String> line = Optional.ofNullable(before.get(key));
    line.ifPresent(laying -> used.put(key, laying));
    return line;
  }

  @Override
  public void put(String key, String laying) {
    used.put(key, laying);
  }

  /** Writes the file, in the order of the keys, if there is anything new in it. */
  public void keep() {
    Map<String, String> all = new TreeMap<>();
    if (before.size() + used.size() <= MOST) {
      all.putAll(before);
    }
    all.putAll(used);
    if (before.entrySet().containsAll(all.entrySet())) {
      return;
    }
    StringBuilder text = new StringBuilder();
    all.forEach((key, laying) -> text.append(key).append(' ').append(laying).append('\n'));
    try {
      folder.replace(FILE, text.toString().getBytes(StandardCharsets.UTF_8));
    } catch (IOException unwritable) {
      used.clear();
    }
  }
}
