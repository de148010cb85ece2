package org.hemwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.hemwright.paper.Paper;
import org.hemwright.paper.PaperOptions;
import org.hemwright.paper.PrintedFile;
import org.hemwright.paper.PrintedPattern;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.out.OutFolder;
import org.hemwright.workbench.report.PrintReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** A picture of the pieces. */
@Command(
    name = "draw",
    description = "Draw the pieces, one size or several sizes in one nest, as a picture.",
    footer = {
      "",
      "Examples:",
      "  hemwright draw my-skirt                    a picture of each group of sizes",
      "  hemwright draw my-skirt --size 14          one size",
      "  hemwright draw my-skirt --size 8,14,20     three sizes in one nest",
      "  hemwright draw my-skirt --as svg           lines and words in true size",
      "  hemwright draw my-skirt --as dxf           pieces and rule table for other tools"
    })
final class DrawCommand extends FolderCommand {
  private static final double MOST_PER_MM = 12;

  /** What it can be drawn as. */
  enum Kind {
    PNG,
    SVG,
    DXF
  }

  @Option(
      names = "--as",
      paramLabel = "KIND",
      description = "png, svg or dxf; png when it is left out.")
  private Kind kind = Kind.PNG;

  @Option(
      names = "--per-mm",
      paramLabel = "PIXELS",
      description = "Pixels to a millimetre of a png, 1 when it is left out, at most 12.")
  private double perMm = 1;

  @Option(names = "--out", paramLabel = "DIR", description = "Where to put the pictures.")
  private Optional<Path> out = Optional.empty();

  @Override
  int work(Job job) throws IOException {
    if (!(perMm > 0 && perMm <= MOST_PER_MM)) {
      messages()
          .println(
              "--per-mm "
                  + perMm
                  + ": a picture has more than 0 and at most 12 pixels to a millimetre");
      return ExitCode.INPUT_WRONG;
    }
    PrintedPattern drawn = drawn(job);
    List<PrintedFile> pictures = drawn.files();
    String usual = kind == Kind.DXF ? "dxf" : "pictures";
    Path folder = out.orElseGet(() -> defaultOut().resolve(usual));
    StringBuilder list = new StringBuilder("Drawn in " + folder + "\n");
    for (PrintedFile picture : pictures) {
      new OutFolder(folder).replace(picture.name(), picture.bytes());
      list.append("  ").append(picture.name()).append("\n");
    }
    answer(
        json()
            ? PrintReport.json(
                Optional.of(folder.toString()), pictures, drawn.findings(), job.tell().wording())
            : list.toString());
    return ExitCode.ALL_WELL;
  }

  private PrintedPattern drawn(Job job) {
    if (kind == Kind.DXF) {
      PrintedPattern drawn = Workbench.dxf(job.run());
      job.tell().all(drawn.findings());
      return drawn;
    }
    Paper.PictureKind picture = kind == Kind.SVG ? Paper.PictureKind.SVG : Paper.PictureKind.PNG;
    return new PrintedPattern(
        Paper.pictures(job.run(), PaperOptions.everything(), picture, perMm), List.of());
  }
}
