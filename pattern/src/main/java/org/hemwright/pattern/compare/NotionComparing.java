package org.hemwright.pattern.compare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.notion.NotionSettings;
import org.hemwright.pattern.notion.Notions;
import org.hemwright.pattern.notion.ThreadNeed;
import org.hemwright.pattern.quantity.LengthFormat;
import org.hemwright.pattern.quantity.LengthKind;
import org.hemwright.pattern.quantity.Quantity;

/**
 * What a maker buys beside the cloth, view by view: thread, zips, tape, what fastens, what is
 * fused. Elastics and cords are compared as the document states them.
 */
record NotionComparing(SizeRun old, SizeRun now, List<Change> changes) {
  void compare() {
    int common =
        (int) now.sizes().stream().filter(s -> old.size(s.size().name()).isPresent()).count();
    for (View view : now.pattern().views()) {
      Optional<View> before = old.pattern().view(view.name());
      if (before.isEmpty()) {
        continue;
      }
      BySize found = new BySize(common);
      for (SizedPattern sized : now.sizes()) {
        String size = sized.size().name();
        Optional<SizedPattern> then = old.size(size);
        if (then.isPresent()) {
          Notions was =
              Notions.of(old.pattern(), before.get(), then.get(), NotionSettings.HANDBOOK);
          Notions is = Notions.of(now.pattern(), view, sized, NotionSettings.HANDBOOK);
          compare(size, "in view " + view.name(), was, is, found);
        }
      }
      changes.addAll(found.changes());
    }
  }

  private void compare(String size, String view, Notions was, Notions is, BySize found) {
    told(size, Changed.NOTION_THREAD, view, spools(was), spools(is), found);
    told(size, Changed.NOTION_ZIP, view, zips(was), zips(is), found);
    told(size, Changed.NOTION_FASTENING, view, fastenings(was), fastenings(is), found);
    found.add(
        size,
        Changed.NOTION_INTERFACING,
        "what is fused " + view,
        Optional.of(names(was.interfacings())),
        Optional.of(names(is.interfacings())));
    double then = tape(was);
    double tape = tape(is);
    if (Math.abs(then - tape) > Tolerance.DRAWN_LENGTH) {
      found.add(size, Changed.NOTION_TAPE, "the tape " + view, Change.Values.of(then, tape));
    }
  }

  private static void told(
      String size,
      Changed changed,
      String view,
      Map<String, Argument> was,
      Map<String, Argument> is,
      BySize found) {
    Map<String, Argument> all = new LinkedHashMap<>(is);
    was.forEach(all::putIfAbsent);
    all.keySet()
        .forEach(
            what ->
                found.add(
                    size,
                    changed,
                    what + " " + view,
                    Optional.of(was.getOrDefault(what, new Argument.Term("none"))),
                    Optional.of(is.getOrDefault(what, new Argument.Term("none")))));
  }

  private static Map<String, Argument> spools(Notions notions) {
    Map<String, Argument> spools = new LinkedHashMap<>();
    for (ThreadNeed need : notions.thread()) {
      spools.put(
          need.machine() == ThreadNeed.Machine.SEWING ? "spools of thread" : "cones of thread",
          Argument.of(need.spools()));
    }
    return spools;
  }

  private static Map<String, Argument> zips(Notions notions) {
    Map<String, Argument> zips = new LinkedHashMap<>();
    for (Notions.ZipNeed need : notions.zips()) {
      zips.put(
          "the zip for " + need.opening(),
          need.length().isPresent()
              ? Argument.of(Quantity.length(need.length().getAsDouble()))
              : new Argument.Term("none"));
    }
    return zips;
  }

  private Map<String, Argument> fastenings(Notions notions) {
    Map<String, Argument> counts = new LinkedHashMap<>();
    for (Notions.FasteningNeed need : notions.fastenings()) {
      String kind = need.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
      counts.put("the count of " + kind + "s of " + across(need.size()), Argument.of(need.count()));
    }
    return counts;
  }

  /** Buttons, snaps and eyelets are sold by the millimetre; inches stand before it. */
  private String across(double mm) {
    String metric = Math.round(mm) + " mm";
    if (now.pattern().details().units() != Details.Units.INCHES) {
      return metric;
    }
    LengthFormat inches = LengthFormat.of(LengthFormat.Edition.INCHES_ONLY);
    return inches.text(mm, LengthKind.NOTION) + " \u00b7 " + metric;
  }

  private static double tape(Notions notions) {
    return notions.tapes().stream().mapToDouble(Notions.TapeNeed::length).sum();
  }

  private static Argument names(List<String> names) {
    return names.isEmpty() ? new Argument.Term("none") : Argument.of(names);
  }
}
