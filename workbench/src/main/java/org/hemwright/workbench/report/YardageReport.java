package org.hemwright.workbench.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.cloth.rule.BarsAside;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.Misfit;
import org.hemwright.cloth.yardage.LeftOver;
import org.hemwright.cloth.yardage.LeftOvers;
import org.hemwright.cloth.yardage.Need;
import org.hemwright.cloth.yardage.OwnCloth;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;

/**
 * How much cloth to buy, as {@code cloth --json} gives it: {@code {"rows":[{"view", "fabric",
 * "size", "width_mm", "fold", "length_mm", "density", "fits", "variant", "nap", "buy":{"m", "yd"},
 * "best", "bought_mm", "area_left_mm2", "repeat":{"along_mm", "across_mm", "uneven", "aside_mm"},
 * "cost", "stripes_extra_mm", "enough", "left", "misfits"}], "findings"}}.
 */
public final class YardageReport {
  private YardageReport() {}

  /**
   * The report.
   *
   * @param own what is said of a cloth: how long it is, and each row then says whether it does;
   *     what it costs, and each row then says how much
   * @param left what is left of the cloth
   */
  public static String json(
      YardageTable table, List<Finding> findings, OwnCloth own, LeftOvers left, Wording wording) {
    FindingJson told = new FindingJson(wording);
    return JsonText.of(
        json -> {
          json.writeStartObject();
          json.writeArrayFieldStart("rows");
          for (YardageRow row : table.rows()) {
            write(json, row, own, left.of(row));
          }
          json.writeEndArray();
          told.write(json, "findings", findings);
          json.writeEndObject();
        });
  }

  private static void write(
      JsonGenerator json, YardageRow row, OwnCloth own, Optional<LeftOver> left)
      throws IOException {
    Optional<Need> need = row.need();
    json.writeStartObject();
    json.writeStringField("view", row.view().name());
    json.writeStringField("fabric", row.fabric().name());
    json.writeStringField("size", row.size().name());
    JsonText.number(json, "width_mm", row.width());
    json.writeStringField("fold", row.fold().word());
    JsonText.number(json, "length_mm", number(need.map(Need::length)));
    JsonText.number(json, "density", number(need.map(Need::density)));
    json.writeBooleanField("fits", row.fits());
    if (row.variant().isEmpty()) {
      json.writeNullField("variant");
    } else {
      json.writeStringField("variant", YardageCsv.variant(row));
    }
    json.writeBooleanField("nap", row.nap() == Fabric.Nap.ONE_WAY);
    json.writeBooleanField("both_sides_alike", row.fabric().sidesAlike());
    if (need.isPresent()) {
      json.writeObjectFieldStart("buy");
      JsonText.number(json, "m", need.get().buy().metres());
      JsonText.number(json, "yd", need.get().buy().yards());
      json.writeEndObject();
    } else {
      json.writeNullField("buy");
    }
    json.writeBooleanField("best", row.best());
    JsonText.number(json, "bought_mm", number(need.map(Need::bought)));
    JsonText.number(json, "area_left_mm2", number(need.map(Need::areaLeft)));
    if (row.fabric().repeat().isPresent()) {
      write(json, row.fabric().repeat().get(), need.filter(each -> row.best()).map(Need::laying));
    }
    if (own.prices().containsKey(row.fabric().name())) {
      JsonText.number(json, "cost", own.cost(row));
    }
    OptionalDouble stripes = own.extraForStripes(row);
    if (stripes.isPresent()) {
      JsonText.number(json, "stripes_extra_mm", stripes);
    }
    if (own.length().isPresent()) {
      json.writeBooleanField("enough", row.isCutFrom(own.length().getAsDouble()));
    }
    if (left.isPresent()) {
      json.writeObjectFieldStart("left");
      JsonText.number(json, "along_mm", left.get().along());
      JsonText.number(json, "across_mm", left.get().across());
      json.writeObjectFieldStart("also_fits");
      for (Map.Entry<String, List<String>> fits : left.get().fits().entrySet()) {
        json.writeArrayFieldStart(fits.getKey());
        for (String piece : fits.getValue()) {
          json.writeString(piece);
        }
        json.writeEndArray();
      }
      json.writeEndObject();
      json.writeEndObject();
    }
    json.writeArrayFieldStart("misfits");
    for (Misfit misfit : row.misfits()) {
      json.writeStartObject();
      json.writeStringField("piece", misfit.piece());
      JsonText.number(json, "across_mm", misfit.across());
      JsonText.number(json, "room_mm", misfit.room());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  /** The repeat that a row is laid for, and how far aside its middle bar may lie. */
  private static void write(JsonGenerator json, Fabric.Repeat repeat, Optional<ClothLaying> laying)
      throws IOException {
    json.writeObjectFieldStart("repeat");
    JsonText.number(json, "along_mm", repeat.along());
    JsonText.number(json, "across_mm", repeat.across());
    json.writeArrayFieldStart("uneven");
    for (String way : YardageCsv.uneven(repeat)) {
      json.writeString(way);
    }
    json.writeEndArray();
    JsonText.number(json, "aside_mm", laying.map(BarsAside::of).orElse(OptionalDouble.empty()));
    json.writeEndObject();
  }

  private static OptionalDouble number(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }
}
