package org.hemwright.workbench.out;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.BooleanSupplier;
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
  private static final String LOCK = ".lock";
  private static final ReentrantLock ONE_AT_A_TIME = new ReentrantLock();
  private static final AtomicInteger WRITES = new AtomicInteger();

  /**
   * Writes a publication and then points to it. Where the same one is there already, whole, it is
   * only pointed to. One writer at a time: another waits.
   *
   * @return the publication's folder
   */
  public Path publish(Manifest manifest) throws IOException {
    Map<String, byte[]> files = manifest.files();
    String name = manifest.folderName();
    return alone(
        () -> {
          Path goal = keep(name, files);
          replace(path.resolve(POINTER), pointer(name));
          return goal;
        });
  }

  /** All that stands here once a publication does, by name: its files and what points to them. */
  public static SortedMap<String, byte[]> published(Manifest manifest) {
    String folder = manifest.folderName();
    SortedMap<String, byte[]> all = new TreeMap<>();
    manifest.files().forEach((name, bytes) -> all.put(folder + "/" + name, bytes));
    all.put(POINTER, pointer(folder));
    return all;
  }

  private static byte[] pointer(String folder) {
    return (folder + "\n").getBytes(StandardCharsets.UTF_8);
  }

  /**
   * Writes a folder that is seen whole or not at all. Where the same one is there already, whole,
   * nothing is written; another of its name is replaced.
   *
   * @param name the folder's, within this one
   * @param files by their names, with forward slashes
   */
  public Path folder(String name, Map<String, byte[]> files) throws IOException {
    return alone(() -> keep(name, files));
  }

  /**
   * The same, of a folder that holds these files and no others, so that what was made before does
   * not lie among what is made now.
   */
  public Path whole(String name, Map<String, byte[]> files) throws IOException {
    return alone(
        () -> {
          Path goal = within(path, name);
          if (!holds(goal, files) || count(goal) > files.size()) {
            writeAside(goal, files);
          }
          return goal;
        });
  }

  private static long count(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(each -> !Files.isDirectory(each, LinkOption.NOFOLLOW_LINKS)).count();
    }
  }

  /** The publication that the pointer names, if there is one. */
  public Optional<Path> current() throws IOException {
    Path pointer = path.resolve(POINTER);
    if (!Files.isRegularFile(pointer, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    String name = Files.readString(pointer).strip();
    return name.matches("[A-Za-z0-9_][A-Za-z0-9._-]*")
        ? Optional.of(within(path, name))
        : Optional.empty();
  }

  private Path keep(String name, Map<String, byte[]> files) throws IOException {
    Path goal = within(path, name);
    if (!holds(goal, files)) {
      writeAside(goal, files);
    }
    return goal;
  }

  /** Work on the folder's contents. */
  private interface Work {
    Path done() throws IOException;
  }

  /**
   * Does work while no other writer, of this program or another, works here. The lock goes with the
   * program that holds it, however that ends; so what stands aside now was left by one that died.
   */
  private Path alone(Work work) throws IOException {
    Files.createDirectories(path);
    ONE_AT_A_TIME.lock();
    try (FileChannel lock =
        FileChannel.open(path.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      lock.lock();
      sweep();
      return work.done();
    } finally {
      ONE_AT_A_TIME.unlock();
    }
  }

  private void sweep() throws IOException {
    List<Path> left;
    try (Stream<Path> entries = Files.list(path)) {
      left =
          entries
              .filter(entry -> entry.getFileName().toString().startsWith(ASIDE))
              .filter(entry -> Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS))
              .toList();
    }
    for (Path each : left) {
      deleteAll(each);
    }
  }

  /** Whether something stands there already. */
  public boolean isThere() {
    return Files.exists(path);
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

  /**
   * The same for a file that other programs write as well: it keeps who may do what with it, and is
   * written only if nothing spoke against it up to the moment at which it takes its name.
   *
   * @param still whether it may yet be written
   * @return whether it was written
   */
  public boolean replace(String name, byte[] content, BooleanSupplier still) throws IOException {
    Path file = within(path, name);
    Files.createDirectories(file.getParent());
    Path aside = aside();
    try {
      write(aside, content);
      if (!still.getAsBoolean()) {
        return false;
      }
      keepRights(file, aside);
      Files.move(aside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      return true;
    } finally {
      Files.deleteIfExists(aside);
    }
  }

  /** What may be done with a file is done with the one that takes its place; where it is known. */
  private static void keepRights(Path file, Path aside) throws IOException {
    PosixFileAttributeView rights =
        Files.getFileAttributeView(file, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
    if (rights != null && Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      Files.setPosixFilePermissions(aside, rights.readAttributes().permissions());
    }
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
  private void takeItsName(Path aside, Path goal) throws IOException {
    if (Files.exists(goal, LinkOption.NOFOLLOW_LINKS)) {
      Path broken = aside();
      Files.move(goal, broken, StandardCopyOption.ATOMIC_MOVE);
      Files.move(aside, goal, StandardCopyOption.ATOMIC_MOVE);
      deleteAll(broken);
    } else {
      Files.move(aside, goal, StandardCopyOption.ATOMIC_MOVE);
    }
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
    } catch (FileSystemException named) {
      throw named;
    } catch (IOException nameless) {
      String folder = String.valueOf(file.getParent());
      FileSystemException named = new FileSystemException(folder, null, nameless.getMessage());
      named.initCause(nameless);
      throw named;
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
