package org.hemwright.booklet.figure;

import java.util.List;
import java.util.Optional;
import org.hemwright.booklet.words.Telling;
import org.hemwright.geometry.Box;
import org.hemwright.paper.sheet.Item;
import org.hemwright.pattern.make.Step;

/** What is done at the edge, near by. */
interface CloseUp {
  /** The close-up of a step; absent where nothing small is done. */
  static Optional<CloseUp> of(Telling telling, Step step) {
    return Optional.empty();
  }

  /** What it shows, a sentence. */
  String alt();

  /** Its items within a window of paper. */
  List<Item> within(Box window);
}
