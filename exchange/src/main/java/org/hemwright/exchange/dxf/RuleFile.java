package org.hemwright.exchange.dxf;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.exchange.rule.ReadRules;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Messages;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.traced.RulePlace;
import org.hemwright.pattern.traced.RuleTable;

/**
 * The rule table that goes with a DXF: numbered rules, each a move for every size, from the sample
 * size (handbook section 9).
 *
 * <p>Read, a rule becomes one for the dot {@code # n}, whatever piece and edge that lies on.
 */
public final class RuleFile {
  private static final int MOST_BYTES = 4 << 20;
  private static final int MOST_RULES = 20_000;
  private static final Pattern KEY = Pattern.compile("\\s*([A-Za-z ]+?)\\s*:\\s*(.*?)\\s*");
  private static final Pattern DELTA = Pattern.compile("DELTA\\s+([0-9]{1,9})");
  private static final Pattern PAIR =
      Pattern.compile("([-+]?[0-9.]{1,20})\\s*,\\s*([-+]?[0-9.]{1,20})");

  private RuleFile() {}

  static String write(SizeRun run, Size base, String style, List<List<Vector>> rules) {
    StringBuilder text = new StringBuilder();
    List<String> sizes =
        run.sizes().stream().map(SizedPattern::size).map(Size::name).map(RuleFile::word).toList();
    line(text, "ASTM/D13Proposal 1 Version: D 6673");
    line(text, "AUTHOR: " + DxfText.plain(run.pattern().details().by()));
    line(text, "CREATION DATE: " + run.pattern().details().dated());
    line(text, "CREATION TIME: 00:00");
    line(text, "UNITS: METRIC");
    line(text, "GRADE RULE TABLE: " + style);
    line(text, "NUMBER OF SIZES: " + sizes.size());
    line(text, "SIZE LIST: " + String.join(" ", sizes));
    line(text, "SAMPLE SIZE: " + word(base.name()));
    for (int i = 0; i < rules.size(); i++) {
      line(text, "RULE: DELTA " + (i + 1));
      for (Vector move : rules.get(i)) {
        line(text, String.format(Locale.ROOT, "  %.4f, %.4f", zero(move.dx()), zero(move.dy())));
      }
    }
    line(text, "END");
    return text.toString();
  }

  /** A size's name as one word: the list of sizes is parted by blanks. */
  private static String word(String size) {
    return DxfText.plain(size).replace(' ', '_');
  }

  private static double zero(double value) {
    return Math.abs(value) < 0.00005 ? 0 : value;
  }

  private static void line(StringBuilder text, String line) {
    text.append(line).append("\r\n");
  }

  /**
   * Reads a rule table.
   *
   * @param file the name that places in findings carry
   */
  public static ReadRules read(String file, byte[] content) {
    Origin start = new Origin(file, 1, 1);
    if (content.length > MOST_BYTES) {
      return refused(Finding.fail("rul-too-large", file).at(start).build());
    }
    String text = new String(content, StandardCharsets.ISO_8859_1);
    List<String> sizes = List.of();
    String sample = "";
    double mm = 0;
    int number = 0;
    int rules = 0;
    int at = 0;
    int lines = 0;
    List<Vector> moves = new ArrayList<>();
    List<RuleTable.Rule> all = new ArrayList<>();
    for (String line : text.split("\r\n|\n|\r", -1)) {
      lines++;
      Matcher key = KEY.matcher(line);
      Matcher pair = PAIR.matcher(line);
      boolean keyed = key.matches();
      if (keyed || line.strip().equalsIgnoreCase("END")) {
        if (number > 0) {
          Optional<Finding> slip = add(file, at, number, sizes, sample, moves, mm, all);
          if (slip.isPresent() || ++rules > MOST_RULES) {
            return refused(
                slip.orElseGet(() -> Finding.fail("rul-too-large", file).at(start).build()));
          }
        }
        number = 0;
        moves.clear();
      }
      if (keyed) {
        String value = key.group(2);
        switch (key.group(1).toUpperCase(Locale.ROOT).replaceAll("\\s+", " ")) {
          case "UNITS" -> mm = value.toUpperCase(Locale.ROOT).startsWith("ENG") ? 25.4 : 1;
          case "SIZE LIST" -> sizes = List.of(value.split("\\s+"));
          case "SAMPLE SIZE" -> sample = value;
          case "RULE" -> {
            Matcher delta = DELTA.matcher(value.toUpperCase(Locale.ROOT));
            number = delta.find() ? Integer.parseInt(delta.group(1)) : 0;
            at = lines;
          }
          default -> {}
        }
      } else if (number > 0) {
        while (pair.find() && moves.size() <= sizes.size()) {
          moves.add(new Vector(parse(pair.group(1)), parse(pair.group(2))));
        }
      }
    }
    if (all.isEmpty()) {
      return refused(Finding.fail("rul-without-rules", file).at(start).build());
    }
    return new ReadRules(Optional.of(new RuleTable(file, all)), List.of());
  }

  private static double parse(String number) {
    try {
      double value = Double.parseDouble(number);
      return Double.isFinite(value) ? value : 0;
    } catch (NumberFormatException twoPoints) {
      return 0;
    }
  }

  private static Optional<Finding> add(
      String file,
      int line,
      int number,
      List<String> sizes,
      String sample,
      List<Vector> moves,
      double mm,
      List<RuleTable.Rule> all) {
    Origin origin = new Origin(file, Math.max(1, line), 1);
    int base = sizes.indexOf(sample);
    if (mm == 0) {
      return Optional.of(Finding.fail("rul-units", file).at(origin).build());
    }
    if (moves.size() != sizes.size() || base < 0 || moves.get(base).length() > 0.001) {
      return Optional.of(
          Finding.fail("rul-pairs", file)
              .with("rule", Argument.of(number))
              .with("found", Argument.of(moves.size()))
              .with("wanted", Argument.of(sizes.size()))
              .at(origin)
              .build());
    }
    for (boolean upright : new boolean[] {false, true}) {
      List<RuleTable.Step> steps = new ArrayList<>();
      for (int i = 1; i < sizes.size(); i++) {
        Vector step = moves.get(i).minus(moves.get(i - 1));
        steps.add(
            new RuleTable.Step(
                sizes.get(i - 1), sizes.get(i), (upright ? step.dy() : step.dx()) * mm));
      }
      all.add(new RuleTable.Rule("", "", new RulePlace.Dot("# " + number), upright, steps, origin));
    }
    return Optional.empty();
  }

  private static ReadRules refused(Finding finding) {
    return new ReadRules(Optional.empty(), List.of(finding));
  }

  /** The sentences for every finding of a DXF and its rule table. */
  public static Messages messages() {
    return Messages.beside(RuleFile.class, "dxf.properties");
  }
}
