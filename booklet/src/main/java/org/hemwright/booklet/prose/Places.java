package org.hemwright.booklet.prose;

import java.util.List;
import java.util.Optional;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Picture;

/** What the named places of the designer's text can be filled with. */
public interface Places {
  /** The tables of that name; nothing where there is no such name. */
  Optional<List<Block>> table(String name);

  /** The names of the tables. */
  List<String> tables();

  /** The drawing of that name; nothing where there is no such name. */
  Optional<Block> figure(String name);

  /** The names of the drawings. */
  List<String> figures();

  /** The designer's picture of that name. */
  Optional<Picture> picture(String name);

  /** The names of her pictures. */
  List<String> pictures();
}
