package org.hemwright.booklet.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Section;
import org.hemwright.geometry.Box;
import org.hemwright.paper.markup.Markup;

/**
 * Writes blocks as markup, the same for HTML and PDF but for figures and links: a method for each
 * kind of block.
 */
final class BlockWriter {
  /** A table of no more rows than this stays on one page. */
  private static final int FEW_ROWS = 26;

  /** Small figures that stand in one row at least: the first row stays with its heading. */
  private static final int ROW_OF_CELLS = 3;

  /** A wider figure stands in a row of its own (mm). */
  private static final double WIDE_FIGURE = 84;

  /**
   * Digits above and below the bar of a fraction: on one line of text, so that it is read whole.
   */
  private static final String ABOVE =
      "\u2070\u00b9\u00b2\u00b3\u2074\u2075\u2076\u2077\u2078\u2079";

  private static final String BELOW =
      "\u2080\u2081\u2082\u2083\u2084\u2085\u2086\u2087\u2088\u2089";

  private static final Pattern FRACTION = Pattern.compile("(\\d+)\u2044(\\d+)");

  private final Markup out;
  private final Pictures pictures;
  private final boolean glossary;

  /** How a figure stands on the page. */
  interface Pictures {
    /** Writes the picture of a figure, without its caption. */
    void put(Markup out, Figure figure);

    /** How many columns of a table stand side by side; the others follow in tables of their own. */
    int mostColumns();

    /** Whether values say where they come from, and tables have captions of their own. */
    boolean onScreen();

    /** The room that a figure takes (mm); absent where it is known only on the page. */
    Optional<Box> frame(Figure figure);

    /** How wide the column of words beside a figure is (mm); under 0 where there is no room. */
    double roomBeside(double figureWidth);

    /** How words of so many letters stand in a column (mm of height). */
    double high(int letters, double columnWidth);

    /** How wide a line of words across the page is (mm). */
    double lineWidth();

    /** The column's width, as style sheets write it. */
    String besideStyle(double figureWidth);
  }

  /**
   * A writer.
   *
   * @param glossary whether terms link to the glossary, which then stands on the same page
   */
  BlockWriter(Markup out, Pictures pictures, boolean glossary) {
    this.out = out;
    this.pictures = pictures;
    this.glossary = glossary;
  }

  void blocks(List<Block> blocks) {
    blocks.forEach(this::block);
  }

  /** A heading with what follows, never parted from the first thing that it leads to. */
  void section(Section section) {
    List<Block> blocks = section.blocks();
    int first = 0;
    while (first < blocks.size()
        && (blocks.get(first) instanceof Block.Paragraph
            || blocks.get(first) instanceof Block.Heading)) {
      first++;
    }
    boolean leads = first < blocks.size() && isKept(blocks.get(first));
    if (leads) {
      boolean table = blocks.get(first) instanceof Block.Table;
      out.open("div", "class", table ? "whole" : "whole led");
    }
    out.open("h2", "id", section.id());
    inlines(section.title());
    out.close("h2");
    if (leads) {
      blocks(blocks.subList(0, first));
      Runnable rest = begin(blocks.get(first));
      out.close("div");
      rest.run();
      blocks(blocks.subList(first + 1, blocks.size()));
    } else {
      blocks(blocks);
    }
  }

  private static boolean isKept(Block block) {
    return block instanceof Block.Table
        || block instanceof Block.Gallery
        || block instanceof Block.Step;
  }

  /** Writes what stays with the heading of a block; what is given back writes the rest. */
  private Runnable begin(Block block) {
    if (block instanceof Block.Table table) {
      List<Block.Table> parts = parts(table);
      table(parts.get(0));
      return () -> parts.subList(1, parts.size()).forEach(this::table);
    }
    if (block instanceof Block.Gallery gallery) {
      List<Figure> figures = gallery.figures();
      int first = Math.min(figures.size(), isWide(figures.get(0)) ? 1 : ROW_OF_CELLS);
      gallery(figures.subList(0, first));
      return () -> gallery(figures.subList(first, figures.size()));
    }
    block(block);
    return () -> {};
  }

