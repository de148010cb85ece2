package org.hemwright.draft.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.hemwright.pattern.finding.Finding;

/**
 * A document with one token deleted, doubled or altered, again and again: what a slip of the hand
 * makes of it.
 *
 * <p>{@link #tell} runs any reader over all of them (reading alone, or reading and evaluating) and
 * counts how often the first finding stands on the line of the slip.
 */
public final class SingleSlips {
  private SingleSlips() {}

  /** What was done to the token. */
  public enum Kind {
    DELETED,
    DOUBLED,
    ALTERED
  }

  /**
   * One slip.
   *
   * @param token the token as it was
   * @param line its line, from 1
   * @param text the whole document after the slip
   */
  public record Slip(Kind kind, String token, int line, String text) {}

  /**
   * How well the first finding points.
   *
   * @param slips how many documents were read
   * @param told in how many anything was found
   * @param onTheLine in how many the first finding stands on the line of the slip
   * @param elsewhere the slips whose first finding stands on another line, and that finding
   */
  public record Figure(int slips, int told, int onTheLine, List<Miss> elsewhere) {
    public Figure {
      elsewhere = List.copyOf(elsewhere);
    }

    /** The share of told slips that are told on their line; 1 is all. */
    public double share() {
      return told == 0 ? 1 : (double) onTheLine / told;
    }

    /** Both together. */
    public Figure plus(Figure other) {
      List<Miss> all = new ArrayList<>(elsewhere);
      all.addAll(other.elsewhere);
      return new Figure(slips + other.slips, told + other.told, onTheLine + other.onTheLine, all);
    }

    /** Nothing read yet. */
    public static Figure none() {
      return new Figure(0, 0, 0, List.of());
    }

    @Override
    public String toString() {
      return String.format(
          "%d slips, %d told, %d on the line (%.1f %%)", slips, told, onTheLine, 100 * share());
    }
  }

  /** A slip that is told elsewhere. */
  public record Miss(Slip slip, Finding first) {
    @Override
    public String toString() {
      return slip.kind()
          + " "
          + slip.token()
          + " in line "
          + slip.line()
          + ": "
          + first.code()
          + " at "
          + first.origin().map(Object::toString).orElse("nowhere");
    }
  }

  /** All slips of a document. */
  public static List<Slip> of(String text) {
    Source source = new Source("slip", text);
    List<Slip> slips = new ArrayList<>();
    for (int number = 1; number <= source.lines(); number++) {
      for (Token token : LineLexer.cut(source, number).tokens()) {
        String written = source.text(token.span());
        slips.add(slip(Kind.DELETED, source, token, written, ""));
        String again =
            token.kind() == Token.Kind.SYMBOL ? written + written : written + " " + written;
        slips.add(slip(Kind.DOUBLED, source, token, written, again));
        slips.add(slip(Kind.ALTERED, source, token, written, altered(token, written)));
      }
    }
    return slips;
  }

  private static Slip slip(Kind kind, Source source, Token token, String written, String instead) {
    String text = source.text();
    return new Slip(
        kind,
        written,
        source.line(token.span().start()),
        text.substring(0, token.span().start()) + instead + text.substring(token.span().end()));
  }

  /** A letter that is struck beside the right one, a quote left out, a comma for a point. */
  private static String altered(Token token, String written) {
    int middle = written.length() / 2;
    return switch (token.kind()) {
      case WORD -> written.substring(0, middle) + "q" + written.substring(middle + 1);
      case NUMBER -> written.contains(".") ? written.replace('.', ',') : written + "q";
      case TEXT -> written.substring(0, written.length() - 1);
      case SYMBOL -> written.equals(",") ? "." : written.equals("(") ? "[" : ",";
    };
  }

  /** Reads every slip of a document and counts. */
  public static Figure tell(String text, Function<String, List<Finding>> reader) {
    return tell(of(text), reader);
  }

  /** Reads one slip in so many of a document and counts. */
  public static Figure tell(String text, int oneIn, Function<String, List<Finding>> reader) {
    List<Slip> all = of(text);
    List<Slip> some = new ArrayList<>();
    for (int i = 0; i < all.size(); i += oneIn) {
      some.add(all.get(i));
    }
    return tell(some, reader);
  }

  private static Figure tell(List<Slip> slips, Function<String, List<Finding>> reader) {
    int told = 0;
    int onTheLine = 0;
    List<Miss> elsewhere = new ArrayList<>();
    for (Slip slip : slips) {
      List<Finding> findings = reader.apply(slip.text());
      if (!findings.isEmpty()) {
        told++;
        Finding first = findings.get(0);
        boolean there = first.origin().filter(o -> o.line() == slip.line()).isPresent();
        onTheLine += there ? 1 : 0;
        if (!there) {
          elsewhere.add(new Miss(slip, first));
        }
      }
    }
    return new Figure(slips.size(), told, onTheLine, elsewhere);
  }
}
