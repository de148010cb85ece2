package org.hemwright.workroom.keep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workbench.out.OutFolder;

/**
 * The designer's pictures in her folder. One that gives way to another, or is taken out, is laid
 * aside under {@code .hemwright/pictures}, never deleted.
 *
 * @param folder the pattern's folder
 */
public record OwnPictures(Path folder) {
  private static final List<String> ENDINGS = List.of("svg", "png", "jpg", "jpeg");

  /**
   * Puts a picture in, whole or not at all, in the place of what has its name.
   *
   * @param name without folder and ending, plain
   * @param ending of its file
   */
  public void put(String name, String ending, byte[] bytes) throws IOException {
    if (!PatternFolder.isPlain(name)) {
      throw new IllegalArgumentException("a picture's name is plain, not " + name);
    }
    takeOut(name);
    new OutFolder(folder).replace(PatternFolder.PICTURES + "/" + name + "." + ending, bytes);
  }

  /** Lays the pictures of a name aside; says whether there was one. */
  public boolean takeOut(String name) throws IOException {
    if (!PatternFolder.isPlain(name)) {
      return false;
    }
    boolean any = false;
    Path aside = folder.resolve(Keeper.PLACE).resolve(PatternFolder.PICTURES);
    for (String ending : ENDINGS) {
      String file = name + "." + ending;
      Path there = folder.resolve(PatternFolder.PICTURES).resolve(file);
      if (Files.isRegularFile(there, LinkOption.NOFOLLOW_LINKS)) {
        Files.createDirectories(aside);
        Path free = aside.resolve(file);
        for (int again = 2; Files.exists(free, LinkOption.NOFOLLOW_LINKS); again++) {
          free = aside.resolve(name + "-" + again + "." + ending);
        }
        Files.move(there, free, StandardCopyOption.ATOMIC_MOVE);
        any = true;
      }
    }
    return any;
  }
}
