package org.hemwright.paper.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.yardage.BuyingLength;
import org.hemwright.cloth.yardage.YardageGroup;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.SizeWords;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.quantity.DecimalText;
import org.hemwright.pattern.quantity.LengthFormat;
import org.hemwright.pattern.quantity.LengthKind;
import org.hemwright.pattern.split.SplitChoice;

/** What is said of cloth, in the units and the spelling that the document asks for. */
public final class ClothWords {
  private static final String BETWEEN = " \u00b7 ";
  private static final int EIGHTHS = 8;
  private static final double MM2_PER_METRE2 = 1e6;
  private static final double MM2_PER_YARD2 = 914.4 * 914.4;

  private final boolean inches;
  private final boolean typographic;
  private final boolean british;
  private final boolean severalViews;
  private final LengthFormat lengths;
  private final LengthFormat both;
  private final SizeRun run;

  /**
   * The words for a run.
   *
   * @param typographic whether fractions are written to be set as fractions
   */
  public ClothWords(SizeRun run, boolean typographic) {
    this.run = run;
    Details details = run.pattern().details();
    inches = details.units() == Details.Units.INCHES;
    british = details.spelling() == Details.Spelling.BRITISH;
    severalViews = run.pattern().views().size() > 1;
    this.typographic = typographic;
    LengthFormat plain =
        LengthFormat.of(
            inches ? LengthFormat.Edition.INCHES_ONLY : LengthFormat.Edition.METRIC_ONLY);
    lengths = typographic ? plain.withTypographicFractions() : plain;
    LengthFormat two =
        LengthFormat.of(
            inches ? LengthFormat.Edition.INCHES_FIRST : LengthFormat.Edition.METRIC_FIRST);
    both = typographic ? two.withTypographicFractions() : two;
  }

  /** A length (mm) in the unit that stands first. */
  public String length(double mm) {
    return lengths.text(mm, LengthKind.FINISHED);
  }

  /** A length (mm) in both units. */
  public String lengthInBoth(double mm) {
    return both.text(mm, LengthKind.FINISHED);
  }

  /** An area (mm²) of cloth in the unit that stands first: "0.35 m²". */
  public String area(double mm2) {
    return inches
        ? DecimalText.of(mm2 / MM2_PER_YARD2, 2) + " yd\u00b2"
        : DecimalText.of(mm2 / MM2_PER_METRE2, 2) + " m\u00b2";
  }

  /** What something costs, in whatever money, to a hundredth: "12.50". */
  public static String money(double amount) {
    return BigDecimal.valueOf(amount).setScale(2, RoundingMode.HALF_UP).toPlainString();
  }

  /**
   * "View B, main: Cotton jersey, with nap"; the view only where there are several, the nap only
   * where the cloth may have one. Of a cloth with stripes the repeat that it is laid for: "plaid:
   * Cotton check, repeat 10.8 cm along and 9 cm across".
   */
  public String heading(View view, Fabric fabric, Fabric.Nap nap) {
    return (severalViews ? "View " + view.name() + ", " : "")
        + fabric.name()
        + ": "
        + fabric.title()
        + (fabric.sidesAlike() ? ", both sides alike" : "")
        + fabric
            .repeat()
            .map(repeat -> ", " + repeat(repeat))
            .orElse(
                nap == Fabric.Nap.ONE_WAY
                    ? ", with nap"
                    : fabric.hasNoNap() ? "" : ", without nap");
  }

  /** "repeat 10.8 cm along and 9 cm across (uneven across)". */
  public String repeat(Fabric.Repeat repeat) {
    List<String> ways = new ArrayList<>();
    repeat.along().ifPresent(every -> ways.add(length(every) + " along"));
    repeat.across().ifPresent(every -> ways.add(length(every) + " across"));
    List<String> uneven = new ArrayList<>();
    if (repeat.unevenAlong()) {
      uneven.add("along");
    }
    if (repeat.unevenAcross()) {
      uneven.add("across");
    }
    return "repeat "
        + String.join(" and ", ways)
        + (uneven.isEmpty() ? "" : " (uneven " + String.join(" and ", uneven) + ")");
  }

  /** "1.6 m · 1 3/4 yd", or that it does not fit. */
  public String buy(Optional<BuyingLength> buy) {
    return buy.map(this::buy).orElse("does not fit");
  }

  /** "1.6 m · 1 3/4 yd". */
  public String buy(BuyingLength buy) {
    String metres = DecimalText.of(buy.metres(), 1) + " m";
    return inches ? yards(buy) + BETWEEN + metres : metres + BETWEEN + yards(buy);
  }

  private String yards(BuyingLength buy) {
    int whole = buy.eighths() / EIGHTHS;
    int rest = buy.eighths() % EIGHTHS;
    if (rest == 0) {
      return whole + " yd";
    }
    int common = Integer.lowestOneBit(rest);
    String bar = typographic ? "\u2044" : "/";
    String part = rest / common + bar + EIGHTHS / common + " yd";
    return whole == 0 ? part : whole + " " + part;
  }

  /** "8 to 14". */
  public static String sizes(List<Size> sizes) {
    String first = sizes.get(0).name();
    return sizes.size() == 1 ? first : first + " to " + sizes.get(sizes.size() - 1).name();
  }

  /**
   * The pieces that are cut apart on one width, each with the sizes in which it is.
   *
   * @param groups of one view, cloth and nap
   * @param width which of their widths
   */
  public Map<String, List<String>> variants(List<YardageGroup> groups, int width) {
    Map<String, List<String>> sizes = new LinkedHashMap<>();
    for (YardageGroup group : groups) {
      for (Optional<YardageRow> best : group.best().get(width)) {
        for (SplitChoice choice : best.map(YardageRow::variant).orElse(List.of())) {
          sizes
              .computeIfAbsent(cutApart(choice), unused -> new ArrayList<>())
              .add(best.orElseThrow().size().name());
        }
      }
    }
    return sizes;
  }

  /** "Waistband cut apart (band halves)". */
  public String cutApart(SplitChoice choice) {
    String title =
        run.pattern().pieces().stream()
            .filter(card -> card.name().equals(choice.piece()))
            .map(PieceCard::title)
            .findFirst()
            .orElse(choice.piece());
    return title + " cut apart (" + Speech.spoken(choice.split()) + ")";
  }

  /** "Waistband cut apart (band halves) in sizes 28 to 42; …". */
  public String cutApart(Map<String, List<String>> sizes) {
    SizeWords chart =
        new SizeWords(run.pattern().chart().sizes().stream().map(Size::name).toList());
    List<String> all = new ArrayList<>();
    sizes.forEach((piece, own) -> all.add(piece + " in " + chart.of(own)));
    return String.join("; ", all);
  }

  /** How the cloth is folded: "folded lengthwise". */
  public static String fold(Fold fold) {
    return switch (fold) {
      case LENGTHWISE -> "folded lengthwise";
      case PARTIAL -> "partly folded";
      case DOUBLE -> "both selvedges folded to the middle";
      case CROSSWISE -> "folded crosswise";
      case SINGLE -> "single";
    };
  }

  /** What the maker cuts: cloth or fabric. */
  public String cloth() {
    return british ? "cloth" : "fabric";
  }

  /** The woven edge: selvedge or selvage. */
  public String selvedge() {
    return british ? "selvedge" : "selvage";
  }
}
