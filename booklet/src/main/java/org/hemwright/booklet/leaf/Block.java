package org.hemwright.booklet.leaf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A part of a section. */
public sealed interface Block {
  /** A paragraph. */
  record Paragraph(Tone tone, List<Inline> text) implements Block {
    public Paragraph {
      text = List.copyOf(text);
    }
  }

  /** How a paragraph is meant. */
  enum Tone {
    PLAIN,
    /** Larger, to lead in. */
    LEAD,
    /** An aside. */
    NOTE,
    /** What keeps hands and cloth whole. */
    CAUTION,
    /** What to look at before going on. */
    LOOK
  }

  /**
   * A heading within a section.
   *
   * @param level 2 below the section's own, 3 below that
   * @param id for links; blank where nothing links to it
   */
  record Heading(int level, String id, List<Inline> text) implements Block {
    public Heading {
      text = List.copyOf(text);
    }
  }

  /** A list. */
  record Listing(boolean numbered, List<List<Inline>> items) implements Block {
    public Listing {
      items = items.stream().map(List::copyOf).toList();
    }
  }

  /** Words with what they mean. */
  record Glossary(List<Entry> entries) implements Block {
    public Glossary {
      entries = List.copyOf(entries);
    }

    /** A word and its meaning. */
    public record Entry(String id, List<Inline> word, List<Inline> meaning) {
      public Entry {
        word = List.copyOf(word);
        meaning = List.copyOf(meaning);
      }
    }
  }

  /**
   * A table whose first column heads its rows.
   *
   * @param caption what it holds
   * @param head the heading of each column
   * @param rows as many cells as the head
   */
  record Table(List<Inline> caption, List<List<Inline>> head, List<List<List<Inline>>> rows)
      implements Block {
    public Table {
      caption = List.copyOf(caption);
      head = head.stream().map(List::copyOf).toList();
      rows = rows.stream().map(row -> row.stream().map(List::copyOf).toList()).toList();
      int wide = head.size();
      if (rows.stream().anyMatch(row -> row.size() != wide)) {
        throw new IllegalArgumentException("every row has a cell for each heading");
      }
    }
  }

  /** A figure with its caption. */
  record Drawing(Figure figure) implements Block {}

  /** Figures side by side, as many to a row as fit. */
  record Gallery(List<Figure> figures) implements Block {
    public Gallery {
      figures = List.copyOf(figures);
    }
  }

  /**
   * A step: its number and title, its figure beside or above its words, never torn apart where a
   * page can hold it.
   *
   * @param id of the step in the document
   */
  record Step(String id, List<Inline> title, Optional<Figure> figure, List<Block> words)
      implements Block {
    public Step {
      title = List.copyOf(title);
      words = List.copyOf(words);
    }
  }

  /** The figure of a block, if it shows one. */
  static List<Figure> figures(List<Block> blocks) {
    return blocks.stream()
        .flatMap(
            block -> {
              if (block instanceof Drawing drawing) {
                return Stream.of(drawing.figure());
              } else if (block instanceof Gallery gallery) {
                return gallery.figures().stream();
              } else if (block instanceof Step step) {
                return Stream.concat(step.figure().stream(), figures(step.words()).stream());
              }
              return Stream.empty();
            })
        .toList();
  }

  /** Every run of text in some blocks, in reading order. */
  static List<List<Inline>> texts(List<Block> blocks) {
    List<List<Inline>> texts = new ArrayList<>();
    for (Block block : blocks) {
      if (block instanceof Paragraph paragraph) {
        texts.add(paragraph.text());
      } else if (block instanceof Heading heading) {
        texts.add(heading.text());
      } else if (block instanceof Listing listing) {
        texts.addAll(listing.items());
      } else if (block instanceof Glossary glossary) {
        for (Glossary.Entry entry : glossary.entries()) {
          texts.add(entry.word());
          texts.add(entry.meaning());
        }
      } else if (block instanceof Table table) {
        texts.add(table.caption());
        texts.addAll(table.head());
        table.rows().forEach(texts::addAll);
      } else if (block instanceof Step step) {
        texts.add(step.title());
        texts.addAll(texts(step.words()));
      }
    }
    figures(blocks).forEach(figure -> texts.add(figure.caption()));
    return texts;
  }
}
