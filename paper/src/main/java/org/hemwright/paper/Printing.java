package org.hemwright.paper;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.paper.nest.CloseStitchLines;
import org.hemwright.paper.nest.GroupDrawing;
import org.hemwright.paper.nest.PieceDrawing;
import org.hemwright.paper.pdf.PdfWriter;
import org.hemwright.paper.sheet.DocumentFacts;
import org.hemwright.paper.svg.SvgWriter;
import org.hemwright.paper.tile.PageFormat;
import org.hemwright.paper.tile.PatternPages;
import org.hemwright.paper.words.MissingLetters;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.FindingOrder;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.piece.AddedAllowance;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;

/**
 * A run on its way to paper: the files still to be made and what is found while they are, both from
 * the same drawings. Its jobs may be made in any order and side by side; the bytes are the same.
 */
public final class Printing {
  /** Each thread holds the pages that it draws in memory. */
  private static final int MOST_THREADS = 4;

  /** The folder of the pictures among the files. */
  private static final String PICTURES = "pictures/";

  private static final double PICTURE_PER_MM = 1;

  private final SizeRun run;
  private final PaperOptions options;
  private final FileNames names;
  private final List<Edition> nests = new ArrayList<>();

  private Printing(SizeRun run, PaperOptions options) {
    this.run = run;
    this.options = options;
    names = new FileNames(run);
    for (Optional<View> view : views()) {
      nests.add(Edition.of(run, view, Edition.groups(run), options));
    }
    if (nests.isEmpty()) {
      throw new IllegalArgumentException("the pattern has no view of these: " + options.views());
    }
  }

  /** All pieces together (nothing), or each of the views that the options name. */
  static List<Optional<View>> viewsNamed(SizeRun run, PaperOptions options) {
    return options.views().isEmpty()
        ? List.of(Optional.empty())
        : run.pattern().views().stream()
            .filter(view -> options.views().contains(view.name()))
            .map(Optional::of)
            .toList();
  }

  /** The same, and each view that has files of its own because the document says so. */
  private List<Optional<View>> views() {
    List<View> all = run.pattern().views();
    List<Optional<View>> views = new ArrayList<>(viewsNamed(run, options));
    if (options.views().isEmpty() && run.pattern().paper().viewsApart() && all.size() > 1) {
      all.stream().map(Optional::of).forEach(views::add);
    }
    return views;
  }

  /**
   * The printing of a run; nothing is drawn yet.
   *
   * @param options whose views, if it names any, the run has
   */
  public static Printing of(SizeRun run, PaperOptions options) {
    return new Printing(run, options);
  }

  /** Is told how far the printing has come, for whoever waits for it. */
  public interface Watcher {
    /**
     * All files before this one are made.
     *
     * @param file the name of the next
     * @param made how many are made
     * @param of how many there are
     */
    void waitsFor(String file, int made, int of);
  }

