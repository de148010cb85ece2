package org.hemwright.workroom.keep;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hemwright.workbench.folder.DiskFolder;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workbench.out.OutFolder;
import org.hemwright.workroom.history.Revision;
import org.hemwright.workroom.history.Splice;

/**
 * Keeps the texts of one folder. It is the only one to do so while its lock is held.
 *
 * <p>First the journal has a change, flushed; then the file is put in its place at once, and a copy
 * of it under {@code .hemwright/kept}. So at any moment the file is whole, and what it lacks the
 * journal has. That order is its promise, so whatever touches the files stands in this one class. A
 * file that is neither as it was kept nor on the way from there through the journal was changed by
 * another program.
 *
 * <p>Not for several threads at once.
 */
public final class Keeper implements AutoCloseable {
  /** The folder's own folder for what is kept of it. */
  public static final String PLACE = ".hemwright";

  /** With less than this a disk is full (bytes). */
  private static final long LEAST_ROOM = 1 << 16;

  private final Path folder;
  private final Journal journal;
  private final FileChannel lockFile;
  private final FileLock lock;
  private final SortedMap<String, String> texts = new TreeMap<>();
  private final SortedMap<String, String> kept = new TreeMap<>();
  private final SortedMap<String, String> journalled = new TreeMap<>();
  private final Map<String, FileForm> forms = new HashMap<>();
  private final List<Revision> history = new ArrayList<>();
  private final List<Revision> found = new ArrayList<>();

  /** The number of the last revision that the journal has. */
  private int written;

  private Keeper(Path folder, FileChannel lockFile, FileLock lock) {
    this.folder = folder;
    this.journal = new Journal(folder.resolve(PLACE).resolve("journal"));
    this.lockFile = lockFile;
    this.lock = lock;
  }

