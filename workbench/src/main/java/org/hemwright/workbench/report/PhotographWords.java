package org.hemwright.workbench.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.exchange.photograph.Guide;
import org.hemwright.exchange.photograph.Pixel;
import org.hemwright.pattern.quantity.Length;
import org.hemwright.pattern.quantity.Reading;

/**
 * What the owner of a photograph says of it in words: where its card or its ruler is.
 *
 * @param guide what tells how large things are
 * @param amiss what could not be understood, a line each; the guide counts only without any
 */
public record PhotographWords(Guide guide, List<String> amiss) {
  private static final Pattern PLACE = Pattern.compile("(\\d+(?:\\.\\d+)?),(\\d+(?:\\.\\d+)?)");
  private static final Pattern BLANKS = Pattern.compile("[ ;]+");

  public PhotographWords {
    amiss = List.copyOf(amiss);
  }

  /**
   * Understands what was said.
   *
   * @param card four places in pixels: "410,1630 980,1655 965,910 402,905"
   * @param ruler a length: "30 cm"
   * @param marks two places in pixels, that length apart
   */
  public static PhotographWords of(
      Optional<String> card, Optional<String> ruler, Optional<String> marks) {
    List<String> amiss = new ArrayList<>();
    return new PhotographWords(guide(card, ruler, marks, amiss), amiss);
  }

  private static Guide guide(
      Optional<String> card,
      Optional<String> ruler,
      Optional<String> marks,
      List<String> problems) {
    if (card.isPresent() && (ruler.isPresent() || marks.isPresent())) {
      problems.add("--card and --ruler: one picture needs one of the two; leave out the other");
    }
    if (ruler.isPresent() != marks.isPresent()) {
      problems.add(
          ruler.isPresent()
              ? "--ruler: say with --marks where the two marks are, in pixels"
              : "--marks: say with --ruler how long it is between the two marks");
    }
    Optional<List<Pixel>> corners = card.map(text -> places("--card", text, 4, problems));
    Optional<List<Pixel>> ends = marks.map(text -> places("--marks", text, 2, problems));
    Optional<Double> length = ruler.map(text -> length(text, problems));
    if (!problems.isEmpty()) {
      return new Guide.Card();
    }
    if (corners.isPresent()) {
      return new Guide.CardCorners(corners.get());
    }
    if (ends.isPresent() && length.isPresent()) {
      return new Guide.Ruler(ends.get().get(0), ends.get().get(1), length.get());
    }
    return new Guide.Card();
  }

  private static List<Pixel> places(String option, String text, int count, List<String> problems) {
    List<Pixel> places = new ArrayList<>();
    for (String word : BLANKS.split(text.strip(), -1)) {
      Matcher place = PLACE.matcher(word);
      if (place.matches()) {
        places.add(
            new Pixel(Double.parseDouble(place.group(1)), Double.parseDouble(place.group(2))));
      } else {
        problems.add(
            "%s: \"%s\" is no place; write it as 410,1630, pixels from the left and from the top"
                .formatted(option, word));
        return places;
      }
    }
    if (places.size() != count) {
      problems.add(
          String.format(
              Locale.ROOT, "%s: %d places are needed, and %d given", option, count, places.size()));
    }
    return places;
  }

  private static double length(String text, List<String> problems) {
    if (Length.read(text.strip()) instanceof Reading.Read<Length> read && read.value().mm() > 0) {
      return read.value().mm();
    }
    problems.add(
        "--ruler %s: that is no length; write it as 30cm, 300mm or \"12in\"".formatted(text));
    return 1;
  }
}
