package org.hemwright.workroom.paper;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import org.hemwright.paper.PrintedFile;
import org.hemwright.paper.PrintedPattern;
import org.hemwright.paper.Printing;
import org.hemwright.paper.sheet.DocumentFacts;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.svg.SvgWriter;
import org.hemwright.paper.tile.PageFormat;
import org.hemwright.paper.tile.PageName;
import org.hemwright.paper.tile.PatternPages;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.View;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Progress;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.DiskFolder;
import org.hemwright.workbench.folder.EditedFolder;
import org.hemwright.workbench.folder.FolderFile;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workbench.out.OutFolder;
import org.hemwright.workroom.history.Past;
import org.hemwright.workroom.ledger.LedgerView;
import org.hemwright.workroom.room.Room;
import org.hemwright.workroom.room.View.Answering;
import org.hemwright.workroom.talk.Frame;
import org.hemwright.workroom.talk.Question;
import org.hemwright.workroom.talk.Window;
import org.hemwright.workroom.text.FindingWords;

/** Shows the pages that will be printed, and prints them into files. */
public final class PaperView implements org.hemwright.workroom.room.View {
  private static final String OUT = "out";
  private static final String PLACE = "paper";

  private boolean printing;

  @Override
  public Map<String, Answering> answers() {
    return Map.of(
        "papers",
        PaperView::papers,
        "pages",
        PaperView::pages,
        "page",
        PaperView::page,
        "print",
        this::print,
        "printed_file",
        PaperView::file);
  }

  /** {@code {"ask": "papers"}}: the papers and views there are, and what the document chooses. */
  private static Frame papers(Room room, Window window, Question question) throws Question.Unclear {
    SizeRun run = run(room);
    ObjectNode head = Frame.answer();
    ArrayNode papers = head.putArray("papers");
    for (PageFormat paper : PageFormat.values()) {
      papers.addObject().put("name", name(paper)).put("title", paper.title());
    }
    ArrayNode views = head.putArray("views");
    run.pattern().views().stream().map(View::name).forEach(views::add);
    head.put("stitch", run.pattern().paper().stitchLines());
    return new Frame(head);
  }

  private static String name(PageFormat paper) {
    return paper.name().toLowerCase(Locale.ROOT);
  }

  private static SizeRun run(Room room) throws Question.Unclear {
    return room.draft()
        .evaluated()
        .run()
        .orElseThrow(() -> new Question.Unclear("nothing-to-print"));
  }

  /** The pages that a window looks at. */
  private static final class Looked {
    private int number;
    private List<Sheet> sheets = List.of();
    private Optional<DocumentFacts> facts = Optional.empty();
  }

  private static Looked looked(Window window) {
    return window.kept(Looked.class, Looked::new);
  }

  /**
   * {@code {"ask": "pages", "paper", "size", "view", "stitch", "black", "overlap"}}: told by and by
   * as {@code pages}: what each page is called and how large it is, and which pages each size
   * needs.
   */
  private static Frame pages(Room room, Window window, Question question) throws Question.Unclear {
    SizeRun run = run(room);
    PaperChoice choice = PaperChoice.of(run, question);
    PatternFolder folder = room.edited();
    int revision = room.revision();
    int number = ++looked(window).number;
    room.promptly(
        () -> {
          Printing printing = choice.printing(Workbench.evaluate(folder), run);
          return new Drawn(choice.paper().title(), choice.pages(printing), printing.findings());
        },
        drawn -> {
          Looked looked = looked(window);
          if (looked.number == number) {
            looked.sheets = drawn.pages().sheets();
            looked.facts = Optional.of(facts(run));
            window.send(told(room, run, drawn, revision, number));
          }
        });
    return new Frame(Frame.answer().put("number", number));
  }

  private record Drawn(String paper, PatternPages pages, List<Finding> findings) {}

  private static DocumentFacts facts(SizeRun run) {
    Details details = run.pattern().details();
    return new DocumentFacts(
        details.title(),
        details.by(),
        details.title(),
        Speech.of(run).language(),
        details.dated(),
        List.of());
  }

