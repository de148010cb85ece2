package org.hemwright.workbench.out;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/**
 * Where publications are written.
 *
 * @param path made when it is missing
 */
public record OutFolder(Path path) {
  /** The small file that names the newest publication's folder. */
  public static final String POINTER = "current.txt";

  private static final String ASIDE = ".building-";
  private static final AtomicInteger WRITES = new AtomicInteger();

  /**
   * Writes a publication and then points to it. Where the same one is there already, whole, it is
   * only pointed to.
   *
   * @return the publication's folder
   */
  public Path publish(Manifest manifest) throws IOException {
    Files.createDirectories(path);
    Path goal = path.resolve(manifest.folderName());
    Map<String, byte[]> files = new TreeMap<>(manifest.made());
    files.put(Manifest.FILE, manifest.json());
    if (!holds(goal, files)) {
      writeAside(goal, files);
    }
    replace(path.resolve(POINTER), (goal.getFileName() + "\n").getBytes(StandardCharsets.UTF_8));
    return goal;
  }

  /**
   * Writes one file so that its name never stands for half of it.
   *
   * @param name within the folder; folders on its way are made
   */
  public Path replace(String name, byte[] content) throws IOException {
    Path file = within(path, name);
    Files.createDirectories(file.getParent());
    return replace(file, content);
  }

  private static Path within(Path folder, String name) {
    Path place = folder.resolve(name).normalize();
    if (!place.startsWith(folder.normalize())) {
      throw new IllegalArgumentException("a file of the folder: " + name);
    }
    return place;
  }

  private Path replace(Path file, byte[] content) throws IOException {
    Path aside = aside();
    try {
      write(aside, content);
      Files.move(aside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      return file;
    } finally {
      Files.deleteIfExists(aside);
    }
  }

  private void writeAside(Path goal, Map<String, byte[]> files) throws IOException {
    Path aside = Files.createDirectory(aside());
    try {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        Path place = within(aside, file.getKey());
        Files.createDirectories(place.getParent());
        write(place, file.getValue());
      }
      takeItsName(aside, goal);
    } finally {
      deleteAll(aside);
    }
  }

  /** A folder of that name was broken from outside, or it would have been whole: it goes. */
  private static void takeItsName(Path aside, Path goal) throws IOException {
    deleteAll(goal);
    Files.move(aside, goal, StandardCopyOption.ATOMIC_MOVE);
  }

  private static boolean holds(Path folder, Map<String, byte[]> files) throws IOException {
    if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      Path place = folder.resolve(file.getKey());
      if (!Files.isRegularFile(place)
          || Files.size(place) != file.getValue().length
          || !Arrays.equals(Files.readAllBytes(place), file.getValue())) {
        return false;
      }
    }
    return true;
  }

  /** A name that no other writer uses at the same time. */
  private Path aside() {
    return path.resolve(ASIDE + ProcessHandle.current().pid() + "-" + WRITES.incrementAndGet());
  }

  private static void write(Path file, byte[] content) throws IOException {
    try (FileChannel channel =
        FileChannel.open(
            file,
            StandardOpenOption.CREATE,
            StandardOpenOption.WRITE,
            StandardOpenOption.TRUNCATE_EXISTING)) {
      ByteBuffer bytes = ByteBuffer.wrap(content);
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    }
  }

  private static void deleteAll(Path folder) throws IOException {
    if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(each);
      }
    }
  }
}