  private void block(Block block) {
    if (block instanceof Block.Paragraph paragraph) {
      out.open("p", "class", tone(paragraph.tone()));
      inlines(paragraph.text());
      out.close("p");
    } else if (block instanceof Block.Heading heading) {
      String element = "h" + (heading.level() + 1);
      out.open(element, "id", heading.id());
      inlines(heading.text());
      out.close(element);
    } else if (block instanceof Block.Listing listing) {
      listing(listing);
    } else if (block instanceof Block.Glossary entries) {
      glossary(entries);
    } else if (block instanceof Block.Table table) {
      parts(table).forEach(this::table);
    } else if (block instanceof Block.Drawing drawing) {
      figure(drawing.figure(), "figure");
    } else if (block instanceof Block.Gallery gallery) {
      gallery(gallery.figures());
    } else if (block instanceof Block.Step step) {
      step(step);
    }
  }

  private void gallery(List<Figure> figures) {
    if (figures.isEmpty()) {
      return;
    }
    out.open("div", "class", "gallery");
    figures.forEach(figure -> figure(figure, isWide(figure) ? "figure" : "figure cell"));
    out.close("div");
  }

  private static boolean isWide(Figure figure) {
    return figure.sheet().frame().width() > WIDE_FIGURE;
  }

  private static String tone(Block.Tone tone) {
    return tone == Block.Tone.PLAIN ? "" : tone.name().toLowerCase(Locale.ROOT);
  }

  private void listing(Block.Listing listing) {
    String element = listing.numbered() ? "ol" : "ul";
    out.open(element);
    for (List<Inline> item : listing.items()) {
      out.open("li");
      inlines(item);
      out.close("li");
    }
    out.close(element);
  }

  private void glossary(Block.Glossary glossary) {
    for (Block.Glossary.Entry entry : glossary.entries()) {
      out.open("p", "class", "entry", "id", entry.id());
      out.open("strong");
      inlines(entry.word());
      out.close("strong");
      out.text(" ");
      inlines(entry.meaning());
      out.close("p");
    }
  }

  /** A table too wide for the page as several, each with the first column. */
  private List<Block.Table> parts(Block.Table table) {
    int wide = table.head().size();
    int most = pictures.mostColumns();
    if (wide <= most) {
      return List.of(table);
    }
    int count = (wide - 1 + most - 2) / (most - 1);
    int each = (wide - 1 + count - 1) / count;
    List<Block.Table> parts = new ArrayList<>();
    for (int from = 1; from < wide; from += each) {
      int to = Math.min(wide, from + each);
      int first = from;
      parts.add(
          new Block.Table(
              table.caption(),
              some(table.head(), first, to),
              table.rows().stream().map(row -> some(row, first, to)).toList()));
    }
    return parts;
  }

  private static List<List<Inline>> some(List<List<Inline>> cells, int from, int to) {
    List<List<Inline>> some = new ArrayList<>();
    some.add(cells.get(0));
    some.addAll(cells.subList(from, to));
    return some;
  }

  private void table(Block.Table table) {
    out.open("div", "class", table.rows().size() <= FEW_ROWS ? "whole" : "long");
    if (!pictures.onScreen()) {
      out.open("p", "class", "caption");
      inlines(table.caption());
      out.close("p");
    }
    out.open("table", "class", "wide" + table.head().size());
    if (pictures.onScreen()) {
      out.open("caption");
      inlines(table.caption());
      out.close("caption");
    }
    out.open("thead").open("tr");
    for (List<Inline> cell : table.head()) {
      out.open("th", "scope", "col");
      inlines(cell);
      out.close("th");
    }
    out.close("tr").close("thead").open("tbody");
    for (List<List<Inline>> row : table.rows()) {
      out.open("tr");
      for (int i = 0; i < row.size(); i++) {
        String element = i == 0 ? "th" : "td";
        out.open(element, "scope", i == 0 ? "row" : "");
        inlines(row.get(i));
        out.close(element);
      }
      out.close("tr");
    }
    out.close("tbody").close("table").close("div");
  }

