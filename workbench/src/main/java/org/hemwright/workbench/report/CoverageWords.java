package org.hemwright.workbench.report;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.hemwright.pattern.body.BodySurvey;
import org.hemwright.pattern.body.Coverage;
import org.hemwright.pattern.finding.SizeWords;

/** Whom a size chart serves, in words. What is not known is said so, and is never a warning. */
public final class CoverageWords {
  private CoverageWords() {}

  /** One sentence or two for an answer. */
  public static String of(Coverage.Answer answer, SizeWords sizes) {
    return answer.coverage().map(coverage -> known(coverage, sizes)).orElseGet(() -> none(answer));
  }

  private static String none(Coverage.Answer answer) {
    return "Whom the size chart serves: no data. "
        + switch (answer.because().orElseThrow()) {
          case WEARERS_UNSAID ->
              "The document does not say whom the chart is for; a line such as `for women` would.";
          case NOT_SURVEYED ->
              "The survey holds serving adults of 17 to 58 years, and too few others to speak for"
                  + " those that this chart is for.";
          case NO_MEASUREMENT ->
              "The chart has no bust, chest or hip, and no other measurement that the survey took in"
                  + " the same way.";
          case NO_SIZES -> "The survey holds too few bodies about the sizes of this chart.";
        };
  }

  private static String known(Coverage coverage, SizeWords sizes) {
    String by =
        coverage.dimensions().stream()
            .map(dimension -> dimension.column().replace('_', ' '))
            .collect(Collectors.joining(" and "));
    StringBuilder text = new StringBuilder();
    text.append(
        "%s of %s as surveyed lie within half a step of some one size by %s%s."
            .formatted(
                capital(about(coverage.share())),
                who(coverage),
                by,
                coverage.dimensions().size() > 1 ? " together" : ""));
    if (coverage.dimensions().size() > 1) {
      String alone =
          coverage.dimensions().stream()
              .map(each -> share(each.share()) + " by " + each.column().replace('_', ' '))
              .collect(Collectors.joining(" and "));
      text.append(" By one alone it is ").append(alone).append('.');
    }
    List<String> unknown =
        coverage.sizes().stream().filter(s -> !s.held()).map(Coverage.OfSize::name).toList();
    if (!unknown.isEmpty()) {
      String named = sizes.of(unknown);
      text.append(" Of ")
          .append(named)
          .append(" there is no data: the survey holds too few such bodies.");
    }
    return text.toString();
  }

  /** What the figures rest on. */
  public static String basis(Coverage coverage) {
    String leftOut =
        coverage.leftOut().isEmpty()
            ? ""
            : " %s is left out, since the survey measured it elsewhere on the body (its waist goes round the navel)."
                .formatted(capital(String.join(", ", coverage.leftOut()).replace('_', ' ')));
    return ("An estimate to two or three in a hundred, from the means, deviations and correlations of"
            + " %,d %s in the %s. These are serving adults of 17 to 58 years, fitter than the public,"
            + " few of them very large or small; so it says how the sizes lie among such bodies, not"
            + " who will buy.%s")
        .formatted(coverage.survey().people(), who(coverage), BodySurvey.NAME, leftOut);
  }

  private static String about(double share) {
    return share < 0.01 || share > 0.99 ? share(share) : "about " + share(share);
  }

  /** A share as one may say it: {@code 27%}; nearly none and nearly all are said so. */
  public static String share(double share) {
    if (share > 0 && share < 0.01) {
      return "less than 1%";
    }
    return share > 0.99 ? "more than 99%" : String.format(Locale.ROOT, "%.0f%%", share * 100);
  }

  private static String who(Coverage coverage) {
    return coverage.survey().sex() == BodySurvey.Sex.WOMEN ? "women" : "men";
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
