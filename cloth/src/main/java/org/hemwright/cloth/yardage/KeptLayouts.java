package org.hemwright.cloth.yardage;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.hemwright.cloth.laying.Layout;
import org.hemwright.cloth.laying.LooseShape;
import org.hemwright.cloth.laying.Placement;
import org.hemwright.cloth.laying.StripProblem;
import org.hemwright.cloth.laying.Turn;
import org.hemwright.cloth.rule.ClothPlan;
import org.hemwright.cloth.rule.Section;

/** The key by which a laying is kept, and the line of text that it is kept as. */
final class KeptLayouts {
  /** Layings kept by a search that worked otherwise are not taken for this one's. */
  private static final String EDITION = "laying 3";

  private static final String PART = "\t";

  /** So many hexadecimal digits of a hash stand before a line. */
  private static final int SUM = 16;

  private KeptLayouts() {}

  /** The key of what these plans ask for. */
  static String key(List<ClothPlan> plans, PlanSearch search) {
    return key(plans, String.join(PART, "" + search.work(), "" + search.seed()));
  }

  /**
   * The key of a laying once it is tidied.
   *
   * @param layouts those that are tidied, as text
   * @param longer by how much it may become longer (mm)
   */
  static String tidyKey(List<ClothPlan> plans, String layouts, double longer) {
    return key(plans, String.join(PART, "tidied 2", "" + longer, layouts));
  }

  private static String key(List<ClothPlan> plans, String how) {
    StringBuilder text = new StringBuilder(EDITION);
    text.append(PART).append(how);
    for (ClothPlan plan : plans) {
      text.append("\nplan ").append(plan.sheet());
      for (Section section : plan.sections()) {
        text.append("\nsection ").append(section.open()).append(PART).append(section.gap());
        section.problem().ifPresent(problem -> add(problem, text));
      }
    }
    return sha256(text.toString());
  }

  private static void add(StripProblem problem, StringBuilder text) {
    text.append(PART).append(problem.stripWidth());
    for (LooseShape shape : problem.shapes()) {
      text.append("\n").append(shape);
    }
  }

  private static String sha256(String text) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(hash);
    } catch (NoSuchAlgorithmException impossible) {
      throw new AssertionError("every Java has SHA-256", impossible);
    }
  }

  /**
   * A laying as one line: a sum over key and line by which damage is known, which plan, then each
   * section's length, count and placements.
   */
  static String text(String key, List<ClothPlan> plans, PlanSearch.Laid laid) {
    String line = plans.indexOf(laid.plan()) + PART + layouts(laid);
    return sum(key, line) + PART + line;
  }

  private static String sum(String key, String line) {
    return sha256(key + PART + line).substring(0, SUM);
  }

  /** The layouts of a laying as one line. */
  static String layouts(PlanSearch.Laid laid) {
    List<String> parts = new ArrayList<>();
    for (Layout layout : laid.layouts()) {
      parts.add(Double.toString(layout.length()));
      parts.add(Integer.toString(layout.placements().size()));
      for (Placement placement : layout.placements()) {
        parts.add(placement.id());
        parts.add(Double.toString(placement.turn().degrees()));
        parts.add(Boolean.toString(placement.turn().mirrored()));
        parts.add(Double.toString(placement.x()));
        parts.add(Double.toString(placement.y()));
      }
    }
    return String.join(PART, parts);
  }

  /** The laying that a line tells of; absent where it is not as it was kept under that key. */
  static Optional<PlanSearch.Laid> read(String key, List<ClothPlan> plans, String kept) {
    String line = kept.substring(Math.min(kept.length(), SUM + PART.length()));
    if (!kept.equals(sum(key, line) + PART + line)) {
      return Optional.empty();
    }
    try {
      String[] parts = line.split(PART, -1);
      ClothPlan plan = plans.get(Integer.parseInt(parts[0]));
      List<Layout> layouts = new ArrayList<>();
      int at = 1;
      for (int section = 0; section < plan.sections().size(); section++) {
        double length = Double.parseDouble(parts[at++]);
        int count = Integer.parseInt(parts[at++]);
        List<Placement> placements = new ArrayList<>();
        for (int i = 0; i < count; i++, at += 5) {
          Turn turn =
              new Turn(Double.parseDouble(parts[at + 1]), Boolean.parseBoolean(parts[at + 2]));
          placements.add(
              new Placement(
                  parts[at],
                  turn,
                  Double.parseDouble(parts[at + 3]),
                  Double.parseDouble(parts[at + 4])));
        }
        layouts.add(new Layout(length, placements));
      }
      return Optional.of(PlanSearch.Laid.of(plan, layouts));
    } catch (IllegalArgumentException | IndexOutOfBoundsException unreadable) {
      return Optional.empty();
    }
  }
}
