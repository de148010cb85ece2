package org.hemwright.cloth.byhand;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.ClothPiece;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.rule.LaidPiece;
import org.hemwright.cloth.rule.LayingRules;
import org.hemwright.cloth.yardage.BuyingLength;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Messages;
import org.hemwright.pattern.finding.Origin;

/**
 * All layings by hand of a pattern, as they are kept in its folder.
 *
 * @param layings each cloth once
 * @param findings lines that could not be read
 */
public record OwnLayings(List<OwnLaying> layings, List<Finding> findings) {
  /** The table's name in the pattern's folder. */
  public static final String FILE = "layings.csv";

  private static final String HEAD =
      "view,fabric,nap,size,width (mm),fold,piece,copy,turned,mirrored,along (mm),across (mm)";
  private static final String ABOUT =
      "# Layings arranged by hand, a line for each piece: how far its own origin lies along the"
          + " cloth\n"
          + "# from the cut end, and across it from the fold or the selvedge. Take out the lines of"
          + " one\n"
          + "# cloth, and it is laid anew.\n";
  private static final int COLUMNS = 12;

  /** None. */
  public static final OwnLayings NONE = new OwnLayings(List.of(), List.of());

  public OwnLayings {
    layings = List.copyOf(layings);
    findings = List.copyOf(findings);
  }

  /** The sentences for what can be found. */
  public static Messages messages() {
    return Messages.beside(OwnLayings.class, "byhand.properties");
  }

