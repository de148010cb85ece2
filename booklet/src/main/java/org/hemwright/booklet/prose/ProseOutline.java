package org.hemwright.booklet.prose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which words of a text stand in which part of the booklet, by its headings alone.
 *
 * @param text the text, with plain line feeds
 * @param headings in their order
 */
public record ProseOutline(String text, List<Heading> headings) {
  private static final Pattern HEADING =
      Pattern.compile("^(#{1,2})[ \\t]+(.*?)[ \\t]*#*[ \\t]*$", Pattern.MULTILINE);
  private static final String STEPS = "steps";
  private static final String COVER = "cover";

  public ProseOutline {
    headings = List.copyOf(headings);
  }

  /**
   * A heading that names a part or a step.
   *
   * @param where what it names
   * @param start where its line starts (UTF-16 units)
   * @param end where its line ends, before the line feed
   */
  public record Heading(Where where, int start, int end) {}

  /**
   * A part, or a step of the part of steps.
   *
   * @param step empty where no step is meant
   */
  public record Where(String part, String step) {}

  /**
   * Where words for a part or a step can be written.
   *
   * @param at where something is to be put into the text first (UTF-16 units)
   * @param insert what; empty where the heading stands there already
   * @param caret where writing goes on, once it is put in
   */
  public record Spot(int at, String insert, int caret) {}

  /** Reads the headings of a text; what stands in fenced code is none. */
  public static ProseOutline of(String text) {
    List<Heading> headings = new ArrayList<>();
    String part = COVER;
    Matcher found = HEADING.matcher(text);
    while (found.find()) {
      if (inFence(text, found.start())) {
        continue;
      }
      String said = found.group(2);
      if (found.group(1).length() == 1) {
        part = ProseReader.partNamed(said);
        headings.add(new Heading(new Where(part, ""), found.start(), found.end()));
      } else if (part.equals(STEPS)) {
        Where step = new Where(part, ProseReader.stepNamed(said));
        headings.add(new Heading(step, found.start(), found.end()));
      }
    }
    return new ProseOutline(text, headings);
  }

  private static boolean inFence(String text, int at) {
    return text.substring(0, at).lines().filter(line -> line.startsWith("```")).count() % 2 == 1;
  }

  /** What the words at a place of the text are for. */
  public Where at(int offset) {
    Where where = new Where(COVER, "");
    for (Heading heading : headings) {
      if (heading.start() <= offset) {
        where = heading.where();
      }
    }
    return where;
  }

  /**
   * Where words for a part or a step go: behind those that stand there already, or under a heading
   * that is put in where the booklet's order has it.
   *
   * @param parts the ids of all parts, in order
   * @param steps the ids of all steps, in order
   */
  public Spot spot(Where wanted, List<String> parts, List<String> steps) {
    if (wanted.step().isEmpty()) {
      return wanted.part().equals(COVER)
          ? behind(0, headings.isEmpty() ? text.length() : headings.get(0).start())
          : spot(wanted, parts, "# " + title(wanted.part()), false);
    }
    Optional<Heading> part =
        headings.stream().filter(each -> each.where().equals(new Where(STEPS, ""))).findFirst();
    String heading = "## " + wanted.step();
    return part.isPresent()
        ? spot(wanted, steps, heading, true)
        : spot(new Where(STEPS, ""), parts, "# Steps\n\n" + heading, false);
  }

  private static String title(String part) {
    return part.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + part.substring(1);
  }

  private Spot spot(Where wanted, List<String> order, String heading, boolean step) {
    for (int i = 0; i < headings.size(); i++) {
      if (headings.get(i).where().equals(wanted)) {
        int next = i + 1 < headings.size() ? headings.get(i + 1).start() : text.length();
        return behind(headings.get(i).end(), next);
      }
    }
    int place = order.indexOf(step ? wanted.step() : wanted.part());
    boolean inSteps = false;
    for (Heading each : headings) {
      Where there = each.where();
      boolean ofStep = !there.step().isEmpty();
      boolean later = order.indexOf(step ? there.step() : there.part()) > place;
      boolean leaves = inSteps && !there.part().equals(STEPS);
      if (step ? leaves || (ofStep && later) : !ofStep && later) {
        return before(each.start(), heading);
      }
      inSteps = there.part().equals(STEPS);
    }
    return before(text.length(), heading);
  }

  private Spot before(int at, String heading) {
    String lead =
        at == 0 || text.startsWith("\n\n", at - 2) ? "" : at == text.length() ? "\n\n" : "\n";
    String own = lead + heading + "\n\n";
    String rest = at == text.length() ? "\n" : "\n\n";
    return new Spot(at, own + rest, at + own.length());
  }

  /** Behind the last words of a stretch, a line of their own begun for them. */
  private Spot behind(int from, int to) {
    int last = to;
    while (last > from && Character.isWhitespace(text.charAt(last - 1))) {
      last--;
    }
    String lead = last == 0 ? "" : "\n\n";
    String rest = text.substring(last, to).startsWith("\n") ? "" : "\n";
    return new Spot(last, lead + rest, last + lead.length());
  }
}
