package org.hemwright.workbench.starter;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.workbench.folder.PackedFolder;
import org.hemwright.workbench.folder.PatternFolder;

/**
 * A sound block to begin with.
 *
 * <p>It is drafted for women. For another run its folder holds the lines that differ, as in {@code
 * men.hem}: each takes the place of the document's line of the same beginning.
 *
 * @param name {@code knit-tee}
 * @param words what it is, in one line
 * @param charts the size runs that it may be drafted for, the one for women first
 */
public record Starter(String name, String words, List<ChartRun> charts) {
  public Starter {
    charts = List.copyOf(charts);
  }

  private static final String FOLDER = "starters";

  static final String SIZES = "sizes.csv";

  /** What a starter's folder holds. */
  private static final List<String> FILES =
      List.of(PatternFolder.DOCUMENT, SIZES, PatternFolder.PROSE);

  /**
   * What tells a line from others: its first two words, or the first of a line that has no name.
   */
  private static final Pattern BEGINNING =
      Pattern.compile("^ *(?:(?:dial|let|point|fabric|solve) \\S+|stretch across|\\S+)");

  private static final List<Starter> ALL =
      List.of(
          new Starter(
              "one-piece-leg",
              "Knit pull-on bottoms, the leg one piece, elastic in a casing",
              ChartRun.all()),
          new Starter(
              "trousers",
              "Woven pull-on trousers, front and back apart, folded waistband",
              ChartRun.all()),
          new Starter(
              "knit-tee", "A tee for jersey, set-in sleeves and a neckband", ChartRun.all()),
          new Starter(
              "raglan-top", "A knit top with raglan sleeves, a neckband or a hood", ChartRun.all()),
          new Starter(
              "skirt-block",
              "A fitted skirt with darts, waist facing and a zip",
              ChartRun.all().subList(0, 2)),
          new Starter(
              "darted-bodice",
              "A fitted bodice with bust and waist darts, sleeves and a peplum",
              ChartRun.all().subList(0, 2)));

  /** Every starter. */
  public static List<Starter> all() {
    return ALL;
  }

  /** The one of a name. */
  public static Optional<Starter> named(String name) {
    return ALL.stream().filter(starter -> starter.name.equals(name)).findFirst();
  }

  /** Its files. */
  public List<String> files() {
    return FILES;
  }

  /** It as a pattern folder. */
  public PatternFolder folder() {
    return new PackedFolder(FOLDER, name);
  }

  /** What one of its files holds. */
  public byte[] bytes(String file) {
    String resource = "/org/hemwright/%s/%s/%s".formatted(FOLDER, name, file);
    try (InputStream stream = Starter.class.getResourceAsStream(resource)) {
      if (stream == null) {
        throw new IllegalStateException(resource + " is not packed in the program");
      }
      return stream.readAllBytes();
    } catch (IOException broken) {
      throw new UncheckedIOException("the program's own files cannot be read", broken);
    }
  }

  /** Its document, for a garment of another name. */
  public String document(String title) {
    String text = new String(bytes(PatternFolder.DOCUMENT), StandardCharsets.UTF_8);
    return text.replaceFirst(
        "(?m)^pattern \".*\"$", Matcher.quoteReplacement("pattern \"" + title + "\""));
  }

  /**
   * Its document for a size run.
   *
   * @throws IllegalArgumentException where it may not be drafted for that run
   */
  public String document(String title, ChartRun run) {
    String text = document(title);
    if (run.equals(ChartRun.WOMEN)) {
      return text;
    }
    if (!charts.contains(run)) {
      throw new IllegalArgumentException(name + " is not drafted for " + run.name());
    }
    String other = new String(bytes(run.name() + ".hem"), StandardCharsets.UTF_8);
    for (String line : other.lines().filter(each -> !each.startsWith("#")).toList()) {
      String beginning = BEGINNING.matcher(line).results().findFirst().orElseThrow().group();
      Pattern same = Pattern.compile("(?m)^" + Pattern.quote(beginning) + "(?= ).*$");
      if (same.matcher(text).results().count() != 1) {
        throw new IllegalStateException(name + " has not one line that begins: " + beginning);
      }
      text = same.matcher(text).replaceFirst(Matcher.quoteReplacement(line));
    }
    return run.hasBust() ? text : chest(text);
  }

  /** The girth round the chest is a bust for women alone; columns of numbers stay in line. */
  private static String chest(String text) {
    return text.replaceAll("(?m)^((?:dial|let) )bust(\\w*)  ( *)=", "$1chest$2 $3=")
        .replaceAll("\\bbust", "chest");
  }

  /** Its size chart from a run. */
  public byte[] sizes(ChartRun run) {
    byte[] own = bytes(SIZES);
    if (run.equals(ChartRun.WOMEN)) {
      return own;
    }
    List<String> lines = new String(own, StandardCharsets.UTF_8).lines().toList();
    String title = lines.get(0).replaceFirst("^# Women, ", "");
    String capital = run.words().replaceFirst(",.*| by.*| of.*", "");
    List<String> headings = headings();
    return run.csv(capital + ", " + title, headings).getBytes(StandardCharsets.UTF_8);
  }

  /** The headings of its chart without the size: what a chart must have for it. */
  private List<String> headings() {
    List<String> all =
        new String(bytes(SIZES), StandardCharsets.UTF_8)
            .lines()
            .filter(line -> !line.startsWith("#"))
            .findFirst()
            .map(line -> List.of(line.split(",", -1)))
            .orElseThrow();
    return all.subList(1, all.size());
  }

  /** The measurements that it is drafted from, as a document names them: {@code neck_base}. */
  public List<String> needs() {
    return headings().stream()
        .map(heading -> heading.replaceAll(" \\(.*", "").replace(' ', '_'))
        .toList();
  }
}
