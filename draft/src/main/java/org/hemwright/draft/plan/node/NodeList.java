package org.hemwright.draft.plan.node;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Span;
import org.hemwright.pattern.body.SizeRange;
import org.jspecify.annotations.Nullable;

/**
 * The nodes of a plan while it is made, each in its slot, with what a finding needs to know of
 * them.
 */
public final class NodeList {
  private final Source source;
  private final List<Entry> entries = new ArrayList<>();
  private final List<Expression.Literal> literals = new ArrayList<>();
  private final Map<Span, Integer> literalAt = new HashMap<>();
  private Setting setting;

  /**
   * What the nodes now being added belong to.
   *
   * @param sizes the sizes they are worked out in
   * @param owner the piece or part, or empty
   * @param subject what a finding is about: {@code panel.side_hip}
   * @param branch whether they belong to a choice that may not be taken, so that a failure counts
   *     only when it is
   */
  public record Setting(SizeRange sizes, String owner, String subject, boolean branch) {}

  private static final class Entry {
    @Nullable Node node;
    Span span;
    final @Nullable String name;
    Setting setting;

    Entry(Span span, @Nullable String name, Setting setting) {
      this.span = span;
      this.name = name;
      this.setting = setting;
    }
  }

  /** No nodes, of a text that is drawn in these sizes. */
  public NodeList(Source source, SizeRange sizes) {
    this.source = source;
    this.setting = new Setting(sizes, "", "", false);
  }

  /** What is being added now. */
  public Setting setting() {
    return setting;
  }

  /** Goes on with another setting. */
  public void set(Setting next) {
    setting = next;
  }

  /** Goes on with another subject. */
  public void about(String subject) {
    setting = new Setting(setting.sizes(), setting.owner(), subject, setting.branch());
  }

  /** Goes on inside or outside a choice. */
  public void inBranch(boolean branch) {
    setting = new Setting(setting.sizes(), setting.owner(), setting.subject(), branch);
  }

  /** Keeps a slot for a thing with a name, to be filled when its rule is read. */
  public int reserve(Span span, String name) {
    entries.add(new Entry(span, name, setting));
    return entries.size() - 1;
  }

  /** Fills a slot. */
  public void fill(int slot, Node node) {
    entries.get(slot).node = node;
  }

  /** Fills a slot kept before, with the place of its rule and the present setting. */
  public void fill(int slot, Node node, Span span) {
    Entry entry = entries.get(slot);
    entry.node = node;
    entry.span = span;
    entry.setting = setting;
  }

  /** Adds a node without a name. */
  public int add(Node node, Span span) {
    entries.add(new Entry(span, null, setting));
    fill(entries.size() - 1, node);
    return entries.size() - 1;
  }

  /** Adds a node for what could not be planned. */
  public int broken(Span span) {
    return add(new Broken(), span);
  }

  /** Adds a literal; its index is its place among all literals. */
  public NumberNode.Literal literal(Expression.Literal literal) {
    literals.add(literal);
    literalAt.put(literal.span(), literals.size() - 1);
    return new NumberNode.Literal(literals.size() - 1);
  }

  /** All literals added. */
  public List<Expression.Literal> literals() {
    return literals;
  }

  /** The value written at a place, if a literal stands there. */
  OptionalDouble literal(Span span) {
    Integer index = literalAt.get(span);
    return index == null ? OptionalDouble.empty() : OptionalDouble.of(literals.get(index).value());
  }

  /** How many slots there are. */
  public int size() {
    return entries.size();
  }

  /** What stands in a slot; {@link Broken} where nothing was filled in. */
  public Node node(int slot) {
    Node node = entries.get(slot).node;
    return node == null ? new Broken() : node;
  }

  /** Where its text stands. */
  public Span span(int slot) {
    return entries.get(slot).span;
  }

  /** Whether it stands for a thing with a name. */
  public boolean isNamed(int slot) {
    return entries.get(slot).name != null;
  }

  /** Its name, or its text. */
  public String text(int slot) {
    String name = entries.get(slot).name;
    return name == null ? source.text(span(slot)) : name;
  }

  /** Its name or text as one writes it in a part or piece, where own names are short. */
  public String text(int slot, String owner) {
    return shortened(text(slot), owner);
  }

  /** A name without the part or piece it belongs to, if that is the one we are in. */
  public static String shortened(String name, String owner) {
    return !owner.isEmpty() && name.startsWith(owner + ".")
        ? name.substring(owner.length() + 1)
        : name;
  }

  /** What a finding at it is about. */
  public String subject(int slot) {
    String subject = entries.get(slot).setting.subject();
    return subject.isEmpty() ? text(slot) : subject;
  }

  /** The setting in which it was added. */
  public Setting setting(int slot) {
    return entries.get(slot).setting;
  }
}
