package org.hemwright.workroom.room;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.hemwright.workbench.LiveDraft;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.DiskFolder;
import org.hemwright.workbench.folder.EditedFolder;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workbench.folder.WithFile;
import org.hemwright.workroom.history.Revision;
import org.hemwright.workroom.history.Splice;
import org.hemwright.workroom.history.Texts;
import org.hemwright.workroom.keep.Keeper;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Host;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;

/**
 * One open folder. Its methods are called on its own thread, but for {@link #join}, {@link #leave},
 * {@link #ask} and {@link #close}, which any thread may call.
 */
public final class Room implements Host, AutoCloseable {
  /** A change is on its way to the disk after this long (ms); well within the second promised. */
  private static final int KEEP_AFTER = 400;

  /** Files are looked at for changes by other programs this often (ms). */
  private static final int LOOK_EVERY = 1000;

  private final PatternFolder folder;
  private final Keeper keeper;
  private final List<View> views;
  private final Map<String, View.Answering> answers = new HashMap<>();
  private final Consumer<String> log;
  private final Texts texts;
  private final List<Window> windows = new ArrayList<>();
  private final Workers workers;
  private final Keeping keeping;
  private LiveDraft draft;
  private Optional<Window> asking = Optional.empty();
  private int windowsEver;

  /**
   * Opens a room.
   *
   * @param folder where its files lie
   * @param keeper who keeps its texts
   * @param views all parts of what windows show, in the order in which they hear of things
   * @param log where refusals and faults are told
   */
  public Room(PatternFolder folder, Keeper keeper, List<View> views, Consumer<String> log) {
    this.folder = folder;
    this.keeper = keeper;
    this.views = List.copyOf(views);
    this.log = log;
    this.workers = new Workers(log);
    this.texts = new Texts(keeper.texts(), keeper.history());
    this.keeping = new Keeping(this, texts, keeper, folder.name(), log);
    for (View view : views) {
      view.answers().forEach(this::register);
    }
    register("undo", (room, window, question) -> back(Revision.Cause.UNDO, texts.toUndo()));
    register("redo", (room, window, question) -> back(Revision.Cause.REDO, texts.toRedo()));
    register("moment", (room, window, question) -> moment(question.text("name")));
    register("outside", (room, window, question) -> keeping.decide(question));
    register("put back", (room, window, question) -> keeping.putBack(question.text("file")));
    this.draft = Workbench.draft(edited());
    keeper.found().forEach(texts::note);
    workers.again(keeping::keep, KEEP_AFTER);
    workers.again(keeping::look, LOOK_EVERY);
  }

  private void register(String word, View.Answering answering) {
    if (answers.put(word, answering) != null) {
      throw new IllegalArgumentException("two views answer to " + word);
    }
  }

  // --- for any thread ---------------------------------------------------------------------------

  /** Lets a window in; everything it shows is sent to it. */
  @Override
  public void join(Consumer<Frame> line, Consumer<Window> opened) {
    workers.run(
        () -> {
          Window window = new Window(++windowsEver, line);
          windows.add(window);
          opened.accept(window);
          window.send(new Frame(state(Frame.tell("hello").put("window", window.number()))));
          views.forEach(view -> view.opened(this, window));
        });
  }

  /** Takes leave of a window. */
  @Override
  public void leave(Window window) {
    workers.run(
        () -> {
          windows.remove(window);
          views.forEach(view -> view.closed(this, window));
        });
  }

  /** Answers what a window asks, in its turn. */
  @Override
  public void ask(Window window, String text) {
    workers.run(
        () -> {
          int id = 0;
          try {
            Question question = Question.read(text);
            id = question.id();
            View.Answering answering = answers.get(question.word());
            if (answering == null) {
              throw new Question.Unclear("no-answer");
            }
            asking = Optional.of(window);
            Frame answer = answering.answer(this, window, question);
            answer.head().put("answer", id);
            window.send(answer);
          } catch (Question.Unclear unclear) {
            log.accept("a question was refused: " + unclear.reason());
            window.send(
                new Frame(Frame.answer().put("answer", id).put("refused", unclear.reason())));
          } catch (RuntimeException fault) {
            log.accept("a question met a fault of the program: " + fault);
            window.send(
                new Frame(
                    Frame.answer()
                        .put("answer", id)
                        .put("refused", Question.Unclear.sentence("fault"))));
          } finally {
            asking = Optional.empty();
          }
        });
  }

  @Override
  public void close() {
    if (!workers.close(keeping::keep)) {
      log.accept("the last change may not have reached the disk");
    }
    try {
      keeper.close();
    } catch (java.io.IOException stuck) {
      log.accept("the folder could not be let go of: " + stuck.getMessage());
    }
  }

  // --- for views, on the room's thread ----------------------------------------------------------

  /** Works something out beside the room's thread, one after another, and goes on with it there. */
  public <T> void beside(java.util.function.Supplier<T> work, Consumer<T> then) {
    workers.on(workers.beside, work, then);
  }

