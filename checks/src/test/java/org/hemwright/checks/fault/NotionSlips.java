package org.hemwright.checks.fault;

import static org.hemwright.checks.fault.WrittenFault.READING;

import java.util.List;

/** What is written of elastics, zips and openings. */
final class NotionSlips {
  private NotionSlips() {}

  static final List<Slip> ALL =
      List.of(
          Slip.put(
              "an elastic wider than its casing",
              "elastic",
              "width (\\w+)",
              1,
              m -> m.group(1) + " + 8 mm",
              "elastic-casing"),
          lengthTimes("an elastic half again as long", "1.5"),
          lengthTimes("an elastic of half its length", "0.5"),
          Slip.put(
              "an elastic whose ends overlap by 10 cm",
              "elastic",
              "overlap (.*)$",
              1,
              m -> "10 cm",
              "elastic-casing"),
          Slip.put(
              "a zip too short for the opening",
              "piece",
              "closed by zip (\\d+ \\w+)",
              1,
              m -> "2 in",
              "opening-passes"),
          Slip.deleted(
              "an opening of which nothing is said",
              "piece",
              "^  opening .*",
              "opening-passes",
              "girth-ease",
              READING));

  private static Slip lengthTimes(String words, String times) {
    return Slip.put(
        words,
        "elastic",
        "length ([^,]*)",
        1,
        m -> times + " * (" + m.group(1).replace("90% of waist", "waist * 0.9") + ")",
        "elastic-casing");
  }
}
