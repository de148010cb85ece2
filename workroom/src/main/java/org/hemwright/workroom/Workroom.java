package org.hemwright.workroom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.hemwright.workbench.BrowserDoor;
import org.hemwright.workbench.folder.DiskFolder;
import org.hemwright.workbench.folder.FolderFile;
import org.hemwright.workbench.folder.PackedFolder;
import org.hemwright.workbench.out.OutFolder;
import org.hemwright.workroom.bodies.BodiesView;
import org.hemwright.workroom.cloth.ClothView;
import org.hemwright.workroom.dials.DialView;
import org.hemwright.workroom.drag.DragView;
import org.hemwright.workroom.keep.Keeper;
import org.hemwright.workroom.ledger.LedgerView;
import org.hemwright.workroom.making.MakingView;
import org.hemwright.workroom.proof.ProofView;
import org.hemwright.workroom.release.ReleaseView;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.serve.LocalServer;
import org.hemwright.workroom.table.TableView;
import org.hemwright.workroom.text.Meanings;
import org.hemwright.workroom.text.Proposals;
import org.hemwright.workroom.text.TextView;

/** Opens a folder in the browser. */
public final class Workroom implements BrowserDoor {
  /** Every part of what a window shows, in the order in which they hear of a change. */
  private static List<View> views() {
    TableView table = new TableView();
    return List.of(
        new TextView(),
        new Proposals(),
        new Meanings(),
        table,
        new DragView(table),
        new DialView(table),
        new LedgerView(),
        new BodiesView(),
        new ProofView(),
        new ClothView(),
        new MakingView(),
        new ReleaseView());
  }

  @Override
  public Opened open(Optional<Path> folder, int port, Consumer<String> log)
      throws IOException, Refused {
    System.setProperty("slf4j.internal.verbosity", "ERROR");
    Path path = folder.isPresent() ? folder.get() : demo();
    if (!Files.isDirectory(path)) {
      throw new Refused(path + " is no folder; name the folder that holds pattern.hem");
    }
    Optional<Keeper> keeper = Keeper.open(path);
    if (keeper.isEmpty()) {
      throw new Refused(
          path + " is open in another workroom; go on in its window, or close it there first");
    }
    Room room = new Room(new DiskFolder(path), keeper.get(), views(), log);
    try {
      return new Serving(room, LocalServer.start(room, port, log));
    } catch (IOException taken) {
      room.close();
      throw new Refused(
          "port " + port + " cannot be had; leave --port out and any free one is taken");
    }
  }

  /** The demo, copied to where its output goes, so that it can be changed. */
  private static Path demo() throws IOException {
    Path copy = Path.of("out").resolve(PackedFolder.DEMO.name());
    for (String name : PackedFolder.DEMO.names()) {
      if (!Files.exists(copy.resolve(name))
          && PackedFolder.DEMO.file(name) instanceof FolderFile.Content content) {
        new OutFolder(copy).replace(name, content.bytes());
      }
    }
    return copy;
  }

  private record Serving(Room room, LocalServer server) implements Opened {
    @Override
    public String address() {
      return server.address();
    }

    @Override
    public void await() throws InterruptedException {
      server.await();
    }

    @Override
    public void close() {
      server.close();
      room.close();
    }
  }
}
