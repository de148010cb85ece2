package org.hemwright.paper;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Size;

/** How a run's files are called: small letters, figures and hyphens, no two alike. */
final class FileNames {
  private final String stem;
  private final Map<String, String> sizes;
  private final Map<String, String> views;

  FileNames(SizeRun run) {
    Details details = run.pattern().details();
    stem = slug(details.title()) + "-" + details.version().replaceAll("[^A-Za-z0-9.]+", "-");
    sizes = apart(run.pattern().chart().sizes().stream().map(Size::name).toList());
    views = apart(run.pattern().views().stream().map(View::name).toList());
  }

  /** The title and the version, with which every name begins. */
  String stem() {
    return stem;
  }

  private static Map<String, String> apart(List<String> names) {
    Map<String, Integer> taken = new HashMap<>();
    Map<String, String> slugs = new LinkedHashMap<>();
    for (String name : names) {
      String slug = slug(name);
      int count = taken.merge(slug, 1, Integer::sum);
      slugs.put(name, count == 1 ? slug : slug + "-" + count);
    }
    return slugs;
  }

  /** Of a file of the whole run, or of a view in a folder of its own. */
  String file(Optional<View> view, String kind, String ending) {
    return name(of(view), kind, ending);
  }

  /** Of a file of a single size, in a folder of its own. */
  String single(Optional<View> view, Size size, String kind, String ending) {
    List<String> own = new ArrayList<>(of(view));
    own.add("size-" + of(size.name()));
    return name(own, kind, ending);
  }

  /** Of a picture of a group of the whole run, or of a view. */
  String picture(Optional<View> view, List<String> sizes, String ending) {
    return file(view, group(sizes), ending);
  }

  private String name(List<String> own, String kind, String ending) {
    List<String> parts = new ArrayList<>(List.of(stem));
    parts.addAll(own);
    parts.add(kind);
    parts.removeIf(String::isEmpty);
    String folder = own.stream().map(part -> part + "/").collect(Collectors.joining());
    return folder + String.join("-", parts) + "." + ending;
  }

  private List<String> of(Optional<View> view) {
    return view.map(each -> "view-" + views.getOrDefault(each.name(), slug(each.name()))).stream()
        .toList();
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

  /** Letters without their marks: {@code Größe 44} is {@code grosse-44}. */
  static String slug(String text) {
    String bare =
        Normalizer.normalize(text.replace("ß", "ss"), Normalizer.Form.NFKD)
            .replaceAll("\\p{M}+", "");
    String slug = bare.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    String trimmed = slug.replaceAll("^-|-$", "");
    return trimmed.isEmpty() ? "pattern" : trimmed;
  }
}
