package org.hemwright.draft.plan.name;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hemwright.draft.syntax.Span;
import org.hemwright.pattern.body.SizeRange;

/** The names of the document, of a part or of a piece, while the plan is made. */
public final class Scope {
  private final String name;
  private final SizeRange sizes;
  private final Optional<Scope> around;
  private final Map<String, NamedNumber> numbers = new LinkedHashMap<>();
  private final Map<String, Drawn> drawn = new LinkedHashMap<>();
  private final Set<String> excused = new LinkedHashSet<>();
  private boolean allExcused;

  /**
   * A number that has a name.
   *
   * @param slot where its value is
   * @param span where it is named
   */
  public record NamedNumber(int slot, Span span) {}

  private Scope(String name, SizeRange sizes, Optional<Scope> around) {
    this.name = name;
    this.sizes = sizes;
    this.around = around;
  }

  /** The whole document, drawn in these sizes. */
  public static Scope document(SizeRange sizes) {
    return new Scope("", sizes, Optional.empty());
  }

  /** A part or piece of this document, drawn in these sizes. */
  public Scope section(String section, SizeRange drawnIn) {
    return new Scope(section, drawnIn, Optional.of(this));
  }

  /** The part's or piece's name; empty for the document. */
  public String name() {
    return name;
  }

  /** The sizes it is drawn in. */
  public SizeRange sizes() {
    return sizes;
  }

  /** The document round a part or piece. */
  public Optional<Scope> around() {
    return around;
  }

  /** The numbers named here, in order. */
  public Map<String, NamedNumber> numbers() {
    return numbers;
  }

  /** The things drawn here, in order. */
  public Map<String, Drawn> drawn() {
    return drawn;
  }

  /** Lets a name be missing, since the line that would give it could not be read. */
  public void excuse(String missing) {
    excused.add(missing);
  }

  /** Lets every name be missing, since a line that gives names could not be followed. */
  public void excuseAll() {
    allExcused = true;
  }

  /** Whether a missing name follows from a line that could not be read. */
  public boolean excuses(String missing) {
    return allExcused
        || excused.contains(missing)
        || around.filter(outer -> outer.excuses(missing)).isPresent();
  }

  /** A thing's name as seen from outside: {@code panel.side}. */
  public String full(String thing) {
    return name.isEmpty() ? thing : name + "." + thing;
  }
}
