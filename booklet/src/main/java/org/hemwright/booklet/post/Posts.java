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
  private final List<PrintedFile> files = new ArrayList<>();

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

  private List<PrintedFile> files() {
    List<ToldStage> stages = StepsPart.told(given);
    Map<String, Figure> figures = new LinkedHashMap<>();
    for (int i = 0; i < stages.size(); i++) {
      post(stages, i, figures);
    }
    for (Figure figure : figures.values()) {
      if (figure.own().isPresent()) {
        Picture own = figure.own().get();
        add(FOLDER + FIGURES + figure.id() + "." + own.kind().ending(), own.bytes());
      } else {
        add(
            FOLDER + FIGURES + figure.id() + ".svg",
            SvgWriter.write(facts(figure.alt()), figure.sheet()));
        add(
            FOLDER + FIGURES + figure.id() + ".png",
            PngWriter.write(figure.sheet(), PIXELS_PER_MM));
      }
    }
    both(
        FOLDER + "shot-list",
        telling.say("shots.title", Slots.of("title", telling.detail("title"))),
        ShotList.of(given, stages));
    both(LISTING + "listing", List.of(telling.detail("title")), new Listing(given).blocks());
    Testers testers = new Testers(given);
    both(
        TESTERS + "call",
        telling.say("testers.title", Slots.of("title", telling.detail("title"))),
        testers.call());
    add(TESTERS + "feedback.csv", utf8(testers.form()));
    return files;
  }

  private void post(List<ToldStage> stages, int index, Map<String, Figure> figures) {
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
    both(FOLDER + name(stages, index), title, blocks);
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

  private void both(String name, List<Inline> title, List<Block> blocks) {
    add(name + ".html", utf8(BookletHtml.page(facts(Inline.plain(title)), title, blocks, dress)));
    add(name + ".md", utf8(BookletMarkdown.page(title, blocks, FIGURES, dress.proof())));
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

  private void add(String name, byte[] bytes) {
    files.add(new PrintedFile(name, "", bytes, 1, List.of()));
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** Whether a file is for the designer rather than the maker. */
  public static boolean isHers(String name) {
    return name.startsWith(FOLDER) || name.startsWith(LISTING) || name.startsWith(TESTERS);
  }
}
