package org.hemwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hemwright.cli.OddThings.cell;
import static org.hemwright.cli.OddThings.plain;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The forms in which {@code cloth} answers say the same of {@link OddThings}. */
class ClothFormsTest {
  @TempDir Path folder;

  private OddThings things;

  @BeforeEach
  void oddThings() throws IOException {
    things = OddThings.in(folder);
  }

  @Test
  void textJsonSpreadsheetAndPageSayTheSame() throws IOException {
    String[] asked = {"--price", "12.50/m", "--shrink", "4%", "--fit-in", "1.2m"};
    List<JsonNode> rows = things.rows(asked);
    String text = things.cloth(asked);
    Map<String, String> buys = new LinkedHashMap<>();
    for (JsonNode row : rows) {
      String nap = row.get("nap").asBoolean() ? " with nap" : " without nap";
      String key =
          "View "
              + cell(row, "view")
              + ", "
              + cell(row, "fabric")
              + (row.get("fabric").asText().equals("lining") ? "" : nap)
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
    assertThat(ToldLengths.inText(text)).isEqualTo(buys);
    assertThat(ToldLengths.inPage(made("yardage.html"))).isEqualTo(buys);
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

  private String made(String file) throws IOException {
    return Files.readString(folder.resolve("out/cloth").resolve(file));
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

  @Test
  void theBookletSaysWhatIsCutApartOnWhichClothInWhichSizes() throws IOException {
    things.run(
        "booklet", folder.toString(), "--size", "2T,XXL", "--out", folder.resolve("b").toString());
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
  void itsFolderHoldsWhatWasAskedLastAndAnotherFolderKeepsWhatIsThere() throws IOException {
    things.cloth("--view", "B", "--size", "XS,2T");
    assertThat(pictures(folder.resolve("out/cloth"))).hasSizeGreaterThan(3);
    things.cloth("--view", "B", "--size", "XS", "--fabric", "velvet");
    assertThat(pictures(folder.resolve("out/cloth"))).hasSize(2);
    Path other = folder.resolve("elsewhere");
    Files.createDirectories(other);
    Files.writeString(other.resolve("mine.txt"), "mine");
    things.cloth("--view", "B", "--size", "XS", "--fabric", "velvet", "--out", other.toString());
    assertThat(other.resolve("mine.txt")).hasContent("mine");
    assertThat(pictures(other)).hasSize(2);
  }

  private static Set<String> pictures(Path place) throws IOException {
    try (Stream<Path> all = Files.list(place.resolve("layouts"))) {
      return new LinkedHashSet<>(all.map(each -> each.getFileName().toString()).toList());
    }
  }
}