  private static Frame told(Room room, SizeRun run, Drawn drawn, int revision, int number) {
    ObjectNode head = Frame.tell("pages").put("revision", revision).put("number", number);
    head.put("paper", drawn.paper());
    ArrayNode list = head.putArray("pages");
    PatternPages pages = drawn.pages();
    for (int i = 0; i < pages.sheets().size(); i++) {
      PageName name = pages.names().get(i);
      Sheet sheet = pages.sheets().get(i);
      ObjectNode page = list.addObject();
      page.put("kind", name.kind().name().toLowerCase(Locale.ROOT)).put("tile", name.tile());
      page.put("width", sheet.frame().width()).put("height", sheet.frame().height());
      ArrayNode sizes = page.putArray("sizes");
      name.sizes().forEach(sizes::add);
    }
    ArrayNode groups = head.putArray("groups");
    for (PatternPages.GroupCount count : pages.groups()) {
      ObjectNode group = groups.addObject().put("pages", count.pages());
      group.put("title", Speech.of(run).sizes(count.sizes()));
      ObjectNode tiles = group.putObject("tiles");
      count
          .tilesOfSize()
          .forEach(
              (size, names) -> {
                ArrayNode own = tiles.putArray(size);
                names.forEach(own::add);
              });
    }
    findings(
        drawn.findings(), Past.texts(room.texts(), room.history(), revision), revision, run, head);
    return new Frame(head);
  }

  private static void findings(
      List<Finding> findings,
      SortedMap<String, String> texts,
      int revision,
      SizeRun run,
      ObjectNode head) {
    FindingWords.write(
        findings,
        texts,
        revision,
        Workbench.wording(Optional.of(run)).showing(LedgerView.format(run)),
        head.putArray("findings"));
  }

  /** {@code {"ask": "page", "number", "at"}}: one of the pages that this window looks at. */
  private static Frame page(Room room, Window window, Question question) throws Question.Unclear {
    Looked looked = looked(window);
    int at = question.whole("at");
    if (looked.number != question.whole("number") || at < 0 || at >= looked.sheets.size()) {
      throw new Question.Unclear("no-page");
    }
    byte[] svg = SvgWriter.write(looked.facts.orElseThrow(), looked.sheets.get(at));
    return new Frame(Frame.answer().put("svg", new String(svg, StandardCharsets.UTF_8)));
  }

  /**
   * {@code {"ask": "print", …, "every"}}: makes the files of a choice, on every paper if so asked.
   * Told by and by: {@code printing} how far it has come, {@code printed} what was made.
   */
  private Frame print(Room room, Window window, Question question) throws Question.Unclear {
    SizeRun run = run(room);
    PaperChoice choice = PaperChoice.of(run, question);
    boolean every = question.body().path("every").asBoolean();
    Path place = room.place().orElseThrow(() -> new Question.Unclear("not-on-disk"));
    if (printing) {
      throw new Question.Unclear("making-already");
    }
    printing = true;
    EditedFolder folder = room.edited();
    int revision = room.revision();
    Progress progress =
        (doing, done, of) ->
            room.later(
                () ->
                    window.send(
                        new Frame(
                            Frame.tell("printing")
                                .put("doing", doing)
                                .put("done", done)
                                .put("of", of))));
    OutFolder out = new OutFolder(place.resolve(OUT).resolve(PLACE));
    room.atLength(
        () -> printed(room, folder, revision, choice, every, out, progress),
        told -> {
          printing = false;
          window.send(told);
        });
    return new Frame(Frame.answer());
  }

  private static Frame printed(
      Room room,
      EditedFolder folder,
      int revision,
      PaperChoice choice,
      boolean every,
      OutFolder out,
      Progress progress) {
    ObjectNode head = Frame.tell("printed").put("folder", out.path().toString());
    ArrayNode files = head.putArray("files");
    List<Finding> findings = new ArrayList<>();
    Evaluated evaluated = Workbench.evaluate(folder);
    SizeRun run = evaluated.run().orElseThrow();
    try {
      PrintedPattern made = Workbench.print(evaluated, run, choice.options(every), progress);
      findings.addAll(made.findings());
      for (PrintedFile file : made.files()) {
        out.replace(file.name(), file.bytes());
        MadeFile.tell(file, files);
      }
    } catch (IOException full) {
      head.put("trouble", String.valueOf(full.getMessage()));
    } catch (RuntimeException fault) {
      room.note("printing met a fault of the program: " + fault);
      head.put("trouble", "");
    }
    findings(findings, folder.texts(), revision, run, head);
    return new Frame(head);
  }

  /** {@code {"ask": "printed_file", "name"}}: one of the files that were made, in base 64. */
  private static Frame file(Room room, Window window, Question question) throws Question.Unclear {
    String name = question.text("name");
    Optional<Path> place = room.place();
    if (place.isPresent() && PatternFolder.isPlain(name)) {
      FolderFile file = new DiskFolder(place.get().resolve(OUT).resolve(PLACE)).file(name);
      if (file instanceof FolderFile.Content content) {
        return new Frame(
            Frame.answer()
                .put("type", name.endsWith(".pdf") ? "application/pdf" : "image/svg+xml")
                .put("base64", Base64.getEncoder().encodeToString(content.bytes())));
      }
    }
    throw new Question.Unclear("no-file");
  }
}
