package org.hemwright.pattern.finding;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.pattern.quantity.Angle;
import org.hemwright.pattern.quantity.DecimalText;
import org.hemwright.pattern.quantity.LengthFormat;
import org.hemwright.pattern.quantity.LengthKind;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.quantity.QuantityKind;

/**
 * Makes sentences from findings. Each code has two keys in the message files: {@code CODE.message},
 * what is so, and {@code CODE.mend}, what would mend it (blank where nothing needs mending). A key
 * {@code CODE.mend.NAME} goes before {@code CODE.mend} where the finding carries an argument of
 * that name, as in "Did you mean {near}?"; so does {@code CODE.message.NAME}.
 *
 * <p>Phrases that findings share stand under {@code term.KEY}; see {@link Argument.Term}.
 *
 * <p>In a sentence {@code {name}} stands for an argument of that name; {@code {subject}}, {@code
 * {sizes}}, {@code {found}} and {@code {expected}} are always there (the last two only where the
 * finding has such a value). {@code {count|edge|edges}} chooses a word by a count. A message that
 * does not speak of sizes, of a finding that holds in some only, ends with "That is so in sizes 22
 * to 26."
 *
 * <p>A sentence that is missing, or that names a value that the finding does not carry, is a
 * mistake of the program: it is refused with an exception that names the key. {@link #lacking} lets
 * a test find out before a reader does.
 *
 * @param messages the sentences
 * @param lengths how lengths are shown
 * @param sizes how sizes are named
 */
public record Wording(Messages messages, LengthFormat lengths, SizeWords sizes) {
  private static final Pattern PLACE =
      Pattern.compile("\\{(?<name>[a-z_A-Z0-9]+)(?:\\|(?<one>[^|}]*)\\|(?<many>[^|}]*))?\\}");

  /** The sentences of this module; those of other modules lie beside their own classes. */
  public static Messages patternMessages() {
    return Messages.beside(Wording.class, "pattern.properties");
  }

  /** Wording with lengths in millimetres and centimetres and sizes as they come. */
  public static Wording of(Messages... files) {
    return new Wording(
        Messages.of(List.of(files)),
        LengthFormat.of(LengthFormat.Edition.METRIC_ONLY),
        new SizeWords(List.of()));
  }

  /** The same, with lengths shown another way. */
  public Wording showing(LengthFormat format) {
    return new Wording(messages, format, sizes);
  }

  /** The same, for a chart of these sizes. */
  public Wording overSizes(List<String> chart) {
    return new Wording(messages, lengths, new SizeWords(chart));
  }

  /** What is so: one sentence or more. */
  public String message(Finding finding) {
    String template = sentence(finding, "message");
    String text = filled(finding, template);
    boolean some = !finding.sizes().isEmpty() && !sizes.of(finding.sizes()).equals("every size");
    return some && !template.contains("{sizes}")
        ? text + " That is so in " + sizes.of(finding.sizes()) + "."
        : text;
  }

  /** What would mend it; blank where nothing needs mending. */
  public String mend(Finding finding) {
    return filled(finding, sentence(finding, "mend"));
  }

  /** The whole as a terminal shows it: {@code file:line:column: message mend}. */
  public String line(Finding finding) {
    String where = finding.origin().map(origin -> origin + ": ").orElse("");
    return (where + message(finding) + " " + mend(finding)).strip();
  }

  /** The keys that are missing for some codes, in alphabetical order; none when all is well. */
  public List<String> lacking(Collection<String> codes) {
    TreeSet<String> keys = new TreeSet<>();
    for (String code : codes) {
      keys.add(code + ".message");
      keys.add(code + ".mend");
    }
    keys.removeAll(messages.sentences().keySet());
    return List.copyOf(keys);
  }

  private String sentence(Finding finding, String part) {
    String key = finding.code() + "." + part;
    for (String name : finding.arguments().keySet()) {
      String special = messages.sentences().get(key + "." + name);
      if (special != null) {
        return special;
      }
    }
    String sentence = messages.sentences().get(key);
    if (sentence == null) {
      throw new IllegalStateException("no message file has the key " + key);
    }
    return sentence;
  }

