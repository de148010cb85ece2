package org.hemwright.booklet.write;

import java.util.List;
import java.util.Optional;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Inline;

/** Blocks as Markdown, for pages that the designer keeps elsewhere. */
public final class BookletMarkdown {
  private final StringBuilder out = new StringBuilder();
  private final String figures;

  private BookletMarkdown(String figures) {
    this.figures = figures;
  }

  /**
   * Some blocks under a title.
   *
   * @param figures where the figures lie, with a slash at its end
   * @param proof the word that marks the page, if anything does
   */
  public static String page(
      List<Inline> title, List<Block> content, String figures, Optional<String> proof) {
    BookletMarkdown writer = new BookletMarkdown(figures);
    proof.ifPresent(word -> writer.out.append("**").append(word).append("**\n\n"));
    writer.out.append("# ").append(text(title)).append("\n\n");
    content.forEach(writer::block);
    return writer.out.toString().stripTrailing() + "\n";
  }

  private void block(Block block) {
    if (block instanceof Block.Paragraph paragraph) {
      out.append(paragraph.tone() == Block.Tone.NOTE ? "> " : "").append(text(paragraph.text()));
      out.append("\n\n");
    } else if (block instanceof Block.Heading heading) {
      out.append("#".repeat(heading.level())).append(' ').append(text(heading.text()));
      out.append("\n\n");
    } else if (block instanceof Block.Listing listing) {
      for (int i = 0; i < listing.items().size(); i++) {
        out.append(listing.numbered() ? (i + 1) + ". " : "- ");
        out.append(text(listing.items().get(i))).append('\n');
      }
      out.append('\n');
    } else if (block instanceof Block.Table table) {
      table(table);
    } else if (block instanceof Block.Drawing drawing) {
      figure(drawing.figure());
    } else if (block instanceof Block.Gallery gallery) {
      gallery.figures().forEach(this::figure);
    } else if (block instanceof Block.Glossary glossary) {
      glossary
          .entries()
          .forEach(
              entry ->
                  out.append("**")
                      .append(text(entry.word()))
                      .append("** ")
                      .append(text(entry.meaning()))
                      .append("\n\n"));
    } else if (block instanceof Block.Step step) {
      out.append("<a id=\"").append(step.id()).append("\"></a>\n\n### ");
      out.append(text(step.title())).append("\n\n");
      step.figure().ifPresent(this::figure);
      step.words().forEach(this::block);
    }
  }

  private void figure(Figure figure) {
    String file =
        figures + figure.id() + "." + figure.own().map(own -> own.kind().ending()).orElse("svg");
    out.append("![").append(escaped(figure.alt())).append("](").append(file).append(")\n\n");
    if (!figure.caption().isEmpty()) {
      out.append('*').append(text(figure.caption())).append("*\n\n");
    }
  }

  private void table(Block.Table table) {
    if (!table.caption().isEmpty()) {
      out.append("**").append(text(table.caption())).append("**\n\n");
    }
    row(table.head());
    out.append('|').append(" --- |".repeat(table.head().size())).append('\n');
    table.rows().forEach(this::row);
    out.append('\n');
  }

  private void row(List<List<Inline>> cells) {
    out.append('|');
    cells.forEach(cell -> out.append(' ').append(text(cell).replace("|", "\\|")).append(" |"));
    out.append('\n');
  }

  private static String text(List<Inline> inlines) {
    StringBuilder text = new StringBuilder();
    for (Inline inline : inlines) {
      if (inline instanceof Inline.Strong strong) {
        text.append("**").append(text(strong.parts())).append("**");
      } else if (inline instanceof Inline.Emphasis emphasis) {
        text.append('*').append(text(emphasis.parts())).append('*');
      } else if (inline instanceof Inline.Link link) {
        text.append('[').append(text(link.parts())).append("](").append(link.address());
        text.append(')');
      } else if (inline instanceof Inline.Break) {
        text.append("  \n");
      } else if (inline instanceof Inline.Term term) {
        text.append(text(term.parts()));
      } else {
        text.append(escaped(Inline.plain(List.of(inline))));
      }
    }
    return text.toString();
  }

  private static String escaped(String text) {
    return text.replaceAll("([\\\\`*_\\[\\]<>#])", "\\\\$1");
  }
}
