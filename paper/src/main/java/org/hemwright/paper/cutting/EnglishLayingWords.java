package org.hemwright.paper.cutting;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.yardage.Need;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.paper.words.ClothWords;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.piece.PieceCard;

/** Layouts in English. */
final class EnglishLayingWords implements LayingWords {
  private static final char NO_BREAK = '\u00a0';

  private final SizeRun run;
  private final ClothWords words;

  EnglishLayingWords(SizeRun run) {
    this.run = run;
    this.words = new ClothWords(run, true);
  }

  @Override
  public String sign(Sign sign) {
    return switch (sign) {
      case RIGHT_SIDE -> "right side of the " + words.cloth();
      case WRONG_SIDE -> "wrong side of the " + words.cloth();
      case SIDES_ALIKE -> words.cloth() + ", both sides alike";
      case PRINTED_UP -> "piece, printed side up";
      case PRINTED_DOWN -> "piece, printed side down";
      case FOLD -> "fold";
      case SELVEDGE -> words.selvedge();
      case GRAIN -> "grain, either way up";
      case GRAIN_ONE_WAY -> "grain, all one way";
      case ON_FOLD -> "piece on the fold: not cut there";
      case TURNED_OVER -> "fold edge of the pattern: turn it over here for the other half";
      case BAR -> "bars of the " + words.cloth() + ", and notches that match";
      case BAR_UNEVEN ->
          "uneven bars of the "
              + words.cloth()
              + ", a broken line to one side, and notches that match";
      case FOLD_HERE -> "Fold";
      case SELVEDGE_HERE -> capital(words.selvedge());
      case SELVEDGES_HERE -> capital(words.selvedge()) + "s";
      case OPENED_HERE -> "Opened out, single";
    };
  }

  @Override
  public String piece(PieceCard card) {
    return card.title();
  }

  @Override
  public String title(YardageRow row) {
    String view =
        run.pattern().views().size() > 1 ? "View " + row.view().name() + ", size " : "Size ";
    return view + row.size().name() + ", " + words.lengthInBoth(row.width()) + " wide";
  }

  @Override
  public String facts(YardageRow row, boolean named) {
    Need need = row.need().orElseThrow();
    String fold = fold(row);
    return (named ? LayingPicture.fabric(row) + ", " + fold : capital(fold))
        + ": "
        + words.lengthInBoth(need.length()).replace(' ', NO_BREAK)
        + ", buy"
        + NO_BREAK
        + words.buy(need.buy()).replace(' ', NO_BREAK);
  }

  @Override
  public Optional<String> stripes(YardageRow row) {
    return row.fabric()
        .repeat()
        .map(repeat -> capital(words.repeat(repeat)) + ". " + caution(StripeCaution.of(row)));
  }

  private static String caution(StripeCaution caution) {
    return switch (caution) {
      case FOLDED_ON_A_BAR -> "Fold it along a bar, and pin the layers bar on bar.";
      case FOLDED -> "Pin the layers bar on bar.";
      case SINGLE -> "Place every piece by the bars.";
      case UNEVEN -> "Never fold it; lay all pieces one way, each by the bars.";
    };
  }

  /** How the cloth lies, how deep it is folded where that is open, and which side is up. */
  private String fold(YardageRow row) {
    String how = ClothWords.fold(row.fold()).replace("selvedge", words.selvedge());
    String deep =
        LayingWords.foldedDeep(row.need().orElseThrow().laying()).stream()
            .mapToObj(mm -> ", " + words.lengthInBoth(mm).replace(' ', NO_BREAK) + " deep")
            .collect(Collectors.joining());
    if (row.fabric().sidesAlike()) {
      return how + (row.fold() == Fold.SINGLE ? " layer" : "") + deep;
    }
    String side =
        row.fold() == Fold.SINGLE
            ? " layer, right side up"
            : LayingWords.isRightOut(row.fabric())
                ? ", wrong sides together"
                : ", right sides together";
    return how + deep + side;
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
