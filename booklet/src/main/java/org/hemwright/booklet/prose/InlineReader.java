package org.hemwright.booklet.prose;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Provenance;
import org.hemwright.booklet.leaf.Provenance.Source;
import org.hemwright.booklet.words.Telling;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.quantity.QuantityKind;

/**
 * Reads running text with its places: {@code {number elastic_width}}, {@code {number hip in 14}},
 * {@code {version}}, {@code {stretch main}}, and sentences that hold for some only, {@code {for
 * sizes 22 to 42: …}}, {@code {for view B: …}}, {@code {for cloth rib: …}}.
 */
final class InlineReader {
  private static final List<String> DETAILS = List.of("title", "version", "dated", "by");
  private static final List<String> KINDS =
      List.of(
          "number", "stretch", "for", "title", "version", "dated", "by", "table", "figure",
          "picture");

  private final String file;
  private final Telling telling;
  private final List<Finding> findings;

  InlineReader(String file, Telling telling, List<Finding> findings) {
    this.file = file;
    this.telling = telling;
    this.findings = findings;
  }

  /** A sentence that holds for some only, while it is being read. */
  private record Open(Condition condition, List<Inline> words, Origin origin) {}

  /** The inlines within a node. */
  List<Inline> read(Node parent) {
    Deque<Open> open = new ArrayDeque<>();
    List<Inline> all = new ArrayList<>();
    open.push(new Open(Condition.ALWAYS, all, origin(parent, 0)));
    for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
      if (node instanceof Text text) {
        text(text, open);
      } else {
        last(open).words().addAll(inline(node));
      }
    }
    while (open.size() > 1) {
      Open unclosed = open.pop();
      findings.add(Finding.fail("prose-open", file).at(unclosed.origin()).build());
      last(open).words().addAll(unclosed.words());
    }
    return List.copyOf(all);
  }

  private static Open last(Deque<Open> open) {
    Open last = open.peek();
    if (last == null) {
      throw new IllegalStateException("a text is open until its end");
    }
    return last;
  }

  private Origin origin(Node node, int offset) {
    return ProseReader.origin(file, node, offset);
  }

  private List<Inline> inline(Node node) {
    if (node instanceof Emphasis) {
      return List.of(new Inline.Emphasis(read(node)));
    } else if (node instanceof StrongEmphasis) {
      return List.of(new Inline.Strong(read(node)));
    } else if (node instanceof Code code) {
      return List.of(new Inline.Own(code.getLiteral()));
    } else if (node instanceof SoftLineBreak) {
      return List.of(new Inline.Own(" "));
    } else if (node instanceof HardLineBreak) {
      return List.of(new Inline.Break());
    } else if (node instanceof Link link) {
      return link(link);
    } else if (node instanceof Image) {
      findings.add(Finding.fail("prose-image", file).at(origin(node, 0)).build());
      return List.of();
    } else if (node instanceof HtmlInline) {
      findings.add(Finding.fail("prose-html", file).at(origin(node, 0)).build());
      return List.of();
    }
    return read(node);
  }

  private List<Inline> link(Link link) {
    String to = link.getDestination();
    String lower = to.toLowerCase(Locale.ROOT);
    boolean known =
        lower.startsWith("https://") || lower.startsWith("http://") || lower.startsWith("mailto:");
    if (!known) {
      findings.add(Finding.fail("prose-link", to).at(origin(link, 0)).build());
      return read(link);
    }
    return List.of(new Inline.Link(read(link), to));
  }

  // --- places ---------------------------------------------------------------------------------

  private void text(Text node, Deque<Open> open) {
    String text = node.getLiteral();
    StringBuilder own = new StringBuilder();
    int i = 0;
    while (i < text.length()) {
      char c = text.charAt(i);
      if (c == '}' && open.size() > 1) {
        flush(own, open);
        Open done = open.pop();
        last(open).words().addAll(done.condition().said(telling, done.words()));
        i++;
      } else if (c == '{') {
        flush(own, open);
        i = place(node, text, i, open);
      } else {
        own.append(c);
        i++;
      }
    }
    flush(own, open);
  }

  private static void flush(StringBuilder own, Deque<Open> open) {
    if (!own.isEmpty()) {
      last(open).words().add(new Inline.Own(own.toString()));
      own.setLength(0);
    }
  }

  /** Reads the place that starts at an index; answers where the text goes on. */
  private int place(Node node, String text, int start, Deque<Open> open) {
    Origin origin = origin(node, start);
    String rest = text.substring(start + 1);
    if (rest.startsWith("for ")) {
      int colon = rest.indexOf(':');
      if (colon < 0) {
        findings.add(Finding.fail("prose-colon", rest).at(origin).build());
        return text.length();
      }
      Condition condition =
          Condition.read(rest.substring(4, colon).strip(), telling, findings, origin);
      open.push(new Open(condition, new ArrayList<>(), origin));
      int on = start + 1 + colon + 1;
      return on < text.length() && text.charAt(on) == ' ' ? on + 1 : on;
    }
    int end = rest.indexOf('}');
    if (end < 0) {
      findings.add(Finding.fail("prose-open", file).at(origin).build());
      return text.length();
    }
    ProsePlace place = ProsePlace.of(rest.substring(0, end), origin);
    last(open).words().addAll(words(place));
    return start + 1 + end + 1;
  }

  private List<Inline> words(ProsePlace place) {
    if (place.isBlock()) {
      findings.add(Finding.fail("prose-alone", place.kind()).at(place.origin()).build());
      return List.of();
    }
    if (DETAILS.contains(place.kind()) && place.name().isEmpty()) {
      return List.of(telling.detail(place.kind()));
    }
    return switch (place.kind()) {
      case "number" -> number(place);
      case "stretch" -> stretch(place);
      default -> {
        findings.add(ProseReader.unknown("prose-place", place.kind(), KINDS, place.origin()));
        yield List.of();
      }
    };
  }

  /** Whether the document has a number of that name; otherwise it is told. */
  boolean isNumber(String name, Origin origin) {
    Map<String, Quantity> numbers = telling.drawn().numbers();
    if (numbers.containsKey(name)) {
      return true;
    }
    findings.add(
        ProseReader.unknown("prose-number", name, new ArrayList<>(numbers.keySet()), origin));
    return false;
  }

  private List<Inline> number(ProsePlace place) {
    int in = place.name().indexOf(" in ");
    String name = in < 0 ? place.name() : place.name().substring(0, in).strip();
    if (!isNumber(name, place.origin())) {
      return List.of();
    }
    if (in >= 0) {
      String size = place.name().substring(in + 4).strip();
      Optional<SizedPattern> sized = telling.run().size(size);
      if (sized.isEmpty()) {
        findings.add(ProseReader.unknown("prose-size", size, telling.sizeNames(), place.origin()));
        return List.of();
      }
      return telling
          .number(name, sized.get(), telling.kind(name))
          .map(List::<Inline>of)
          .orElse(List.of());
    }
    Map<String, Double> bySize = new LinkedHashMap<>();
    for (SizedPattern sized : telling.run().sizes()) {
      Quantity value = sized.numbers().get(name);
      if (value != null && value.kind() == QuantityKind.LENGTH) {
        bySize.put(sized.size().name(), value.amount());
      }
    }
    return bySize.isEmpty()
        ? telling
            .number(name, telling.drawn(), telling.kind(name))
            .map(List::<Inline>of)
            .orElse(List.of())
        : telling.range(bySize, telling.kind(name), Provenance.of(Source.NUMBER, name));
  }

  private List<Inline> stretch(ProsePlace place) {
    List<String> names =
        telling.run().pattern().fabrics().stream().map(fabric -> fabric.name()).toList();
    var fabric = telling.run().pattern().fabric(place.name());
    if (fabric.isEmpty()) {
      findings.add(ProseReader.unknown("prose-cloth", place.name(), names, place.origin()));
      return List.of();
    }
    return fabric.get().stretchAcross().isEmpty()
        ? List.of()
        : List.of(
            telling.percent(
                fabric.get().stretchAcross().getAsDouble(),
                Provenance.of(Source.FABRIC, place.name(), "stretch-across")));
  }

  /** The place of a block that stands in a paragraph by itself. */
  Optional<ProsePlace> alone(Paragraph paragraph) {
    Node only = paragraph.getFirstChild();
    if (!(only instanceof Text)) {
      return Optional.empty();
    }
    StringBuilder whole = new StringBuilder();
    for (Node node = only; node != null; node = node.getNext()) {
      if (!(node instanceof Text text)) {
        return Optional.empty();
      }
      whole.append(text.getLiteral());
    }
    String text = whole.toString().strip();
    if (!text.startsWith("{") || text.indexOf('}') != text.length() - 1) {
      return Optional.empty();
    }
    ProsePlace place = ProsePlace.of(text.substring(1, text.length() - 1), origin(only, 0));
    return place.isBlock() ? Optional.of(place) : Optional.empty();
  }
}
