package org.hemwright.paper;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;
import org.hemwright.paper.nest.GroupDrawing;
import org.hemwright.paper.nest.Nest;
import org.hemwright.paper.nest.PieceDrawing;
import org.hemwright.paper.pdf.PdfWriter;
import org.hemwright.paper.png.PngWriter;
import org.hemwright.paper.sheet.DocumentFacts;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.svg.SvgWriter;
import org.hemwright.paper.tile.PageFormat;
import org.hemwright.paper.tile.PatternPages;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.PaperChoices;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeRange;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Messages;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.piece.AddedAllowance;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;

/**
 * A run made into the files that the maker prints: a pure function, the same bytes for the same run
 * and options on one installation.
 */
public final class Paper {
  /** Pixels to a millimetre at which words of 9 points can be read. */
  private static final double LEGIBLE = 4.5;

  private Paper() {}

  /** One file still to be made, so that a caller may show how far it has come. */
  public record Job(String name, Supplier<PrintedFile> making) {
    /** Makes the file. */
    public PrintedFile make() {
      return making.get();
    }
  }

  /** All files and all findings. */
  public static PrintedPattern of(SizeRun run, PaperOptions options) {
    List<PrintedFile> files = jobs(run, options).stream().map(Job::make).toList();
    return new PrintedPattern(files, findings(run, options));
  }

  /** The sentences for the findings of this module. */
  public static Messages messages() {
    return Messages.beside(Paper.class, "paper.properties");
  }

  /** The files to make, in order; made one after the other by one thread. */
  public static List<Job> jobs(SizeRun run, PaperOptions options) {
    List<Job> jobs = new ArrayList<>();
    String stem = stem(run);
    if (options.groups()) {
      Edition edition = Edition.of(run, groups(run), options);
      for (PageFormat format : options.formats()) {
        jobs.add(pdf(edition, format, stem + "-" + format.fileName() + ".pdf", options));
      }
      if (options.svg()) {
        for (GroupDrawing group : edition.groups()) {
          jobs.add(svg(edition, group, stem + "-" + sizes(group) + ".svg"));
        }
      }
    }
    for (Size size : run.pattern().chart().sizes()) {
      if (options.singles().contains(size.name()) && run.size(size.name()).isPresent()) {
        Edition edition = Edition.of(run, List.of(List.of(size)), options);
        String folder = "size-" + slug(size.name()) + "/";
        for (PageFormat format : options.formats()) {
          String name =
              folder + stem + "-size-" + slug(size.name()) + "-" + format.fileName() + ".pdf";
          jobs.add(pdf(edition, format, name, options));
        }
        if (options.svg()) {
          for (GroupDrawing group : edition.groups()) {
            jobs.add(svg(edition, group, folder + stem + "-size-" + slug(size.name()) + ".svg"));
          }
        }
      }
    }
    return List.copyOf(jobs);
  }

  /** How a picture is written. */
  public enum PictureKind {
    /** Lines and words, in true size. */
    SVG("svg"),
    /** Pixels; lines and words large enough to be read. */
    PNG("png");

    private final String ending;

    PictureKind(String ending) {
      this.ending = ending;
    }

    /** Of a file's name. */
    public String ending() {
      return ending;
    }
  }

  /**
   * Pictures of all pieces, to look at: one of the run's sizes together where a nest can show so
   * many, else one for each group.
   *
   * @param perMm pixels to a millimetre, for PNG
   */
  public static List<PrintedFile> pictures(
      SizeRun run, PaperOptions options, PictureKind kind, double perMm) {
    List<Size> present = run.sizes().stream().map(SizedPattern::size).sorted().toList();
    List<List<Size>> sizes =
        present.size() <= PaperChoices.MOST_SIZES_IN_A_GROUP ? List.of(present) : groups(run);
    Edition edition = Edition.of(run, sizes, options);
    Speech speech = Speech.of(run);
    List<PrintedFile> pictures = new ArrayList<>();
    for (GroupDrawing group : edition.groups()) {
      String name = stem(run) + "-" + sizes(group) + "." + kind.ending();
      boolean pixels = kind == PictureKind.PNG;
      double scale = pixels ? Math.max(1, LEGIBLE / perMm) : 1;
      Sheet sheet = Pictures.of(group, edition.stitchLines(), scale);
      byte[] bytes =
          pixels
              ? PngWriter.write(sheet, perMm)
              : SvgWriter.write(edition.facts(lower(speech.sizes(group.sizeNames())), ""), sheet);
      pictures.add(new PrintedFile(name, "", bytes, 1, List.of()));
    }
    return List.copyOf(pictures);
  }

  /** Words that found no room, pieces too wide for a paper or not drawable at all. */
  public static List<Finding> findings(SizeRun run, PaperOptions options) {
    Set<Finding> findings = new LinkedHashSet<>();
    for (SizedPattern sized : run.sizes()) {
      for (Piece piece : sized.pieces()) {
        AddedAllowance.to(piece).findings().stream()
            .filter(finding -> finding.status() == Status.FAIL)
            .forEach(findings::add);
      }
    }
    Edition edition = Edition.of(run, groups(run), options);
    for (GroupDrawing group : edition.groups()) {
      group.upright().stream().map(PieceDrawing::findings).forEach(findings::addAll);
      for (PageFormat format : options.formats()) {
        for (PieceCard card : PatternPages.tooWide(group, format)) {
          findings.add(
              Finding.warn("paper-too-narrow", card.name())
                  .sizes(group.sizeNames())
                  .with("paper", format.title())
                  .at(card.origin())
                  .build());
        }
      }
    }
    return List.copyOf(findings);
  }