  /** The same for what she waits for and what is soon done, so that it need not wait for checks. */
  public <T> void promptly(java.util.function.Supplier<T> work, Consumer<T> then) {
    workers.on(workers.promptly, work, then);
  }

  /** The same for what takes seconds, so that what takes less need not wait for it. */
  public <T> void atLength(java.util.function.Supplier<T> work, Consumer<T> then) {
    workers.on(workers.atLength, work, then);
  }

  /** The same for what goes on until she has seen enough of it; nothing else waits for it. */
  public <T> void whileWaited(java.util.function.Supplier<T> work, Consumer<T> then) {
    workers.on(workers.whileWaited, work, then);
  }

  /** Does something on the room's thread, from any other: tells how far long work has come. */
  public void later(Runnable work) {
    workers.run(work);
  }

  /** Tells something to whoever looks after the machine. */
  public void note(String sentence) {
    log.accept(sentence);
  }

  /** The number of the revision that the texts stand at. */
  public int revision() {
    return texts.revision();
  }

  /** All that happened, oldest first. */
  public List<Revision> history() {
    return texts.history();
  }

  /** What the texts come to. */
  public LiveDraft draft() {
    return draft;
  }

  /** A text as it stands; empty where there is none. */
  public String text(String file) {
    return texts.text(file);
  }

  /** The texts that can be edited here, by file name. */
  public SortedMap<String, String> texts() {
    return texts.all();
  }

  /** The folder as it stands here, changes that are not yet on the disk and all. */
  public EditedFolder edited() {
    return new EditedFolder(folder, texts.all());
  }

  /** What the texts would come to with another text in the place of one; nothing is changed. */
  public LiveDraft tried(String file, String text) {
    SortedMap<String, String> others = new TreeMap<>(texts.all());
    others.put(file, text);
    return Workbench.draft(new EditedFolder(folder, others));
  }

  /** The same, with one file more in the folder; nothing is written. */
  public LiveDraft tried(String file, String text, String added, byte[] content) {
    SortedMap<String, String> others = new TreeMap<>(texts.all());
    others.put(file, text);
    return Workbench.draft(WithFile.of(new EditedFolder(folder, others), added, content));
  }

  /**
   * Puts a file of hers beside the document, whole or not at all.
   *
   * @param name as {@link PatternFolder#isInside} has it
   * @throws java.io.IOException where it cannot be written
   */
  public void store(String name, byte[] content) throws java.io.IOException {
    if (!PatternFolder.isInside(name) || place().isEmpty()) {
      throw new java.io.IOException(name);
    }
    keeper.store(name, content);
  }

  /** The window whose question is being answered; absent where nobody asked. */
  public Optional<Window> asking() {
    return asking;
  }

  /** Where the folder lies on the disk; absent where it is packed in the program. */
  public Optional<java.nio.file.Path> place() {
    return folder instanceof DiskFolder disk ? Optional.of(disk.path()) : Optional.empty();
  }

  /** The windows that are open. */
  public List<Window> windows() {
    return List.copyOf(windows);
  }

  /** Sends something to every window. */
  public void tell(Frame frame) {
    windows.forEach(window -> window.send(frame));
  }

  /**
   * Changes the texts. The draft follows, and every view hears of it.
   *
   * @param splices one after another
   * @param joined whether it goes on with the edit before
   * @param name what it does, in a few words; may be empty
   * @return absent where the texts are not as the splices expect them; nothing was changed then
   */
  public Optional<Revision> change(List<Splice> splices, boolean joined, String name) {
    return change(Revision.Cause.EDIT, splices, joined, name);
  }

  /** Changes the texts, whatever brings it about. */
  Optional<Revision> change(
      Revision.Cause cause, List<Splice> splices, boolean joined, String name) {
    Optional<Revision> changed = texts.change(cause, splices, joined, name);
    changed.ifPresent(
        revision -> {
          if (revision.drafts()) {
            draft = Workbench.draft(edited());
          }
          views.forEach(view -> view.revised(this, revision));
          tellState();
        });
    return changed;
  }

  /** Tells every window how things stand. */
  void tellState() {
    tell(new Frame(state(Frame.tell("state"))));
  }

  private ObjectNode state(ObjectNode head) {
    head.put("revision", revision());
    head.put("undo", texts.toUndo().isPresent());
    head.put("redo", texts.toRedo().isPresent());
    head.put("folder", folder.name());
    head.put(
        "title", draft.evaluated().run().map(run -> run.pattern().details().title()).orElse(""));
    keeping.tell(head);
    ArrayNode files = head.putArray("files");
    texts.all().keySet().forEach(files::add);
    return head;
  }

  // --- undo, moments ----------------------------------------------------------------------------

  private Frame back(Revision.Cause cause, Optional<List<Splice>> splices) {
    boolean done = splices.flatMap(some -> change(cause, some, false, "")).isPresent();
    return new Frame(Frame.answer().put("done", done));
  }

  private Frame moment(String name) {
    change(Revision.Cause.MOMENT, List.of(), false, name);
    return new Frame(Frame.answer().put("done", true));
  }
}
