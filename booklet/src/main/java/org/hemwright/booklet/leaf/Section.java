package org.hemwright.booklet.leaf;

import java.util.List;

/**
 * One part of the booklet.
 *
 * @param id for links: {@code supplies}
 * @param title of the part
 * @param startsPage whether it starts on a new page
 */
public record Section(String id, List<Inline> title, boolean startsPage, List<Block> blocks) {
  public Section {
    title = List.copyOf(title);
    blocks = List.copyOf(blocks);
  }
}