  /** Makes all files, several at a time, and finds what there is to find. */
  public PrintedPattern make(Watcher watcher) {
    int threads = Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors());
    List<PrintedFile> files = SideBySide.make(jobs(), threads, watcher);
    return new PrintedPattern(files, findings());
  }

  /** The files to make, in order. */
  public List<Paper.Job> jobs() {
    List<Paper.Job> jobs = new ArrayList<>();
    for (Edition each : nests) {
      if (options.groups()) {
        groups(each, jobs);
      }
      for (Size size : run.pattern().chart().sizes()) {
        if (options.singles().contains(size.name()) && run.size(size.name()).isPresent()) {
          single(each.view(), size, jobs);
        }
      }
    }
    if (options.pictures()) {
      pictures(jobs);
    }
    return List.copyOf(jobs);
  }

  /** The nests and the base size, or the smallest size where the run lacks that. */
  private void pictures(List<Paper.Job> jobs) {
    List<SizedPattern> sizes = run.sizes();
    List<SizeRun> runs = new ArrayList<>(List.of(run));
    if (sizes.size() > 1) {
      SizedPattern base = run.size(run.pattern().base().name()).orElse(sizes.get(0));
      runs.add(new SizeRun(run.pattern(), List.of(base)));
    }
    for (SizeRun shown : runs) {
      for (Paper.PictureKind kind : Paper.PictureKind.values()) {
        Paper.pictureJobs(shown, options, kind, PICTURE_PER_MM).stream()
            .map(job -> job.within(PICTURES))
            .forEach(jobs::add);
      }
    }
  }

  private void groups(Edition edition, List<Paper.Job> jobs) {
    for (PageFormat format : formats(edition)) {
      jobs.add(pdf(edition, format, fileName(edition, format)));
    }
    if (options.svg()) {
      for (GroupDrawing group : edition.groups()) {
        String kind = names.group(group.sizeNames());
        jobs.add(svg(edition, group, names.file(edition.view(), kind, "svg")));
      }
    }
  }

  private void single(Optional<View> view, Size size, List<Paper.Job> jobs) {
    Edition edition = Edition.of(run, view, List.of(List.of(size)), options);
    for (PageFormat format : formats(edition)) {
      jobs.add(pdf(edition, format, names.single(view, size, format.fileName(), "pdf")));
    }
    if (options.svg()) {
      for (GroupDrawing group : edition.groups()) {
        jobs.add(svg(edition, group, names.single(view, size, "", "svg")));
      }
    }
  }

  /** The papers that hold some group at least. */
  private List<PageFormat> formats(Edition edition) {
    return options.formats().stream()
        .filter(
            format ->
                edition.groups().stream()
                    .anyMatch(group -> PatternPages.tooWide(group, format).isEmpty()))
        .toList();
  }

  /**
   * Each cause once: words that found no room, pieces too wide for a paper or not drawable at all.
   */
  public List<Finding> findings() {
    Set<Finding> findings = new LinkedHashSet<>();
    for (SizedPattern sized : run.sizes()) {
      for (Piece piece : sized.pieces()) {
        AddedAllowance.to(piece).findings().stream()
            .filter(finding -> finding.status() == Status.FAIL)
            .forEach(findings::add);
      }
    }
    findings.addAll(MissingLetters.in(run));
    Optional<String> footer = run.pattern().details().brand().footer();
    if (footer.isPresent() && PatternPages.isTooLong(footer.get(), options.house().type())) {
      findings.add(Finding.fail("footer-too-long", "footer").with("text", footer.get()).build());
    }
    for (GroupDrawing group : nests.stream().flatMap(each -> each.groups().stream()).toList()) {
      group.upright().stream().map(PieceDrawing::findings).forEach(findings::addAll);
      if (options.stitchLines().orElse(run.pattern().paper().stitchLines())) {
        group.nests().forEach(nest -> CloseStitchLines.in(nest).ifPresent(findings::add));
      }
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
    return new FindingOrder(run.pattern().chart().sizes().stream().map(Size::name).toList())
        .of(findings);
  }

  /** The papers that hold some group at least, in the order of their files. */
  public List<PageFormat> formats() {
    return formats(nests.get(0));
  }

  /** The same name, for a run of which nothing is to be drawn. */
  public static String fileName(SizeRun run, PaperOptions options, PageFormat format) {
    Optional<View> view = viewsNamed(run, options).stream().findFirst().orElse(Optional.empty());
    return new FileNames(run).file(view, format.fileName(), "pdf");
  }

  /** The pages of that file, drawn now. */
  public PatternPages pages(PageFormat format) {
    return pages(nests.get(0), format);
  }

  /** The pages of a file for one size alone, drawn now. */
  public PatternPages pages(PageFormat format, Size size) {
    return pages(Edition.of(run, nests.get(0).view(), List.of(List.of(size)), options), format);
  }

  private String fileName(Edition edition, PageFormat format) {
    return names.file(edition.view(), format.fileName(), "pdf");
  }

  private PatternPages pages(Edition edition, PageFormat format) {
    return PatternPages.of(
        new PatternPages.Content(
            edition.run(),
            edition.view(),
            format.isLarge() ? edition.groups() : edition.withoutRectangles(),
            format.isLarge() ? List.of() : edition.rectangles(),
            edition.stitchLines(),
            options.overlap(),
            options.proof(),
            options.house()),
        format);
  }

  private Paper.Job pdf(Edition edition, PageFormat format, String name) {
    return new Paper.Job(
        name,
        () -> {
          PatternPages pages = pages(edition, format);
          DocumentFacts facts =
              edition.facts(edition.sizesInWords(), ", for " + format.title() + " paper");
          byte[] bytes = PdfWriter.write(facts, pages.sheets());
          List<PrintedFile.GroupPages> groups =
              pages.groups().stream()
                  .map(
                      count ->
                          new PrintedFile.GroupPages(
                              count.sizes(),
                              count.pages(),
                              count.pagesOfSize(),
                              count.pagesOfView()))
                  .toList();
          return new PrintedFile(name, format.title(), bytes, pages.sheets().size(), groups);
        });
  }

  private Paper.Job svg(Edition edition, GroupDrawing group, String name) {
    return new Paper.Job(
        name,
        () -> {
          Speech speech = Speech.of(edition.run());
          String title = Edition.lower(speech.sizes(group.sizeNames()));
          byte[] bytes =
              PatternPages.drawing(
                      group,
                      edition.view(),
                      edition.stitchLines(),
                      options.house(),
                      options.proof())
                  .map(sheet -> SvgWriter.write(edition.facts(title, ""), sheet))
                  .orElseThrow();
          return new PrintedFile(name, "", bytes, 1, List.of());
        });
  }
}
