package org.hemwright.workroom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Predicate;
import org.hemwright.workbench.BrowserDoor;
import org.hemwright.workbench.folder.FolderFile;
import org.hemwright.workbench.folder.PackedFolder;
import org.hemwright.workroom.keep.Remembered;

/** A folder with a copy of an example, and the workroom that has it open. */
final class OpenFolder implements AutoCloseable {
  private final Path folder;
  private final List<String> log = new CopyOnWriteArrayList<>();
  private BrowserDoor.Opened opened;

  private OpenFolder(Path folder) throws Exception {
    this.folder = folder;
    this.opened = open();
  }

  /** Copies an example into a folder and opens it. */
  static OpenFolder example(Path folder, String name) throws Exception {
    PackedFolder example = new PackedFolder(name);
    for (String file : example.names()) {
      if (example.file(file) instanceof FolderFile.Content content) {
        Files.write(folder.resolve(file), content.bytes());
      }
    }
    return new OpenFolder(folder);
  }

  /** Opens a folder as it lies. */
  static OpenFolder at(Path folder) throws Exception {
    return new OpenFolder(folder);
  }

  private BrowserDoor.Opened open() throws IOException, BrowserDoor.Refused {
    Remembered remembered = Remembered.in(folder.resolve(".hemwright/remembered.txt"));
    remembered.showRound();
    return new Workroom(remembered, folder).open(Optional.of(folder), 0, log::add);
  }

  /** Ends the workroom and opens the folder anew; its address is another. */
  void restart() throws Exception {
    opened.close();
    opened = open();
  }

  String address() {
    return opened.address();
  }

  List<String> log() {
    return log;
  }

  Path folder() {
    return folder;
  }

  String document() throws IOException {
    return Files.readString(folder.resolve("pattern.hem"));
  }

  /** Waits until the document on the disk is as wanted, at most two minutes. */
  String documentOnce(Predicate<String> wanted) throws Exception {
    return new OnDisk(folder.resolve("pattern.hem")).once(wanted);
  }

  @Override
  public void close() {
    opened.close();
  }
}
