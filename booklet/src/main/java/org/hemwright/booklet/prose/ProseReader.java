package org.hemwright.booklet.prose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.BulletList;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SourceSpan;
import org.commonmark.node.ThematicBreak;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.words.Telling;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Messages;
import org.hemwright.pattern.finding.NearName;
import org.hemwright.pattern.finding.Origin;

/**
 * Reads {@code booklet.md}.
 *
 * <p>A heading of the first level names a part of the booklet; under {@code # Steps} one of the
 * second level names a step, with a title for it after a colon if she has one, and under that
 * {@code ### Posts} stands what is for the posts alone. Places in braces are read by {@link
 * InlineReader}.
 */
public final class ProseReader {
  private static final Parser PARSER =
      Parser.builder()
          .extensions(List.of(TablesExtension.create()))
          .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
          .build();

  /** The heading under a step that keeps what follows for the posts. */
  private static final String POSTS = "posts";

  private static final Map<String, String> ALSO =
      Map.of("license", "licence", "fabric", "cloth", "layouts", "layings", "tools", "supplies");

  private final String file;
  private final List<String> partIds;
  private final Telling telling;
  private final Places places;
  private final List<Finding> findings = new ArrayList<>();
  private final InlineReader inlines;

  private ProseReader(String file, List<String> parts, Telling telling, Places places) {
    this.file = file;
    this.partIds = parts;
    this.telling = telling;
    this.places = places;
    this.inlines = new InlineReader(file, telling, findings);
  }

  /**
   * What was read.
   *
   * @param findings unknown names and places, with line and column
   */
  public record Read(Prose prose, List<Finding> findings) {
    public Read {
      findings = List.copyOf(findings);
    }
  }

  /** The sentences for what can be wrong with the text. */
  public static Messages messages() {
    return Messages.beside(ProseReader.class, "prose.properties");
  }

  /**
   * Reads a text.
   *
   * @param file its name, for findings
   * @param parts the ids of the booklet's parts
   */
  public static Read read(
      String file, String text, List<String> parts, Telling telling, Places places) {
    ProseReader reader = new ProseReader(file, parts, telling, places);
    Prose prose = reader.read(text);
    ProseMends mends = new ProseMends(file, text);
    return new Read(prose, reader.findings.stream().map(mends::with).toList());
  }

  private Prose read(String text) {
    Map<String, List<Block>> parts = new LinkedHashMap<>();
    Map<String, List<Inline>> titles = new LinkedHashMap<>();
    Map<String, List<Block>> steps = new LinkedHashMap<>();
    Map<String, List<Block>> posts = new LinkedHashMap<>();
    List<Block> into = parts.computeIfAbsent("cover", k -> new ArrayList<>());
    boolean inSteps = false;
    String step = "";
    for (Node node = PARSER.parse(text).getFirstChild(); node != null; node = node.getNext()) {
      if (node instanceof Heading heading && heading.getLevel() == 1) {
        String part = part(heading);
        inSteps = part.equals("steps");
        step = "";
        into = parts.computeIfAbsent(part, k -> new ArrayList<>());
      } else if (node instanceof Heading heading && inSteps && heading.getLevel() == 2) {
        step = step(heading);
        String title = title(heading);
        if (!title.isEmpty()) {
          titles.put(step, List.of(new Inline.Own(title)));
        }
        into = steps.computeIfAbsent(step, k -> new ArrayList<>());
      } else if (node instanceof Heading heading
          && !step.isEmpty()
          && plain(heading).equalsIgnoreCase(POSTS)) {
        into = posts.computeIfAbsent(step, k -> new ArrayList<>());
      } else {
        into.addAll(block(node));
      }
    }
    return new Prose(parts, titles, steps, posts);
  }

  private String plain(Node node) {
    return Inline.plain(inlines.read(node)).strip();
  }

  /** The id of the part that a heading names. */
  static String partNamed(String heading) {
    String said = heading.strip().toLowerCase(Locale.ROOT);
    return ALSO.getOrDefault(said, said);
  }

  /** The id of the step that a heading names, whatever it is to be called. */
  static String stepNamed(String heading) {
    int colon = heading.indexOf(':');
    return (colon < 0 ? heading : heading.substring(0, colon)).strip().replace(' ', '_');
  }

  private String part(Heading heading) {
    String id = partNamed(plain(heading));
    if (!partIds.contains(id) && !id.equals(OwnWordsReader.PART)) {
      unknown("prose-part", plain(heading), partIds, heading);
    }
    return id;
  }

  /** What stands after the step's name and a colon, as the step's title. */
  private String title(Heading heading) {
    String said = plain(heading);
    int colon = said.indexOf(':');
    return colon < 0 ? "" : said.substring(colon + 1).strip();
  }