  private void figure(Figure figure, String kind) {
    out.open("div", "class", kind, "id", figure.id());
    pictures.put(out, figure);
    if (!figure.caption().isEmpty()) {
      out.open("p", "class", "under");
      inlines(figure.caption());
      out.close("p");
    }
    out.close("div");
  }

  private void step(Block.Step step) {
    out.open("div", "class", "step", "id", step.id());
    out.open("h4");
    inlines(step.title());
    out.close("h4");
    Optional<Figure> beside = step.figure().filter(figure -> isBeside(figure, step.words()));
    if (beside.isPresent()) {
      out.open("div", "class", "beside");
      figure(beside.get(), "figure");
      double width = pictures.frame(beside.get()).orElseThrow().width();
      out.open("div", "class", "words", "style", pictures.besideStyle(width));
      blocks(step.words());
      out.close("div").close("div");
    } else {
      step.figure().ifPresent(figure -> figure(figure, "figure"));
      blocks(step.words());
    }
    out.close("div");
  }

  /** A figure of ours whose words take less of the page at its side than under it. */
  private boolean isBeside(Figure figure, List<Block> words) {
    Optional<Box> known = pictures.frame(figure);
    if (known.isEmpty() || words.stream().anyMatch(BlockWriter::isWide)) {
      return false;
    }
    Box frame = known.get();
    double column = pictures.roomBeside(frame.width());
    if (column < 0) {
      return false;
    }
    double beside = 0;
    double under = frame.height();
    for (List<Inline> text : Block.texts(words)) {
      int letters = Inline.plain(text).length();
      beside += pictures.high(letters, column);
      under += pictures.high(letters, pictures.lineWidth());
    }
    return Math.max(frame.height(), beside) < under;
  }

  private static boolean isWide(Block block) {
    return block instanceof Block.Table
        || block instanceof Block.Gallery
        || block instanceof Block.Drawing;
  }

  void inlines(List<Inline> inlines) {
    inlines.forEach(this::inline);
  }

  private void inline(Inline inline) {
    if (inline instanceof Inline.Text text) {
      out.text(text.text());
    } else if (inline instanceof Inline.Own own) {
      out.text(own.text());
    } else if (inline instanceof Inline.Value value) {
      value(value);
    } else if (inline instanceof Inline.Strong strong) {
      out.open("strong");
      inlines(strong.parts());
      out.close("strong");
    } else if (inline instanceof Inline.Emphasis emphasis) {
      out.open("em");
      inlines(emphasis.parts());
      out.close("em");
    } else if (inline instanceof Inline.Term term) {
      term(term);
    } else if (inline instanceof Inline.Link link) {
      out.open("a", "href", link.address(), "title", Inline.plain(link.parts()));
      inlines(link.parts());
      out.close("a");
    } else if (inline instanceof Inline.Break) {
      out.open("br");
    }
  }

  private void value(Inline.Value value) {
    if (pictures.onScreen()) {
      out.open("span", "class", "v", "data-from", value.from().toString());
      out.text(value.text()).close("span");
    } else {
      fractions(value.text());
    }
  }

  /** Text for paper, its fractions that are no character of their own set as fractions. */
  private void fractions(String text) {
    Matcher fraction = FRACTION.matcher(text);
    int told = 0;
    while (fraction.find()) {
      out.text(text.substring(told, fraction.start()));
      out.text(raised(fraction.group(1), ABOVE) + "\u2044" + raised(fraction.group(2), BELOW));
      told = fraction.end();
    }
    out.text(text.substring(told));
  }

  private static String raised(String digits, String as) {
    StringBuilder text = new StringBuilder();
    digits.chars().forEach(digit -> text.append(as.charAt(digit - '0')));
    return text.toString();
  }

  private void term(Inline.Term term) {
    if (glossary && pictures.onScreen()) {
      out.open("a", "class", "term", "href", "#term-" + term.key());
      inlines(term.parts());
      out.close("a");
    } else {
      inlines(term.parts());
    }
  }
}
