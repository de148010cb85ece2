package org.hemwright.draft.syntax;

import java.util.Optional;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Needle;

/** What a line of {@code make} does; see {@link Act}, whose acts these become. */
public sealed interface StepRule {
  /** {@code sew}. */
  record Sew() implements StepRule {}

  /** {@code attach … by quarters}. */
  record Attach(int parts) implements StepRule {}

  /** {@code set in}. */
  record SetIn() implements StepRule {}

  /** {@code hand sew}. */
  record HandSew() implements StepRule {}

  /** {@code finish … [together | apart]}; empty where neither is said. */
  record Finish(Optional<Boolean> together) implements StepRule {}

  /** {@code leave raw … ["why"]}. */
  record LeaveRaw(Optional<String> why) implements StepRule {}

  /** {@code hem}. */
  record Hem() implements StepRule {}

  /** {@code bind … [in tape 12 mm]}. */
  record Bind(Optional<Expression> tape) implements StepRule {}

  /** {@code topstitch} and its like. */
  record Stitching(Act.Line line) implements StepRule {}

  /** {@code form casing … for waist_elastic}. */
  record FormCasing(Name held) implements StepRule {}

  /** {@code thread waist_elastic through feed}. */
  record ThreadThrough(Name held, Name opening) implements StepRule {}

  /** {@code lay waist_elastic in band}. */
  record LayIn(Name held) implements StepRule {}

  /** {@code apply waist_elastic to panel.waist by quarters}; 0 parts where none are said. */
  record Apply(Name held, int parts) implements StepRule {}

  /** {@code join waist_elastic [overlapped | end to end]}. */
  record JoinEnds(Name held, boolean overlapped) implements StepRule {}

  /** {@code insert zip in back_opening}. */
  record InsertZip() implements StepRule {}

  /** {@code close}. */
  record Close() implements StepRule {}

  /** {@code press … open}. */
  record Press(PressRule way) implements StepRule {}

  /** {@code fold band [along fold_line] wrong sides together}. */
  record Fold(Optional<Name> along, boolean wrongSidesTogether) implements StepRule {}

  /** {@code clip}, {@code trim … to 3 mm}. */
  record CutInto(Act.Cutting how, Optional<Expression> to) implements StepRule {}

  /** {@code turn out}, {@code try on ["words"]}. */
  record Handle(Act.Handling how, Optional<String> words) implements StepRule {}

  /** {@code fuse collar with interfacing}. */
  record Fuse(Optional<Name> fabric) implements StepRule {}

  /** {@code buttonhole 5 of 15 mm in front}. */
  record Fasten(Act.Fastening what, int count, Expression size) implements StepRule {}

  /** {@code do "words"}. */
  record Own(String words) implements StepRule {}

  /** Which way to press, as written. */
  sealed interface PressRule {
    /** {@code open}, {@code up}, {@code down}, {@code flat}. */
    record Way(String word) implements PressRule {}

    /** {@code toward back [seen from the right side]}. */
    record Toward(WorkName piece, boolean seenFromRight) implements PressRule {}
  }

  /** {@code twin stretch 75 to 90 4 mm apart}. */
  record NeedleRule(
      boolean twin,
      Needle.Point point,
      int from,
      Optional<Integer> to,
      Optional<Expression.Literal> apart,
      Span span) {}
}
