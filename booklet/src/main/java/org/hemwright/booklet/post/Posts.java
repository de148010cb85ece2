package org.hemwright.booklet.post;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Picture;
import org.hemwright.booklet.part.Given;
import org.hemwright.booklet.part.Parts;
import org.hemwright.booklet.part.StepsPart;
import org.hemwright.booklet.part.StepsPart.ToldStage;
import org.hemwright.booklet.part.StepsPart.ToldStep;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.booklet.write.BookletHtml;
import org.hemwright.booklet.write.BookletMarkdown;
import org.hemwright.booklet.write.Dress;
import org.hemwright.paper.PrintedFile;
import org.hemwright.paper.png.PngWriter;
import org.hemwright.paper.sheet.DocumentFacts;
import org.hemwright.paper.svg.SvgWriter;
import org.hemwright.pattern.Details;

/** The posts, the shot list, the listing and the papers for testers, as files. */
public final class Posts {
  /** The folder of the posts. */
  public static final String FOLDER = "posts/";

  /** The folder of the listing. */
  public static final String LISTING = "listing/";

  /** The folder of what testers get. */
  public static final String TESTERS = "testers/";

  private static final String FIGURES = "figures/";
  private static final double PIXELS_PER_MM = 8;

  private final Given given;
  private final Telling telling;
  private final Dress dress;
  private final Map<String, Figure> figures = new LinkedHashMap<>();

  /**
   * One page before it is written: a post, the shot list, the listing, the call.
   *
   * @param name of its files, without their endings
   */
  public record Page(String name, List<Inline> title, List<Block> blocks) {
    public Page {
      title = List.copyOf(title);
      blocks = List.copyOf(blocks);
    }

    /** All its words, to look through. */
    public List<List<Inline>> texts() {
      List<List<Inline>> texts = new ArrayList<>(Block.texts(blocks));
      texts.add(title);
      return texts;
    }
  }

  private Posts(Given given, Optional<String> proof) {
    this.given = given;
    this.telling = given.telling();
    this.dress =
        new Dress(
            telling.run().pattern().details().by(),
            Parts.logo(given),
            Parts.footer(telling),
            given.type(),
            proof);
  }

  /**
   * Every file.
   *
   * @param proof the word that marks every page, if anything does
   */
  public static List<PrintedFile> files(Given given, Optional<String> proof) {
    return new Posts(given, proof).files();
  }

  /** Every page before it is written, in order. */
  public static List<Page> pages(Given given) {
    return new Posts(given, Optional.empty()).pages();
  }

  private List<PrintedFile> files() {
    List<PrintedFile> files = new ArrayList<>();
    for (Page page : pages()) {
      String html =
          BookletHtml.page(facts(Inline.plain(page.title())), page.title(), page.blocks(), dress);
      String markdown = BookletMarkdown.page(page.title(), page.blocks(), FIGURES, dress.proof());
      files.add(file(page.name() + ".html", utf8(html)));
      files.add(file(page.name() + ".md", utf8(markdown)));
    }
    for (Figure figure : figures.values()) {
      String name = FOLDER + FIGURES + figure.id();
      if (figure.own().isPresent()) {
        Picture own = figure.own().get();
        files.add(file(name + "." + own.kind().ending(), own.bytes()));
      } else {
        files.add(file(name + ".svg", SvgWriter.write(facts(figure.alt()), figure.sheet())));
        files.add(file(name + ".png", PngWriter.write(figure.sheet(), PIXELS_PER_MM)));
      }
    }
    files.add(file(TESTERS + "feedback.csv", utf8(new Testers(given).form())));
    return files;
  }

  private List<Page> pages() {
    List<ToldStage> stages = StepsPart.told(given);
    List<Page> pages = new ArrayList<>();
    for (int i = 0; i < stages.size(); i++) {
      pages.add(post(stages, i));
    }
    pages.add(
        new Page(
            FOLDER + "shot-list",
            telling.say("shots.title", Slots.of("title", telling.detail("title"))),
            ShotList.of(given, stages)));
    pages.add(
        new Page(
            LISTING + "listing", List.of(telling.detail("title")), new Listing(given).blocks()));
    pages.add(
        new Page(
            TESTERS + "call",
            telling.say("testers.title", Slots.of("title", telling.detail("title"))),
            new Testers(given).call()));
    return pages;
  }

  private Page post(List<ToldStage> stages, int index) {
    ToldStage stage = stages.get(index);
    List<Block> blocks = new ArrayList<>();
    List<Inline> where = new ArrayList<>();
    if (index > 0) {
      where.addAll(link(stages, index - 1, "posts.before"));
    }
    if (index + 1 < stages.size()) {
      if (!where.isEmpty()) {
        where.add(new Inline.Text(" "));
      }
      where.addAll(link(stages, index + 1, "posts.after"));
    }
    for (ToldStep step : stage.steps()) {
      List<Block> words = new ArrayList<>(step.block().words());
      words.addAll(given.prose().post(step.step().id()));
      blocks.add(
          new Block.Step(step.block().id(), step.block().title(), step.block().figure(), words));
      step.block().figure().ifPresent(figure -> figures.put(figure.id(), figure));
    }
    if (!where.isEmpty()) {
      blocks.add(new Block.Paragraph(Block.Tone.PLAIN, where));
    }
    blocks.add(
        new Block.Paragraph(
            Block.Tone.PLAIN,
            telling.say(
                "posts.foot",
                Slots.of("title", telling.detail("title"))
                    .and("version", telling.detail("version"))
                    .and("by", telling.detail("by")))));
    List<Inline> title =
        telling.say(
            "posts.title", Slots.of("title", telling.detail("title")).and("stage", stage.title()));
    return new Page(FOLDER + name(stages, index), title, blocks);
  }

  private List<Inline> link(List<ToldStage> stages, int to, String key) {
    return telling.say(
        key,
        Slots.of("stage", new Inline.Link(stages.get(to).title(), name(stages, to) + ".html")));
  }

  private static String name(List<ToldStage> stages, int index) {
    String slug =
        Inline.plain(stages.get(index).title())
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^\\p{L}\\p{N}]+", "-")
            .replaceAll("^-|-$", "");
    return "%02d-%s".formatted(index + 1, slug.isEmpty() ? "stage" : slug);
  }

  private DocumentFacts facts(String title) {
    Details details = telling.run().pattern().details();
    return new DocumentFacts(
        title,
        details.by(),
        telling
            .words()
            .plain(
                "facts.about",
                Slots.of("title", telling.detail("title")).and("by", telling.detail("by"))),
        telling.words().tag(),
        details.dated(),
        List.of());
  }

  private static PrintedFile file(String name, byte[] bytes) {
    return new PrintedFile(name, "", bytes, 1, List.of());
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** Whether a file is for the designer rather than the maker. */
  public static boolean isHers(String name) {
    return name.startsWith(FOLDER) || name.startsWith(LISTING) || name.startsWith(TESTERS);
  }
}
