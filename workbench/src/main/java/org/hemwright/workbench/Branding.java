package org.hemwright.workbench;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.paper.png.LogoReader;
import org.hemwright.paper.sheet.Raster;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.NearName;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.workbench.folder.PatternFolder;

/** The logo that the document names, among the pictures that were read from the folder. */
final class Branding {
  private static final String PICTURES = PatternFolder.PICTURES + "/";

  /** A picture of this name is the logo where the document names none. */
  private static final List<String> CALLED_SO =
      List.of("logo.svg", "logo.png", "logo.jpg", "logo.jpeg");

  private Branding() {}

  /** The logo, ready to print; absent where there is none that can be read. */
  static Optional<Raster> logo(Evaluated evaluated) {
    Optional<String> named = evaluated.run().flatMap(run -> run.pattern().details().brand().logo());
    return named.map(List::of).orElse(CALLED_SO).stream()
        .flatMap(name -> Optional.ofNullable(evaluated.sources().get(PICTURES + name)).stream())
        .findFirst()
        .flatMap(LogoReader::read);
  }

  /** What is wrong with the logo that a document names. */
  static Optional<Finding> problem(SortedMap<String, byte[]> sources) {
    byte[] text = sources.getOrDefault(PatternFolder.DOCUMENT, new byte[0]);
    Document document =
        DocumentReader.read(PatternFolder.DOCUMENT, new String(text, StandardCharsets.UTF_8));
    for (Statement statement : document.statements()) {
      if (statement instanceof Statement.Logo logo) {
        return problem(logo.file(), sources, Source.of(document).origin(logo.span()));
      }
    }
    return Optional.empty();
  }

  private static Optional<Finding> problem(
      String file, SortedMap<String, byte[]> sources, Origin said) {
    byte[] bytes = sources.get(PICTURES + file);
    if (bytes == null) {
      List<String> there =
          sources.keySet().stream()
              .filter(name -> name.startsWith(PICTURES))
              .map(name -> name.substring(PICTURES.length()))
              .toList();
      Finding.Builder absent = Finding.fail("logo-absent", file).at(said);
      NearName.to(file, there).ifPresent(near -> absent.with("near", near));
      return Optional.of(absent.build());
    }
    return LogoReader.read(bytes).isPresent()
        ? Optional.empty()
        : Optional.of(Finding.fail("logo-unreadable", file).at(said).build());
  }
}
