package org.hemwright.workbench.folder;

import java.util.List;
import java.util.stream.Stream;

/** The files of one pattern. */
public sealed interface PatternFolder permits DiskFolder, EditedFolder, PackedFolder, WithFile {
  /** The document's name in every folder. */
  String DOCUMENT = "pattern.hem";

  /** The folder in it for drawings made elsewhere. */
  String TRACED = "traced";

  /** The designer's text for the booklet. */
  String PROSE = "booklet.md";

  /** The folder of the designer's drawings and photographs. */
  String PICTURES = "pictures";

  /** The folder of the designer's fonts. */
  String FONTS = "fonts";

  /** Larger files are refused unread (bytes). */
  int MOST_BYTES = 16 << 20;

  /** What people call it: the path as it was given, or the demo's name. */
  String name();

  /** The names of the files that lie in it, in alphabetical order. */
  List<String> names();

  /** The names of the files in its folder of pictures, in alphabetical order. */
  List<String> pictures();

  /**
   * Reads one file of its folder of pictures.
   *
   * @param name a plain name, without a path
   */
  FolderFile picture(String name);

  /**
   * Reads one file.
   *
   * @param name a plain name, or one in the folder for drawings or for fonts: {@code
   *     traced/front.svg}
   */
  FolderFile file(String name);

  /** Whether a name is that of a text for the booklet, in whatever language. */
  static boolean isProse(String name) {
    return name.equals(PROSE) || name.matches("booklet[.][A-Za-z-]{2,8}[.]md");
  }

  /** Whether a name is plain, or names a plain file in the folder for drawings or for fonts. */
  static boolean isInside(String name) {
    return isPlain(name)
        || Stream.of(TRACED + "/", FONTS + "/")
            .anyMatch(
                folder -> name.startsWith(folder) && isPlain(name.substring(folder.length())));
  }

  /** Whether a name is plain: it cannot lead out of a folder on any system. */
  static boolean isPlain(String name) {
    return !name.isBlank()
        && !name.startsWith(".")
        && name.chars().noneMatch(c -> c == '/' || c == '\\' || c == ':' || c < ' ');
  }
}
