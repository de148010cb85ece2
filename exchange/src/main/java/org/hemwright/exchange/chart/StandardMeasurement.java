package org.hemwright.exchange.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A body measurement by its usual name in a document, with what a standard calls it and what charts
 * do. The list of ISO 8559:1989 is that of handbook section 1; terms of ISO 8559-1:2017 are from
 * memory.
 *
 * @param name as the document writes it
 * @param standard what ISO 8559 calls it
 * @param others other headings that mean it, lower case
 */
public record StandardMeasurement(String name, String standard, List<String> others) {
  public StandardMeasurement {
    others = List.copyOf(others);
  }

  private static final List<StandardMeasurement> ALL =
      List.of(
          of("height", "height", "stature", "body height", "körpergröße", "tall"),
          of(
              "bust",
              "bust girth",
              "full bust",
              "oberweite",
              "brustumfang",
              "chest",
              "chest girth",
              "bust circumference",
              "b"),
          of("high_bust", "upper chest girth", "upper bust", "over bust"),
          of("underbust", "underbust girth", "under bust", "rib cage", "band"),
          of(
              "waist",
              "waist girth",
              "natural waist",
              "waist circumference",
              "taille",
              "taillenumfang",
              "w"),
          of("high_hip", "top hip girth", "upper hip", "tummy"),
          of(
              "hip",
              "hip girth",
              "hips",
              "hüfte",
              "hüftumfang",
              "gesäßumfang",
              "full hip",
              "seat",
              "hip circumference",
              "low hip",
              "h"),
          of("thigh", "thigh girth", "upper thigh"),
          of("knee", "knee girth"),
          of("calf", "calf girth"),
          of("ankle", "ankle girth"),
          of("neck", "neck girth", "neck circumference"),
          of("neck_base", "neck-base girth", "base of neck", "neck base girth"),
          of("head", "head girth", "head circumference", "kopfumfang"),
          of(
              "upper_arm",
              "upper arm girth",
              "bicep",
              "biceps",
              "oberarmumfang",
              "arm girth",
              "upperarm"),
          of("wrist", "wrist girth"),
          of("hand", "hand girth"),
          of("shoulder", "shoulder length", "shoulder seam", "one shoulder", "schulterbreite"),
          of("back_width", "back width", "across back", "cross back", "x back", "rückenbreite"),
          of("scye_depth", "scye depth", "armhole depth", "armscye depth"),
          of(
              "back_length",
              "back neck point to waist",
              "cervical to waist",
              "nape to waist",
              "back neck to waist",
              "rückenlänge",
              "back waist length",
              "back waist"),
          of("front_length", "front waist length", "shoulder to waist front"),
          of("bust_height", "neck shoulder point to bust point", "bust point height", "bust depth"),
          of("bust_span", "bust point to bust point", "bust width", "apex to apex"),
          of(
              "arm_length",
              "arm length",
              "sleeve length",
              "shoulder to wrist",
              "ärmellänge",
              "armlänge"),
          of("body_rise", "body rise", "crotch depth", "rise", "sitting rise"),
          of("hip_depth", "waist to hips", "waist to hip", "hip height"),
          of("outside_leg", "outside leg length", "outseam", "side length", "waist to floor"),
          of(
              "inside_leg",
              "inside leg length",
              "inseam",
              "inside leg",
              "inleg",
              "innere beinlänge",
              "schrittlänge"),
          of("trunk_girth", "trunk circumference", "trunk", "girth"));

  private static StandardMeasurement of(String name, String standard, String... others) {
    List<String> all = new ArrayList<>(List.of(others));
    all.add(standard.toLowerCase(Locale.ROOT));
    all.add(name.replace('_', ' '));
    return new StandardMeasurement(name, standard, all);
  }

  /** Every measurement that is known here. */
  public static List<StandardMeasurement> all() {
    return ALL;
  }

  /** The one of a name in a document. */
  public static Optional<StandardMeasurement> named(String name) {
    return ALL.stream().filter(each -> each.name.equals(name)).findFirst();
  }

  /** The one that a chart's heading means, where it says one's name or one of its other names. */
  static Optional<StandardMeasurement> meant(String heading) {
    String plain =
        heading
            .toLowerCase(Locale.ROOT)
            .replaceAll("^\\s*[a-z0-9]{1,2}\\s*[.:)=–-]\\s*(?=\\p{L}{2})", "")
            .replaceAll("\\(.*?\\)", " ")
            .replaceAll("[^\\p{L}\\p{N}]+", " ")
            .replaceAll(
                "\\b(body|measurement|circ|in|cm|mm|inches|centimetres|centimeters)\\b", " ")
            .replaceAll("\\s+", " ")
            .strip();
    return ALL.stream()
        .filter(
            each ->
                each.others.stream()
                    .map(other -> other.replaceAll("[^\\p{L}\\p{N}]+", " ").strip())
                    .anyMatch(plain::equals))
        .findFirst();
  }
}
