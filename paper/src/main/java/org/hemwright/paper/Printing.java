package org.hemwright.paper;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
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
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.piece.AddedAllowance;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;

/**
 * A run on its way to paper: the files still to be made and what is found while they are, both from
 * the same drawings. Its jobs may be made in any order and side by side; the bytes are the same.
 */
public final class Printing {
  private final SizeRun run;
  private final PaperOptions options;
  private final FileNames names;
  private final Edition nests;

  private Printing(SizeRun run, PaperOptions options) {
    this.run = run;
    this.options = options;
    names = new FileNames(run);
    nests = Edition.of(run, Edition.groups(run), options);
  }

  /** The printing of a run; nothing is drawn yet. */
  public static Printing of(SizeRun run, PaperOptions options) {
    return new Printing(run, options);
  }

  /** The files to make, in order. */
  public List<Paper.Job> jobs() {
    List<Paper.Job> jobs = new ArrayList<>();
    if (options.groups()) {
      for (PageFormat format : formats(nests)) {
        jobs.add(pdf(nests, format, fileName(format)));
      }
      if (options.svg()) {
        for (GroupDrawing group : nests.groups()) {
          jobs.add(svg(nests, group, names.file(names.group(group.sizeNames()), "svg")));
        }
      }
    }
    for (Size size : run.pattern().chart().sizes()) {
      if (options.singles().contains(size.name()) && run.size(size.name()).isPresent()) {
        Edition edition = Edition.of(run, List.of(List.of(size)), options);
        for (PageFormat format : formats(edition)) {
          jobs.add(pdf(edition, format, names.single(size, format.fileName(), "pdf")));
        }
        if (options.svg()) {
          for (GroupDrawing group : edition.groups()) {
            jobs.add(svg(edition, group, names.single(size, "", "svg")));
          }
        }
      }
    }
    return List.copyOf(jobs);
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

  /** Words that found no room, pieces too wide for a paper or not drawable at all. */
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
    for (GroupDrawing group : nests.groups()) {
      group.upright().stream().map(PieceDrawing::findings).forEach(findings::addAll);
      if (nests.stitchLines()) {
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
    return List.copyOf(findings);
  }

  /** The papers that hold some group at least, in the order of their files. */
  public List<PageFormat> formats() {
    return formats(nests);
  }

  /** The name of the file of all groups on a paper. */
  public String fileName(PageFormat format) {
    return names.file(format.fileName(), "pdf");
  }

  /** The pages of that file, drawn now. */
  public PatternPages pages(PageFormat format) {
    return pages(nests, format);
  }

  private PatternPages pages(Edition edition, PageFormat format) {
    return PatternPages.of(
        new PatternPages.Content(
            edition.run(),
            format.isLarge() ? edition.groups() : edition.withoutRectangles(),
            format.isLarge() ? List.of() : edition.rectangles(),
            edition.stitchLines(),
            options.overlap(),
            options.proof()),
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
                              count.sizes(), count.pages(), count.pagesOfSize()))
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
              PatternPages.drawing(group, edition.stitchLines())
                  .map(sheet -> SvgWriter.write(edition.facts(title, ""), sheet))
                  .orElseThrow();
          return new PrintedFile(name, "", bytes, 1, List.of());
        });
  }
}
