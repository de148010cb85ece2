package org.hemwright.workbench.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.yardage.BuyingLength;
import org.hemwright.cloth.yardage.YardageGroup;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.quantity.DecimalText;
import org.hemwright.pattern.quantity.LengthFormat;
import org.hemwright.pattern.quantity.LengthKind;

/** What a yardage table says, in the units that the document puts first. */
final class YardageWords {
  private static final String BETWEEN = " \u00b7 ";

  private final boolean inches;
  private final LengthFormat lengths;
  private final boolean severalViews;

  YardageWords(SizeRun run) {
    inches = run.pattern().details().units() == Details.Units.INCHES;
    lengths =
        LengthFormat.of(
            inches ? LengthFormat.Edition.INCHES_ONLY : LengthFormat.Edition.METRIC_ONLY);
    severalViews = run.pattern().views().size() > 1;
  }

  String length(double mm) {
    return lengths.text(mm, LengthKind.FINISHED);
  }

  String heading(YardageGroup.Heading heading) {
    String view = severalViews ? "View " + heading.view().name() + ", " : "";
    return view
        + heading.fabric().name()
        + ": "
        + heading.fabric().title()
        + (heading.nap() == Fabric.Nap.ONE_WAY ? ", with nap" : ", without nap");
  }

  String buy(Optional<BuyingLength> buy) {
    return buy.map(
            each ->
                inches
                    ? yards(each) + BETWEEN + metres(each)
                    : metres(each) + BETWEEN + yards(each))
        .orElse("does not fit");
  }

  static String metres(BuyingLength buy) {
    return DecimalText.of(buy.metres(), 1) + " m";
  }

  static String yards(BuyingLength buy) {
    int whole = buy.eighths() / 8;
    int rest = buy.eighths() % 8;
    int common = rest == 0 ? 1 : Integer.lowestOneBit(rest);
    String part = rest == 0 ? "" : rest / common + "/" + 8 / common;
    return (whole == 0 ? part : (whole + " " + part).strip()) + " yd";
  }

  static String sizes(List<Size> sizes) {
    String first = sizes.get(0).name();
    return sizes.size() == 1 ? first : first + " to " + sizes.get(sizes.size() - 1).name();
  }

  static String fold(Fold fold) {
    return switch (fold) {
      case LENGTHWISE -> "folded lengthwise";
      case PARTIAL -> "partly folded";
      case DOUBLE -> "both selvedges folded to the middle";
      case CROSSWISE -> "folded crosswise";
      case SINGLE -> "single";
    };
  }

  static OptionalDouble number(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }
}
