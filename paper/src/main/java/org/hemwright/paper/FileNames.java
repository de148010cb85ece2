package org.hemwright.paper;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Size;

/** How a run's files are called: small letters, figures and hyphens, no two alike. */
final class FileNames {
  private final String stem;
  private final Map<String, String> sizes = new LinkedHashMap<>();

  FileNames(SizeRun run) {
    Details details = run.pattern().details();
    stem = slug(details.title()) + "-" + details.version().replaceAll("[^A-Za-z0-9.]+", "-");
    Map<String, Integer> taken = new HashMap<>();
    for (Size size : run.pattern().chart().sizes()) {
      String slug = slug(size.name());
      int count = taken.merge(slug, 1, Integer::sum);
      sizes.put(size.name(), count == 1 ? slug : slug + "-" + count);
    }
  }

  /** Of a file of the whole run. */
  String file(String kind, String ending) {
    return stem + "-" + kind + "." + ending;
  }

  /** Of a file of a single size, in a folder of its own. */
  String single(Size size, String kind, String ending) {
    String own = "size-" + of(size.name());
    return own + "/" + stem + "-" + own + (kind.isEmpty() ? "" : "-" + kind) + "." + ending;
  }

  /** A group by its sizes: {@code sizes-8-to-20}. */
  String group(List<String> names) {
    String first = of(names.get(0));
    return names.size() == 1
        ? "size-" + first
        : "sizes-" + first + "-to-" + of(names.get(names.size() - 1));
  }

  private String of(String size) {
    return sizes.getOrDefault(size, slug(size));
  }

  private static String slug(String text) {
    String slug = text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    String trimmed = slug.replaceAll("^-|-$", "");
    return trimmed.isEmpty() ? "pattern" : trimmed;
  }
}
