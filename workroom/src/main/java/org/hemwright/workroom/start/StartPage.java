package org.hemwright.workroom.start;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.hemwright.paper.Paper;
import org.hemwright.paper.PaperOptions;
import org.hemwright.pattern.SizeRun;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.DiskFolder;
import org.hemwright.workbench.folder.FolderFile;
import org.hemwright.workbench.folder.PackedFolder;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workbench.out.OutFolder;
import org.hemwright.workbench.starter.ChartRun;
import org.hemwright.workbench.starter.NewFolder;
import org.hemwright.workbench.starter.Starter;
import org.hemwright.workroom.keep.Remembered;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Host;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/**
 * Answers the start page.
 *
 * <p>{@code {"ask": "start"}} gives what there is to open; {@code "picture"} with {@code shelf} and
 * {@code name} its pieces in the base size. {@code "open"} with {@code folder}, {@code "copy"} with
 * the {@code name} of an example and {@code "begin"} with {@code starter}, {@code run} and {@code
 * name} answer whether it is {@code opened}, else {@code why} not and at which {@code place}.
 */
public final class StartPage implements Host, AutoCloseable {
  private static final String EXAMPLES = "examples";
  private static final String STARTERS = "starters";

  /** Pictures are small: a garment is a thumb's breadth on the page. */
  private static final double PIXELS_PER_MM = 0.5;

