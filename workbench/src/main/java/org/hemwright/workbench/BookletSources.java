package org.hemwright.workbench;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hemwright.booklet.BookletInput;
import org.hemwright.booklet.leaf.Picture;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.paper.PrintedFile;
import org.hemwright.paper.type.HouseType;
import org.hemwright.pattern.SizeRun;
import org.hemwright.workbench.folder.PatternFolder;

/** What of a folder's files goes into the booklet. */
final class BookletSources {
  private static final Map<String, Picture.Kind> KINDS =
      Map.of(
          "png", Picture.Kind.PNG,
          "jpg", Picture.Kind.JPEG,
          "jpeg", Picture.Kind.JPEG,
          "svg", Picture.Kind.SVG);

  private BookletSources() {}

  static BookletInput input(
      SortedMap<String, byte[]> sources,
      SizeRun run,
      Optional<YardageTable> yardage,
      List<PrintedFile> printed,
      HouseType type) {
    SortedMap<String, String> prose = new TreeMap<>();
    sources.forEach(
        (name, bytes) -> {
          if (PatternFolder.isProse(name)) {
            prose.put(name, new String(bytes, StandardCharsets.UTF_8));
          }
        });
    SortedMap<String, Picture> pictures = new TreeMap<>();
    sources.forEach(
        (name, bytes) -> {
          if (name.startsWith(PatternFolder.PICTURES + "/")) {
            picture(name, bytes).ifPresent(picture -> pictures.put(stem(name), picture));
          }
        });
    return new BookletInput(run, yardage, prose, pictures, printed, type);
  }

  private static Optional<Picture> picture(String name, byte[] bytes) {
    String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    return Optional.ofNullable(KINDS.get(ending)).map(kind -> new Picture(name, kind, bytes));
  }

  private static String stem(String name) {
    String file = name.substring(name.lastIndexOf('/') + 1);
    int dot = file.lastIndexOf('.');
    return dot < 0 ? file : file.substring(0, dot);
  }
}