  /** The sizes of each group that the run has, in the chart's order; all in one where none is. */
  private static List<List<Size>> groups(SizeRun run) {
    List<Size> present = run.sizes().stream().map(SizedPattern::size).toList();
    List<List<Size>> groups = new ArrayList<>();
    for (SizeRange range : run.pattern().paper().groups()) {
      List<Size> sizes = present.stream().filter(range::contains).sorted().toList();
      if (!sizes.isEmpty()) {
        groups.add(sizes);
      }
    }
    if (groups.isEmpty()) {
      List<Size> sorted = present.stream().sorted().toList();
      int most = PaperChoices.MOST_SIZES_IN_A_GROUP;
      for (int first = 0; first < sorted.size(); first += most) {
        groups.add(sorted.subList(first, Math.min(sorted.size(), first + most)));
      }
    }
    return groups;
  }

  /** A run drawn in groups of sizes. */
  private record Edition(
      SizeRun run,
      List<GroupDrawing> groups,
      List<GroupDrawing> withoutRectangles,
      List<Nest> rectangles,
      boolean stitchLines) {

    static Edition of(SizeRun run, List<List<Size>> sizes, PaperOptions options) {
      PaperChoices choices = run.pattern().paper();
      List<GroupDrawing> groups = new ArrayList<>();
      List<GroupDrawing> others = new ArrayList<>();
      List<Nest> rectangles = new ArrayList<>();
      List<Size> all = sizes.stream().flatMap(List::stream).distinct().sorted().toList();
      if (choices.rectangleTable()) {
        List<Nest> whole = Nest.of(run, all, choices.wholePieces(), options.inColour());
        rectangles.addAll(PatternPages.rectangles(whole));
      }
      List<PieceCard> measured = rectangles.stream().map(Nest::card).toList();
      for (List<Size> group : sizes) {
        List<Nest> nests = Nest.of(run, group, choices.wholePieces(), options.inColour());
        GroupDrawing drawing = new GroupDrawing(run, group, nests, choices.stitchLines());
        List<Nest> drawn = nests.stream().filter(nest -> !measured.contains(nest.card())).toList();
        if (!nests.isEmpty()) {
          groups.add(drawing);
        }
        if (drawn.size() == nests.size()) {
          others.add(drawing);
        } else if (!drawn.isEmpty()) {
          others.add(new GroupDrawing(run, group, drawn, choices.stitchLines()));
        }
      }
      return new Edition(run, groups, others, rectangles, choices.stitchLines());
    }

    DocumentFacts facts(String title, String paper) {
      Speech speech = Speech.of(run);
      Details details = run.pattern().details();
      List<String> sizes =
          run.pattern().chart().sizes().stream()
              .filter(size -> groups.stream().anyMatch(group -> group.sizes().contains(size)))
              .map(Size::name)
              .toList();
      return new DocumentFacts(
          details.title() + ", version " + details.version() + ", " + title,
          details.by(),
          "A sewing pattern by " + details.by() + paper + ".",
          speech.language(),
          details.dated(),
          sizes);
    }
  }

  private static Job pdf(Edition edition, PageFormat format, String name, PaperOptions options) {
    return new Job(
        name,
        () -> {
          PatternPages pages =
              PatternPages.of(
                  new PatternPages.Content(
                      edition.run(),
                      format.isLarge() ? edition.groups() : edition.withoutRectangles(),
                      format.isLarge() ? List.of() : edition.rectangles(),
                      edition.stitchLines(),
                      options.overlap(),
                      options.proof()),
                  format);
          DocumentFacts facts = edition.facts(words(edition), ", for " + format.title() + " paper");
          byte[] bytes = PdfWriter.write(facts, pages.sheets());
          List<PrintedFile.GroupPages> groups =
              pages.groups().stream()
                  .map(
                      count ->
                          new PrintedFile.GroupPages(
                              count.sizes(), count.pages(), count.pagesOfSize()))
                  .toList();
          return new PrintedFile(name, format.title(), bytes, pages.sheets().size(), groups);
        });
  }

  private static Job svg(Edition edition, GroupDrawing group, String name) {
    return new Job(
        name,
        () -> {
          Speech speech = Speech.of(edition.run());
          String title = lower(speech.sizes(group.sizeNames()));
          byte[] bytes =
              PatternPages.drawing(group, edition.stitchLines())
                  .map(sheet -> SvgWriter.write(edition.facts(title, ""), sheet))
                  .orElseThrow();
          return new PrintedFile(name, "", bytes, 1, List.of());
        });
  }

  private static String words(Edition edition) {
    Speech speech = Speech.of(edition.run());
    List<String> names =
        speech.chart().stream()
            .filter(
                name ->
                    edition.groups().stream().anyMatch(group -> group.sizeNames().contains(name)))
            .toList();
    return lower(speech.sizes(names));
  }

  private static String lower(String words) {
    return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
  }

  private static String sizes(GroupDrawing group) {
    List<String> names = group.sizeNames();
    String first = slug(names.get(0));
    return names.size() == 1
        ? "size-" + first
        : "sizes-" + first + "-to-" + slug(names.get(names.size() - 1));
  }

  private static String stem(SizeRun run) {
    Details details = run.pattern().details();
    return slug(details.title()) + "-" + details.version().replaceAll("[^A-Za-z0-9.]+", "-");
  }

  private static String slug(String text) {
    String slug = text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    return slug.replaceAll("^-|-$", "").isEmpty() ? "pattern" : slug.replaceAll("^-|-$", "");
  }
}
