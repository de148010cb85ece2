package org.hemwright.booklet.leaf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.paper.sheet.DocumentFacts;
import org.hemwright.paper.type.HouseType;

/**
 * A whole booklet.
 *
 * @param facts what its files say of themselves
 * @param cover below the title on the first page
 * @param logo of the house, where the designer has one
 * @param footer at the foot of each page
 * @param type the fonts of the house
 * @param contents the heading of the table of contents
 * @param page "Page", before the page's number
 */
public record Booklet(
    DocumentFacts facts,
    List<Inline> title,
    List<Block> cover,
    Optional<Picture> logo,
    List<Inline> footer,
    HouseType type,
    String contents,
    String page,
    List<Section> sections) {
  public Booklet {
    title = List.copyOf(title);
    cover = List.copyOf(cover);
    footer = List.copyOf(footer);
    sections = List.copyOf(sections);
  }

  /** Every block in reading order. */
  public List<Block> blocks() {
    List<Block> all = new ArrayList<>(cover);
    sections.forEach(section -> all.addAll(section.blocks()));
    return all;
  }

  /** Every figure in reading order. */
  public List<Figure> figures() {
    return Block.figures(blocks());
  }

  /** Every run of text in reading order. */
  public List<List<Inline>> texts() {
    List<List<Inline>> texts = new ArrayList<>();
    texts.add(title);
    texts.add(footer);
    texts.addAll(Block.texts(cover));
    for (Section section : sections) {
      texts.add(section.title());
      texts.addAll(Block.texts(section.blocks()));
    }
    return texts;
  }
}
