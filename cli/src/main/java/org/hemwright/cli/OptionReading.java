package org.hemwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.cloth.rule.ClothSettings;
import org.hemwright.pattern.fabric.StretchTest;
import org.hemwright.pattern.quantity.Length;
import org.hemwright.pattern.quantity.Reading;

/**
 * Reads the lengths and shares that stand behind options. What is none is read as 0 and told, with
 * what would mend it.
 *
 * @param problems those that were told; grows
 */
record OptionReading(List<String> problems) {
  private static final double MOST_SHRINKAGE = 0.5;
  private static final double MOST_STRETCH = 5;

  /** No loom is wider (mm); common practice, no source. */
  private static final double WIDEST = 5_000;

  /** A bolt is no longer (mm), nor is a gap or a repeat; common practice, no source. */
  private static final double LONGEST = 50_000;

  /** For what was read and told before. */
  static OptionReading again() {
    return new OptionReading(new ArrayList<>());
  }

  /** Tells what is wrong with what stands behind an option, and its mend. */
  void tell(String option, String text, String wrong) {
    problems.add(option + " " + text + ": " + wrong);
  }

  /** A width of cloth as sold (mm), of which its selvedges leave something. */
  double width(String text) {
    int known = problems.size();
    double width = length("--width", text);
    if (problems.size() == known && width <= 2 * ClothSettings.HANDBOOK.selvedge()) {
      tell("--width", text, "nothing is left between the selvedges; give the width as sold");
    }
    if (problems.size() == known && width > WIDEST) {
      tell("--width", text, "no cloth is wider than 5 m; write it as 135cm or 54in");
    }
    return width;
  }

  /** Looks at a length that must be above 0. */
  void some(String option, String text) {
    int known = problems.size();
    double some = length(option, text);
    if (problems.size() == known && !(some > 0)) {
      tell(option, text, "that is nothing; write it as 1.4m, 54in or 1 1/2yd");
    }
  }

  /** A length (mm), 0 or more. */
  double length(String option, String text) {
    double mm = anyLength(option, text);
    if (mm > LONGEST) {
      tell(option, text, "that is more than 50 m; write it as 1.4m or 54in");
    }
    return mm;
  }

  /** The same where it is said. */
  OptionalDouble length(String option, Optional<String> text) {
    return text.map(said -> OptionalDouble.of(length(option, said))).orElse(OptionalDouble.empty());
  }

  private double anyLength(String option, String text) {
    String trimmed = text.strip();
    if (trimmed.matches("[0-9]+([.][0-9]+)? ?m")) {
      return 1000 * number(option, trimmed.replaceAll(" ?m$", ""));
    }
    if (trimmed.matches("[0-9./ ]+ ?yd")) {
      Reading<Length> inches = Length.read(trimmed.replaceAll(" ?yd$", " in"));
      return 36 * inches(option, text, inches);
    }
    return inches(option, text, Length.read(trimmed));
  }

  private double inches(String option, String text, Reading<Length> reading) {
    if (reading instanceof Reading.Read<Length> read && read.value().mm() >= 0) {
      return read.value().mm();
    }
    tell(option, text, "that is no length; write it as 135cm, 1.4m, 54in or 1 1/2yd");
    return 0;
  }

  /** A number without a unit. */
  double number(String option, String text) {
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException notANumber) {
      tell(option, text, "that is no number");
      return 0;
    }
  }

  /** How much cloth shrinks, as a share from 0. */
  double shrinkage(String option, String text) {
    return share(option, text, MOST_SHRINKAGE, "5%");
  }

  /** How far cloth stretches, as a share from 0: {@code 40%}, or {@code 4in to 5.4in}. */
  OptionalDouble stretch(String option, Optional<String> text) {
    return text.map(
            said ->
                OptionalDouble.of(
                    said.contains(" to ")
                        ? pulled(option, said)
                        : share(
                            option,
                            said,
                            MOST_STRETCH,
                            "40%, or how far it goes, such as \"10cm to 14cm\"")))
        .orElse(OptionalDouble.empty());
  }

  /** As she measured it along a ruler. */
  private double pulled(String option, String said) {
    String[] ends = said.split(" to ", 2);
    double rest = length(option, ends[0]);
    double stretched = length(option, ends[1]);
    if (!(rest > 0) || !(stretched >= rest)) {
      tell(option, said, "write the length at rest first, as in \"10cm to 14cm\"");
      return 0;
    }
    return new StretchTest(rest, stretched, OptionalDouble.empty()).stretch();
  }

  private double share(String option, String text, double below, String such) {
    String trimmed = text.strip();
    if (trimmed.matches("[0-9]+([.][0-9]+)? ?%")) {
      double share = number(option, trimmed.replaceAll(" ?%$", "")) / 100;
      if (share < below) {
        return share;
      }
    }
    tell(option, text, "write a share below " + Math.round(100 * below) + "%, such as " + such);
    return 0;
  }
}
