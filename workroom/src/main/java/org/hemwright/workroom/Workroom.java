package org.hemwright.workroom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.hemwright.workbench.BrowserDoor;
import org.hemwright.workroom.add.AddView;
import org.hemwright.workroom.bodies.BodiesView;
import org.hemwright.workroom.bring.BringChartView;
import org.hemwright.workroom.bring.GradeView;
import org.hemwright.workroom.bring.Parcels;
import org.hemwright.workroom.bring.PhotographView;
import org.hemwright.workroom.bring.TraceView;
import org.hemwright.workroom.cloth.ClothView;
import org.hemwright.workroom.dials.DialView;
import org.hemwright.workroom.drag.DragView;
import org.hemwright.workroom.keep.Remembered;
import org.hemwright.workroom.ledger.LedgerView;
import org.hemwright.workroom.making.MakingView;
import org.hemwright.workroom.making.ProseView;
import org.hemwright.workroom.moments.MomentsView;
import org.hemwright.workroom.numbers.NumbersView;
import org.hemwright.workroom.paper.PaperView;
import org.hemwright.workroom.proof.ProofView;
import org.hemwright.workroom.release.ReleaseView;
import org.hemwright.workroom.room.View;
import org.hemwright.workroom.serve.LocalServer;
import org.hemwright.workroom.start.GuideView;
import org.hemwright.workroom.start.Opener;
import org.hemwright.workroom.table.TableView;
import org.hemwright.workroom.table.UnderlayView;
import org.hemwright.workroom.text.Meanings;
import org.hemwright.workroom.text.Neatness;
import org.hemwright.workroom.text.Proposals;
import org.hemwright.workroom.text.Renames;
import org.hemwright.workroom.text.TextView;
import org.hemwright.workroom.walk.WalkView;

/** Opens a folder, or the page where one is chosen, in the browser. */
public final class Workroom implements BrowserDoor {
  /** Every part of what a window shows, in the order in which they hear of a change. */
  private List<View> views(Opener opener) {
    TableView table = new TableView();
    MakingView making = new MakingView();
    Parcels parcels = new Parcels();
    return List.of(
        new TextView(),
        new Proposals(),
        new Meanings(),
        new Renames(),
        new Neatness(),
        table,
        new DragView(table),
        new DialView(table),
        new NumbersView(table),
        new AddView(table),
        new LedgerView(),
        new WalkView(),
        new UnderlayView(),
        new BodiesView(),
        parcels,
        new BringChartView(parcels),
        new PhotographView(parcels),
        new TraceView(parcels),
        new GradeView(),
        new ProofView(),
        new ClothView(),
        new PaperView(),
        making,
        new ProseView(making),
        new ReleaseView(),
        new MomentsView(),
        new GuideView(remembered, opener));
  }

  private final Remembered remembered;
  private final Path beside;

  /** Where new folders go when it is opened from the desktop; made when it is needed. */
  private final Path home;

  /** The workroom of whoever is logged in; new folders go where she is. */
  public Workroom() {
    this(Remembered.here(), Path.of(""), Path.of(System.getProperty("user.home", "."), "Patterns"));
  }

  /**
   * A workroom.
   *
   * @param remembered what is known from before
   * @param beside where new folders go, and where folders are looked for
   */
  public Workroom(Remembered remembered, Path beside) {
    this(remembered, beside, beside);
  }

  private Workroom(Remembered remembered, Path beside, Path home) {
    this.remembered = remembered;
    this.beside = beside;
    this.home = home;
  }

  @Override
  public Opened open(Optional<Path> folder, int port, Consumer<String> log)
      throws IOException, Refused {
    return serve(beside, folder, port, log);
  }

  private Serving serve(Path near, Optional<Path> folder, int port, Consumer<String> log)
      throws IOException, Refused {
    System.setProperty("slf4j.internal.verbosity", "ERROR");
    House house = new House(near, remembered, this::views, log);
    if (folder.isPresent()) {
      enter(house, folder.get());
    }
    try {
      return new Serving(house, LocalServer.start(house, port, log));
    } catch (IOException taken) {
      house.close();
      throw new Refused(
          "port " + port + " cannot be had; leave --port out and any free one is taken");
    }
  }

  @Override
  public Opened openAtDesk(int port, Consumer<String> log) throws IOException, Refused {
    Files.createDirectories(home);
    Serving serving = serve(home, Optional.empty(), port, log);
    // A folder that is busy or gone stays closed: then the page where one is chosen is shown.
    remembered.folders().stream().findFirst().ifPresent(serving.house()::open);
    return new AtDesk(serving);
  }

  @Override
  public void warmUp() throws IOException {
    try {
      WarmUp.once();
    } catch (Refused busy) {
      throw new IOException(busy.sentence(), busy);
    }
  }

  private static void enter(House house, Path folder) throws IOException, Refused {
    if (!Files.isDirectory(folder)) {
      throw new Refused(folder + " is no folder; name the folder that holds pattern.hem");
    }
    switch (house.enter(folder)) {
      case OPEN -> {}
      case BUSY ->
          throw new Refused(
              folder
                  + " is open in another workroom; go on in its window, or close it there first");
      default -> throw new Refused(folder + " cannot be read and written; look at who may do so");
    }
  }

  /** Ends a while after the last window is closed, since there is no command to end. */
  private record AtDesk(Serving serving) implements Opened {
    private static final Duration FOR_THE_FIRST = Duration.ofMinutes(10);
    private static final Duration FOR_ANOTHER = Duration.ofMinutes(2);

    @Override
    public String address() {
      return serving.address();
    }

    @Override
    public void await() throws InterruptedException {
      serving.server().awaitNobody(FOR_THE_FIRST, FOR_ANOTHER);
    }

    @Override
    public void close() {
      serving.close();
    }
  }

  private record Serving(House house, LocalServer server) implements Opened {
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
      house.close();
    }
  }
}
