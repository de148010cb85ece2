package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.node.Broken;
import org.hemwright.draft.plan.node.ChoiceNode;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.NodeList;
import org.hemwright.draft.plan.node.NumberNode;
import org.hemwright.draft.syntax.Condition;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.draft.syntax.NumberRule;
import org.hemwright.pattern.body.Size;

/** Turns expressions, steps and choices into nodes. */
final class NumberCompiler {
  private final Compilation shared;
  private final Compilers all;
  private final NodeList nodes;

  NumberCompiler(Compilation shared, Compilers all) {
    this.shared = shared;
    this.all = all;
    this.nodes = shared.nodes();
  }

  /** The slot of an expression's value. */
  int slot(Expression expression, Scope scope) {
    if (expression instanceof Expression.Named named) {
      return shared.lookup().number(named.reference(), scope);
    }
    return nodes.add(node(expression, scope), expression.span());
  }

  /** The slot of a rule's value. */
  int slot(NumberRule rule, Scope scope) {
    if (rule instanceof NumberRule.Plain plain) {
      return slot(plain.value(), scope);
    }
    return nodes.add(node(rule, scope), rule.span());
  }

  /** The slot of a condition: 1 where it holds, else 0. */
  int slot(Condition condition, Scope scope) {
    return nodes.add(node(condition, scope), condition.span());
  }

  /** The node of a rule. */
  Node node(NumberRule rule, Scope scope) {
    if (rule instanceof NumberRule.Plain plain) {
      return node(plain.value(), scope);
    } else if (rule instanceof NumberRule.Stepped stepped) {
      return stepped(stepped, scope);
    }
    NumberRule.Chosen chosen = (NumberRule.Chosen) rule;
    List<Integer> amounts = new ArrayList<>();
    List<Integer> conditions = new ArrayList<>();
    boolean branch = nodes.setting().branch();
    nodes.inBranch(true);
    for (NumberRule.Choice choice : chosen.choices()) {
      amounts.add(slot(choice.value(), scope));
      conditions.add(slot(choice.when(), scope));
    }
    amounts.add(slot(chosen.otherwise(), scope));
    nodes.inBranch(branch);
    return new ChoiceNode.Chosen(amounts, conditions);
  }

  private Node stepped(NumberRule.Stepped stepped, Scope scope) {
    List<Integer> amounts = new ArrayList<>();
    List<Integer> from = new ArrayList<>();
    boolean branch = nodes.setting().branch();
    nodes.inBranch(true);
    amounts.add(slot(stepped.first(), scope));
    from.add(0);
    int last = 0;
    boolean known = true;
    for (NumberRule.Step step : stepped.steps()) {
      Optional<Size> size = shared.sizes().find(step.from());
      amounts.add(slot(step.value(), scope));
      from.add(size.map(Size::position).orElse(last));
      known &= size.isPresent();
      if (size.isPresent() && size.get().position() <= last) {
        shared
            .problems()
            .add(
                shared
                    .problems()
                    .at(step.from().span(), "step-downward", nodes.setting().subject())
                    .with("size", size.get().name()));
        known = false;
      }
      last = size.map(Size::position).orElse(last);
    }
    nodes.inBranch(branch);
    return known ? new ChoiceNode.Stepped(amounts, from) : new Broken();
  }

  private Node node(Condition condition, Scope scope) {
    if (condition instanceof Condition.Compared compared) {
      return new ChoiceNode.Compared(
          slot(compared.left(), scope), compared.comparison(), slot(compared.right(), scope));
    } else if (condition instanceof Condition.SizeWithin within) {
      int first = 0;
      int last = Integer.MAX_VALUE;
      if (within.from().isPresent()) {
        Optional<Size> size = shared.sizes().find(within.from().get());
        if (size.isEmpty()) {
          return new Broken();
        }
        first = size.get().position();
      }
      if (within.to().isPresent()) {
        Optional<Size> size = shared.sizes().find(within.to().get());
        if (size.isEmpty()) {
          return new Broken();
        }
        last = size.get().position();
      }
      return new ChoiceNode.Within(first, last);
    }
    Condition.All every = (Condition.All) condition;
    List<Integer> parts = new ArrayList<>();
    for (Condition part : every.parts()) {
      parts.add(slot(part, scope));
    }
    return new ChoiceNode.All(parts);
  }

  /** The node of an expression. */
  Node node(Expression expression, Scope scope) {
    if (expression instanceof Expression.Literal literal) {
      return nodes.literal(literal);
    } else if (expression instanceof Expression.Named named) {
      return new NumberNode.Same(shared.lookup().number(named.reference(), scope));
    } else if (expression instanceof Expression.Negative negative) {
      return new NumberNode.Negative(slot(negative.of(), scope));
    } else if (expression instanceof Expression.Binary sum) {
      return new NumberNode.Sum(sum.operator(), slot(sum.left(), scope), slot(sum.right(), scope));
    } else if (expression instanceof Expression.LengthOf length) {
      return new NumberNode.LengthOf(all.paths().slot(length.path(), scope));
    } else if (expression instanceof Expression.Between between) {
      return new NumberNode.Between(
          between.measure(),
          shared.lookup().point(between.from(), scope),
          shared.lookup().point(between.to(), scope));
    } else if (expression instanceof Expression.GirthOf girth) {
      return all.girths().node(girth, scope);
    } else if (expression instanceof Expression.Either either) {
      return new NumberNode.Either(
          either.larger(), slot(either.first(), scope), slot(either.second(), scope));
    } else if (expression instanceof Expression.Trigonometric ratio) {
      return new NumberNode.Trigonometric(ratio.ratio(), slot(ratio.angle(), scope));
    } else if (expression instanceof Expression.RightTriangle triangle) {
      return new NumberNode.RightTriangle(
          triangle.hypotenuse(), slot(triangle.first(), scope), slot(triangle.second(), scope));
    }
    Expression.Rounded rounded = (Expression.Rounded) expression;
    return new NumberNode.Rounded(
        rounded.way(), slot(rounded.value(), scope), slot(rounded.step(), scope));
  }
}
