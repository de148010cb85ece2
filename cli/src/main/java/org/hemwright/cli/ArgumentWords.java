package org.hemwright.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is wrong with the arguments, as a sentence, and what would mend it. */
final class ArgumentWords {
  private ArgumentWords() {}

  /** {@code hemwright draw: --as gif: this is none of png and svg; hemwright draw --help …}. */
  static String of(ParameterException problem) {
    String name = problem.getCommandLine().getCommandSpec().qualifiedName();
    return name + ": " + sentence(problem) + "; " + mend(problem, name);
  }

  private static String sentence(ParameterException problem) {
    if (problem instanceof UnmatchedArgumentException unmatched) {
      return String.join(" ", unmatched.getUnmatched()) + " is not known here";
    }
    if (problem instanceof MissingParameterException missing) {
      List<String> names =
          missing.getMissing().stream().map(ArgumentWords::label).distinct().toList();
      return listed(names, " and ") + (names.size() == 1 ? " is missing" : " are missing");
    }
    ArgSpec argument = problem.getArgSpec();
    String value = problem.getValue();
    if (argument == null || value == null) {
      String message = problem.getMessage();
      return message == null
          ? "the arguments cannot be read"
          : message.lines().findFirst().orElse("");
    }
    return label(argument) + " " + value + ": " + expected(argument, value);
  }

  /** What kind of value belongs there, from the type that the argument takes. */
  private static String expected(ArgSpec argument, String value) {
    List<Class<?>> types =
        Stream.concat(Stream.of(argument.type()), Arrays.stream(argument.auxiliaryTypes()))
            .toList();
    for (Class<?> type : types) {
      Object[] constants = type.getEnumConstants();
      if (constants != null) {
        List<String> names =
            Arrays.stream(constants).map(each -> each.toString().toLowerCase(Locale.ROOT)).toList();
        return "it takes " + listed(names, " or ");
      }
      if (type == long.class || type == Long.class || type == int.class || type == Integer.class) {
        return "“" + value + "” is no whole number";
      }
      if (type == double.class || type == Double.class) {
        return "“" + value + "” is no number";
      }
    }
    return "“" + value + "” does not belong here";
  }

  private static String mend(ParameterException problem, String name) {
    if (problem instanceof UnmatchedArgumentException unmatched
        && !unmatched.getSuggestions().isEmpty()) {
      return "did you mean " + String.join(" or ", unmatched.getSuggestions()) + "?";
    }
    return name + " --help shows what there is";
  }

  private static String label(ArgSpec argument) {
    return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
  }

  private static String listed(List<String> names, String last) {
    int end = names.size() - 1;
    return end < 1
        ? names.stream().collect(Collectors.joining())
        : String.join(", ", names.subList(0, end)) + last + names.get(end);
  }
}