  private String step(Heading heading) {
    String id = stepNamed(plain(heading));
    List<String> ids =
        telling.run().pattern().making().steps().stream().map(each -> each.id()).toList();
    if (!ids.contains(id)) {
      unknown("prose-step", id, ids, heading);
    }
    return id;
  }

  private void unknown(String code, String name, List<String> known, Node node) {
    findings.add(unknown(code, name, known, origin(node, 0)));
  }

  static Finding unknown(String code, String name, List<String> known, Origin origin) {
    Optional<String> near = NearName.to(name, known);
    Finding.Builder finding = Finding.fail(code, name);
    if (near.isPresent()) {
      finding.with("near", near.get());
    } else if (known.isEmpty()) {
      finding.with("none", name);
    } else {
      finding.with("there", Argument.of(known));
    }
    return finding.at(origin).build();
  }

  private Origin origin(Node node, int offset) {
    return origin(file, node, offset);
  }

  static Origin origin(String file, Node node, int offset) {
    List<SourceSpan> spans = node.getSourceSpans();
    return spans.isEmpty()
        ? new Origin(file, 1, 1)
        : new Origin(
            file, spans.get(0).getLineIndex() + 1, spans.get(0).getColumnIndex() + 1 + offset);
  }

  // --- blocks ---------------------------------------------------------------------------------

  private List<Block> block(Node node) {
    if (node instanceof Paragraph paragraph) {
      return paragraph(paragraph);
    } else if (node instanceof Heading heading) {
      return List.of(
          new Block.Heading(
              Math.max(2, Math.min(3, heading.getLevel())), "", inlines.read(heading)));
    } else if (node instanceof BulletList list) {
      return List.of(new Block.Listing(false, items(list)));
    } else if (node instanceof OrderedList list) {
      return List.of(new Block.Listing(true, items(list)));
    } else if (node instanceof BlockQuote quote) {
      return quoted(quote);
    } else if (node instanceof TableBlock table) {
      return new TableReader(inlines).read(table);
    } else if (node instanceof FencedCodeBlock code) {
      return own(code.getLiteral());
    } else if (node instanceof IndentedCodeBlock code) {
      return own(code.getLiteral());
    } else if (node instanceof HtmlBlock) {
      findings.add(Finding.fail("prose-html", file).at(origin(node, 0)).build());
      return List.of();
    } else if (node instanceof ThematicBreak) {
      return List.of();
    }
    return List.of();
  }

  private static List<Block> own(String text) {
    return List.of(new Block.Paragraph(Block.Tone.PLAIN, List.of(new Inline.Own(text.strip()))));
  }

  private List<Block> quoted(BlockQuote quote) {
    List<Block> blocks = new ArrayList<>();
    for (Node node = quote.getFirstChild(); node != null; node = node.getNext()) {
      for (Block block : block(node)) {
        blocks.add(
            block instanceof Block.Paragraph paragraph
                ? new Block.Paragraph(Block.Tone.NOTE, paragraph.text())
                : block);
      }
    }
    return blocks;
  }

  private List<List<Inline>> items(Node list) {
    List<List<Inline>> items = new ArrayList<>();
    for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
      if (item instanceof ListItem) {
        List<Inline> words = new ArrayList<>();
        for (Node part = item.getFirstChild(); part != null; part = part.getNext()) {
          if (!words.isEmpty()) {
            words.add(new Inline.Break());
          }
          words.addAll(inlines.read(part));
        }
        if (!Inline.plain(words).isBlank()) {
          items.add(words);
        }
      }
    }
    return items;
  }

  private List<Block> paragraph(Paragraph paragraph) {
    Optional<ProsePlace> alone = inlines.alone(paragraph);
    if (alone.isPresent()) {
      return placed(alone.get());
    }
    List<Inline> words = inlines.read(paragraph);
    return Inline.plain(words).isBlank()
        ? List.of()
        : List.of(new Block.Paragraph(Block.Tone.PLAIN, words));
  }

  /** A table, a figure or a picture that stands in a paragraph of its own. */
  private List<Block> placed(ProsePlace place) {
    switch (place.kind()) {
      case "table" -> {
        if (place.name().startsWith("numbers ")) {
          return new NumberTable(telling, inlines).read(place);
        }
        Optional<List<Block>> table = places.table(place.name());
        if (table.isEmpty()) {
          findings.add(unknown("prose-table", place.name(), places.tables(), place.origin()));
        }
        return table.orElse(List.of());
      }
      case "figure" -> {
        Optional<Block> figure = places.figure(place.name());
        if (figure.isEmpty()) {
          findings.add(unknown("prose-figure", place.name(), places.figures(), place.origin()));
        }
        return figure.stream().toList();
      }
      default -> {
        return new PictureReader(places, findings).read(place);
      }
    }
  }
}