  /** Reads the table. A line that cannot be read is told, and its cloth is laid anew. */
  public static OwnLayings read(String text) {
    Map<OwnLaying.OfCloth, List<OwnPlace>> places = new LinkedHashMap<>();
    List<Finding> findings = new ArrayList<>();
    List<String> lines = text.lines().toList();
    boolean head = true;
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i).strip();
      if (line.isEmpty() || line.startsWith("#")) {
        continue;
      }
      if (head) {
        head = false;
        continue;
      }
      try {
        List<String> cells = cells(line);
        OwnPlace place = place(cells);
        places.computeIfAbsent(cloth(cells), none -> new ArrayList<>()).add(place);
      } catch (IllegalArgumentException | IndexOutOfBoundsException unreadable) {
        findings.add(
            Finding.warn("laying-line-unread", FILE)
                .with("line", Argument.of(i + 1))
                .at(new Origin(FILE, i + 1, 1))
                .build());
      }
    }
    List<OwnLaying> layings = new ArrayList<>();
    places.forEach((cloth, own) -> layings.add(new OwnLaying(cloth, own)));
    return new OwnLayings(layings, findings);
  }

  private static OwnLaying.OfCloth cloth(List<String> cells) {
    return new OwnLaying.OfCloth(
        cells.get(0),
        cells.get(1),
        Fabric.Nap.valueOf(named(cells.get(2))),
        cells.get(3),
        number(cells.get(4)),
        Fold.valueOf(named(cells.get(5))));
  }

  private static OwnPlace place(List<String> cells) {
    return new OwnPlace(
        cells.get(6),
        Integer.parseInt(cells.get(7)),
        yes(cells.get(8)),
        yes(cells.get(9)),
        number(cells.get(10)),
        number(cells.get(11)));
  }

  private static String named(String cell) {
    return cell.toUpperCase(Locale.ROOT).replace(' ', '_');
  }

  private static boolean yes(String cell) {
    if (!cell.equals("yes") && !cell.equals("no")) {
      throw new IllegalArgumentException("yes or no, not " + cell);
    }
    return cell.equals("yes");
  }

  private static double number(String cell) {
    double number = Double.parseDouble(cell);
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException("a length, not " + cell);
    }
    return number;
  }

  /** The cells of a line; one with a comma or a quote stands in quotes, its quotes doubled. */
  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
        cell.append(c);
        i++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        cells.add(cell.toString().strip());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(cell.toString().strip());
    if (cells.size() != COLUMNS) {
      throw new IllegalArgumentException(cells.size() + " columns");
    }
    return cells;
  }

  /** The table as text. */
  public String text() {
    StringBuilder text = new StringBuilder(ABOUT).append(HEAD).append('\n');
    for (OwnLaying laying : layings) {
      OwnLaying.OfCloth cloth = laying.cloth();
      String start =
          String.join(
              ",",
              quoted(cloth.view()),
              quoted(cloth.fabric()),
              words(cloth.nap()),
              quoted(cloth.size()),
              plain(cloth.width()),
              words(cloth.fold()));
      for (OwnPlace place : laying.places()) {
        text.append(
            String.join(
                ",",
                start,
                quoted(place.item()),
                Integer.toString(place.copy()),
                place.turned() ? "yes" : "no",
                place.mirrored() ? "yes" : "no",
                plain(place.along()),
                plain(place.across())));
        text.append('\n');
      }
    }
    return text.toString();
  }

  private static String words(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String plain(double mm) {
    return mm == Math.rint(mm) ? Long.toString((long) mm) : Double.toString(mm);
  }

  private static String quoted(String cell) {
    return cell.contains(",") || cell.contains("\"") || !cell.equals(cell.strip())
        ? '"' + cell.replace("\"", "\"\"") + '"'
        : cell;
  }

  /** The laying of a cloth, where there is one. */
  public Optional<OwnLaying> of(OwnLaying.OfCloth cloth) {
    return layings.stream().filter(each -> each.cloth().equals(cloth)).findFirst();
  }

  /** The same with a laying in the place of what there was for its cloth. */
  public OwnLayings with(OwnLaying laying) {
    List<OwnLaying> others = new ArrayList<>(without(laying.cloth()).layings());
    others.add(laying);
    return new OwnLayings(others, List.of());
  }

  /** The same without the laying of a cloth. */
  public OwnLayings without(OwnLaying.OfCloth cloth) {
    return new OwnLayings(
        layings.stream().filter(each -> !each.cloth().equals(cloth)).toList(), List.of());
  }

  /** Everything that speaks against a laying of a row's cloth. */
  public static List<String> objections(YardageRow row, ClothLaying laying) {
    List<ClothPiece> pieces =
        row.need().orElseThrow().laying().pieces().stream()
            .map(LaidPiece::piece)
            .distinct()
            .toList();
    return new LayingRules(pieces, row.nap(), row.fabric().repeat()).objections(laying);
  }

  /**
   * A table in which every row that she laid by hand, and that her laying still holds for, takes
   * it, and is the one to be drawn; a finding for each laying that holds no longer.
   */
  public YardageTable applied(YardageTable table) {
    List<Finding> told = new ArrayList<>(findings);
    List<YardageRow> rows = new ArrayList<>(table.rows());
    for (OwnLaying own : layings) {
      for (int i = 0; i < rows.size(); i++) {
        YardageRow row = rows.get(i);
        if (OwnLaying.OfCloth.of(row).equals(own.cloth()) && row.fits()) {
          Optional<ClothLaying> laying = own.on(row.need().orElseThrow().laying());
          if (laying.isPresent() && objections(row, laying.get()).isEmpty()) {
            take(rows, i, OwnLaying.taking(row, laying.get()));
          } else {
            told.add(idle(row, laying.isPresent()));
          }
          break;
        }
      }
    }
    List<YardageRow> handedOn = HandedOn.of(rows, layings);
    handedOn.stream()
        .filter(row -> row.best() && row.fits() && of(OwnLaying.OfCloth.of(row)).isPresent())
        .forEach(row -> narrower(row, handedOn).ifPresent(less -> told.add(longer(row, less))));
    return new YardageTable(handedOn, told);
  }

  /**
   * A table of cloth that shrinks before it is cut, which takes none of the layings by hand; says
   * so where there are any.
   */
  public YardageTable setAside(YardageTable table) {
    List<Finding> told = new ArrayList<>(table.findings());
    if (!layings.isEmpty()) {
      told.add(Finding.warn("laying-set-aside", FILE).at(new Origin(FILE, 1, 1)).build());
    }
    return new YardageTable(table.rows(), told);
  }

  /** The drawn row of a narrower cloth that buys less, if there is one. */
  private static Optional<YardageRow> narrower(YardageRow own, List<YardageRow> rows) {
    return rows.stream()
        .filter(row -> row.best() && row.fits() && row.width() < own.width())
        .filter(
            row ->
                row.view().equals(own.view())
                    && row.fabric().equals(own.fabric())
                    && row.nap() == own.nap()
                    && row.size().equals(own.size()))
        .filter(
            row -> buy(row).tenths() < buy(own).tenths() || buy(row).eighths() < buy(own).eighths())
        .findFirst();
  }

  private static BuyingLength buy(YardageRow row) {
    return row.need().orElseThrow().buy();
  }

  private static Finding longer(YardageRow own, YardageRow narrower) {
    return Finding.warn("laying-longer", own.fabric().name())
        .sizes(List.of(own.size().name()))
        .with("fabric", own.fabric().name())
        .with("width", Argument.mm(own.width()))
        .with("fold", words(own.fold()))
        .with("length", Argument.mm(own.need().orElseThrow().length()))
        .with("narrow", Argument.mm(narrower.width()))
        .with("less", Argument.mm(narrower.need().orElseThrow().length()))
        .at(new Origin(FILE, 1, 1))
        .build();
  }

  /** Puts a row first among those that differ in nothing but the fold. */
  private static void take(List<YardageRow> rows, int at, YardageRow own) {
    int first = at;
    while (first > 0 && isOfOneCloth(rows.get(first - 1), own)) {
      first--;
    }
    rows.remove(at);
    rows.add(first, own.asBest());
    for (int i = first + 1; i < rows.size() && isOfOneCloth(rows.get(i), own); i++) {
      rows.set(i, rows.get(i).asOther());
    }
  }

  static boolean isOfOneCloth(YardageRow one, YardageRow other) {
    return one.view().equals(other.view())
        && one.fabric().equals(other.fabric())
        && one.nap() == other.nap()
        && one.size().equals(other.size())
        && one.width() == other.width();
  }

  private static Finding idle(YardageRow row, boolean samePieces) {
    return Finding.warn(samePieces ? "laying-idle" : "laying-of-other-pieces", row.fabric().name())
        .sizes(List.of(row.size().name()))
        .with("fabric", row.fabric().name())
        .with("width", Argument.mm(row.width()))
        .with("fold", words(row.fold()))
        .at(new Origin(FILE, 1, 1))
        .build();
  }
}
