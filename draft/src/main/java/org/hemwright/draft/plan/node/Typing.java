package org.hemwright.draft.plan.node;

import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Unit;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;

/** Checks once, over all nodes in order, that lengths meet lengths and angles angles. */
public final class Typing {
  private final NodeList nodes;
  private final Problems problems;
  private final String lengthUnit;
  private final Kind[] kinds;
  private int current;

  private Typing(NodeList nodes, Problems problems, String lengthUnit) {
    this.nodes = nodes;
    this.problems = problems;
    this.lengthUnit = lengthUnit;
    this.kinds = new Kind[nodes.size()];
  }

  /**
   * The quantity of every slot. A node whose inputs do not fit gives way to {@link Broken}.
   *
   * @param order the slots, each after its inputs
   * @param lengthUnit the unit to propose where one is missing: {@code cm} or {@code in}
   */
  public static Kind[] of(NodeList nodes, int[] order, Problems problems, String lengthUnit) {
    Typing typing = new Typing(nodes, problems, lengthUnit);
    for (int slot : order) {
      typing.current = slot;
      typing.kinds[slot] = nodes.node(slot).typed(typing);
    }
    for (int slot : order) {
      typing.current = slot;
      if (nodes.node(slot) instanceof SolveNode solve) {
        solve.checkSides(typing);
      }
    }
    return typing.kinds;
  }

  /** What a slot holds. */
  public Kind kind(int slot) {
    Kind kind = kinds[slot];
    return kind == null ? Kind.UNKNOWN : kind;
  }

  /** Asks for a length. */
  public void length(int slot) {
    want(slot, Kind.LENGTH);
  }

  /** Asks for an angle. */
  public void angle(int slot) {
    want(slot, Kind.ANGLE);
  }

  /** Asks for a ratio or a plain number. */
  public void plain(int slot) {
    Kind kind = kind(slot);
    if (!kind.isPlain() && kind != Kind.UNKNOWN) {
      wrong(slot, kind, Kind.NUMBER);
    }
  }

  /** Asks for a length along a path, or a share of it. */
  public void lengthOrShare(int slot) {
    Kind kind = kind(slot);
    boolean bareNumber =
        kind == Kind.NUMBER
            && nodes.node(slot) instanceof NumberNode.Literal
            && Math.abs(nodes.literal(nodes.span(slot)).orElse(0)) > 1;
    if (kind == Kind.ANGLE || bareNumber) {
      wrong(slot, kind, Kind.LENGTH);
    }
  }

  private void want(int slot, Kind wanted) {
    Kind kind = kind(slot);
    if (kind != wanted && kind != Kind.ANY && kind != Kind.UNKNOWN) {
      wrong(slot, kind, wanted);
    }
  }

  private void wrong(int slot, Kind kind, Kind wanted) {
    Span span = nodes.span(slot);
    boolean noUnit = kind == Kind.NUMBER && nodes.node(slot) instanceof NumberNode.Literal;
    String text = text(slot);
    if (noUnit) {
      String mended = text + (wanted == Kind.ANGLE ? " deg" : " " + lengthUnit);
      tell(
          problems
              .at(span, "unit-missing", nodes.subject(current))
              .with("text", text)
              .with("wanted", wanted.words())
              .with("mended", mended)
              .mendedBy(problems.replace(span, mended)));
    } else {
      tell(
          problems
              .at(nodes.isNamed(slot) ? nodes.span(current) : span, "quantity-wrong", text)
              .with("text", text)
              .with("found", kind.words())
              .with("wanted", wanted.words()));
    }
  }

  /**
   * The quantity that two inputs share.
   *
   * @param doing the phrase for what is done with them: {@code added}
   */
  public Kind alike(int left, int right, String doing) {
    Optional<Kind> both = together(kind(left), kind(right));
    if (both.isEmpty()) {
      pair("quantities-differ", left, right, doing);
    }
    return both.orElse(Kind.UNKNOWN);
  }

  /** The quantity that several inputs share. */
  public Kind allAlike(List<Integer> slots, String doing) {
    int first = slots.get(0);
    Kind all = kind(first);
    for (int slot : slots) {
      Optional<Kind> both = together(all, kind(slot));
      if (both.isEmpty()) {
        pair("quantities-differ", first, slot, doing);
        return Kind.UNKNOWN;
      }
      if (all == Kind.ANY) {
        first = slot;
      }
      all = both.get();
    }
    return all;
  }

  /** The quantity of a literal: a bare 0 may be any. */
  Kind literal(int index) {
    Expression.Literal literal = nodes.literals().get(index);
    return literal.unit() == Unit.NONE && literal.value() == 0
        ? Kind.ANY
        : Kind.of(literal.unit().kind());
  }

  private static Optional<Kind> together(Kind left, Kind right) {
    if (left == Kind.UNKNOWN || right == Kind.ANY || left == right) {
      return Optional.of(left);
    }
    if (right == Kind.UNKNOWN || left == Kind.ANY) {
      return Optional.of(right);
    }
    return left.isPlain() && right.isPlain() ? Optional.of(Kind.RATIO) : Optional.empty();
  }

  /** The quantity of a product. */
  public Kind product(int left, int right) {
    Kind first = kind(left);
    Kind second = kind(right);
    if (first == Kind.UNKNOWN || second == Kind.UNKNOWN) {
      return Kind.UNKNOWN;
    }
    if (first == Kind.NUMBER || first == Kind.ANY) {
      return second;
    }
    if (second == Kind.NUMBER || second == Kind.ANY) {
      return first;
    }
    if (first == Kind.RATIO || second == Kind.RATIO) {
      return first == Kind.RATIO ? second : first;
    }
    boolean area = first == Kind.LENGTH && second == Kind.LENGTH;
    pair(area ? "area" : "product-of-quantities", left, right, "");
    return Kind.UNKNOWN;
  }

  /** The quantity of a quotient. */
  public Kind quotient(int left, int right) {
    Kind above = kind(left);
    Kind below = kind(right);
    if (above == Kind.UNKNOWN || below == Kind.UNKNOWN) {
      return Kind.UNKNOWN;
    }
    if (below == Kind.LENGTH || below == Kind.ANGLE) {
      if (above == below || above == Kind.ANY) {
        return Kind.RATIO;
      }
      pair("quotient-of-quantities", left, right, "");
      return Kind.UNKNOWN;
    }
    if (below == Kind.RATIO && above.isPlain()) {
      return Kind.NUMBER;
    }
    return above;
  }

  private String text(int slot) {
    return nodes.text(slot, nodes.setting(current).owner());
  }

  private void pair(String code, int left, int right, String doing) {
    Finding.Builder finding =
        problems
            .at(nodes.span(current), code, nodes.subject(current))
            .with("left", text(left))
            .with("leftKind", kind(left).words())
            .with("right", text(right))
            .with("rightKind", kind(right).words());
    tell(doing.isEmpty() ? finding : finding.with("doing", new Argument.Term(doing)));
  }

  private void tell(Finding.Builder finding) {
    problems.add(finding);
    nodes.fill(current, new Broken());
  }
}
