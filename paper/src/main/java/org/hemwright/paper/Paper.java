package org.hemwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.hemwright.paper.nest.GroupDrawing;
import org.hemwright.paper.png.PngWriter;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.svg.SvgWriter;
import org.hemwright.paper.tile.ProofMark;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.PaperChoices;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Messages;

/**
 * A run made into the files that the maker prints: a pure function, the same bytes for the same run
 * and options on one installation.
 */
public final class Paper {
  /** Pixels to a millimetre at which words of 9 points can be read. */
  private static final double LEGIBLE = 4.5;

  /** The size of the word that marks a picture as a proof (1/72 in), where lines have theirs. */
  private static final double PROOF_POINTS = 18;

  private Paper() {}

  /** One file still to be made, so that a caller may show how far it has come. */
  public record Job(String name, Supplier<PrintedFile> making) {
    /** Makes the file. */
    public PrintedFile make() {
      return making.get();
    }

    /** The same file in a folder. */
    Job within(String folder) {
      return new Job(folder + name, () -> making.get().within(folder));
    }
  }

  /** All files and all findings. */
  public static PrintedPattern of(SizeRun run, PaperOptions options) {
    return Printing.of(run, options).make((file, made, of) -> {});
  }

  /** How the names of all files of a run begin: {@code sandling-skirt-1.0}. */
  public static String stem(SizeRun run) {
    return new FileNames(run).stem();
  }

  /** The sentences for the findings of this module. */
  public static Messages messages() {
    return Messages.beside(Paper.class, "paper.properties");
  }

  /** The files to make, in order; to have the findings too, take {@link Printing}. */
  public static List<Job> jobs(SizeRun run, PaperOptions options) {
    return Printing.of(run, options).jobs();
  }

  /** What printing finds; to have the files too, take {@link Printing}. */
  public static List<Finding> findings(SizeRun run, PaperOptions options) {
    return Printing.of(run, options).findings();
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
   * many, else one for each group; of each view apart where the options name views.
   *
   * @param perMm pixels to a millimetre, for PNG
   */
  public static List<PrintedFile> pictures(
      SizeRun run, PaperOptions options, PictureKind kind, double perMm) {
    return pictureJobs(run, options, kind, perMm).stream().map(Job::make).toList();
  }

  static List<Job> pictureJobs(SizeRun run, PaperOptions options, PictureKind kind, double perMm) {
    List<Size> present = run.sizes().stream().map(SizedPattern::size).sorted().toList();
    List<List<Size>> sizes =
        present.size() <= PaperChoices.MOST_SIZES_IN_A_GROUP
            ? List.of(present)
            : Edition.groups(run);
    FileNames names = new FileNames(run);
    List<Job> pictures = new ArrayList<>();
    for (Optional<View> view : Printing.viewsNamed(run, options)) {
      Edition edition = Edition.of(run, view, sizes, options);
      for (GroupDrawing group : edition.groups()) {
        String name = names.picture(view, group.sizeNames(), kind.ending());
        pictures.add(new Job(name, () -> picture(name, edition, group, kind, perMm, options)));
      }
    }
    return List.copyOf(pictures);
  }

  private static PrintedFile picture(
      String name,
      Edition edition,
      GroupDrawing group,
      PictureKind kind,
      double perMm,
      PaperOptions options) {
    boolean pixels = kind == PictureKind.PNG;
    double scale = pixels ? Math.max(1, LEGIBLE / perMm) : 1;
    Sheet plain = Pictures.of(group, edition.stitchLines(), options.house().type(), scale);
    Sheet sheet =
        options.proof().map(word -> ProofMark.on(plain, word, PROOF_POINTS * scale)).orElse(plain);
    String sizes = Edition.lower(Speech.of(edition.run()).sizes(group.sizeNames()));
    byte[] bytes =
        pixels ? PngWriter.write(sheet, perMm) : SvgWriter.write(edition.facts(sizes, ""), sheet);
    return new PrintedFile(name, "", bytes, 1, List.of());
  }
}
