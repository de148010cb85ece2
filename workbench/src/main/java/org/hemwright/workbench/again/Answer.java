package org.hemwright.workbench.again;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.hemwright.workbench.out.Sha256;

/**
 * What a command came to when all went well.
 *
 * @param told what it said beside its answer: findings worth a look
 * @param said its answer
 * @param made the SHA-256 of each file that it made, by the file's name within the folder of all
 *     that it made, with forward slashes
 */
public record Answer(String told, String said, SortedMap<String, String> made) {
  public Answer {
    made = Collections.unmodifiableSortedMap(new TreeMap<>(made));
  }

  /** The hashes of files by name. */
  public static SortedMap<String, String> hashes(Map<String, byte[]> files) {
    SortedMap<String, String> hashes = new TreeMap<>();
    files.forEach((name, bytes) -> hashes.put(name, Sha256.of(bytes)));
    return hashes;
  }

  /**
   * Whether every file that was made still stands as it was.
   *
   * @param folder of all that was made
   * @param alone whether nothing else may stand there
   */
  public boolean stands(Path folder, boolean alone) {
    try {
      for (Map.Entry<String, String> file : made.entrySet()) {
        Path place = folder.resolve(file.getKey()).normalize();
        if (!place.startsWith(folder.normalize())
            || !Files.isRegularFile(place, LinkOption.NOFOLLOW_LINKS)
            || !Sha256.of(Files.readAllBytes(place)).equals(file.getValue())) {
          return false;
        }
      }
      return !alone || count(folder) == made.size();
    } catch (IOException | UncheckedIOException unreadable) {
      return false;
    }
  }

  private static long count(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(each -> !Files.isDirectory(each, LinkOption.NOFOLLOW_LINKS)).count();
    }
  }
}