  /**
   * Opens a folder.
   *
   * @return absent where another workroom has it open
   */
  public static Optional<Keeper> open(Path folder) throws IOException {
    Path place = folder.resolve(PLACE);
    Files.createDirectories(place.resolve("kept"));
    FileChannel lockFile =
        FileChannel.open(
            place.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    FileLock lock = null;
    try {
      lock = lockFile.tryLock();
    } catch (OverlappingFileLockException ours) {
      // Open in this very process.
    }
    if (lock == null) {
      lockFile.close();
      return Optional.empty();
    }
    Keeper keeper = new Keeper(folder, lockFile, lock);
    keeper.read();
    return Optional.of(keeper);
  }

  private void read() throws IOException {
    List<Entry> entries = journal.read();
    entries.forEach(entry -> history.add(entry.revision()));
    written = history.isEmpty() ? 0 : history.get(history.size() - 1).number();
    Path lost = folder.resolve(PLACE).resolve("kept").resolve(PatternFolder.DOCUMENT);
    if (Files.isRegularFile(lost, LinkOption.NOFOLLOW_LINKS)
        && OnDisk.of(folder, PatternFolder.DOCUMENT) instanceof OnDisk.Absent) {
      String copy = Files.readString(lost);
      String now = replayed(PatternFolder.DOCUMENT, copy, entries);
      texts.put(PatternFolder.DOCUMENT, now);
      journalled.put(PatternFolder.DOCUMENT, now);
      kept.put(PatternFolder.DOCUMENT, copy);
    }
    for (String name : new DiskFolder(folder).names()) {
      if (isText(name)) {
        Optional<String> there = there(name).text();
        if (there.isPresent()) {
          String now = caughtUp(name, there.get(), entries);
          texts.put(name, now);
          journalled.put(name, now);
          kept.put(name, there.get());
        }
      }
    }
  }

  /** The file's text, with what only the journal has; what another program did is found. */
  private String caughtUp(String name, String there, List<Entry> entries) throws IOException {
    String hash = TextHash.of(there);
    int last = -1;
    for (int i = entries.size() - 1; i >= 0 && last < 0; i--) {
      last = entries.get(i).hashes().containsKey(name) ? i : -1;
    }
    if (last < 0 || hash.equals(entries.get(last).hashes().get(name))) {
      return there;
    }
    Path copy = folder.resolve(PLACE).resolve("kept").resolve(name);
    Optional<String> before =
        Files.isRegularFile(copy, LinkOption.NOFOLLOW_LINKS)
            ? Optional.of(Files.readString(copy))
            : Optional.empty();
    String from = before.orElse(there);
    String ours = replayed(name, from, entries);
    if (hash.equals(TextHash.of(from))) {
      return ours;
    }
    found.add(
        new Revision(
            history.size() + found.size() + 1,
            Revision.Cause.OUTSIDE,
            false,
            "",
            List.of(Splice.between(name, ours, there))));
    return there;
  }

  /** The text after the entries that follow the one at which it stood so. */
  private static String replayed(String name, String from, List<Entry> entries) {
    String hash = TextHash.of(from);
    int start = -1;
    for (int i = 0; i < entries.size(); i++) {
      if (hash.equals(entries.get(i).before().get(name))) {
        start = i;
      }
      if (hash.equals(entries.get(i).hashes().get(name))) {
        start = i + 1;
      }
    }
    if (start < 0) {
      return from;
    }
    String text = from;
    for (Entry entry : entries.subList(start, entries.size())) {
      for (Splice splice : entry.revision().splices()) {
        if (splice.file().equals(name)) {
          if (!splice.fits(text)) {
            return from;
          }
          text = splice.applyTo(text);
        }
      }
    }
    return text;
  }

  private static boolean isText(String name) {
    return name.endsWith(".hem") || name.endsWith(".csv") || name.endsWith(".md");
  }

  /** What lies on the disk; how a text lies in its file is remembered. */
  private OnDisk there(String name) {
    OnDisk there = OnDisk.of(folder, name);
    if (there instanceof OnDisk.Text text) {
      forms.put(name, text.form());
    }
    return there;
  }

  /** The texts as they stood when the folder was opened, by file name. */
  public SortedMap<String, String> texts() {
    return texts;
  }

  /** All that happened before the folder was opened. */
  public List<Revision> history() {
    return history;
  }

  /** What other programs did while the folder was closed; already part of {@link #texts}. */
  public List<Revision> found() {
    return found;
  }

  /** Whether a folder has a document, or a copy of one that is not there any more. */
  public static boolean hasDocument(Path folder) {
    return Files.isRegularFile(folder.resolve(PatternFolder.DOCUMENT))
        || Files.isRegularFile(
            folder.resolve(PLACE).resolve("kept").resolve(PatternFolder.DOCUMENT));
  }

  /** Why a text could not be put into its file; the journal has it all the same. */
  public enum Withheld {
    /** What lies there is no text that can be read here, so that nothing is put in its place. */
    FOREIGN,
    /** The file is set not to be written. */
    READ_ONLY
  }

  /**
   * What came of keeping.
   *
   * @param outside what another program made of a file meanwhile, by name; it was not written
   * @param withheld the files that were not written for another reason
   */
  public record Kept(Map<String, String> outside, SortedMap<String, Withheld> withheld) {
    public Kept {
      outside = Map.copyOf(outside);
      withheld = Collections.unmodifiableSortedMap(new TreeMap<>(withheld));
    }
  }

  /**
   * Keeps revisions and the texts that they led to. Where it fails it may be asked again with the
   * same revisions: none comes into the journal twice.
   *
   * @param revisions in order, each after those kept before
   * @param now the texts after the last of them
   */
  public Kept keep(List<Revision> revisions, Map<String, String> now) throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new NoSuchFileException(folder.toString());
    }
    List<Revision> fresh = revisions.stream().filter(each -> each.number() > written).toList();
    if (!fresh.isEmpty()) {
      Files.createDirectories(folder.resolve(PLACE).resolve("kept"));
      journal.append(entries(fresh, now));
      journalled.putAll(now);
      written = fresh.get(fresh.size() - 1).number();
    }
    Map<String, String> outside = new HashMap<>();
    SortedMap<String, Withheld> withheld = new TreeMap<>();
    for (Map.Entry<String, String> each : now.entrySet()) {
      String name = each.getKey();
      if (!each.getValue().equals(kept.get(name))) {
        OnDisk there = there(name);
        if (there instanceof OnDisk.Foreign) {
          withheld.put(name, Withheld.FOREIGN);
        } else if (!there.text().equals(Optional.ofNullable(kept.get(name)))
            && there.text().isPresent()) {
          outside.put(name, there.text().get());
        } else if (OnDisk.isReadOnly(folder.resolve(name))) {
          withheld.put(name, Withheld.READ_ONLY);
        } else {
          write(name, each.getValue(), there);
        }
      }
    }
    return new Kept(outside, withheld);
  }

  /** Whether a file does not have its text yet. */
  public boolean isBehind(Map<String, String> now) {
    return now.entrySet().stream().anyMatch(e -> !e.getValue().equals(kept.get(e.getKey())));
  }

  private List<Entry> entries(List<Revision> revisions, Map<String, String> now) {
    Map<String, String> before = new TreeMap<>();
    Map<String, String> after = new TreeMap<>();
    for (Revision revision : revisions) {
      for (Splice splice : revision.splices()) {
        String file = splice.file();
        before.put(file, TextHash.of(journalled.getOrDefault(file, "")));
        after.put(file, TextHash.of(now.getOrDefault(file, "")));
      }
    }
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < revisions.size(); i++) {
      entries.add(
          new Entry(
              revisions.get(i),
              i == 0 ? before : Map.of(),
              i == revisions.size() - 1 ? after : Map.of()));
    }
    return entries;
  }

  /** Puts a text into its file, unless that changes while it is done; then it is looked at anew. */
  private void write(String name, String text, OnDisk before) throws IOException {
    byte[] bytes = forms.getOrDefault(name, FileForm.PLAIN).bytes(text);
    boolean done =
        new OutFolder(folder)
            .replace(name, bytes, () -> OnDisk.of(folder, name).text().equals(before.text()));
    if (done) {
      seen(name, text);
    }
  }

  /** Puts a file that is not edited here beside the texts, whole or not at all. */
  public void store(String name, byte[] content) throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new NoSuchFileException(folder.toString());
    }
    new OutFolder(folder).replace(name, content);
  }

  /**
   * What other programs changed since it was kept last: the texts as they are now, by file; those
   * that are new are among them.
   */
  public Map<String, String> outside() {
    Map<String, String> changed = new HashMap<>();
    for (String name : new DiskFolder(folder).names()) {
      if (isText(name)) {
        there(name)
            .text()
            .filter(text -> !text.equals(kept.get(name)))
            .ifPresent(text -> changed.put(name, text));
      }
    }
    return changed;
  }

  /** The files that were there and are not there any more, though the folder is. */
  public List<String> missing() {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    return kept.keySet().stream()
        .filter(name -> OnDisk.of(folder, name) instanceof OnDisk.Absent)
        .sorted()
        .toList();
  }

  /** Whether the disk has next to no room left. */
  public boolean isFull() {
    try {
      return Files.getFileStore(folder).getUsableSpace() < LEAST_ROOM;
    } catch (IOException gone) {
      return false;
    }
  }

  /** Puts a file back that is not there any more. */
  public void putBack(String name, String text) throws IOException {
    OnDisk there = OnDisk.of(folder, name);
    if (there instanceof OnDisk.Absent) {
      write(name, text, there);
    }
  }

  /** The text of a file as it was kept last: what another program's change started from. */
  public Optional<String> base(String name) {
    return Optional.ofNullable(kept.get(name));
  }

  /** Takes note that a file now holds what another program wrote, and that this is known. */
  public void seen(String name, String text) throws IOException {
    kept.put(name, text);
    new OutFolder(folder.resolve(PLACE).resolve("kept"))
        .replace(name, text.getBytes(StandardCharsets.UTF_8));
  }

  @Override
  public void close() throws IOException {
    if (lock.isValid()) {
      lock.release();
    }
    lockFile.close();
  }
}
