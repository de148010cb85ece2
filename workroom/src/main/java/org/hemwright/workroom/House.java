package org.hemwright.workroom;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import org.hemwright.workbench.folder.DiskFolder;
import org.hemwright.workroom.keep.Keeper;
import org.hemwright.workroom.keep.Remembered;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.serve.Reception;
import org.hemwright.workroom.start.Opener;
import org.hemwright.workroom.start.StartPage;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Host;

/**
 * What one server serves: the start page, or the room of the folder that is open. Folders are
 * opened and closed one after another on a thread of its own.
 */
final class House implements Reception, Opener, AutoCloseable {
  private static final int SHUTS_WITHIN = 6;

  private final ExecutorService thread =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread own = new Thread(work, "house");
            own.setDaemon(true);
            return own;
          });
  private final Remembered remembered;
  private final Function<Opener, List<View>> views;
  private final Consumer<String> log;
  private final StartPage start;
  private volatile Optional<Room> open = Optional.empty();

  /**
   * A house without an open folder.
   *
   * @param beside where new folders go
   * @param views the views of each room that is opened
   */
  House(
      Path beside,
      Remembered remembered,
      Function<Opener, List<View>> views,
      Consumer<String> log) {
    this.remembered = remembered;
    this.views = views;
    this.log = log;
    this.start = new StartPage(beside, remembered, this, thread, log);
  }

  @Override
  public Host host() {
    Optional<Room> room = open;
    return room.isPresent() ? room.get() : start;
  }

  @Override
  public String page() {
    return open.isPresent() ? "index.html" : "start.html";
  }

  @Override
  public Outcome open(Path folder) {
    if (open.isPresent()) {
      return Outcome.OPEN;
    }
    if (!Keeper.hasDocument(folder)) {
      return Outcome.NONE;
    }
    return enter(folder);
  }

  /** Opens a folder, also one without a document yet. */
  Outcome enter(Path folder) {
    try {
      Optional<Keeper> keeper = Keeper.open(folder);
      if (keeper.isEmpty()) {
        return Outcome.BUSY;
      }
      open = Optional.of(new Room(new DiskFolder(folder), keeper.get(), views.apply(this), log));
      remembered.opened(folder);
      return Outcome.OPEN;
    } catch (IOException unreadable) {
      log.accept("a folder could not be opened: " + unreadable);
      return Outcome.CLOSED;
    }
  }

  @Override
  public void away() {
    thread.execute(
        () ->
            open.ifPresent(
                room -> {
                  open = Optional.empty();
                  room.later(() -> room.tell(new Frame(Frame.tell("moved"))));
                  room.close();
                }));
  }

  @Override
  public void close() {
    thread.shutdown();
    try {
      if (!thread.awaitTermination(SHUTS_WITHIN, TimeUnit.SECONDS)) {
        log.accept("a folder was still being opened or closed");
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
    start.close();
    open.ifPresent(Room::close);
  }
}