  private String filled(Finding finding, String template) {
    Matcher place = PLACE.matcher(template);
    StringBuilder text = new StringBuilder();
    while (place.find()) {
      place.appendReplacement(text, Matcher.quoteReplacement(value(finding, place)));
    }
    return place.appendTail(text).toString();
  }

  private String value(Finding finding, Matcher place) {
    String name = place.group("name");
    Argument argument = finding.arguments().get(name);
    String one = place.group("one");
    String many = place.group("many");
    if (one != null && many != null) {
      if (argument instanceof Argument.Count count) {
        return count.count() == 1 ? one : many;
      }
      throw new IllegalStateException(
          finding.code() + " chooses a word by {" + name + "}, which is no count of the finding");
    }
    return Optional.ofNullable(argument)
        .map(this::worded)
        .or(() -> builtIn(finding, name))
        .orElseThrow(
            () ->
                new IllegalStateException(
                    finding.code() + " names {" + name + "}, which the finding does not carry"));
  }

  private Optional<String> builtIn(Finding finding, String name) {
    return switch (name) {
      case "subject" -> Optional.of(finding.subject());
      case "sizes" -> Optional.of(sizes.of(finding.sizes()));
      case "found" -> finding.found().stream().mapToObj(n -> inUnit(n, finding.unit())).findFirst();
      case "expected" ->
          finding.expected().stream().mapToObj(n -> inUnit(n, finding.unit())).findFirst();
      default -> Optional.empty();
    };
  }

  private String inUnit(double number, String unit) {
    return switch (unit) {
      case "mm" -> worded(Quantity.length(number));
      case "deg" -> DecimalText.of(number, 1) + "\u00b0";
      case "%" -> DecimalText.of(number, 1) + "%";
      default -> (DecimalText.of(number, 3) + " " + unit).strip();
    };
  }

  private String worded(Argument argument) {
    if (argument instanceof Argument.Text text) {
      return text.text();
    } else if (argument instanceof Argument.Measured measured) {
      return worded(measured.quantity());
    } else if (argument instanceof Argument.Range range) {
      if (range.least().kind() == QuantityKind.LENGTH
          && range.most().kind() == QuantityKind.LENGTH) {
        return lengths.range(range.least().amount(), range.most().amount(), LengthKind.DIFFERENCE);
      }
      String least = worded(range.least());
      String most = worded(range.most());
      return least.equals(most) ? least : least + " to " + most;
    } else if (argument instanceof Argument.Values values) {
      return SizeWords.listed(values.quantities().stream().map(this::worded).toList(), "and");
    } else if (argument instanceof Argument.Sold sold) {
      return SizeWords.listed(
          sold.widths().stream().map(width -> lengths.text(width, LengthKind.FINISHED)).toList(),
          "and");
    } else if (argument instanceof Argument.Count count) {
      return Long.toString(count.count());
    } else if (argument instanceof Argument.Names names) {
      return SizeWords.listed(new ArrayList<>(names.names()), "and");
    } else if (argument instanceof Argument.Term term) {
      return term(term.key());
    } else if (argument instanceof Argument.Numbered numbered) {
      return term(numbered.key()).replace("{number}", Long.toString(numbered.number()));
    } else if (argument instanceof Argument.AnyOf any) {
      return SizeWords.listed(any.options().stream().map(this::worded).toList(), "or");
    }
    throw new IllegalStateException("an argument of an unknown kind: " + argument);
  }

  private String term(String key) {
    String phrase = messages.sentences().get("term." + key);
    if (phrase == null) {
      throw new IllegalStateException("no message file has the key term." + key);
    }
    return phrase;
  }

  private String worded(Quantity quantity) {
    return switch (quantity.kind()) {
      case LENGTH -> lengths.text(quantity.amount(), LengthKind.DIFFERENCE);
      case ANGLE -> new Angle(quantity.amount()).text(1);
      case RATIO -> DecimalText.of(quantity.amount() * 100, 1) + "%";
      case NUMBER -> DecimalText.of(quantity.amount(), 3);
    };
  }
}
