package org.hemwright.workbench;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.paper.png.LogoReader;
import org.hemwright.paper.sheet.Raster;
import org.hemwright.paper.style.House;
import org.hemwright.paper.type.HouseFont;
import org.hemwright.paper.type.HouseType;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.NearName;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.workbench.folder.FolderReading;
import org.hemwright.workbench.folder.PatternFolder;

/** The logo and the fonts that a document names, among the files read from its folder. */
final class Branding {
  private static final String PICTURES = PatternFolder.PICTURES + "/";
  private static final String FONTS = PatternFolder.FONTS + "/";

  /** A picture of this name is the logo where the document names none. */
  private static final List<String> CALLED_SO =
      List.of("logo.svg", "logo.png", "logo.jpg", "logo.jpeg");

  private Branding() {}

  /** What of the house can be shown, ready to print; what cannot be read is left out. */
  static House house(Evaluated evaluated) {
    return new House(logo(evaluated), type(evaluated.sources()));
  }

  private static Optional<Raster> logo(Evaluated evaluated) {
    Optional<String> named = evaluated.run().flatMap(run -> run.pattern().details().brand().logo());
    return named.map(List::of).orElse(CALLED_SO).stream()
        .flatMap(name -> Optional.ofNullable(evaluated.sources().get(PICTURES + name)).stream())
        .findFirst()
        .flatMap(LogoReader::read);
  }

  private static HouseType type(SortedMap<String, byte[]> sources) {
    Map<Statement.Font.Use, HouseFont> fonts = new EnumMap<>(Statement.Font.Use.class);
    for (Statement.Font said : fonts(document(sources))) {
      Optional.ofNullable(sources.get(FONTS + said.file()))
          .flatMap(bytes -> HouseFont.read(said.file(), bytes).font())
          .ifPresent(font -> fonts.putIfAbsent(said.use(), font));
    }
    return new HouseType(
        Optional.ofNullable(fonts.get(Statement.Font.Use.WORDS)),
        Optional.ofNullable(fonts.get(Statement.Font.Use.BOLD)),
        Optional.ofNullable(fonts.get(Statement.Font.Use.ITALIC)),
        Optional.ofNullable(fonts.get(Statement.Font.Use.TITLES)));
  }

  private static Document document(SortedMap<String, byte[]> sources) {
    byte[] text = sources.getOrDefault(PatternFolder.DOCUMENT, new byte[0]);
    return DocumentReader.read(PatternFolder.DOCUMENT, new String(text, StandardCharsets.UTF_8));
  }

  private static List<Statement.Font> fonts(Document document) {
    return document.statements().stream()
        .filter(Statement.Font.class::isInstance)
        .map(Statement.Font.class::cast)
        .toList();
  }

  /** Reads the font files that a document names; one that is not there is told. */
  static void fonts(SortedMap<String, byte[]> sources, FolderReading reading) {
    Document document = document(sources);
    for (Statement.Font said : fonts(document)) {
      reading.bytes(FONTS + said.file(), Source.of(document).origin(said.span()));
    }
  }

  /** What is wrong with the logo and the fonts that a document names. */
  static List<Finding> problems(SortedMap<String, byte[]> sources) {
    Document document = document(sources);
    List<Finding> problems = new ArrayList<>();
    for (Statement statement : document.statements()) {
      if (statement instanceof Statement.Logo logo) {
        logo(logo.file(), sources, Source.of(document).origin(logo.span()))
            .ifPresent(problems::add);
      }
    }
    Map<Statement.Font.Use, String> named = new EnumMap<>(Statement.Font.Use.class);
    for (Statement.Font said : fonts(document)) {
      Origin origin = Source.of(document).origin(said.span());
      String before = named.putIfAbsent(said.use(), said.file());
      if (before != null) {
        problems.add(
            Finding.fail("font-twice", said.file()).with("before", before).at(origin).build());
      }
      Optional.ofNullable(sources.get(FONTS + said.file()))
          .flatMap(bytes -> HouseFont.read(said.file(), bytes).unfit())
          .map(why -> Finding.fail(code(why), said.file()).at(origin).build())
          .ifPresent(problems::add);
    }
    return problems;
  }

  private static String code(HouseFont.Unfit why) {
    return switch (why) {
      case LARGE -> "font-large";
      case UNREADABLE -> "font-unreadable";
      case POSTSCRIPT -> "font-postscript";
      case FORBIDDEN -> "font-forbidden";
    };
  }

  private static Optional<Finding> logo(
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