  private final Path beside;
  private final Remembered remembered;
  private final Opener opener;
  private final Executor thread;
  private final Consumer<String> log;
  private final ExecutorService pictures =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread own = new Thread(work, "start-pictures");
            own.setDaemon(true);
            return own;
          });
  private final AtomicInteger windowsEver = new AtomicInteger();

  /**
   * A start page.
   *
   * @param beside where new folders go, and where folders are looked for
   * @param remembered the folders that were opened before
   * @param opener opens what is chosen
   * @param thread everything is answered on it, one after another
   * @param log where refusals and faults are told
   */
  public StartPage(
      Path beside, Remembered remembered, Opener opener, Executor thread, Consumer<String> log) {
    this.beside = beside.toAbsolutePath().normalize();
    this.remembered = remembered;
    this.opener = opener;
    this.thread = thread;
    this.log = log;
  }

  @Override
  public void join(Consumer<Frame> line, Consumer<Window> opened) {
    opened.accept(new Window(windowsEver.incrementAndGet(), line));
  }

  @Override
  public void leave(Window window) {}

  @Override
  public void ask(Window window, String text) {
    int id = 0;
    try {
      Question question = Question.read(text);
      id = question.id();
      int number = id;
      Executor place = question.word().equals("picture") ? pictures : thread;
      place.execute(() -> answer(window, number, question));
    } catch (Question.Unclear unclear) {
      refuse(window, id, unclear.reason());
    }
  }

  private void answer(Window window, int id, Question question) {
    try {
      ObjectNode head =
          switch (question.word()) {
            case "start" -> start();
            case "picture" -> picture(question);
            case "open" -> open(path(question.text("folder")));
            case "copy" -> copy(question.text("name"));
            case "begin" -> begin(question);
            default -> throw new Question.Unclear("no-answer");
          };
      window.send(new Frame(head.put("answer", id)));
    } catch (Question.Unclear unclear) {
      refuse(window, id, unclear.reason());
    } catch (RuntimeException fault) {
      log.accept("the start page met a fault of the program: " + fault);
      window.send(new Frame(no("fault", "").put("answer", id)));
    }
  }

  private void refuse(Window window, int id, String reason) {
    log.accept("a question was refused: " + reason);
    window.send(new Frame(Frame.answer().put("answer", id).put("refused", reason)));
  }

  private ObjectNode start() {
    ObjectNode head = Frame.answer().put("place", beside.toString());
    ArrayNode folders = head.putArray("folders");
    List<Path> last = remembered.folders();
    last.forEach(folder -> folder(folder, folders));
    new DiskFolder(beside)
        .folders().stream()
            .map(each -> each.path().toAbsolutePath().normalize())
            .filter(each -> !last.contains(each))
            .forEach(each -> folder(each, folders));
    ArrayNode starters = head.putArray(STARTERS);
    for (Starter starter : Starter.all()) {
      ObjectNode told =
          starters.addObject().put("name", starter.name()).put("words", starter.words());
      ArrayNode runs = told.putArray("runs");
      starter.charts().forEach(run -> runs.add(run.name()));
    }
    ArrayNode runs = head.putArray("runs");
    for (ChartRun run : ChartRun.all()) {
      runs.addObject().put("name", run.name()).put("words", run.words());
    }
    ArrayNode examples = head.putArray(EXAMPLES);
    for (PackedFolder example : PackedFolder.EXAMPLES) {
      Cover.of(example)
          .ifPresent(
              cover ->
                  examples
                      .addObject()
                      .put("name", example.name())
                      .put("title", cover.title())
                      .put("words", cover.words()));
    }
    return head;
  }

  private static void folder(Path path, ArrayNode to) {
    Cover.of(new DiskFolder(path))
        .ifPresent(
            cover -> to.addObject().put("path", path.toString()).put("title", cover.title()));
  }

  private static ObjectNode picture(Question question) throws Question.Unclear {
    String name = question.text("name");
    Optional<? extends PatternFolder> folder =
        question.text("shelf").equals(STARTERS)
            ? Starter.named(name).map(Starter::folder)
            : example(name);
    SizeRun run =
        folder
            .flatMap(each -> Workbench.draft(each).evaluated().run())
            .orElseThrow(() -> new Question.Unclear("no-garment"));
    SizeRun base =
        run.size(run.pattern().base().name())
            .map(size -> new SizeRun(run.pattern(), List.of(size)))
            .orElse(run);
    byte[] png =
        Paper.pictures(base, PaperOptions.everything(), Paper.PictureKind.PNG, PIXELS_PER_MM)
            .get(0)
            .bytes();
    return Frame.answer().put("png", Base64.getEncoder().encodeToString(png));
  }

  private static Optional<PackedFolder> example(String name) {
    return PackedFolder.EXAMPLES.stream().filter(each -> each.name().equals(name)).findFirst();
  }

  private Path path(String typed) throws Question.Unclear {
    try {
      String home = System.getProperty("user.home", "");
      return beside.resolve(typed.startsWith("~/") ? home + typed.substring(1) : typed.strip());
    } catch (InvalidPathException nonsense) {
      throw new Question.Unclear("no-folder-name");
    }
  }

  /** Opens a folder, new or old. */
  private ObjectNode open(Path folder) {
    Opener.Outcome outcome = opener.open(folder);
    return outcome == Opener.Outcome.OPEN
        ? Frame.answer().put("opened", true)
        : no(outcome.name().toLowerCase(Locale.ROOT), folder.toString());
  }

  /** A copy of an example; the copy that was made before, where there is one. */
  private ObjectNode copy(String name) throws Question.Unclear {
    PackedFolder example = example(name).orElseThrow(() -> new Question.Unclear("no-example"));
    Path place = beside.resolve(example.name());
    OutFolder copy = new OutFolder(place);
    if (!copy.isThere()) {
      try {
        for (String file : example.names()) {
          if (example.file(file) instanceof FolderFile.Content content) {
            copy.replace(file, content.bytes());
          }
        }
      } catch (IOException full) {
        return no("unwritable", place.toString());
      }
    } else if (Cover.of(new DiskFolder(place)).isEmpty()) {
      return no("taken", place.toString());
    }
    return open(place);
  }

  private ObjectNode begin(Question question) throws Question.Unclear {
    Starter chosen =
        Starter.named(question.text("starter")).orElseThrow(() -> new Question.Unclear("no-block"));
    ChartRun run =
        ChartRun.named(question.text("run"))
            .filter(chosen.charts()::contains)
            .orElseThrow(() -> new Question.Unclear("no-run"));
    NewFolder folder = NewFolder.called(question.text("name"), beside);
    if (folder.isTaken()) {
      return no("taken", folder.path().toString());
    }
    try {
      folder.fill(chosen, run);
    } catch (IOException full) {
      return no("unwritable", folder.path().toString());
    }
    return open(folder.path());
  }

  private static ObjectNode no(String why, String place) {
    return Frame.answer().put("opened", false).put("why", why).put("place", place);
  }

  @Override
  public void close() {
    pictures.shutdownNow();
  }
}
