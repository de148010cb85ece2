package org.hemwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Laws of the answer to {@code cloth} on a document of odd things: pieces cut once, twice, four and
 * five times, on the fold, mirrored, on the bias, apart; three cloths, one of them with a nap, one
 * piece of two cloths; views that share pieces; sizes that are words.
 */
class ClothFormsTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final List<String> SIZES = List.of("XS", "S/M", "2T", "XXL");
  private static final String SIGNS = "⅛¼⅜½⅝¾⅞";

  private static final String CHART =
      """
      size,waist (cm),hip (cm)
      XS,60,84
      "S/M",86,100
      "2T",112,126
      XXL,130,160
      """;

  private static final String DOCUMENT =
      """
      language 1
      pattern "Odd things"
      version 1.0
      dated 2026-11-25
      by "Tern Cove Patterns"
      sizes from "sizes.csv" base XS
      units centimetres
      fabric main woven "Plain cotton"
        widths 90 cm, 44 in, 118 cm
        nap either way
      fabric velvet woven "Velvet"
        widths 112 cm, 140 cm
        nap one way
      fabric lining woven "Lining"
        widths 90 cm
      piece panel "Panel" number 1
        cut 2 of main, on the fold
        cut 1 of lining, on the fold
        rectangle hip / 4 by 40 cm, edges lower, side, upper, centre
        fold centre
        allowance 1 cm
        grain along centre
      piece band "Waistband" number 2
        cut 1 of main
        cut 2 of velvet
        rectangle waist by 18 cm, edges lower, end_right, upper, end_left
        allowance 1 cm
        grain along end_left
        point half_lower on lower at 50% from start
        point half_upper on upper at 50% from start
        split halves is half_lower to half_upper, allowance 1 cm into left_band, right_band
      piece tall "Tall" number 3
        cut 2 of main, mirrored
        rectangle 20 cm by 80 cm, edges lower, right_side, upper, left_side
        allowance 1 cm
        grain along left_side
      piece five "Five tabs" number 4
        cut 5 of main
        rectangle 12 cm by 7 cm, edges lower, right_side, upper, left_side
        allowance 1 cm
        grain along left_side
      piece four "Four tabs" number 5
        cut 4 of velvet, mirrored
        point a at 0 cm, 0 cm
        point b from a right 10 cm
        point c from b up 14 cm then left 2 cm
        point d from a up 9 cm
        outline low is a to b, right is b to c, top is c to d, left is d to a
        allowance 1 cm
        grain along left
      piece strip "Bias strip" number 6
        cut 1 of lining
        rectangle 60 cm by 4 cm, edges lower, right_side, upper, left_side
        allowance 0 cm
        grain at 45 deg
      seam ring band.end_right with band.end_left
      view A "All"
        pieces panel, band, tall, five, four, strip
      view B "Less"
        pieces panel, band, tall
      """;

  @TempDir Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @BeforeEach
  void oddThings() throws IOException {
    Files.writeString(folder.resolve("pattern.hem"), DOCUMENT);
    Files.writeString(folder.resolve("sizes.csv"), CHART);
  }

  private String run(String... arguments) {
    out.reset();
    err.reset();
    int code = Main.run(out, err, arguments);
    assertThat(code).as(err.toString(StandardCharsets.UTF_8)).isZero();
    return out.toString(StandardCharsets.UTF_8);
  }

  private String cloth(String... arguments) {
    List<String> all = new ArrayList<>(List.of("cloth", folder.toString(), "--work", "300"));
    all.addAll(List.of(arguments));
    return run(all.toArray(String[]::new));
  }

  private List<JsonNode> rows(String... arguments) throws IOException {
    String answer =
        cloth(Stream.concat(Arrays.stream(arguments), Stream.of("--json")).toArray(String[]::new));
    List<JsonNode> rows = new ArrayList<>();
    JSON.readTree(answer).get("rows").forEach(rows::add);
    return rows;
  }

  private String made(String file) throws IOException {
    return Files.readString(folder.resolve("out/cloth").resolve(file));
  }

  private static double length(JsonNode row) {
    return row.get("fits").asBoolean() ? row.get("length_mm").asDouble() : Double.POSITIVE_INFINITY;
  }

  private static String cell(JsonNode row, String... fields) {
    return String.join(" ", Arrays.stream(fields).map(each -> row.get(each).asText()).toList());
  }

  @Test
  void neverMoreForWiderClothNorForAllPiecesNorWithoutNapNorOnSingleClothAlsoWhereAsked()
      throws IOException {
    List<JsonNode> rows = rows();
    rows.addAll(rows("--width", "100cm,125cm"));
    Map<String, List<JsonNode>> bySize = new LinkedHashMap<>();
    for (JsonNode row : rows) {
      bySize.computeIfAbsent(cell(row, "fabric", "size"), none -> new ArrayList<>()).add(row);
    }
    bySize.values().forEach(ClothFormsTest::assertLaws);
  }

  /** On rows of one cloth and size. */
  private static void assertLaws(List<JsonNode> rows) {
    for (JsonNode one : rows) {
      for (JsonNode other : rows) {
        boolean wider = one.get("width_mm").asDouble() <= other.get("width_mm").asDouble();
        boolean fewer = cell(one, "view").compareTo(cell(other, "view")) <= 0;
        boolean nap = one.get("nap").asBoolean() || !other.get("nap").asBoolean();
        boolean single = cell(other, "fold").equals("single");
        boolean best = other.get("best").asBoolean();
        if (wider && fewer && nap && (single || cell(one, "fold").equals(cell(other, "fold")))) {
          if (other.get("fits").asBoolean() || single) {
            assertThat(length(other)).as("%s, %s", one, other).isLessThanOrEqualTo(length(one));
          }
        }
        if (wider && fewer && nap && best && one.get("fits").asBoolean()) {
          for (String unit : List.of("m", "yd")) {
            assertThat(other.get("buy").get(unit).asDouble())
                .as("%s, %s", one, other)
                .isLessThanOrEqualTo(one.get("buy").get(unit).asDouble());
          }
        }
      }
    }
  }

  @Test
  void whatIsBoughtIsEnoughInBothUnitsAndLessThanAStepTooMuch() throws IOException {
    for (String shrink : List.of("0%", "3.3%")) {
      for (JsonNode row : rows("--shrink", shrink)) {
        if (row.get("fits").asBoolean()) {
          double share = Double.parseDouble(shrink.replace("%", "")) / 100;
          double exact = row.get("length_mm").asDouble() / (1 - share);
          assertThat(row.get("bought_mm").asDouble()).isCloseTo(exact, within(1e-6));
          assertStep(row.get("buy").get("m").asDouble() * 10, exact / 100);
          assertStep(row.get("buy").get("yd").asDouble() * 8, exact / 114.3);
        }
      }
    }
  }

  private static void assertStep(double steps, double exact) {
    assertThat(steps).isCloseTo(Math.rint(steps), within(1e-9));
    assertThat(steps).isGreaterThanOrEqualTo(exact - 2e-4).isLessThan(exact + 1);
  }

  /** What is cut apart, by fabric, width and size: as the table says, and as {@code check} does. */
  @Test
  void theTableAndCheckCutApartTheSameOnTheSameWidths() throws IOException {
    Map<String, Set<String>> table = new LinkedHashMap<>();
    for (JsonNode row : rows()) {
      if (row.get("fits").asBoolean()) {
        table
            .computeIfAbsent(cell(row, "fabric", "width_mm", "size"), none -> new TreeSet<>())
            .add(row.get("variant").isNull() ? "" : row.get("variant").asText());
      }
    }
    assertThat(table.values()).allMatch(each -> each.size() == 1);
    Set<String> apart = new TreeSet<>();
    table.forEach(
        (where, variants) ->
            variants.stream().filter(v -> !v.isEmpty()).forEach(v -> apart.add(where)));
    // 60, 86, 112 and 130 cm and twice 1 cm, against the width less twice 1.5 cm of selvedge
    assertThat(apart)
        .containsExactlyInAnyOrder(
            "main 900 S/M",
            "main 900 2T",
            "main 900 XXL",
            "main 1117.6 2T",
            "main 1117.6 XXL",
            "main 1180 XXL",
            "velvet 1120 2T",
            "velvet 1120 XXL");
    out.reset();
    Main.run(out, err, "check", folder.toString(), "--json");
    Set<String> checked = new TreeSet<>();
    for (JsonNode check : JSON.readTree(out.toByteArray()).get("checks")) {
      String message = check.get("message").asText();
      if (message.contains("is cut apart")) {
        Matcher where = Pattern.compile("On (\\w+) ([0-9.]+) cm").matcher(message);
        assertThat(where.find()).isTrue();
        String width = plain(Double.parseDouble(where.group(2)) * 10);
        check
            .get("sizes")
            .forEach(size -> checked.add(where.group(1) + " " + width + " " + size.asText()));
      }
    }
    // 44 in are 111.76 cm, which is told to a millimetre, as the table tells it
    Set<String> told = new TreeSet<>();
    apart.forEach(where -> told.add(where.replace(" 1117.6 ", " 1118 ")));
    assertThat(checked).isEqualTo(told);
  }

  @Test
  void theBookletSaysWhatIsCutApartOnWhichClothInWhichSizes() throws IOException {
    run("booklet", folder.toString(), "--size", "2T,XXL", "--out", folder.resolve("b").toString());
    Path page;
    try (Stream<Path> all = Files.list(folder.resolve("b"))) {
      page = all.filter(each -> each.toString().endsWith("booklet.html")).findFirst().orElseThrow();
    }
    String said = Files.readString(page).replaceAll("<[^>]*>", "").replaceAll("[\\s\u00a0]+", " ");
    assertThat(said)
        .contains(
            "Waistband (2) is too wide in one for Plain cotton 90 cm · 35⅜ in wide (all sizes),"
                + " Plain cotton 111.8 cm · 44 in wide (all sizes),"
                + " Plain cotton 118 cm · 46½ in wide (size XXL) and"
                + " Velvet 112 cm · 44⅛ in wide (all sizes). There it is cut apart");
  }

  @Test
  void aFoldNeedsTheSameWhetherOthersAreShownOrNot() throws IOException {
    List<JsonNode> every = rows("--view", "A", "--fabric", "main", "--size", "XS,2T");
    for (String fold : List.of("single", "lengthwise")) {
      List<JsonNode> alone =
          rows("--view", "A", "--fabric", "main", "--size", "XS,2T", "--fold", fold);
      assertThat(alone).isNotEmpty().allMatch(row -> cell(row, "fold").equals(fold));
      assertThat(alone)
          .filteredOn(row -> row.get("fits").asBoolean())
          .allMatch(row -> row.get("best").asBoolean());
      assertThat(alone.stream().map(row -> cell(row, "nap", "size", "width_mm", "length_mm")))
          .containsExactlyInAnyOrderElementsOf(
              every.stream()
                  .filter(row -> cell(row, "fold").equals(fold))
                  .map(row -> cell(row, "nap", "size", "width_mm", "length_mm"))
                  .toList());
    }
  }

  private static String plain(double mm) {
    double rounded = Math.rint(mm * 10) / 10;
    return rounded == Math.rint(rounded) ? Long.toString((long) rounded) : "" + rounded;
  }

  @Test
  void textJsonSpreadsheetAndPageSayTheSame() throws IOException {
    String[] asked = {"--price", "12.50/m", "--shrink", "4%", "--fit-in", "1.2m"};
    List<JsonNode> rows = rows(asked);
    String text = cloth(asked);
    Map<String, String> buys = new LinkedHashMap<>();
    for (JsonNode row : rows) {
      String nap = row.get("nap").asBoolean() ? "with nap" : "without nap";
      String key =
          "View "
              + cell(row, "view")
              + ", "
              + cell(row, "fabric")
              + " "
              + nap
              + " "
              + row.get("size").asText()
              + " "
              + width(row.get("width_mm").asDouble());
      if (row.get("best").asBoolean()) {
        buys.put(key, said(row.get("buy")) + " for " + money(row.get("cost").asDouble()));
      } else {
        buys.putIfAbsent(key, "does not fit");
      }
    }
    assertThat(buys).hasSizeGreaterThan(50);
    assertThat(inText(text)).isEqualTo(buys);
    assertThat(inPage(made("yardage.html"))).isEqualTo(buys);
    List<String> lines = made("yardage.csv").lines().skip(1).toList();
    assertThat(lines).hasSameSizeAs(rows);
    for (int i = 0; i < rows.size(); i++) {
      JsonNode row = rows.get(i);
      List<String> cells = List.of(lines.get(i).split(",", -1));
      assertThat(cells.get(3)).isEqualTo(row.get("size").asText());
      assertThat(cells.get(6)).isEqualTo(row.get("best").asBoolean() ? "yes" : "");
      assertThat(cells.get(7)).isEqualTo(number(row, each -> each.get("length_mm").asDouble()));
      assertThat(cells.get(8)).isEqualTo(number(row, each -> each.get("bought_mm").asDouble()));
      if (row.get("fits").asBoolean()) {
        assertThat(Double.parseDouble(cells.get(10))).isEqualTo(row.get("buy").get("m").asDouble());
        assertThat(Double.parseDouble(cells.get(11)))
            .isEqualTo(row.get("buy").get("yd").asDouble());
      }
      assertThat(lines.get(i)).endsWith(row.get("enough").asBoolean() ? ",yes" : ",no");
    }
  }

  private static String number(JsonNode row, ToDoubleFunction<JsonNode> value) {
    return row.get("fits").asBoolean()
        ? new BigDecimal(value.applyAsDouble(row))
            .setScale(2, RoundingMode.HALF_EVEN)
            .toPlainString()
        : "";
  }

  private static String money(double amount) {
    return new BigDecimal(Double.toString(amount))
        .setScale(2, RoundingMode.HALF_UP)
        .toPlainString();
  }

  private static String width(double mm) {
    return plain(mm / 10) + " cm";
  }

  /** "1.6 m · 1 3/4 yd". */
  private static String said(JsonNode buy) {
    int eighths = (int) Math.rint(buy.get("yd").asDouble() * 8);
    List<String> parts = List.of("", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8");
    String yards =
        (eighths >= 8 ? Integer.toString(eighths / 8) : "") + " " + parts.get(eighths % 8);
    return plain(buy.get("m").asDouble()) + " m · " + yards.strip() + " yd";
  }

  /** Every size by itself: "XS to 2T" are three. */
  private static List<String> sizes(String group) {
    String[] ends = group.split(" to ", -1);
    return SIZES.subList(SIZES.indexOf(ends[0]), SIZES.indexOf(ends[ends.length - 1]) + 1);
  }

  private static Map<String, String> inText(String text) {
    Map<String, String> said = new LinkedHashMap<>();
    String heading = "";
    List<String> widths = List.of();
    for (String line : text.lines().toList()) {
      List<String> cells = List.of(line.strip().split(" {2,}"));
      if (line.startsWith("View ")) {
        heading = line.replaceFirst(": .*, (with(out)? nap)$", " $1");
      } else if (line.startsWith("size ")) {
        widths = cells.subList(1, cells.size());
      } else if (line.startsWith("From a length")) {
        break;
      } else if (!line.startsWith(" ") && cells.size() == widths.size() + 1) {
        for (int i = 0; i < widths.size(); i++) {
          for (String size : sizes(cells.get(0))) {
            said.put(heading + " " + size + " " + widths.get(i), cells.get(i + 1));
          }
        }
      }
    }
    return said;
  }

  private static Map<String, String> inPage(String page) {
    Map<String, String> said = new LinkedHashMap<>();
    for (String section : page.split("<section>", -1)) {
      Matcher heading = Pattern.compile("<h2>(View [^<]*)</h2>").matcher(section);
      if (heading.find()) {
        String head = heading.group(1).replaceFirst(": .*, (with(out)? nap)$", " $1");
        String table = section.substring(section.indexOf("<table"), section.indexOf("</table>"));
        List<String> widths =
            all("<th scope=\"col\">([^<]*) wide</th>", table).stream()
                .map(each -> each.replaceFirst(" · .*", ""))
                .toList();
        for (String line : table.split("<tr>", -1)) {
          List<String> sizes = all("<th scope=\"row\">([^<]*)</th>", line);
          List<String> cells = all("<td>(.*?)</td>", line);
          for (int i = 0; !sizes.isEmpty() && i < widths.size(); i++) {
            for (String size : sizes(sizes.get(0))) {
              said.put(
                  head + " " + size + " " + widths.get(i),
                  plainFractions(cells.get(i).replaceAll("<[^>]*>", "")));
            }
          }
        }
      }
    }
    return said;
  }

  private static String plainFractions(String text) {
    List<String> parts = List.of("1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8");
    String plain = text;
    for (int i = 0; i < parts.size(); i++) {
      String sign = SIGNS.substring(i, i + 1);
      plain = plain.replaceAll("(\\d)" + sign, "$1 " + parts.get(i)).replace(sign, parts.get(i));
    }
    return plain;
  }

  private static List<String> all(String pattern, String text) {
    List<String> all = new ArrayList<>();
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    while (matcher.find()) {
      all.add(matcher.group(1));
    }
    return all;
  }

  @Test
  void itsFolderHoldsWhatWasAskedLastAndAnotherFolderKeepsWhatIsThere() throws IOException {
    cloth("--view", "B", "--size", "XS,2T");
    assertThat(pictures(folder.resolve("out/cloth"))).hasSizeGreaterThan(3);
    cloth("--view", "B", "--size", "XS", "--fabric", "lining");
    assertThat(pictures(folder.resolve("out/cloth"))).hasSize(2);
    Path other = folder.resolve("elsewhere");
    Files.createDirectories(other);
    Files.writeString(other.resolve("mine.txt"), "mine");
    cloth("--view", "B", "--size", "XS", "--fabric", "lining", "--out", other.toString());
    assertThat(other.resolve("mine.txt")).hasContent("mine");
    assertThat(pictures(other)).hasSize(2);
  }

  private static Set<String> pictures(Path place) throws IOException {
    try (Stream<Path> all = Files.list(place.resolve("layouts"))) {
      return new LinkedHashSet<>(all.map(each -> each.getFileName().toString()).toList());
    }
  }
}
